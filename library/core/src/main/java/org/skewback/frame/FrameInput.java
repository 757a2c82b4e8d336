package org.skewback.frame;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.skewback.data.CsvTable;
import org.skewback.quantity.Quantity;

/** The part that inputs of all routines of a frame share: its tables and the quantities in them. */
interface FrameInput {

    String nodes();

    String materials();

    String sections();

    String members();

    String supports();

    String names();

    List<Quantity> given();

    /**
     * Gives the quantities by name, for fields such as {@code =g}.
     *
     * @return each quantity under its name
     * @throws IllegalArgumentException if there is not one for each name
     */
    default Map<String, Quantity> byName() {
        List<String> words = parts(names(), ";");
        if (words.size() != given().size()) {
            throw new IllegalArgumentException(
                    "number of quantities given is "
                            + given().size()
                            + "; allowed is one for each of the names "
                            + words
                            + ".");
        }
        Map<String, Quantity> found = new HashMap<>();
        for (int i = 0; i < words.size(); i++) {
            found.put(words.get(i), given().get(i));
        }
        return found;
    }

    /**
     * Reads the tables.
     *
     * @return the frame they tell of
     */
    default FrameModel model() {
        return FrameTables.model(
                new FrameTables.Tables(
                        CsvTable.parse("nodes", nodes()),
                        CsvTable.parse("materials", materials()),
                        CsvTable.parse("sections", sections()),
                        CsvTable.parse("members", members()),
                        CsvTable.parse("supports", supports())),
                byName());
    }

    /**
     * Reads load cases.
     *
     * @param loads table of loads
     * @return the cases in it
     */
    default List<LoadCase> cases(String loads) {
        return FrameTables.loads(CsvTable.parse("loads", loads), byName());
    }

    static List<String> parts(String text, String separator) {
        List<String> parts = new ArrayList<>();
        for (String part : text.split(separator, -1)) {
            if (!part.isBlank()) {
                parts.add(part.strip());
            }
        }
        return parts;
    }

    static Combination combination(String text) {
        Map<String, Double> factors = new HashMap<>();
        for (String term : parts(text, "\\+")) {
            int gap = term.indexOf(' ');
            try {
                double factor = gap < 0 ? 1 : Double.parseDouble(term.substring(0, gap));
                factors.merge(term.substring(gap + 1).strip(), factor, Double::sum);
            } catch (NumberFormatException e) {
                throw new IllegalArgumentException(
                        "combination is \"" + text + "\"; allowed is such as 1.35 G + 1.5 Q.", e);
            }
        }
        return new Combination(text, factors);
    }
}
