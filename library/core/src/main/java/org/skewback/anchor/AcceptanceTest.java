package org.skewback.anchor;

import java.util.ArrayList;
import java.util.List;

/**
 * Whether a stressed anchor is accepted, criterion by criterion.
 *
 * <p>The limits are those of EN 1537 and of FHWA GEC 4 with PTI as remembered, save where said
 * otherwise; compare them with the edition that applies. A criterion for which the record holds no
 * reading is not met.
 *
 * @param rules rules judged by
 * @param findings each criterion with its value and limits
 */
public record AcceptanceTest(Rules rules, List<Finding> findings) {

    private static final double MINUTE = 60;

    /** Rules to judge by. */
    public enum Rules {
        /**
         * EN 1537: apparent free length from 0.8 L to the greater of 1.1 L and L + half the bond;
         * creep rate at proof load at most 2 mm.
         */
        EN_1537,
        /**
         * FHWA GEC 4 and PTI: elastic elongation at least that of 0.8 L and at most that of L + half
         * the bond; creep at most 1 mm from 1 to 10 min, else at most 2 mm from 6 to 60 min.
         */
        GEC_4
    }

    /**
     * One criterion.
     *
     * @param criterion what is judged
     * @param value value found; NaN where the record does not hold it
     * @param least least value allowed
     * @param greatest greatest value allowed
     * @param unit unit of the three, SI
     */
    public record Finding(
            String criterion, double value, double least, double greatest, String unit) {

        /**
         * Says whether the criterion is met.
         *
         * @return true if the value is there and within its limits
         */
        public boolean met() {
            return value >= least && value <= greatest;
        }
    }

    /**
     * Copies the findings.
     *
     * @param rules rules judged by
     * @param findings each criterion with its value and limits
     */
    public AcceptanceTest {
        findings = List.copyOf(findings);
    }

    /**
     * The anchor that was stressed.
     *
     * @param stiffness axial stiffness of the tendon, E A, N
     * @param freeLength free length by design, m
     * @param outside length of the tendon outside, up to the jack's grip, m
     * @param bondLength bond length, m
     * @param proofLoad load that the test must reach, N
     */
    public record Anchor(
            double stiffness,
            double freeLength,
            double outside,
            double bondLength,
            double proofLoad) {

        /**
         * Makes an anchor.
         *
         * @param stiffness axial stiffness of the tendon, E A, N, greater than 0
         * @param freeLength free length by design, m, greater than 0
         * @param outside length of the tendon outside, m, at least 0
         * @param bondLength bond length, m, greater than 0
         * @param proofLoad load that the test must reach, N, greater than 0
         * @throws IllegalArgumentException if a value is outside
         */
        public Anchor {
            Require.positive("axial stiffness of the tendon", stiffness, "N");
            Require.positive("free length", freeLength, "m");
            Require.notNegative("length outside", outside, "m");
            Require.positive("bond length", bondLength, "m");
            Require.positive("proof load", proofLoad, "N");
        }
    }

    /**
     * Judges a record.
     *
     * @param record the record
     * @param anchor the anchor
     * @param rules rules to judge by
     * @return the judgement
     */
    public static AcceptanceTest of(StressingRecord record, Anchor anchor, Rules rules) {
        List<Finding> findings = new ArrayList<>();
        findings.add(
                new Finding(
                        "greatest load reaches the proof load",
                        record.testLoad(),
                        anchor.proofLoad() * (1 - 1e-3),
                        Double.POSITIVE_INFINITY,
                        "N"));
        double range = record.testLoad() - record.alignmentLoad();
        double free = anchor.freeLength() + anchor.outside();
        if (rules == Rules.EN_1537) {
            findings.add(
                    new Finding(
                            "apparent free length",
                            anchor.stiffness() * record.elastic() / range,
                            0.8 * anchor.freeLength() + anchor.outside(),
                            anchor.outside()
                                    + Math.max(
                                            1.1 * anchor.freeLength(),
                                            anchor.freeLength() + anchor.bondLength() / 2),
                            "m"));
            findings.add(
                    new Finding(
                            "creep rate at proof load",
                            creepRate(record),
                            Double.NEGATIVE_INFINITY,
                            2e-3,
                            "m"));
        } else {
            double perLength = range / anchor.stiffness();
            findings.add(
                    new Finding(
                            "elastic elongation",
                            record.elastic(),
                            0.8 * free * perLength,
                            (free + anchor.bondLength() / 2) * perLength,
                            "m"));
            findings.add(creep(record));
        }
        return new AcceptanceTest(rules, findings);
    }

    /** Creep rate over the last decade of time that the hold has, at least from 1 to 10 min. */
    private static double creepRate(StressingRecord record) {
        double last = record.hold().get(record.hold().size() - 1).time();
        double from = last / 10;
        if (last < 10 * MINUTE || !record.heldAt(from)) {
            return Double.NaN;
        }
        return record.heldDisplacement(last) - record.heldDisplacement(from);
    }

    private static Finding creep(StressingRecord record) {
        double early = between(record, 1, 10);
        if (early <= 1e-3) {
            return new Finding(
                    "creep from 1 to 10 min", early, Double.NEGATIVE_INFINITY, 1e-3, "m");
        }
        return new Finding(
                "creep from 6 to 60 min, as that from 1 to 10 min was above 1 mm",
                between(record, 6, 60),
                Double.NEGATIVE_INFINITY,
                2e-3,
                "m");
    }

    private static double between(StressingRecord record, double from, double to) {
        if (!record.heldAt(from * MINUTE) || !record.heldAt(to * MINUTE)) {
            return Double.NaN;
        }
        return record.heldDisplacement(to * MINUTE) - record.heldDisplacement(from * MINUTE);
    }

    /**
     * Says whether the anchor is accepted.
     *
     * @return true if every criterion is met
     */
    public boolean accepted() {
        return findings.stream().allMatch(Finding::met);
    }
}
