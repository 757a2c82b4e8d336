package org.skewback.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The largest and smallest forces at stations along members, each with what governs it and with the
 * other five forces that act at the same time.
 */
public final class Envelope {

    private final List<String> causes;
    private final Map<String, Strip> strips;

    /**
     * Extremes of one member.
     *
     * @param stations distances from its start, m
     * @param best forces by station, and by 2 · component (largest) or + 1 (smallest)
     * @param cause number of what governs, in the same order
     */
    @SuppressWarnings("ArrayRecordComponent") // stays in this package, never changed
    record Strip(double[] stations, double[][][] best, int[][] cause) {

        static Strip along(double length, int count) {
            double[] stations = new double[count];
            for (int i = 0; i < count; i++) {
                stations[i] = i == count - 1 ? length : length * i / (count - 1);
            }
            int[][] cause = new int[count][12];
            for (int[] row : cause) {
                Arrays.fill(row, -1);
            }
            return new Strip(stations, new double[count][12][], cause);
        }

        /** Takes forces at a station into account. */
        void offer(int station, double[] s, int which) {
            for (int k = 0; k < 6; k++) {
                offerFor(station, 2 * k, s, which);
                offerFor(station, 2 * k + 1, s, which);
            }
        }

        void offerFor(int station, int slot, double[] s, int which) {
            double[] old = best[station][slot];
            int k = slot / 2;
            if (old == null || (slot % 2 == 0 ? s[k] > old[k] : s[k] < old[k])) {
                if (old == null) {
                    old = new double[6];
                    best[station][slot] = old;
                }
                System.arraycopy(s, 0, old, 0, 6);
                cause[station][slot] = which;
            }
        }
    }

    /**
     * A governing value.
     *
     * @param value the largest or smallest force, N or N·m
     * @param cause what gives it: the combination with its factors, or the position of the load
     * @param concurrent all six forces under that cause, this one among them
     */
    public record Governing(double value, String cause, SectionForces concurrent) {}

    Envelope(List<String> causes, Map<String, Strip> strips) {
        this.causes = List.copyOf(causes);
        this.strips = new LinkedHashMap<>(strips);
    }

    /**
     * Envelopes given combinations.
     *
     * @param cases solutions of the load cases, of one model
     * @param combinations the combinations
     * @param stations number of stations along each member, ends included, at least 2
     * @return the envelope over all members that carry in every case
     * @throws IllegalArgumentException if there is none, a case is missing, or there are fewer than 2
     *     stations
     */
    public static Envelope of(
            List<FrameSolution> cases, List<Combination> combinations, int stations) {
        double[][] factors = new double[combinations.size()][];
        List<String> names = new ArrayList<>();
        for (int c = 0; c < factors.length; c++) {
            factors[c] = Superposition.factors(cases, combinations.get(c));
            names.add(combinations.get(c).name());
        }
        return new Envelope(
                names,
                strips(
                        cases,
                        stations,
                        (strip, station, byCase) -> {
                            for (int c = 0; c < factors.length; c++) {
                                strip.offer(station, Superposition.sum(byCase, factors[c]), c);
                            }
                        }));
    }

    /**
     * Envelopes all combinations of a rule, choosing factors for each force at each station.
     *
     * @param cases solutions of the load cases, of one model
     * @param rule the rule
     * @param stations number of stations along each member, ends included, at least 2
     * @return the envelope over all members that carry in every case
     * @throws IllegalArgumentException if a case is missing, or there are fewer than 2 stations
     */
    public static Envelope of(List<FrameSolution> cases, CombinationRule rule, int stations) {
        Superposition.Chooser chooser = new Superposition.Chooser(cases, rule);
        List<String> names = new ArrayList<>();
        Map<List<Double>, Integer> known = new HashMap<>();
        Map<String, Strip> strips =
                strips(
                        cases,
                        stations,
                        (strip, station, byCase) -> {
                            for (int slot = 0; slot < 12; slot++) {
                                double[] factors = chooser.factors(byCase, slot);
                                List<Double> key = Arrays.stream(factors).boxed().toList();
                                Integer number = known.get(key);
                                if (number == null) {
                                    number = names.size();
                                    known.put(key, number);
                                    names.add(chooser.words(factors));
                                }
                                strip.offerFor(
                                        station, slot, Superposition.sum(byCase, factors), number);
                            }
                        });
        return new Envelope(names, strips);
    }

    private interface Station {
        void offer(Strip strip, int station, double[][] byCase);
    }

    private static Map<String, Strip> strips(
            List<FrameSolution> cases, int stations, Station offers) {
        if (cases.isEmpty() || stations < 2) {
            throw new IllegalArgumentException(
                    "an envelope of "
                            + cases.size()
                            + " cases at "
                            + stations
                            + " stations; allowed are at least 1 and at least 2.");
        }
        FrameSystem system = cases.get(0).system();
        Map<String, Strip> strips = new LinkedHashMap<>();
        for (int m = 0; m < system.elements().size(); m++) {
            Element element = system.elements().get(m);
            ElementState[] states = new ElementState[cases.size()];
            boolean everywhere = element.length() > 0;
            for (int c = 0; c < states.length; c++) {
                Superposition.requireSameModel(cases.get(0), cases.get(c));
                everywhere &= cases.get(c).isPresent(m);
                states[c] = cases.get(c).state(m);
            }
            if (!everywhere) {
                continue;
            }
            Strip strip = Strip.along(element.length(), stations);
            double[][] byCase = new double[states.length][];
            for (int i = 0; i < stations; i++) {
                double x = strip.stations()[i];
                for (int side = 0; side < 2; side++) {
                    for (int c = 0; c < states.length; c++) {
                        byCase[c] = states[c].forces(x, side == 1);
                    }
                    offers.offer(strip, i, byCase);
                }
            }
            strips.put(element.name(), strip);
        }
        return strips;
    }

    /**
     * Lists the members enveloped.
     *
     * @return their names, in the order of the model
     */
    public List<String> members() {
        return List.copyOf(strips.keySet());
    }

    /**
     * Gives the stations of a member.
     *
     * @param member the member
     * @return distances from its start, m
     * @throws IllegalArgumentException if it is not enveloped
     */
    public double[] stations(String member) {
        return strip(member).stations().clone();
    }

    private Strip strip(String member) {
        Strip strip = strips.get(member);
        if (strip == null) {
            throw new IllegalArgumentException(
                    "member " + member + " is not in the envelope; allowed are its members().");
        }
        return strip;
    }

    /**
     * Gives the largest value of a force at a station.
     *
     * @param member the member
     * @param station number of the station, from 0
     * @param component the force
     * @return the value, what governs, and the concurrent forces
     */
    public Governing largest(String member, int station, ForceComponent component) {
        return governing(strip(member), station, 2 * component.index());
    }

    /**
     * Gives the smallest value of a force at a station.
     *
     * @param member the member
     * @param station number of the station, from 0
     * @param component the force
     * @return the value, what governs, and the concurrent forces
     */
    public Governing smallest(String member, int station, ForceComponent component) {
        return governing(strip(member), station, 2 * component.index() + 1);
    }

    private Governing governing(Strip strip, int station, int slot) {
        double[] s = strip.best()[station][slot];
        return new Governing(
                s[slot / 2], causes.get(strip.cause()[station][slot]), SectionForces.of(s));
    }

    /**
     * Adds another envelope whose causes are chosen freely beside these, as trains beside permanent
     * loads: extremes and concurrent forces add up.
     *
     * @param factor factor of the other envelope, at least 0
     * @param other an envelope of the same members at the same stations
     * @return the envelope of the sums
     * @throws IllegalArgumentException if the factor is negative or members or stations differ
     */
    public Envelope plus(double factor, Envelope other) {
        Require.notNegative("factor of an envelope", factor, "");
        List<String> names = new ArrayList<>();
        Map<String, Integer> known = new HashMap<>();
        Map<String, Strip> sums = new LinkedHashMap<>();
        for (Map.Entry<String, Strip> entry : strips.entrySet()) {
            Strip mine = entry.getValue();
            Strip others = other.strip(entry.getKey());
            if (!Arrays.equals(mine.stations(), others.stations())) {
                throw new IllegalArgumentException(
                        "stations of member " + entry.getKey() + " differ; allowed are the same.");
            }
            int count = mine.stations().length;
            Strip sum = new Strip(mine.stations(), new double[count][12][], new int[count][12]);
            for (int i = 0; i < count; i++) {
                for (int slot = 0; slot < 12; slot++) {
                    double[] s = mine.best()[i][slot].clone();
                    for (int k = 0; k < 6; k++) {
                        s[k] += factor * others.best()[i][slot][k];
                    }
                    sum.best()[i][slot] = s;
                    String name =
                            causes.get(mine.cause()[i][slot])
                                    + " + "
                                    + Superposition.times(
                                            factor, other.causes.get(others.cause()[i][slot]));
                    sum.cause()[i][slot] =
                            known.computeIfAbsent(
                                    name,
                                    fresh -> {
                                        names.add(fresh);
                                        return names.size() - 1;
                                    });
                }
            }
            sums.put(entry.getKey(), sum);
        }
        return new Envelope(names, sums);
    }
}
