package org.skewback.study;

import java.util.List;
import org.skewback.sheet.Figure;

/**
 * Draws studies. The studies themselves need nothing that can draw; where an illustrator is
 * installed as a service, they show its figures beside their numbers.
 */
public interface Illustrator {

    /**
     * Draws a study.
     *
     * @param study such as a {@link Sensitivity} or a {@link Simulation}
     * @return figures to show below its numbers; empty where there is nothing to draw
     */
    List<Figure> draw(Object study);
}
