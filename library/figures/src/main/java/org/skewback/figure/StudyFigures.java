package org.skewback.figure;

import java.util.ArrayList;
import java.util.List;
import org.skewback.sheet.Figure;
import org.skewback.study.Illustrator;
import org.skewback.study.Sensitivity;
import org.skewback.study.Simulation;

/**
 * Draws studies where they show themselves in a notebook: bars for a sensitivity, histogram and
 * convergence for a simulation.
 */
public final class StudyFigures implements Illustrator {

    /** Makes the illustrator. */
    public StudyFigures() {}

    @Override
    public List<Figure> draw(Object study) {
        List<Figure> figures = new ArrayList<>();
        if (study instanceof Sensitivity sensitivity) {
            draw(
                    figures,
                    () -> Tornado.of(title("Effect of each given", sensitivity), sensitivity));
        } else if (study instanceof Simulation simulation) {
            draw(figures, () -> SimulationFigures.histogram("How the results spread", simulation));
            if (simulation.convergence().size() > 1) {
                draw(
                        figures,
                        () ->
                                SimulationFigures.convergenceOfProbability(
                                        "How the probability settled", simulation));
            }
        }
        return figures;
    }

    private static String title(String what, Sensitivity study) {
        String symbol = study.result().symbol();
        return symbol == null ? what : what + " on " + symbol;
    }

    /** Makes one figure. */
    private interface Drawing {
        Figure figure();
    }

    /** A study shows its numbers also where they cannot be drawn, as when no given matters. */
    private static void draw(List<Figure> figures, Drawing drawing) {
        try {
            figures.add(drawing.figure());
        } catch (IllegalArgumentException e) {
            // The table beside it says the same.
        }
    }
}
