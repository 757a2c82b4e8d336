package org.skewback.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.skewback.quantity.Quantity;
import org.skewback.study.Sensitivities;
import org.skewback.study.Sensitivity;

/** Where figures are installed, a study shows its table, its figures and a text that says the same. */
class StudyDisplayTest {

    private static int images(String html) {
        return html.split("<img ", -1).length - 1;
    }

    @Test
    void aSensitivityShowsTableAndBars() {
        Map<String, String> shown = Studies.sensitivity().display();
        String html = shown.getOrDefault("text/html", "");
        assertEquals(1, images(html));
        assertTrue(html.contains("<table>"), html);
        assertTrue(shown.getOrDefault("text/plain", "").contains("change per 1 % more"));
    }

    @Test
    void aSimulationShowsHistogramAndConvergence() {
        Map<String, String> shown = Studies.simulation(20_000).display();
        assertEquals(2, images(shown.getOrDefault("text/html", "")));
        String text = shown.getOrDefault("text/plain", "");
        assertTrue(text.contains("Caution: ") && text.contains("probability of failure"), text);
        assertEquals(1, images(Studies.simulation(100).display().getOrDefault("text/html", "")));
    }

    @Test
    void severalResultsShowOneTableAndBarsForEach() {
        Quantity shear = Studies.LOAD.times(Studies.SPAN).over(2).named("V_Ed", "kN", "shear");
        Sensitivities both =
                Sensitivities.of(
                        List.of(Studies.MOMENT, shear), List.of(Studies.LOAD, Studies.SPAN));
        String html = both.display().getOrDefault("text/html", "");
        assertEquals(2, images(html));
        assertEquals(1, html.split("<table>", -1).length - 1);
    }

    @Test
    void aStudyOfWhatDoesNotMatterShowsItsNumbersAlone() {
        Quantity zero = Studies.LOAD.times(Quantity.of(0)).named("Z", "kN/m", "nothing");
        Sensitivity study = Sensitivity.of(zero, List.of(Studies.LOAD));
        assertEquals(0, images(study.display().getOrDefault("text/html", "")));
    }

    @Test
    void aSubscriptIsLoweredAndSmaller() {
        assertEquals(
                List.of(new Run("M", false), new Run("Ed", true), new Run(" (kN·m)", false)),
                Run.of("M_Ed (kN·m)"));
        assertEquals(List.of(new Run("f", false), new Run("ck,0", true)), Run.of("f_ck,0"));
        assertEquals(
                List.of(
                        new Run("q", false),
                        new Run("k", true),
                        new Run(", G", false),
                        new Run("1", true),
                        new Run(".", false)),
                Run.of("q_k, G_1."));
        for (String plain : List.of("", "a load", "_x", "a__b", "mean 3.4", "1_2", "x_")) {
            assertEquals(List.of(new Run(plain, false)), Run.of(plain));
        }
        String svg = Tornado.of("Effect", Studies.sensitivity()).svg();
        assertTrue(
                svg.contains(
                        "M<tspan dy=\"1.28\" font-size=\"5.76\">Ed</tspan>"
                                + "<tspan dy=\"-1.28\"> (kN·m)</tspan>"),
                svg);
        assertFalse(svg.replaceAll("(?s)<(title|desc).*?</\\1>", "").contains("M_Ed"), svg);
        assertTrue(TextFace.REGULAR.width("M_Ed") < TextFace.REGULAR.width("MEd"));
    }
}
