package org.skewback.sheet;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.skewback.display.CellAware;
import org.skewback.display.Displayable;
import org.skewback.quantity.Formula;
import org.skewback.quantity.Graph;
import org.skewback.quantity.Lookalikes;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.QuantityVector;
import org.skewback.quantity.Source;

/**
 * A calculation sheet being written: purpose, givens with sources, assumptions, steps, tables,
 * figures, checks, cautions and a conclusion.
 *
 * <p>A sheet is the one live, changing object of the library, and belongs to one thread. What it
 * holds at a moment is its {@link #record()}, which is immutable.
 *
 * <p>Where the notebook kernel tells which cell runs, rerunning a cell replaces what the cell said
 * before; whatever rested on it and was not worked out again is stale until it is. Elsewhere a symbol
 * said again replaces the earlier one once that has been shown, a table or figure that of the same
 * title, and a check that of the same title, formulas and limits. One symbol said twice in one cell
 * is an error everywhere.
 *
 * <pre>{@code
 * Sheet sheet = Sheet.numbered("06", "Form of the rib");
 * Quantity L = sheet.given("L", 336, "m", "span between springings", Source.drawing("OG-201", "B"));
 * Quantity f = sheet.given("f", 72, "m", "rise of the rib axis", Source.drawing("OG-201", "B"));
 * Quantity n = sheet.step("n", f.over(L), "", "rise-to-span ratio");
 * sheet.latest();                                  // shows what this cell added
 * }</pre>
 */
public final class Sheet implements CellAware, Displayable {

    private final String number;
    private final String title;
    private final List<Said> said = new ArrayList<>();
    private final Map<String, Quantity> current = new LinkedHashMap<>();
    private final List<Begun> begun = new ArrayList<>();
    private @Nullable String cell;
    private int insertAt;
    private int ids;
    private int shown;
    private int tries;

    private Sheet(String number, String title) {
        if (title.isBlank()) {
            throw new IllegalArgumentException("the sheet's title is blank");
        }
        this.number = number;
        this.title = title;
    }

    /**
     * Starts a sheet without a number.
     *
     * @param title its title
     * @return an empty sheet
     * @throws IllegalArgumentException when the title is blank
     */
    public static Sheet titled(String title) {
        return new Sheet("", title);
    }

    /**
     * Starts a sheet of a package.
     *
     * @param number its number, such as {@code 06}, by which other sheets take from it
     * @param title its title
     * @return an empty sheet
     * @throws IllegalArgumentException when the number or the title is blank
     */
    public static Sheet numbered(String number, String title) {
        if (number.isBlank()) {
            throw new IllegalArgumentException("the number of sheet \"" + title + "\" is blank");
        }
        return new Sheet(number, title);
    }

    /**
     * Says what the sheet is for.
     *
     * @param text in words
     */
    public void purpose(String text) {
        add(new Block.Purpose(words(text)));
    }

    /**
     * Begins a section; its number follows from the order of the sections.
     *
     * @param title what it deals with
     * @throws IllegalArgumentException when the title is blank
     */
    public void section(String title) {
        add(new Block.Section(1, words(title)));
    }

    /**
     * Begins a part of a section.
     *
     * @param title what it deals with
     * @throws IllegalArgumentException when the title is blank
     */
    public void subsection(String title) {
        add(new Block.Section(2, words(title)));
    }

    /**
     * Says something in prose.
     *
     * @param text in words, without markup; an empty line parts two paragraphs
     */
    public void note(String text) {
        add(new Block.Note(words(text)));
    }

    /**
     * Says who prepared the sheet.
     *
     * @param name who
     * @param date when, as year-month-day such as {@code 2026-11-20}
     * @throws IllegalArgumentException when the name is blank or the date none
     */
    public void preparedBy(String name, String date) {
        add(new Block.Signed(Role.PREPARED, words(name), date(date)));
    }

    /**
     * Says who checked the sheet.
     *
     * @param name who
     * @param date when, as year-month-day such as {@code 2026-11-20}
     * @throws IllegalArgumentException when the name is blank or the date none
     */
    public void checkedBy(String name, String date) {
        add(new Block.Signed(Role.CHECKED, words(name), date(date)));
    }

    /**
     * Says who approved the sheet.
     *
     * @param name who
     * @param date when, as year-month-day such as {@code 2026-11-20}
     * @throws IllegalArgumentException when the name is blank or the date none
     */
    public void approvedBy(String name, String date) {
        add(new Block.Signed(Role.APPROVED, words(name), date(date)));
    }

    /**
     * Comments on the sheet.
     *
     * @param by who comments
     * @param date when, as year-month-day such as {@code 2026-11-20}
     * @param text the comment in words
     * @throws IllegalArgumentException when the name is blank or the date none
     */
    public void comment(String by, String date, String text) {
        add(new Block.Comment(words(by), date(date), words(text)));
    }

    /**
     * Says what is taken to be so.
     *
     * @param text in words
     */
    public void assume(String text) {
        add(new Block.Assumption(words(text)));
    }

    /**
     * Says what can hurt someone or mislead.
     *
     * @param text in words
     */
    public void caution(String text) {
        add(new Block.Caution(words(text)));
    }

    /**
     * Takes a number from elsewhere, with its source.
     *
     * @param symbol such as {@code L}; no other quantity of the sheet may have it
     * @param value finite value in that unit
     * @param unit such as {@code m}; empty for plain numbers
     * @param note what it is, in words
     * @param source where it came from
     * @return the named quantity
     * @throws IllegalArgumentException when the symbol is taken, the unit not known, or the value
     *     not finite
     */
    public Quantity given(String symbol, double value, String unit, String note, Source source) {
        return register(Quantity.given(symbol, value, unit, note, source, this));
    }

    /**
     * Takes a row of numbers from elsewhere, with their common source.
     *
     * @param symbol symbol without an index; the quantities are called symbol_1, symbol_2, …
     * @param values at least one finite value in that unit
     * @param unit unit of every value
     * @param note what they are, in words
     * @param source where they came from
     * @return the named quantities, in order, as a vector to calculate with
     * @throws IllegalArgumentException when there is no value, a symbol is taken, the unit not known,
     *     or a value not finite
     */
    public QuantityVector series(
            String symbol, double[] values, String unit, String note, Source source) {
        if (values.length == 0) {
            throw new IllegalArgumentException("the series " + symbol + " has no values");
        }
        List<Quantity> quantities = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            String indexed = QuantityVector.indexed(symbol, i);
            quantities.add(Quantity.given(indexed, values[i], unit, note, source, this));
        }
        // All or none: a symbol claimed for a series that is then refused would stay taken.
        quantities.forEach(this::requireFree);
        quantities.forEach(this::claim);
        add(new Block.Series(symbol, note, source, quantities));
        return QuantityVector.of(quantities);
    }

    /**
     * Takes a result of another sheet of the package, from the record of its last run.
     *
     * <p>Records are looked for in the folder that the environment variable {@code
     * SKEWBACK_RECORDS} names, which the desk sets when it issues a package.
     *
     * @param number number of the other sheet
     * @param symbol symbol of the quantity there
     * @return the quantity, a given of this sheet
     * @throws IllegalArgumentException when there is no such record or symbol, or it is stale there
     */
    public Quantity take(String number, String symbol) {
        return take(RecordShelf.ofEnvironment(), number, symbol);
    }

    Quantity take(RecordShelf shelf, String number, String symbol) {
        RecordShelf.Kept kept = shelf.find(number);
        Quantity there = kept.quantity(symbol);
        Source source = Source.sheet(number, symbol + ", record " + kept.digest().substring(0, 12));
        String unit = there.unit().symbol();
        return register(Quantity.given(symbol, there.in(unit), unit, there.note(), source, this));
    }

    /**
     * Puts a name, a unit and a note on something worked out, and shows how.
     *
     * @param symbol such as {@code H}; no other quantity of the sheet may have it
     * @param result the quantity worked out
     * @param unit unit to show, of its dimension; empty for plain numbers
     * @param note what it is, in words
     * @return the named quantity, to go on with
     * @throws IllegalArgumentException when the symbol is taken, the unit has another dimension, or
     *     the result rests on a quantity of an earlier run of this sheet
     */
    public Quantity step(String symbol, Quantity result, String unit, String note) {
        refuseForeign(result);
        Quantity named = result.named(symbol, unit, note, this);
        claim(named);
        add(new Block.Step(named));
        return named;
    }

    /**
     * Starts a check.
     *
     * @param title what is required, in words
     * @param demand the quantity that must meet the requirement
     * @return the check, to be finished with {@code atMost}, {@code atLeast} or {@code between}
     */
    public CheckOf check(String title, Quantity demand) {
        refuseForeign(demand);
        Begun unfinished = new Begun(++tries, cell, title);
        begun.add(unfinished);
        return new CheckOf(
                title,
                demand,
                check -> {
                    check.limits().forEach(this::refuseForeign);
                    begun.removeIf(unfinished::isSettledWith);
                    add(new Block.Checked(check));
                });
    }

    /**
     * Shows a table, which is stale when a quantity in its columns or one that it rests on has
     * changed and it was not made anew.
     *
     * @param table the table
     * @param restsOn quantities behind its texts and plain numbers, besides those in its columns
     * @throws IllegalArgumentException when a quantity is of an earlier run of this sheet or of
     *     another sheet
     */
    public void table(Table table, Quantity... restsOn) {
        table(table, List.of(restsOn));
    }

    /**
     * Shows a table, which is stale when a quantity in its columns or one that it rests on has
     * changed and it was not made anew.
     *
     * @param table the table
     * @param restsOn quantities behind its texts and plain numbers, besides those in its columns
     * @throws IllegalArgumentException when a quantity is of an earlier run of this sheet or of
     *     another sheet
     */
    public void table(Table table, Collection<Quantity> restsOn) {
        Block.Tabulated tabulated = new Block.Tabulated(table, List.copyOf(restsOn));
        SheetRecord.quantities(tabulated).forEach(this::refuseForeign);
        add(tabulated);
    }

    /**
     * Shows a figure, which is stale when a quantity that it rests on has changed and it was not
     * drawn anew.
     *
     * @param figure the figure
     * @param restsOn quantities that it was drawn from; a picture cannot tell of itself
     * @throws IllegalArgumentException when a quantity is of an earlier run of this sheet or of
     *     another sheet
     */
    public void figure(Figure figure, Quantity... restsOn) {
        figure(figure, List.of(restsOn));
    }

    /**
     * Shows a figure, which is stale when a quantity that it rests on has changed and it was not
     * drawn anew.
     *
     * @param figure the figure
     * @param restsOn quantities that it was drawn from; a picture cannot tell of itself
     * @throws IllegalArgumentException when a quantity is of an earlier run of this sheet or of
     *     another sheet
     */
    public void figure(Figure figure, Collection<Quantity> restsOn) {
        List<Quantity> drawnFrom = List.copyOf(restsOn);
        drawnFrom.forEach(this::refuseForeign);
        add(
                new Block.Drawn(
                        figure.title(),
                        figure.description(),
                        figure.svg(),
                        drawnFrom,
                        figure.states().orElse(null)));
    }

    /**
     * Says what follows, and closes the sheet: shows the conclusion with the register of checks and
     * of numbers without a source, and hands the record to whoever issues the sheet.
     *
     * @param text in words
     * @return what to show
     * @throws IllegalStateException when a check was begun and never given a limit
     */
    public Part conclude(String text) {
        if (!begun.isEmpty()) {
            throw new IllegalStateException(
                    "check \""
                            + begun.get(0).title
                            + "\" has no limit yet; finish it with atMost, atLeast or between");
        }
        add(new Block.Conclusion(words(text)));
        return part(true);
    }

    /**
     * Shows what this cell added to the sheet, or, where nobody tells which cell runs, what was
     * added since the last time.
     *
     * @return what to show
     */
    public Part latest() {
        return part(false);
    }

    private Part part(boolean closes) {
        SheetRecord record = record();
        Set<String> fresh =
                said.stream()
                        .filter(one -> cell == null ? one.id > shown : cell.equals(one.cell))
                        .map(Said::name)
                        .collect(Collectors.toSet());
        shown = ids;
        return new Part(
                record,
                record.entries().stream().filter(entry -> fresh.contains(entry.id())).toList(),
                closes);
    }

    /**
     * Gives the sheet as it stands.
     *
     * @return its record
     */
    public SheetRecord record() {
        return new SheetRecord(number, title, Library.version(), entries());
    }

    @Override
    public void cellStarts(String starting) {
        cell = starting;
        begun.removeIf(one -> starting.equals(one.cell));
        insertAt = said.size();
        for (int i = said.size() - 1; i >= 0; i--) {
            if (starting.equals(said.get(i).cell)) {
                forget(said.remove(i).block);
                insertAt = i;
            }
        }
    }

    private Quantity register(Quantity quantity) {
        claim(quantity);
        add(new Block.Given(quantity));
        return quantity;
    }

    private void claim(Quantity quantity) {
        Lookalikes.refuse(String.valueOf(quantity.symbol()), current.keySet());
        requireFree(quantity);
        current.put(Objects.requireNonNull(quantity.symbol()), quantity);
    }

    private void requireFree(Quantity quantity) {
        String symbol = Objects.requireNonNull(quantity.symbol());
        Quantity earlier = current.get(symbol);
        if (earlier != null && (cell != null || !isShown(earlier))) {
            throw new IllegalArgumentException(
                    "symbol "
                            + symbol
                            + " already stands for \""
                            + earlier.note()
                            + "\" in this sheet; choose another, such as "
                            + (symbol.contains("_") ? symbol + ",2" : symbol + "_2")
                            + (cell != null
                                    ? ""
                                    : ", or run the sheet from its first cell to say it anew"));
        }
    }

    /** Whether a cell has shown it: then its cell has ended, and saying it again is a rerun. */
    private boolean isShown(Quantity quantity) {
        return said.stream()
                .filter(one -> one.id <= shown)
                .flatMap(one -> named(one.block).stream())
                .anyMatch(quantity::isSameNode);
    }

    private void forget(Block block) {
        for (Quantity quantity : named(block)) {
            String symbol = Objects.requireNonNull(quantity.symbol());
            Quantity standing = current.get(symbol);
            if (standing != null && standing.isSameNode(quantity)) {
                current.remove(symbol);
            }
        }
    }

    private static List<Quantity> named(Block block) {
        if (block instanceof Block.Given given) {
            return List.of(given.quantity());
        } else if (block instanceof Block.Series series) {
            return series.values();
        } else if (block instanceof Block.Step step) {
            return List.of(step.quantity());
        }
        return List.of();
    }

    private void add(Block block) {
        Said fresh = new Said(++ids, cell, block);
        if (cell != null) {
            said.add(insertAt++, fresh);
            return;
        }
        for (int i = 0; i < said.size(); i++) {
            if (replaces(block, said.get(i).block, said.get(i).id <= shown)) {
                forget(said.set(i, fresh).block);
                return;
            }
        }
        said.add(fresh);
    }

    /**
     * Where nobody tells which cell runs, what bears the same name takes the earlier one's place. Two
     * tables or figures of one title that were said before any was shown are of one cell, and both
     * stay.
     */
    private static boolean replaces(Block fresh, Block earlier, boolean wasShown) {
        if (fresh instanceof Block.Checked a && earlier instanceof Block.Checked b) {
            return isSameRequirement(a.check(), b.check());
        } else if (fresh instanceof Block.Tabulated a && earlier instanceof Block.Tabulated b) {
            return wasShown && a.table().title().equals(b.table().title());
        } else if (fresh instanceof Block.Drawn a && earlier instanceof Block.Drawn b) {
            return wasShown && a.title().equals(b.title());
        } else if (fresh instanceof Block.Conclusion && earlier instanceof Block.Conclusion) {
            return true;
        } else if (fresh instanceof Block.Signed a && earlier instanceof Block.Signed b) {
            return a.role() == b.role() && a.name().equals(b.name());
        }
        List<Quantity> freshNames = named(fresh);
        List<Quantity> earlierNames = named(earlier);
        boolean bothNamed = !freshNames.isEmpty() && !earlierNames.isEmpty();
        if (!bothNamed) {
            return fresh.equals(earlier);
        }
        return Objects.equals(freshNames.get(0).symbol(), earlierNames.get(0).symbol());
    }

    /** One title may stand over many requirements, none of which may get lost. */
    private static boolean isSameRequirement(Check fresh, Check earlier) {
        return fresh.title().equals(earlier.title())
                && fresh.relation().equals(earlier.relation())
                && formula(fresh.demand()).equals(formula(earlier.demand()))
                && fresh.limits().stream()
                        .map(Sheet::formula)
                        .toList()
                        .equals(earlier.limits().stream().map(Sheet::formula).toList());
    }

    private static Object formula(Quantity quantity) {
        String symbol = quantity.symbol();
        return symbol == null ? Formula.symbolic(quantity) : symbol;
    }

    private List<Entry> entries() {
        Staleness staleness = new Staleness();
        return said.stream().map(staleness::entry).toList();
    }

    /** Stale is what this sheet named and names no more, and whatever rests on it. */
    private final class Staleness {
        private final Set<Quantity> stale = Collections.newSetFromMap(new IdentityHashMap<>());
        private final Set<Quantity> replaced = Collections.newSetFromMap(new IdentityHashMap<>());

        Staleness() {
            List<Quantity> all =
                    said.stream().flatMap(one -> SheetRecord.quantities(one.block)).toList();
            for (Quantity node : Graph.ordered(all)) {
                boolean behind = node.operands().stream().anyMatch(stale::contains);
                if (behind || isReplaced(node)) {
                    stale.add(node);
                }
                // What was worked out of a change is a consequence of it and explains nothing.
                if (!behind && isReplaced(node)) {
                    replaced.add(node);
                }
            }
        }

        private boolean isReplaced(Quantity node) {
            Quantity standing = current.get(String.valueOf(node.symbol()));
            return node.owner() == Sheet.this && (standing == null || !standing.isSameNode(node));
        }

        Entry entry(Said one) {
            List<Quantity> own = SheetRecord.quantities(one.block).filter(stale::contains).toList();
            if (own.isEmpty()) {
                return Entry.fresh(one.name(), one.cell, one.block);
            }
            List<Change> changes =
                    Graph.ordered(own, stale::contains).stream()
                            .filter(replaced::contains)
                            .map(was -> new Change(was, current.get(String.valueOf(was.symbol()))))
                            .toList();
            return new Entry(one.name(), one.cell, one.block, true, changes);
        }
    }

    private static String words(String text) {
        if (text.length() > RecordWriter.LONGEST_TEXT) {
            throw new IllegalArgumentException(
                    "a text of "
                            + text.length()
                            + " characters; a sheet keeps texts of at most "
                            + RecordWriter.LONGEST_TEXT);
        }
        return text;
    }

    private static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" is no date; allowed are year-month-day such as 2026-11-20",
                    e);
        }
    }

    private void refuseForeign(Quantity quantity) {
        for (Quantity node : Graph.ordered(List.of(quantity))) {
            if (node.owner() instanceof Sheet other && other != this) {
                boolean sameTitle = other.title.equals(title) && other.number.equals(number);
                throw new IllegalArgumentException(
                        sameTitle
                                ? node
                                        + " belongs to an earlier run of this sheet; run again the"
                                        + " cell that defines "
                                        + node.symbol()
                                : node
                                        + " belongs to sheet \""
                                        + other.title
                                        + "\"; bring it in with take(number, symbol)");
            }
        }
    }

    @Override
    public Map<String, String> display() {
        SheetRecord record = record();
        return new Part(record, record.entries(), false).display();
    }

    @Override
    public String toString() {
        return (number.isEmpty() ? "" : number + " ") + title + ", " + said.size() + " blocks";
    }

    /** A check that has no limit yet. */
    private record Begun(int id, @Nullable String cell, String title) {

        /**
         * Settled are this one and, where nobody tells which cell runs, earlier tries of its title.
         */
        boolean isSettledWith(Begun other) {
            return other.id == id || (cell == null && other.cell == null && isEarlierTry(other));
        }

        private boolean isEarlierTry(Begun other) {
            return other.id < id && other.title.equals(title);
        }
    }

    /** A block as it was said; whether it is stale is asked each time. */
    private record Said(int id, @Nullable String cell, Block block) {
        String name() {
            return "b" + id;
        }
    }
}
