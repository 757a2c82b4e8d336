package org.skewback.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.skewback.steel.Section;

/** Proves laws of buckling and vibration, and the messages for bad questions. */
class StabilityAndModesTest {

    private static final Material STEEL = new Material("m", 200e9, 80e9, 8000, 1.2e-5);
    private static final Section SECTION = Section.of("s", 0.02, 0.01, 0.012, 3e-4, 2e-4, 1e-4);

    /** Rotation about a slanting axis after E. Rodrigues. */
    private static Vector turned(Vector v, double angle) {
        Vector axis = new Vector(1, 2, -2).times(1 / 3.0);
        return v.times(Math.cos(angle))
                .plus(axis.cross(v).times(Math.sin(angle)))
                .plus(axis.times(axis.dot(v) * (1 - Math.cos(angle))));
    }

    /** A bent space frame with a rigid arm, a hinge and a bar, turned as a whole. */
    private static FrameModel bent(double angle) {
        Vector[] places = {
            Vector.ZERO,
            new Vector(0, 0, 4),
            new Vector(5, 1, 4.5),
            new Vector(9, 3, 0),
            new Vector(5, -4, 0)
        };
        Vector[] upward = {new Vector(1, 0, 0), new Vector(0, 0, 1), new Vector(0, 1, 0)};
        FrameModelBuilder builder = FrameModel.builder();
        for (int i = 0; i < places.length; i++) {
            builder.node(new Node("" + i, turned(places[i], angle)));
        }
        for (int i = 0; i < 3; i++) {
            BeamColumn member =
                    BeamColumn.of("m" + i, "" + i, "" + (i + 1), STEEL, SECTION)
                            .oriented(new Orientation(turned(upward[i], angle), 0.2));
            if (i == 1) {
                member =
                        member.offset(turned(new Vector(0.2, 0, 0.3), angle), Vector.ZERO)
                                .connected(
                                        EndConnection.RIGID,
                                        EndConnection.RIGID.released(Motion.ABOUT_Y));
            }
            builder.add(member);
        }
        builder.add(Bar.of("tie", "2", "4", STEEL, SECTION));
        for (Vector axis : List.of(Vector.X, Vector.Y, Vector.Z)) {
            Vector direction = turned(axis, angle);
            builder.support(Support.along("0", direction));
            builder.support(Support.about("0", direction));
            builder.support(Support.along("3", direction));
            builder.support(Support.along("4", direction));
        }
        builder.support(Support.about("3", turned(Vector.X, angle)));
        return builder.build();
    }

    private static LoadCase load(double angle) {
        return LoadCase.of(
                "P",
                new NodalLoad("1", turned(new Vector(1e5, 3e4, -4e6), angle), Vector.ZERO),
                new NodalLoad("2", turned(new Vector(2e5, -1e5, -2e6), angle), Vector.ZERO),
                LineLoad.uniform("m1", turned(new Vector(0, 0, -1e5), angle), LoadAxes.GLOBAL));
    }

    @Property(tries = 10)
    void turningTheWholeLeavesFactorsAndFrequenciesAlone(
            @ForAll @DoubleRange(min = 0.1, max = 3) double angle) {
        List<BucklingMode> straight = BucklingAnalysis.of(bent(0)).factors(load(0), 3).modes();
        List<BucklingMode> turned =
                BucklingAnalysis.of(bent(angle)).factors(load(angle), 3).modes();
        Modes modes = ModalAnalysis.of(bent(0)).modes(4);
        Modes others = ModalAnalysis.of(bent(angle)).modes(4);
        for (int k = 0; k < 3; k++) {
            double factor = straight.get(k).factor();
            assertEquals(factor, turned.get(k).factor(), 1e-8 * factor);
            double frequency = modes.get(k).frequency();
            assertEquals(frequency, others.get(k).frequency(), 1e-8 * frequency);
        }
    }

    @Test
    void dividingAMemberByHandIsDividingIt() {
        FrameModel whole = bent(0);
        double factor =
                BucklingAnalysis.of(whole).divided(4).factors(load(0), 1).governing().factor();
        double finer =
                BucklingAnalysis.of(whole).divided(8).factors(load(0), 1).governing().factor();
        double finest =
                BucklingAnalysis.of(whole).divided(16).factors(load(0), 1).governing().factor();
        assertTrue(factor >= finer && finer >= finest, factor + " " + finer + " " + finest);
        // Shear and twist make it second order: each halving takes a quarter of the error.
        assertEquals(4, (factor - finer) / (finer - finest), 1.5);
    }

    @Test
    void aFactorFallsByThePermanentShareOfTheSameLoad() {
        BucklingAnalysis analysis = BucklingAnalysis.of(bent(0));
        LoadCase all = load(0);
        double alone = analysis.factors(all, 1).governing().factor();
        double beside = analysis.factors(all, all, 1).governing().factor();
        assertEquals(alone - 1, beside, 1e-7 * alone);
    }

    @Test
    void countsAreTakenJustAboveTheLast() {
        Modes modes = ModalAnalysis.of(Bridges.arch(6)).divided(2).modes(5);
        double last = modes.get(4).circularFrequency() / (2 * StrictMath.PI);
        assertEquals(last * (1 + 0.5e-6), modes.checkedTo(), 1e-8 * last);
        Buckling buckling =
                BucklingAnalysis.of(Bridges.arch(6))
                        .divided(2)
                        .factors(LoadCase.of("g", SelfWeight.standard()), 3);
        double factor = buckling.modes().get(2).factor();
        assertEquals(factor * (1 + 1e-6), buckling.checkedTo(), 1e-8 * factor);
    }

    @Test
    void tensionOnlyStiffens() {
        FrameModel model = column();
        Buckling buckling =
                BucklingAnalysis.of(model)
                        .factors(LoadCase.of("pull", NodalLoad.force("B", 0, 0, 1)), 2);
        assertTrue(buckling.modes().isEmpty());
        String message =
                assertThrows(IllegalStateException.class, buckling::governing).getMessage();
        assertEquals("load pull cannot make the structure buckle: it only stiffens.", message);
    }

    private static FrameModel column() {
        return FrameModel.builder()
                .node("A", 0, 0, 0)
                .node("B", 0, 0, 10)
                .add(BeamColumn.of("m", "A", "B", STEEL, SECTION))
                .fix("A")
                .build();
    }

    @Test
    void aPermanentLoadBeyondBucklingIsRefused() {
        LoadCase heavy = LoadCase.of("heavy", NodalLoad.force("B", 0, 0, -1e9));
        LoadCase light = LoadCase.of("light", NodalLoad.force("B", 0, 0, -1));
        String message =
                assertThrows(
                                IllegalArgumentException.class,
                                () -> BucklingAnalysis.of(column()).factors(heavy, light, 1))
                        .getMessage();
        assertTrue(message.startsWith("the structure buckles under heavy"), message);
    }

    @Test
    void theTableTellsFactorDirectionMemberAndLoad() {
        String text =
                BucklingAnalysis.of(column())
                        .factors(LoadCase.of("P", NodalLoad.force("B", 0, 0, -1e6)), 1)
                        .toString();
        assertTrue(text.contains("along y") || text.contains("along x"), text);
        assertTrue(text.contains("member m with 100 % of the energy"), text);
        assertTrue(text.contains("loads keep their direction"), text);
    }

    @Test
    void theShapeOfACantileverIsThatOfTheCosine() {
        BucklingMode mode =
                BucklingAnalysis.of(column())
                        .divided(16)
                        .factors(LoadCase.of("P", NodalLoad.force("B", 0, 0, -1e6)), 1)
                        .governing();
        assertEquals(1, mode.shape().movement("B").translation().length(), 1e-12);
        double at = mode.shape().along("m", 4).translation().length();
        // Shear flexibility leaves the shape of a pinned or free column as it is.
        assertEquals(1 - Math.cos(0.4 * Math.PI / 2), at, 2e-3);
    }

    @Test
    void effectiveMassesOfAllModesAddUpToWhatCanMove() {
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 3, 0, 0)
                        .add(
                                BeamColumn.of(
                                        "m",
                                        "A",
                                        "B",
                                        new Material("m", 200e9, 80e9, 0, 0),
                                        SECTION))
                        .fix("A")
                        .build();
        Modes modes =
                ModalAnalysis.of(model)
                        .with(NodalMass.of("A", 300), new NodalMass("B", 700, new Vector(5, 6, 7)))
                        .modes(6);
        assertEquals(1000, modes.totalMass(), 1e-9);
        for (Motion axis : List.of(Motion.ALONG_X, Motion.ALONG_Y, Motion.ALONG_Z)) {
            assertEquals(0.7, modes.massShare(axis), 1e-9);
        }
    }

    @Test
    void inertiaWhereNothingResistsTurningIsRefused() {
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 1, 0, 0)
                        .add(Bar.of("b", "A", "B", STEEL, SECTION))
                        .pin("A")
                        .hold("B", Motion.ALONG_Y, Motion.ALONG_Z)
                        .build();
        ModalAnalysis analysis =
                ModalAnalysis.of(model).with(new NodalMass("B", 1, new Vector(0, 2, 0)));
        String message =
                assertThrows(IllegalArgumentException.class, () -> analysis.modes(1)).getMessage();
        assertEquals(
                "moment of inertia at node B is 2.0 kg·m²; allowed is 0, as nothing there resists"
                        + " turning.",
                message);
    }
}
