package org.skewback.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.skewback.display.Displayable;
import org.skewback.quantity.Quantity;
import org.skewback.sheet.Check;

/** Studies show themselves as HTML and as text; long ones say how far they are. */
class StudyDisplayTest {

    private final PlaneSlide slide = new PlaneSlide();
    private final Quantity factor = slide.factor().named("F_s", "", "factor of safety");
    private final Check check =
            new Check("sliding <b>&</b> \"more\"", factor, Quantity.of(1), null);
    private final Reliability study = Reliability.of(check, slide.wet());

    private List<Displayable> all() {
        List<Displayable> all = new ArrayList<>();
        all.add(Sensitivity.of(factor, slide.wet()));
        all.add(
                Sensitivities.of(
                        List.of(factor, slide.cohesion.times(2)),
                        List.of(slide.cohesion, slide.water),
                        slide.wet()));
        all.add(
                WhatIf.of(List.of(factor), List.of(check))
                        .change(slide.water, Quantity.of(4, "m")));
        all.add(
                SolveFor.utilisation(
                        check, 0.9, slide.water, Quantity.of(0, "m"), Quantity.of(4.3, "m")));
        all.add(study.firstOrderSecondMoment());
        all.add(study.designPoint());
        all.add(study.simulate(Sampling.of(5000)));
        return all;
    }

    @Test
    void eachShowsATableAndATextWithoutMarkupOfItsAuthor() {
        for (Displayable one : all()) {
            Map<String, String> shown = one.display();
            String html = shown.getOrDefault("text/html", "");
            assertEquals(1, html.split("<table>", -1).length - 1, html);
            assertFalse(html.contains("<b>&</b>"), html);
            String text = shown.getOrDefault("text/plain", "");
            assertTrue(text.lines().count() > 2, text);
            assertFalse(text.contains("<table") || text.contains("&lt;"), text);
        }
    }

    @Test
    void symbolsOfGivensHaveTheirSubscriptsLowered() {
        String html = study.designPoint().display().getOrDefault("text/html", "");
        assertTrue(html.contains("<td><i>z</i><sub>w</sub></td>"), html);
    }

    @Test
    void symbolsInTitlesAndHeadingsHaveTheirSubscriptsLowered() {
        String one = Sensitivity.of(factor, slide.wet()).display().getOrDefault("text/html", "");
        assertTrue(one.contains("<b>Sensitivity of <i>F</i><sub>s</sub></b>"), one);
        String several =
                Sensitivities.of(List.of(factor), List.of(slide.cohesion), slide.wet())
                        .display()
                        .getOrDefault("text/html", "");
        assertTrue(several.contains("<i>F</i><sub>s</sub>, change per"), several);
    }

    @Test
    void aTableThatIsCalledAsItsStudyIsNotCalledTwice() {
        Map<String, String> shown =
                WhatIf.of(List.of(factor), List.of(check))
                        .change(slide.water, Quantity.of(4, "m"))
                        .display();
        for (String form : shown.values()) {
            assertEquals(2, form.split("What if", -1).length, form);
        }
    }

    @Test
    void severalResultsStandSideBySide() {
        Quantity twice = slide.cohesion.times(2).named("c_2", "kPa", "");
        Sensitivities both =
                Sensitivities.of(
                        List.of(factor, twice), List.of(slide.cohesion, slide.water), slide.wet());
        assertEquals(
                List.of(
                        "given",
                        "value",
                        "F_s, change per 1 % more",
                        "F_s, change per standard deviation",
                        "c_2, change per 1 % more",
                        "c_2, change per standard deviation"),
                both.table().columns().stream().map(column -> column.heading()).toList());
        assertEquals("–", both.table().columns().get(4).texts().get(1), "no water in 2 c");
        assertThrows(
                IllegalArgumentException.class,
                () -> Sensitivities.of(List.of(twice), List.of(slide.water)));
        assertThrows(
                IllegalArgumentException.class,
                () -> Sensitivities.of(List.of(), List.of(slide.water)));
    }

    @Test
    void probabilitiesSayWhatTheyDoNotHold() {
        for (Displayable one :
                List.of(
                        study.firstOrderSecondMoment(),
                        study.designPoint(),
                        study.simulate(Sampling.of(5000)))) {
            String text = one.display().getOrDefault("text/plain", "");
            assertTrue(text.contains("Caution: ") && text.contains("licensed engineer"), text);
        }
    }

    @Test
    void progressIsWrittenOverOnOneLine() {
        StringBuilder out = new StringBuilder();
        study.simulate(Sampling.of(100_000), ProgressLine.on(out));
        String text = out.toString();
        assertTrue(text.startsWith("\r") && text.endsWith("\n"), text);
        String[] reports = text.split("\r", -1);
        assertTrue(reports.length > 10 && reports.length < 203, () -> "" + reports.length);
        assertTrue(reports[reports.length - 1].startsWith("100 %"), text);
        assertEquals(text.length() - 1, text.indexOf('\n'), "one line feed, at the end");
    }

    @Test
    void anInterruptEndsASimulationBetweenBlocks() {
        int[] reports = {0};
        assertThrows(
                CancellationException.class,
                () ->
                        study.simulate(
                                Sampling.of(1_000_000).on(2),
                                progress -> {
                                    reports[0]++;
                                    Thread.currentThread().interrupt();
                                }));
        assertTrue(Thread.interrupted(), "the interrupt is left for who asked");
        assertEquals(1, reports[0]);
    }
}
