package org.skewback.train;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.skewback.data.CsvTable;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.ForceComponent;
import org.skewback.frame.FrameModel;
import org.skewback.frame.InfluenceLine;
import org.skewback.frame.Lane;
import org.skewback.frame.LinearAnalysis;
import org.skewback.frame.LoadTrain;
import org.skewback.frame.Material;
import org.skewback.frame.Motion;
import org.skewback.frame.Passage;
import org.skewback.frame.Response;
import org.skewback.frame.SectionProfile;
import org.skewback.frame.Vector;
import org.skewback.steel.Section;

class TrainLoadTest {

    private static final Map<String, TrainLoad> MODELS =
            TrainLoad.read(CsvTable.read(Path.of("../../shared/trains/load-models.csv")));
    private static final Map<String, TrainLoad> TRAINS =
            TrainLoad.read(CsvTable.read(Path.of("../../shared/ostrel-gorge/trains.csv")));

    /** A real train counts all its axles, one that helps too; cut into forces it is itself. */
    @Test
    void aRealTrainIsItsAxles() {
        TrainLoad freight = TRAINS.get("freight train");
        InfluenceLine line = moment(60, 12, 20);
        LoadTrain forces = freight.asForces(1, freight.length());
        Passage direct = freight.over(line, 0.5);
        Passage there = Passage.of(line, forces, 0.5);
        Passage back = Passage.of(line, forces.reversed(), 0.5);

        assertEquals(6 + 24 * 4, forces.axles().size());
        assertEquals(
                Math.max(there.largest(), back.largest()),
                direct.largest(),
                2e-3 * direct.largest());
        assertEquals(
                Math.min(there.smallest(), back.smallest()),
                direct.smallest(),
                2e-3 * -direct.smallest());
    }

    /** Where the influence line has one sign, the model cut into forces does what the model does. */
    @Test
    void cutIntoForcesTheModelDoesTheSame() {
        InfluenceLine line = moment(40, 20, 0);
        TrainLoad model = MODELS.get("load model 71");
        double whole = model.over(line, 0.1).largest();
        Passage cut = Passage.of(line, model.asForces(0.25, 45), 0.1);

        // Ahead of the first axle the forces have no line load: the lane's other end goes without.
        assertTrue(cut.largest() < whole);
        assertTrue(cut.largest() > 0.5 * whole);
        TrainLoad stretches = MODELS.get("SW/0");
        assertEquals(
                stretches.over(line, 0.1).largest(),
                Passage.of(line, stretches.asForces(0.1, 36), 0.1).largest(),
                1e-3 * stretches.over(line, 0.1).largest());
    }

    /** On a line with two signs, the model loads where it hurts and leaves out what helps. */
    @Test
    void lineLoadsStandWhereTheyHurt() {
        InfluenceLine line = moment(60, 12, 20);
        TrainLoad unloaded = MODELS.get("unloaded train");
        Passage passage = unloaded.over(line, 0.5);

        assertEquals(10e3 * line.positiveArea(), passage.largest(), 1);
        assertEquals(10e3 * line.negativeArea(), passage.smallest(), 1);
        assertTrue(passage.smallest() < 0);
    }

    @Test
    void badInputIsNamed() {
        assertRefused(
                () -> new TrainLoad("t", List.of(), List.of(), 0, 0, 0),
                "number of loads of train t is 0");
        assertRefused(
                () -> new TrainLoad.Stretch(5, 4, 1), "length of a stretch of line load is -1.0");
        assertRefused(() -> MODELS.get("SW/0").times(0), "factor of train SW/0 is 0.0");
        assertRefused(
                () -> MODELS.get("SW/0").asForces(1, 10), "length of train SW/0 is 10.0 m", "35.3");
        assertRefused(
                () -> MODELS.get("SW/0").over(moment(20, 10, 0), 0), "step of train SW/0 is 0.0");
        assertRefused(
                () ->
                        TrainLoad.read(
                                CsvTable.parse(
                                        "t",
                                        "train,part,from [m],to [m],force [kN],line"
                                                + " [kN/m]\na,wheel,0,0,1,0\n")),
                "wheel");
    }

    /** Moment at a section of a beam with a span and, beyond a support, an overhang. */
    static InfluenceLine moment(double span, double at, double overhang) {
        var builder =
                FrameModel.builder()
                        .node("a", 0, 0, 0)
                        .node("b", span, 0, 0)
                        .hold("a", Motion.ALONG_X, Motion.ALONG_Y, Motion.ALONG_Z, Motion.ABOUT_X)
                        .hold("b", Motion.ALONG_Y, Motion.ALONG_Z)
                        .add(beam("m", "a", "b"));
        List<String> members = List.of("m");
        if (overhang > 0) {
            builder.node("c", span + overhang, 0, 0).add(beam("o", "b", "c"));
            members = List.of("m", "o");
        }
        FrameModel model = builder.build();
        return InfluenceLine.of(
                LinearAnalysis.of(model),
                Response.force("m", at, ForceComponent.MOMENT_Y),
                Lane.along("track", model, members, Vector.ZERO));
    }

    private static BeamColumn beam(String name, String start, String end) {
        return BeamColumn.of(
                name,
                start,
                end,
                Material.steel(),
                SectionProfile.uniform(Section.slender("s", 0.1, 0.1, 0.1, 0.1)));
    }

    private static void assertRefused(Executable call, String... parts) {
        String message =
                String.valueOf(assertThrows(IllegalArgumentException.class, call).getMessage());
        for (String part : parts) {
            assertTrue(message.contains(part), message);
        }
    }
}
