package org.skewback.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.skewback.quantity.Quantity;
import org.skewback.study.Histogram;
import org.skewback.study.Sensitivity;
import org.skewback.study.Simulation;

/** Figures of studies: bars are as long as the numbers say, and what cannot be drawn is named. */
class StudyFiguresTest {

    private static List<double[]> fills(Picture picture, Ink ink) {
        List<double[]> found = new ArrayList<>();
        for (Mark mark : picture.marks()) {
            if (mark instanceof Mark.Fill fill && fill.ink() == ink) {
                found.addAll(fill.polygons());
            }
        }
        return found;
    }

    @Test
    void theTornadoIsToScaleWithTheLongestOnTop() {
        Picture picture = Tornado.picture("Moment", Studies.sensitivity());
        // The first box of each colour is the legend's.
        List<double[]> more = fills(picture, Ink.BLUE);
        List<double[]> less = fills(picture, Ink.LIGHT);
        Sensitivity study = Studies.sensitivity();
        assertEquals(3, more.size());
        double present = Studies.MOMENT.si();
        double perUnit =
                (more.get(1)[2] - more.get(1)[0])
                        / (study.effects().get(0).higher().si() - present);
        for (int i = 0; i < 2; i++) {
            Sensitivity.Effect effect = study.effects().get(i);
            double[] bar = more.get(i + 1);
            assertEquals((effect.higher().si() - present) * perUnit, bar[2] - bar[0], 1e-6);
            double[] other = less.get(i + 1);
            assertEquals((effect.lower().si() - present) * perUnit, other[2] - other[0], 1e-6);
        }
        assertEquals("q", study.effects().get(0).given().symbol());
        assertTrue(more.get(1)[1] < more.get(2)[1], "the largest effect stands on top");
        assertTrue(picture.description().contains("q ± 2\u00A0kN/m"), picture.description());
    }

    @Test
    void classesAreAsHighAsTheirCounts() {
        Simulation simulation = Studies.simulation(20_000);
        Picture picture = SimulationFigures.histogramPicture("Moments", simulation);
        List<double[]> safe = fills(picture, Ink.STEEL);
        List<double[]> failing = fills(picture, Ink.RUST);
        Histogram classes = simulation.histogram();
        List<Long> filled = classes.counts().stream().filter(c -> c > 0).toList();
        List<double[]> bars = new ArrayList<>(safe);
        bars.addAll(failing);
        assertEquals(filled.size(), bars.size());
        double perSample = (bars.get(0)[5] - bars.get(0)[1]) / filled.get(0);
        for (int i = 0; i < bars.size(); i++) {
            assertEquals(filled.get(i) * perSample, bars.get(i)[5] - bars.get(i)[1], 1e-6);
        }
        long dark =
                filled.subList(safe.size(), filled.size()).stream()
                        .mapToLong(Long::longValue)
                        .sum();
        assertTrue(dark >= simulation.failures() - classes.above(), "all that fail are dark");
        assertTrue(failing.size() > 2 && safe.size() > 10);
    }

    @Test
    void anUncertainLimitIsNotDrawnAsALine() {
        Picture fixed = SimulationFigures.histogramPicture("a", Studies.simulation(20_000));
        Picture loose = SimulationFigures.histogramPicture("a", Studies.uncertainStrength());
        assertTrue(fixed.marks().toString().contains("limit 120"));
        assertTrue(!loose.marks().toString().contains("limit "));
        assertTrue(fills(loose, Ink.RUST).isEmpty());
    }

    @Test
    void whatCannotBeDrawnIsNamed() {
        IllegalArgumentException one =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> SimulationFigures.convergenceOfMean("Mean", Studies.simulation(100)));
        assertTrue(one.getMessage().contains("at least two reports"), one.getMessage());
        Quantity still = Studies.MOMENT.minus(Studies.MOMENT);
        Sensitivity nothing = Sensitivity.of(still, List.of(Studies.SPAN));
        IllegalArgumentException two =
                assertThrows(IllegalArgumentException.class, () -> Tornado.of("Nothing", nothing));
        assertTrue(two.getMessage().contains("must change the result"), two.getMessage());
    }

    /** Kept under target, for whoever wants to look at them. */
    @Test
    void figuresComeOutInBothFormats() throws Exception {
        Path folder = Path.of(System.getProperty("basedir", ".")).resolve("target/studies");
        Files.createDirectories(folder);
        Simulation simulation = Studies.simulation(200_000);
        for (var figure :
                List.of(
                        Tornado.of("Tornado", Studies.sensitivity()),
                        SimulationFigures.histogram("Histogram", simulation),
                        SimulationFigures.convergenceOfProbability("Probability", simulation),
                        SimulationFigures.convergenceOfMean("Mean", simulation))) {
            assertTrue(figure.svg().startsWith("<svg"));
            byte[] png = figure.png();
            assertTrue(png.length > 1000);
            Files.write(folder.resolve(figure.title() + ".png"), png);
        }
    }
}
