package org.skewback.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Proves what must hold of responses to spectra, whatever the structure. */
class SpectrumAnalysisTest {

    private static final DesignSpectrum FLAT = period -> 2;

    private static final Modes MODES = ModalAnalysis.of(Bridges.arch(6)).divided(2).modes(12);

    @Test
    void theBaseForceOfAModeIsItsEffectiveMassTimesItsAcceleration() {
        Modes one = ModalAnalysis.of(Bridges.arch(6)).divided(2).modes(1);
        for (Motion axis : new Motion[] {Motion.ALONG_X, Motion.ALONG_Y, Motion.ALONG_Z}) {
            SpectrumResponse response = SpectrumAnalysis.of(one).under(Map.of(axis, FLAT));
            double[] base = {
                response.baseForce().x(), response.baseForce().y(), response.baseForce().z()
            };
            // Reactions are summed from the forces of members: another way than the participation.
            assertEquals(
                    2 * one.get(0).effectiveMass(axis), base[axis.index()], 1e-6 * one.totalMass());
            assertEquals(
                    2 * one.get(0).effectiveMass(axis),
                    response.modalBaseForces(axis)[0],
                    1e-9 * one.totalMass());
        }
    }

    @Test
    void withMissingMassAStiffStructureTakesAllItsMassAlong() {
        // Forces of modes at rest with each other, as where all correlate: the sum is the whole
        // mass.
        SpectrumResponse response =
                SpectrumAnalysis.of(MODES).withMissingMass().under(Map.of(Motion.ALONG_Y, FLAT));
        double modal = 0;
        for (double force : response.modalBaseForces(Motion.ALONG_Y)) {
            modal += force;
        }
        assertEquals(
                2 * MODES.totalMass(),
                modal + 2 * response.missingMass(Motion.ALONG_Y),
                1e-9 * modal);
        SpectrumResponse without = SpectrumAnalysis.of(MODES).under(Map.of(Motion.ALONG_Y, FLAT));
        double rest =
                Math.sqrt(
                        Math.pow(response.baseForce().y(), 2)
                                - Math.pow(without.baseForce().y(), 2));
        assertEquals(2 * response.missingMass(Motion.ALONG_Y), rest, 1e-6 * rest);
    }

    @Property(tries = 30)
    void correlationIsSymmetricAndAtMostOne(
            @ForAll @DoubleRange(min = 0.1, max = 50) double a,
            @ForAll @DoubleRange(min = 0.1, max = 50) double b,
            @ForAll @DoubleRange(min = 0.01, max = 0.3) double x,
            @ForAll @DoubleRange(min = 0.01, max = 0.3) double y) {
        double rho = ModalRule.correlation(a, x, b, y);
        assertEquals(rho, ModalRule.correlation(b, y, a, x), 1e-12);
        assertTrue(rho > 0 && rho <= 1 + 1e-12);
        assertEquals(1, ModalRule.correlation(a, x, a, x), 1e-12);
    }

    @Test
    void rulesLieInTheirOrder() {
        SpectrumAnalysis analysis = SpectrumAnalysis.of(MODES);
        Map<Motion, DesignSpectrum> all =
                Map.of(Motion.ALONG_X, FLAT, Motion.ALONG_Y, FLAT, Motion.ALONG_Z, FLAT);
        double moment = analysis.under(all).forces("rib0.1", 0).momentY();
        double sizes =
                analysis.combinedBy(ModalRule.SUM_OF_SIZES)
                        .under(all)
                        .forces("rib0.1", 0)
                        .momentY();
        double thirty =
                analysis.directionsBy(DirectionRule.THIRTY_PERCENT)
                        .under(all)
                        .forces("rib0.1", 0)
                        .momentY();
        assertTrue(moment > 0 && moment < sizes, moment + " " + sizes);
        // max + 0.3 of the others lies between 0.95 and 1.15 of the root of the sum of squares of
        // three.
        assertEquals(1.0, thirty / moment, 0.16);
    }

    private static void requireNoJump(
            SpectrumResponse response, int mode, Motion axis, String member, double place) {
        SectionForces before = response.modalForces(mode, axis, member, place - 1e-9);
        SectionForces after = response.modalForces(mode, axis, member, place);
        for (ForceComponent component : ForceComponent.values()) {
            double force = after.get(component);
            // Where there is next to nothing, solving leaves more than the jump allowed.
            double allowed = 1e-6 * Math.abs(force) + 1e-2;
            assertEquals(before.get(component), force, allowed, member + " " + component);
        }
    }

    @Test
    void theOrderOfChoicesIsIndifferent() {
        Map<Motion, DesignSpectrum> ground = Map.of(Motion.ALONG_X, FLAT, Motion.ALONG_Y, FLAT);
        SpectrumResponse one =
                SpectrumAnalysis.of(MODES)
                        .damped(0.3)
                        .directionsBy(DirectionRule.THIRTY_PERCENT)
                        .under(ground);
        SpectrumResponse other =
                SpectrumAnalysis.of(MODES)
                        .directionsBy(DirectionRule.THIRTY_PERCENT)
                        .damped(0.3)
                        .under(ground);
        assertEquals(one.baseForce(), other.baseForce());
        assertEquals(one.forces("rib0.2", 3), other.forces("rib0.2", 3));
    }

    @Test
    void whatAModeDoesToAMemberIsContinuousAndInEquilibriumAtNodes() {
        SpectrumResponse response = SpectrumAnalysis.of(MODES).under(Map.of(Motion.ALONG_Y, FLAT));
        for (Motion axis : List.of(Motion.ALONG_X, Motion.ALONG_Y, Motion.ALONG_Z)) {
            SpectrumResponse along = SpectrumAnalysis.of(MODES).under(Map.of(axis, FLAT));
            for (int k = 0; k < MODES.list().size(); k++) {
                // Each in the middle, where it is divided.
                requireNoJump(along, k, axis, "deck0.3", 10);
                requireNoJump(along, k, axis, "column1.2", 22.0 / 3);
                requireNoJump(along, k, axis, "tie2", 4);
            }
        }
        Movement moved = response.movement("deck0.3", 0);
        assertEquals(response.movement("d0.2").translation().y(), moved.translation().y(), 1e-12);
    }

    @Test
    void badQuestionsAreRefused() {
        SpectrumAnalysis analysis = SpectrumAnalysis.of(MODES);
        assertEquals(
                "direction of the ground is about x; allowed are along x, y and z.",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> analysis.under(Map.of(Motion.ABOUT_X, FLAT)))
                        .getMessage());
        DesignSpectrum points = DesignSpectrum.ofPoints(new double[] {0, 1}, new double[] {1, 2});
        assertEquals(
                "period is 1.5 s; allowed is from 0.0 s to 1.0 s.",
                assertThrows(IllegalArgumentException.class, () -> points.acceleration(1.5))
                        .getMessage());
        assertTrue(
                analysis.under(Map.of(Motion.ALONG_X, FLAT))
                        .toString()
                        .startsWith("Modes combined by complete quadratic"));
    }
}
