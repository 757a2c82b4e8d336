package org.skewback.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.form.Near.assertNear;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Catenary and chain: what is put in comes out, at any flatness and inclination. */
class CatenaryTest {

    @Property
    void theRiseGivenIsTheRiseFound(
            @ForAll @DoubleRange(min = -6, max = 1.5) double exponent,
            @ForAll @DoubleRange(min = -2, max = 2) double inclination) {
        double rise = 250 * StrictMath.pow(10, exponent);
        Catenary catenary = Catenary.ofRise(250, rise, 250 * inclination);
        // At a rise of span/10⁶ over an inclined chord the difference of ordinates has ten digits.
        assertEquals(rise, catenary.rise(), 2e-13 * rise + 2e-14 * 250 * Math.abs(inclination));
        assertEquals(0, catenary.y(0), 1e-300);
        assertNear(1 + 250 * inclination, 1 + catenary.y(250), 1e-11);
    }

    @Property
    void theLengthGivenIsTheLengthFound(
            @ForAll @DoubleRange(min = -9, max = 2) double exponent,
            @ForAll @DoubleRange(min = -2, max = 2) double inclination) {
        double chord = Math.hypot(80, 80 * inclination);
        double length = chord * (1 + StrictMath.pow(10, exponent));
        Catenary catenary = Catenary.ofLength(80, length, 80 * inclination);
        assertNear(length, catenary.arcLength(), 1e-13);
    }

    @Property
    void lengthThenRiseThenLengthComesBack(
            @ForAll @DoubleRange(min = 0.01, max = 2) double ratio,
            @ForAll @DoubleRange(min = -1, max = 1) double inclination) {
        Catenary byRise = Catenary.ofRise(100, 100 * ratio, 100 * inclination);
        Catenary byLength = Catenary.ofLength(100, byRise.arcLength(), 100 * inclination);
        // The last digit of the length moves the parameter by more the flatter the arch is.
        assertNear(byRise.parameter(), byLength.parameter(), 1e-15 / (ratio * ratio) + 1e-13);
    }

    /** Expected values by mpmath 1.3 with 30 digits from a (cosh(L/2a) − 1) = f, L = 100 m. */
    @ParameterizedTest
    @CsvSource({
        "1e-4, 12500000.000016667, 100.00000000026667",
        "50, 30.937961388712786, 149.58336991619461",
        "100, 20.271663512603851, 237.10194181002205"
    })
    void flatAndTallCatenariesKeepTheirDigits(double rise, double parameter, double length) {
        Catenary catenary = Catenary.ofRise(100, rise);
        assertNear(parameter, catenary.parameter(), 1e-14);
        assertNear(length, catenary.arcLength(), 1e-14);
        assertNear(rise, catenary.y(50), 1e-13);
    }

    @Property
    void closedLengthsAgreeWithQuadratureOfTheSlope(
            @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 1) double ratio,
            @ForAll @DoubleRange(min = 0, max = 0.5) double from,
            @ForAll @DoubleRange(min = 0.5, max = 1) double to) {
        Catenary catenary = Catenary.ofRise(60, 60 * ratio, 11);
        double length =
                Quadrature.integrate(
                        "length", x -> Math.hypot(1, catenary.slope(x)), 60 * from, 60 * to);
        double moment =
                Quadrature.integrate(
                        "moment", x -> x * Math.hypot(1, catenary.slope(x)), 60 * from, 60 * to);
        assertEquals(length, catenary.arcLength(60 * from, 60 * to), 1e-11 * (1 + length));
        assertEquals(moment, catenary.arcMoment(60 * from, 60 * to), 1e-11 * (1 + moment));
    }

    @Property
    void aChainTurnedOverIsTheArch(
            @ForAll @DoubleRange(min = 0, max = 300) double x,
            @ForAll @DoubleRange(min = -100, max = 100) double level) {
        Chain chain = Chain.ofSag(300, 40, level, 85);
        assertEquals(-chain.y(x), chain.turnedOver().y(x));
        assertEquals(level, chain.y(300), 1e-10);
        assertEquals(-40, chain.y(150) - level / 2, 1e-11);
    }

    @Property
    void theSupportsCarryTheChain(
            @ForAll @DoubleRange(min = -100, max = 100) double level,
            @ForAll @Scale(4) @DoubleRange(min = 1.0001, max = 3) double slack) {
        Chain chain = Chain.ofLength(300, Math.hypot(300, level) * slack, level, 85);
        double weight = 85 * chain.length();
        assertNear(weight, chain.leftVertical() + chain.rightVertical(), 1e-11);
        // Moments about the left support: weight at its centre, right support force.
        double moment = 85 * chain.turnedOver().arcMoment(0, 300);
        double held = chain.rightVertical() * 300 - chain.horizontalTension() * level;
        assertNear(moment, held, 1e-9);
        assertNear(
                chain.horizontalTension(),
                chain.tension(120) * StrictMath.cos(chain.angle(120)),
                1e-12);
    }

    @Test
    void theTensionGrowsByTheWeightOfTheHeight() {
        Chain chain = Chain.ofLength(300, 320, 40, 80);
        // T₂ − T₁ = w (y₂ − y₁), whatever the catenary.
        assertNear(80 * 40, chain.tension(300) - chain.tension(0), 1e-10);
        assertTrue(chain.y(chain.lowest()) < chain.y(chain.lowest() + 1));
        assertTrue(chain.y(chain.lowest()) < chain.y(chain.lowest() - 1));
    }

    @Test
    void aLengthShorterThanTheChordIsRefused() {
        assertEquals(
                "length is 99.0 m; allowed is more than the chord between the springings, 100.0 m,"
                        + " and at most 1e6 spans.",
                assertThrows(IllegalArgumentException.class, () -> Catenary.ofLength(100, 99, 0))
                        .getMessage());
    }

    @Test
    void badNumbersAreRefusedByName() {
        assertEquals(
                "span is -3.0 m; allowed is a finite number greater than 0.",
                refusal(() -> Catenary.ofRise(-3, 1)));
        assertEquals(
                "rise is NaN m; allowed is a finite number greater than 0.",
                refusal(() -> Catenary.ofRise(3, Double.NaN)));
        assertEquals(
                "sag is 0.0 m; allowed is a finite number greater than 0.",
                refusal(() -> Chain.ofSag(3, 0, 0, 1)));
        assertEquals(
                "weight per length is -1.0 N/m; allowed is a finite number greater than 0.",
                refusal(() -> Chain.ofSag(3, 1, 0, -1)));
        assertEquals(
                "x is 3.1 m; allowed is from 0.0 m to 3.0 m.",
                refusal(() -> Catenary.ofRise(3, 1).y(3.1)));
    }

    private static String refusal(Runnable action) {
        return String.valueOf(
                assertThrows(IllegalArgumentException.class, action::run).getMessage());
    }
}
