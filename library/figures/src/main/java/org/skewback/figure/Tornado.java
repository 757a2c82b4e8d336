package org.skewback.figure;

import java.util.List;
import org.skewback.quantity.Numerals;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Unit;
import org.skewback.sheet.Figure;
import org.skewback.study.Sensitivity;

/**
 * Draws what each given does to a result: a bar for each, the longest at the top, from the result
 * with less of it to the result with more.
 *
 * <p>The light part of a bar is a step less of the given, the dark part a step more; the step stands
 * beside its symbol.
 */
public final class Tornado {

    private static final double MM = BarPlot.MM;
    private static final double WIDTH = 165 * MM;
    private static final double PITCH = 7.5 * MM;
    private static final double BAR = 4.6 * MM;
    private static final double TOP = 9 * MM;
    private static final double EDGE = 4 * MM;
    private static final double GAP = 2.5 * MM;
    private static final double LEAST_PLOT = 60 * MM;
    private static final Ink LESS = Ink.LIGHT;
    private static final Ink MORE = Ink.BLUE;

    private Tornado() {}

    /**
     * Draws a study of sensitivity.
     *
     * @param title the figure's title, one line
     * @param study the study
     * @return the figure
     * @throws IllegalArgumentException if the title is blank, no given changes the result, or a
     *     symbol or unit has a character that the figure font lacks or leaves no room for the bars
     */
    public static Figure of(String title, Sensitivity study) {
        return new DrawnFigure(picture(title, study));
    }

    static Picture picture(String title, Sensitivity study) {
        Quantity result = study.result();
        Unit unit = result.unit();
        double present = unit.fromSi(result.si());
        double least = present;
        double most = present;
        double room = 0;
        for (Sensitivity.Effect effect : study.effects()) {
            for (Quantity end : List.of(effect.lower(), effect.higher())) {
                least = Math.min(least, unit.fromSi(end.si()));
                most = Math.max(most, unit.fromSi(end.si()));
            }
            room =
                    Math.max(
                            room,
                            BarPlot.width(Check.printable("name of the given", name(effect))));
        }
        if (!(most > least)) {
            throw new IllegalArgumentException(
                    "figure \""
                            + title
                            + "\": the bars reach from "
                            + least
                            + " to "
                            + most
                            + "; at least one given must change the result");
        }
        double left = EDGE + room + GAP;
        if (WIDTH - EDGE - left < LEAST_PLOT) {
            throw new IllegalArgumentException(
                    "figure \""
                            + title
                            + "\": the longest name of a given leaves "
                            + (WIDTH - EDGE - left) / MM
                            + " mm for the bars; there must be at least "
                            + LEAST_PLOT / MM);
        }
        double margin = 0.04 * (most - least);
        double bottom = TOP + PITCH * study.effects().size();
        String symbol = result.symbol() == null ? "result" : String.valueOf(result.symbol());
        BarPlot plot =
                new BarPlot(
                        new double[] {least - margin, most + margin},
                        left,
                        WIDTH - EDGE,
                        TOP - 1.5 * MM,
                        bottom,
                        unit.symbol().isEmpty() ? symbol : symbol + " (" + unit.symbol() + ")");
        legend(plot, left);
        for (int i = 0; i < study.effects().size(); i++) {
            Sensitivity.Effect effect = study.effects().get(i);
            double middle = TOP + PITCH * (i + 0.5);
            plot.words(name(effect), left - GAP, middle + 0.33 * Board.SMALL, Mark.Anchor.END);
            part(plot, present, unit.fromSi(effect.lower().si()), middle, LESS);
            part(plot, present, unit.fromSi(effect.higher().si()), middle, MORE);
        }
        plot.upright(present, TOP - 1.5 * MM, Pen.full(0.9, Ink.BLACK));
        return new Picture(
                title, description(study), WIDTH, BarPlot.pageBelow(bottom), plot.marks());
    }

    private static void part(BarPlot plot, double from, double to, double middle, Ink ink) {
        if (from != to) {
            plot.bar(from, to, middle - BAR / 2, middle + BAR / 2, ink);
        }
    }

    private static void legend(BarPlot plot, double left) {
        double y = 4.6 * MM;
        double x = left;
        for (Ink ink : List.of(LESS, MORE)) {
            String text = ink == LESS ? "with a step less" : "with a step more";
            double top = y - 2.4 * MM;
            plot.box(new double[] {x, top, x + 5 * MM, top, x + 5 * MM, y, x, y}, ink);
            plot.words(text, x + 6.5 * MM, y - 0.1 * MM, Mark.Anchor.START);
            x += 6.5 * MM + BarPlot.width(text) + 6 * MM;
        }
    }

    private static String name(Sensitivity.Effect effect) {
        Quantity given = effect.given();
        String symbol = given.symbol() == null ? "given" : String.valueOf(given.symbol());
        return symbol + " ± " + written(effect.step());
    }

    private static String written(Quantity quantity) {
        return amount(quantity.si(), quantity.unit());
    }

    static String amount(double si, Unit unit) {
        String number = Numerals.result(unit.fromSi(si));
        return unit.symbol().isEmpty() ? number : number + Numerals.BEFORE_UNIT + unit.symbol();
    }

    private static String description(Sensitivity study) {
        StringBuilder text = new StringBuilder();
        Unit unit = study.result().unit();
        text.append("Bars show how the result, now ")
                .append(amount(study.result().si(), unit))
                .append(", changes with each given.");
        for (Sensitivity.Effect effect : study.effects()) {
            text.append(' ')
                    .append(name(effect))
                    .append(": ")
                    .append(amount(effect.lower().si(), unit))
                    .append(" with less, ")
                    .append(amount(effect.higher().si(), unit))
                    .append(" with more.");
        }
        return text.toString();
    }
}
