package org.skewback.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.skewback.data.CsvTable;
import org.skewback.numeric.Monitor;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/**
 * Response of a frame to an earthquake given by its spectrum as a routine; see {@link
 * SpectrumAnalysis}. Results are sizes without a sign and not in equilibrium with each other.
 */
public final class SpectrumRoutine
        implements Routine<SpectrumRoutine.Input, SpectrumRoutine.Output> {

    /** Makes the routine. */
    public SpectrumRoutine() {}

    /**
     * A frame, its masses, the spectra along the axes and how to combine.
     *
     * @param nodes table of nodes, CSV; for this and the next four see {@link FrameTables}
     * @param materials table of materials, CSV
     * @param sections table of sections, CSV
     * @param members table of members, CSV
     * @param supports table of supports, CSV
     * @param masses table of masses besides those of members, CSV, see {@link MotionTables}; blank
     *     for none
     * @param loads table of loads, CSV; a header alone where there is no preload
     * @param preload cases with factors, such as {@code G + 0.3 Q}, whose forces stiffen or soften
     *     the structure; blank for none
     * @param pieces equal pieces in each beam-column, 1 or more; 4 as a rule
     * @param count how many modes take part, 1 or more
     * @param spectrumX spectrum along x, CSV of period and acceleration, see {@link MotionTables};
     *     blank for none
     * @param spectrumY spectrum along y, the same way; blank for none
     * @param spectrumZ spectrum along z, the same way; blank for none
     * @param damping damping ratio ζ in the correlation of modes, greater than 0, at most 1; the
     *     spectra have their own
     * @param modesBy {@code complete quadratic}, {@code sum of squares} or {@code sum of sizes}
     * @param directionsBy {@code sum of squares} or {@code thirty percent}
     * @param missingMass whether the mass that the modes leave out responds to the acceleration at
     *     period 0
     * @param responses what is wanted, separated by {@code ;}: {@code M_y of beam at 4.0} (a force,
     *     a member, a position in m), {@code movement of n along z}, {@code reaction of n about y}
     * @param names names of the quantities in {@code given}, separated by {@code ;}
     * @param given quantities that fields such as {@code =g} stand for
     */
    public record Input(
            String nodes,
            String materials,
            String sections,
            String members,
            String supports,
            String masses,
            String loads,
            String preload,
            int pieces,
            int count,
            String spectrumX,
            String spectrumY,
            String spectrumZ,
            Quantity damping,
            String modesBy,
            String directionsBy,
            boolean missingMass,
            String responses,
            String names,
            List<Quantity> given)
            implements MovingInput {

        /**
         * Copies the list.
         *
         * @param nodes table of nodes, CSV; for this and the next four see {@link FrameTables}
         * @param materials table of materials, CSV
         * @param sections table of sections, CSV
         * @param members table of members, CSV
         * @param supports table of supports, CSV
         * @param masses table of masses besides those of members, CSV, see {@link MotionTables};
         *     blank for none
         * @param loads table of loads, CSV; a header alone where there is no preload
         * @param preload cases with factors, such as {@code G + 0.3 Q}, whose forces stiffen or
         *     soften the structure; blank for none
         * @param pieces equal pieces in each beam-column, 1 or more; 4 as a rule
         * @param count how many modes take part, 1 or more
         * @param spectrumX spectrum along x, CSV of period and acceleration, see {@link
         *     MotionTables}; blank for none
         * @param spectrumY spectrum along y, the same way; blank for none
         * @param spectrumZ spectrum along z, the same way; blank for none
         * @param damping damping ratio ζ in the correlation of modes, greater than 0, at most 1;
         *     the spectra have their own
         * @param modesBy {@code complete quadratic}, {@code sum of squares} or {@code sum of sizes}
         * @param directionsBy {@code sum of squares} or {@code thirty percent}
         * @param missingMass whether the mass that the modes leave out responds to the acceleration
         *     at period 0
         * @param responses what is wanted, separated by {@code ;}: {@code M_y of beam at 4.0} (a
         *     force, a member, a position in m), {@code movement of n along z}, {@code reaction of
         *     n about y}
         * @param names names of the quantities in {@code given}, separated by {@code ;}
         * @param given quantities that fields such as {@code =g} stand for
         */
        public Input {
            given = List.copyOf(given);
        }
    }

    /**
     * What was wanted.
     *
     * @param responses largest size of each response, in N, N·m, m or rad
     * @param baseForces largest size of the sum of all reactions along x, y and z, N
     * @param massShares share of the whole mass that the modes take along x, y and z
     */
    public record Output(
            List<Quantity> responses, List<Quantity> baseForces, List<Quantity> massShares) {

        /**
         * Copies the lists.
         *
         * @param responses largest size of each response, in N, N·m, m or rad
         * @param baseForces largest size of the sum of all reactions along x, y and z, N
         * @param massShares share of the whole mass that the modes take along x, y and z
         */
        public Output {
            responses = List.copyOf(responses);
            baseForces = List.copyOf(baseForces);
            massShares = List.copyOf(massShares);
        }
    }

    @Override
    public String name() {
        return "frame.spectrum";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input input, Stop stop) {
        Modes modes = input.moving().modes(input.count(), Monitor.of(stop));
        SpectrumAnalysis analysis =
                SpectrumAnalysis.of(modes)
                        .damped(input.damping().in(""))
                        .combinedBy(one(ModalRule.values(), "rule for modes", input.modesBy()))
                        .directionsBy(
                                one(
                                        DirectionRule.values(),
                                        "rule for directions",
                                        input.directionsBy()));
        Map<Motion, DesignSpectrum> spectra = new EnumMap<>(Motion.class);
        put(spectra, Motion.ALONG_X, input.spectrumX());
        put(spectra, Motion.ALONG_Y, input.spectrumY());
        put(spectra, Motion.ALONG_Z, input.spectrumZ());
        SpectrumResponse response =
                (input.missingMass() ? analysis.withMissingMass() : analysis).under(spectra);
        stop.check();
        List<Quantity> responses = new ArrayList<>();
        for (Wanted wanted : Wanted.all(input.responses())) {
            responses.add(wanted.quantity(wanted.in(response)));
        }
        Vector base = response.baseForce();
        List<Quantity> baseForces = new ArrayList<>();
        List<Quantity> shares = new ArrayList<>();
        for (int axis = 0; axis < 3; axis++) {
            baseForces.add(Quantity.of(base.get(axis), "N"));
            shares.add(Quantity.of(modes.massShare(Motion.at(axis))));
        }
        return new Output(responses, baseForces, shares);
    }

    private static void put(Map<Motion, DesignSpectrum> spectra, Motion axis, String table) {
        if (!table.isBlank()) {
            spectra.put(axis, MotionTables.spectrum(CsvTable.parse("spectrum " + axis, table)));
        }
    }

    private static <E extends Enum<E>> E one(E[] all, String what, String words) {
        for (E each : all) {
            if (words(each).equals(words)) {
                return each;
            }
        }
        throw new IllegalArgumentException(
                what
                        + " is \""
                        + words
                        + "\"; allowed are "
                        + String.join(", ", Arrays.stream(all).map(SpectrumRoutine::words).toList())
                        + ".");
    }

    private static String words(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
