package org.skewback.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The numbers by which people speak of the parts of a sheet, derived from their order.
 *
 * <p>Sections are 1, 1.1, 1.2, 2, … Steps, tables, figures and checks are counted each for
 * themselves and bear the sheet's number where it has one: check 06.3 is the third check of sheet
 * 06. Nothing of this is kept in a record.
 */
public final class Numbering {

    private final Map<String, String> numbers;

    private Numbering(Map<String, String> numbers) {
        this.numbers = Map.copyOf(numbers);
    }

    /**
     * Numbers entries by their order.
     *
     * @param sheet the sheet's number; empty where it has none
     * @param entries all that the sheet says, in order
     * @return their numbers
     */
    public static Numbering of(String sheet, List<Entry> entries) {
        Map<String, String> numbers = new HashMap<>();
        Map<Class<?>, Integer> counts = new HashMap<>();
        String before = sheet.isEmpty() ? "" : sheet + ".";
        int section = 0;
        int part = 0;
        for (Entry entry : entries) {
            Block block = entry.block();
            if (block instanceof Block.Section heading) {
                if (heading.level() == 1) {
                    numbers.put(entry.id(), String.valueOf(++section));
                    part = 0;
                } else {
                    numbers.put(entry.id(), section + "." + ++part);
                }
            } else if (!kind(block).isEmpty()) {
                numbers.put(entry.id(), before + counts.merge(block.getClass(), 1, Integer::sum));
            }
        }
        return new Numbering(numbers);
    }

    /**
     * Gives the number of an entry.
     *
     * @param entry one of the entries that were numbered
     * @return such as {@code 1.2} for a section or {@code 06.3} for a check; empty for an entry that
     *     bears none
     */
    public String number(Entry entry) {
        return numbers.getOrDefault(entry.id(), "");
    }

    /**
     * Gives the name by which an entry is spoken of.
     *
     * @param entry one of the entries that were numbered
     * @return such as {@code check 06.3} or {@code section 1.2}; empty for an entry that bears no
     *     number
     */
    public String name(Entry entry) {
        String number = number(entry);
        return number.isEmpty() ? "" : kind(entry.block()) + " " + number;
    }

    /**
     * Gives the name by which an entry is cited, with what it is about.
     *
     * @param entry one of the entries that were numbered
     * @return such as {@code step 06.1 M} or {@code check 06.3 the thrust is below its limit}; empty
     *     for an entry that is neither numbered nor a given
     */
    public String called(Entry entry) {
        Block block = entry.block();
        String about = "";
        if (block instanceof Block.Step step) {
            about = " " + step.quantity().symbol();
        } else if (block instanceof Block.Tabulated tabulated) {
            about = " " + tabulated.table().title();
        } else if (block instanceof Block.Drawn drawn) {
            about = " " + drawn.title();
        } else if (block instanceof Block.Checked checked) {
            about = " " + checked.check().title();
        }
        return cited(entry) + about;
    }

    /** The name of an entry, whether it bears a number or a symbol. */
    String cited(Entry entry) {
        if (entry.block() instanceof Block.Given given) {
            return "given " + given.quantity().symbol();
        } else if (entry.block() instanceof Block.Series series) {
            return "series " + series.symbol();
        }
        return name(entry);
    }

    private static String kind(Block block) {
        if (block instanceof Block.Section) {
            return "section";
        } else if (block instanceof Block.Step) {
            return "step";
        } else if (block instanceof Block.Tabulated) {
            return "table";
        } else if (block instanceof Block.Drawn) {
            return "figure";
        }
        return block instanceof Block.Checked ? "check" : "";
    }
}
