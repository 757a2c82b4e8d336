package org.skewback.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.skewback.numeric.NotConvergedException;
import org.skewback.steel.Section;

/** Proves that large displacements turn with the structure, and how the analysis refuses. */
class LargeDisplacementTest {

    private static final Material STEEL = new Material("m", 200e9, 80e9, 8000, 1.2e-5);
    private static final Section SECTION = Section.of("s", 0.02, 0.01, 0.012, 3e-6, 2e-6, 1e-6);

    private static Vector turned(Vector v, double angle) {
        return Turn.about(new Vector(1, 2, -2).times(angle / 3)).apply(v);
    }

    private static Vector tip(double angle) {
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node(new Node("B", turned(new Vector(4, 0, 0), angle)))
                        .node(new Node("C", turned(new Vector(4, 3, 0), angle)))
                        .add(
                                BeamColumn.of("ab", "A", "B", STEEL, SECTION)
                                        .oriented(new Orientation(turned(Vector.Z, angle), 0)))
                        .add(
                                BeamColumn.of("bc", "B", "C", STEEL, SECTION)
                                        .oriented(new Orientation(turned(Vector.Z, angle), 0)))
                        .fix("A")
                        .build();
        List<LargeState> path =
                LargeDisplacementAnalysis.of(model)
                        .load(
                                new LoadCase(
                                        "P",
                                        List.of(
                                                new NodalLoad(
                                                        "C",
                                                        turned(new Vector(5e3, 0, -1.5e4), angle),
                                                        Vector.ZERO))),
                                20);
        return turned(path.get(19).movement("C").translation(), -angle);
    }

    @Test
    void turningTheWholeLeavesTheMovementAlone() {
        Vector straight = tip(0);
        Vector turned = tip(1.1);
        assertTrue(straight.length() > 1, "it moves far: " + straight);
        assertEquals(0, straight.minus(turned).length(), 1e-6 * straight.length());
    }

    private static FrameModel shallow() {
        return FrameModel.builder()
                .inPlane()
                .node("A", -10, 0, 0)
                .node("B", 10, 0, 0)
                .node("C", 0, 0, 1)
                .add(Bar.of("ac", "A", "C", STEEL, SECTION))
                .add(Bar.of("bc", "B", "C", STEEL, SECTION))
                .pin("A")
                .pin("B")
                .hold("C", Motion.ALONG_X)
                .build();
    }

    @Test
    void aPathByArcLengthComesBackToNoLoadWhereTheBarsLieLevel() {
        List<LargeState> path =
                LargeDisplacementAnalysis.of(shallow())
                        .follow(LoadCase.of("P", NodalLoad.force("C", 0, 0, -1)), 0.02, 50);
        LargeState level = path.get(49);
        assertEquals(-1, level.movement("C").translation().z(), 1e-9);
        double peak = path.stream().mapToDouble(LargeState::factor).max().orElse(0);
        assertEquals(0, level.factor(), 1e-9 * peak);
    }

    @Test
    void aLineLoadIsRefused() {
        LoadCase load =
                LoadCase.of("w", LineLoad.uniform("ac", new Vector(0, 0, -1), LoadAxes.GLOBAL));
        LargeDisplacementAnalysis analysis = LargeDisplacementAnalysis.of(shallow());
        String message =
                assertThrows(IllegalArgumentException.class, () -> analysis.load(load, 1))
                        .getMessage();
        assertTrue(message.endsWith("allowed are forces and moments on nodes."), message);
    }

    @Test
    void aLoadThatCannotBeCarriedDoesNotConverge() {
        // Free to slide but for a spring far too weak for the load.
        FrameModel model =
                FrameModel.builder()
                        .inPlane()
                        .node("A", 0, 0, 0)
                        .node("B", 10, 0, 0)
                        .add(BeamColumn.of("m", "A", "B", STEEL, SECTION))
                        .hold("A", Motion.ALONG_Z, Motion.ALONG_X)
                        .spring("B", Motion.ALONG_Z, 1)
                        .build();
        LoadCase load = LoadCase.of("P", NodalLoad.force("B", -1e3, 0, 1));
        LargeDisplacementAnalysis analysis = LargeDisplacementAnalysis.of(model);
        assertThrows(NotConvergedException.class, () -> analysis.load(load, 1));
    }

    /** A cantilever under an end moment EI/R is an arc of radius R, at every point of it. */
    @Test
    void pointsBetweenNodesLieOnTheArc() {
        double radius = 10 / (Math.PI / 2);
        FrameModel model =
                FrameModel.builder()
                        .inPlane()
                        .node("A", 0, 0, 0)
                        .node("B", 10, 0, 0)
                        .add(BeamColumn.of("m", "A", "B", STEEL, SECTION))
                        .fix("A")
                        .build();
        double moment = 200e9 * SECTION.inertiaY() / radius;
        LoadCase load =
                LoadCase.of("M", new NodalLoad("B", Vector.ZERO, new Vector(0, -moment, 0)));
        int pieces = 20;
        LargeState state = LargeDisplacementAnalysis.of(model).divided(pieces).load(load, 6).get(5);
        // A piece's chord is taken as long as its arc, which is longer by a share of θ²/24.
        double piece = Math.PI / 2 / pieces;
        double tolerance = 10 * piece * piece / 24;
        for (double s : new double[] {0, 0.7, 3.3, 5, 8.81, 10}) {
            Vector place = state.place("m", s);
            assertEquals(radius * StrictMath.sin(s / radius), place.x(), tolerance);
            assertEquals(radius * (1 - StrictMath.cos(s / radius)), place.z(), tolerance);
        }
        Vector end = new Vector(10, 0, 0).plus(state.movement("B").translation());
        assertEquals(0, state.place("m", 10).minus(end).length(), 1e-9);
        String message =
                assertThrows(IllegalArgumentException.class, () -> state.place("m", 11))
                        .getMessage();
        assertTrue(message.startsWith("position in its piece of member m is "), message);
    }
}
