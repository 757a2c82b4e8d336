package org.skewback.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.skewback.form.FunicularRoutine;
import org.skewback.quantity.InterpolationTable;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routines;
import org.skewback.quantity.Source;

/** Sheets that say anything in any order, in any words, with numbers of every kind. */
final class RandomSheet {

    private static final String[] WORDS = {
        "load of the deck", "<b>bold</b> & \"quoted\"", "Maßstab 1:50", "\u0000\u0007",
                "ω ≥ 3 \uD83D\uDE00",
        "$x_1$ | *a*", "line\nline\n\n1. line", "\\frac{a}{b}", "'; drop", "\u202Eright to left"
    };

    private static final InterpolationTable TABLE =
            new InterpolationTable(
                    "k",
                    "a factor",
                    InterpolationTable.Axis.linear("", -1, 0.5, 1),
                    InterpolationTable.Axis.linear("", 1, 1.5, 4),
                    Source.book("a book", "table 3"));

    private final Random random;
    private final Sheet sheet;
    private final List<Quantity> lengths = new ArrayList<>();
    private int named;

    private RandomSheet(long seed) {
        random = new Random(seed);
        sheet =
                random.nextBoolean()
                        ? Sheet.numbered("0" + random.nextInt(10), words())
                        : Sheet.titled(words());
        lengths.add(length());
    }

    static Sheet of(long seed, int blocks) {
        RandomSheet random = new RandomSheet(seed);
        for (int i = 0; i < blocks; i++) {
            if (random.random.nextInt(6) == 0) {
                // Now and then a cell runs again, and what rested on it is stale.
                random.sheet.cellStarts("cell " + (random.random.nextInt(3) == 0 ? i / 2 : i));
            }
            random.say();
        }
        return random.sheet;
    }

    private String words() {
        return "On " + WORDS[random.nextInt(WORDS.length)];
    }

    private String name() {
        return "x_" + ++named;
    }

    private Source source() {
        Source.Kind[] kinds = Source.Kind.values();
        return new Source(
                kinds[random.nextInt(kinds.length)], words(), random.nextBoolean() ? words() : "");
    }

    private Quantity length() {
        double value = (1 + random.nextInt(999_999)) / (double) (1 + random.nextInt(9999));
        return sheet.given(name(), value, random.nextBoolean() ? "m" : "mm", words(), source());
    }

    private Quantity any() {
        return lengths.get(random.nextInt(lengths.size()));
    }

    private Quantity result() {
        Quantity a = any();
        Quantity b = any();
        return switch (random.nextInt(9)) {
            case 0 -> a.plus(b);
            case 1 -> a.squared().over(b.abs().plus(a.abs()));
            case 2 -> Quantity.max(a, b).times(1 + random.nextInt(5));
            case 3 -> Quantity.sum(List.of(a, b, a));
            case 4 -> a.times(b).abs().root();
            case 5 -> Quantity.choose(a.moreThan(b), () -> a, () -> b.times(2));
            case 6 -> a.times(a.over(b).tanh().plus(1.5).ln());
            case 7 -> a.times(a.over(b).tanh().interpolated(TABLE));
            default -> funicular();
        };
    }

    private Quantity funicular() {
        Quantity span = Quantity.of(100 + random.nextInt(300), "m");
        Quantity load = Quantity.of(1 + random.nextInt(900), "kN");
        FunicularRoutine.Input input =
                FunicularRoutine.Input.ofPointLoads(
                        List.of(span.over(4), span.times(0.6)),
                        List.of(load, load.times(2)),
                        span,
                        span.over(2),
                        span.over(5));
        FunicularRoutine.Output line = Routines.call(new FunicularRoutine(), input);
        return random.nextBoolean() ? line.length() : line.ordinates().get(random.nextInt(2));
    }

    private void say() {
        String date = "2026-1" + random.nextInt(3) + "-1" + random.nextInt(10);
        switch (random.nextInt(18)) {
            case 0 -> sheet.purpose(words());
            case 1 -> sheet.assume(words());
            case 2 -> sheet.caution(words());
            case 3 -> sheet.note(words());
            case 4 -> sheet.section(words());
            case 5 -> sheet.subsection(words());
            case 6 -> sheet.preparedBy(words(), date);
            case 7 -> sheet.checkedBy(words(), date);
            case 8 -> sheet.approvedBy(words(), date);
            case 9 -> sheet.comment(words(), date, words());
            case 10 -> lengths.add(length());
            case 11 ->
                    lengths.addAll(
                            sheet.series(
                                    name(),
                                    new double[] {1.5, 1e-30, 1.5e23},
                                    "m",
                                    words(),
                                    source()));
            case 12 -> table();
            case 13 -> check();
            case 14 -> sheet.conclude(words());
            case 15 -> figure();
            default ->
                    lengths.add(
                            sheet.step(
                                    name(), result(), random.nextBoolean() ? "m" : "km", words()));
        }
    }

    private void table() {
        List<Quantity> values = List.of(any(), any(), any());
        sheet.table(
                Table.of(
                        words(),
                        Column.texts(words(), List.of(words(), "", words())),
                        Column.of(words(), "m", values),
                        Column.of(words(), "mm", values, random.nextInt(4)),
                        Column.of(
                                words(),
                                "km",
                                values,
                                Precision.significant(1 + random.nextInt(15)))),
                random.nextBoolean() ? List.of() : List.of(any(), result()));
    }

    private void figure() {
        String title = words();
        Figure picture =
                new Figure() {
                    @Override
                    public String title() {
                        return title;
                    }

                    @Override
                    public String description() {
                        return title;
                    }

                    @Override
                    public String svg() {
                        return "<svg xmlns=\"http://www.w3.org/2000/svg\"/>";
                    }

                    @Override
                    public byte[] png() {
                        return new byte[0];
                    }

                    @Override
                    public Optional<FigureStates> states() {
                        return title.length() % 2 == 0
                                ? Optional.empty()
                                : Optional.of(
                                        new FigureStates(
                                                title,
                                                1,
                                                List.of(1, 0),
                                                List.of(
                                                        state(-1.5, "kN", "<other/>"),
                                                        state(1e-7, "", svg()))));
                    }

                    private FigureStates.State state(double value, String unit, String svg) {
                        return new FigureStates.State(
                                value, unit, value + " " + unit, "at " + value, svg);
                    }
                };
        sheet.figure(picture, random.nextBoolean() ? List.of() : List.of(any(), result()));
    }

    private void check() {
        CheckOf check = sheet.check(words(), any());
        switch (random.nextInt(3)) {
            case 0 -> check.atMost(any());
            case 1 -> check.atLeast(Quantity.of(3, "m"));
            default ->
                    check.between(Quantity.of(-2, "m"), Quantity.of(1 + random.nextInt(99), "m"));
        }
    }
}
