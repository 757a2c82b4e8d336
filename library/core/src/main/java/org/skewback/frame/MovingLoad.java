package org.skewback.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.skewback.quantity.Stop;

/**
 * A train on its way over a lane, position by position, and what it does to all members.
 *
 * <p>The structure is solved once for each unknown of the lane's nodes; a position is then a short sum
 * over the nodes next to its axles, exact like a solution of its own.
 */
public final class MovingLoad {

    /** Numbers kept for unit solutions at a time; more members than fit take another pass. */
    private static final int ROOM = 8_000_000;

    private static final int BLOCK = 32;

    private final LinearAnalysis analysis;
    private final LoadTrain train;
    private final Lane lane;
    private final double[] stations;
    private final Position[] positions;
    private final int[] columns;

    /**
     * A train at one place.
     *
     * @param columns numbers of the unit solutions
     * @param factors how much of each
     * @param loads loads on members by number of the leg
     */
    @SuppressWarnings("ArrayRecordComponent") // stays in this class, never changed
    private record Position(int[] columns, double[] factors, Map<Integer, ElementLoad> loads) {}

    /**
     * Puts a train on a lane, position after position.
     *
     * @param analysis the structure
     * @param train the train; it travels toward larger stations of the lane
     * @param lane where it travels
     * @param step distance between positions, m, greater than 0
     * @throws IllegalArgumentException if the step is not greater than 0 or the lane is of another
     *     model
     */
    public MovingLoad(LinearAnalysis analysis, LoadTrain train, Lane lane, double step) {
        Require.positive("step of train " + train.name(), step, "m");
        if (lane.model() != analysis.model()) {
            throw new IllegalArgumentException(
                    "lane " + lane.name() + " is of another model; allowed is the one analysed.");
        }
        this.analysis = analysis;
        this.train = train;
        this.lane = lane;
        double end = lane.length() + train.length();
        int count = (int) Math.ceil(end / step) + 1;
        stations = new double[count];
        positions = new Position[count];
        int[] columnOf = new int[analysis.unknowns()];
        Arrays.fill(columnOf, -1);
        List<Integer> used = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            stations[i] = Math.min(end, i * step);
            positions[i] = position(stations[i], columnOf, used);
        }
        columns = used.stream().mapToInt(Integer::intValue).toArray();
    }

    private Position position(double first, int[] columnOf, List<Integer> used) {
        Map<Integer, ElementLoad> loads = new LinkedHashMap<>();
        for (LoadTrain.Axle axle : train.axles()) {
            double station = first - axle.behind();
            if (station < 0 || station > lane.length()) {
                continue;
            }
            int number = lane.legAt(station);
            Lane.Leg leg = lane.legs().get(number);
            Element element = element(number);
            Vector force = new Vector(0, 0, -axle.force());
            loads.computeIfAbsent(number, fresh -> new ElementLoad())
                    .add(
                            new ElementLoad.Point(
                                    leg.position(station),
                                    element.localComponents(force),
                                    element.localComponents(leg.eccentricity().cross(force))));
        }
        Map<Integer, Double> sum = new LinkedHashMap<>();
        FrameSystem system = analysis.system();
        loads.forEach(
                (number, load) -> {
                    Element element = element(number);
                    element.requireCarries(load);
                    double[] forces = element.toGlobal(element.clamped(load));
                    system.holds().toOwn(forces, element.start(), element.end());
                    int[] unknowns = system.unknownsOf(element);
                    for (int i = 0; i < 12; i++) {
                        if (unknowns[i] >= 0 && forces[i] != 0) {
                            if (columnOf[unknowns[i]] < 0) {
                                columnOf[unknowns[i]] = used.size();
                                used.add(unknowns[i]);
                            }
                            sum.merge(columnOf[unknowns[i]], -forces[i], Double::sum);
                        }
                    }
                });
        return new Position(
                sum.keySet().stream().mapToInt(Integer::intValue).toArray(),
                sum.values().stream().mapToDouble(Double::doubleValue).toArray(),
                loads);
    }

    private Element element(int leg) {
        return analysis.system()
                .elements()
                .get(analysis.model().indexOfMember(lane.legs().get(leg).member()));
    }

    /**
     * Lists the positions.
     *
     * @return stations of the first axle, m
     */
    public double[] positions() {
        return stations.clone();
    }

    /**
     * Envelopes the forces of all members over all positions, no train included.
     *
     * @param count number of stations along each member, ends included, at least 2
     * @return the envelope with concurrent forces
     */
    public Envelope envelope(int count) {
        return envelope(
                analysis.model().members().stream()
                        .filter(member -> !(member instanceof SpringLink))
                        .map(Member::name)
                        .toList(),
                count);
    }

    /**
     * Envelopes the forces of some members over all positions, no train included.
     *
     * @param members their names
     * @param count number of stations along each member, ends included, at least 2
     * @return the envelope with concurrent forces
     * @throws IllegalArgumentException if there is no such member, or fewer than 2 stations
     */
    public Envelope envelope(List<String> members, int count) {
        if (count < 2) {
            throw Require.refused("number of stations", count, "", "at least 2");
        }
        Map<String, Envelope.Strip> strips = new LinkedHashMap<>();
        int chunk = Math.max(1, ROOM / (6 * Math.max(1, columns.length)));
        for (int from = 0; from < members.size(); from += chunk) {
            envelope(members.subList(from, Math.min(members.size(), from + chunk)), count, strips);
        }
        List<String> causes = new ArrayList<>();
        causes.add("no " + train.name());
        for (double station : stations) {
            causes.add(
                    String.format(
                            Locale.ROOT,
                            "%s, first axle at %.3f m of %s",
                            train.name(),
                            station,
                            lane.name()));
        }
        return new Envelope(causes, strips);
    }

    private void envelope(List<String> members, int count, Map<String, Envelope.Strip> strips) {
        List<Element> elements = new ArrayList<>();
        List<Envelope.Strip> here = new ArrayList<>();
        Map<Integer, Integer> legOf = new LinkedHashMap<>();
        for (String name : members) {
            Element element =
                    analysis.system().elements().get(analysis.model().indexOfMember(name));
            Envelope.Strip strip = Envelope.Strip.along(element.length(), count);
            for (int i = 0; i < count; i++) {
                strip.offer(i, new double[6], 0);
            }
            for (int leg = 0; leg < lane.legs().size(); leg++) {
                if (lane.legs().get(leg).member().equals(name)) {
                    legOf.put(leg, elements.size());
                }
            }
            elements.add(element);
            here.add(strip);
            strips.put(name, strip);
        }
        double[][] unit = unitForces(elements);
        Stop stop = Stop.onInterrupt();
        double[] forces = new double[6 * elements.size()];
        double[] s = new double[6];
        for (int p = 0; p < positions.length; p++) {
            stop.check();
            Position position = positions[p];
            Arrays.fill(forces, 0);
            for (int c = 0; c < position.columns.length; c++) {
                double[] column = unit[position.columns[c]];
                double factor = position.factors[c];
                for (int i = 0; i < forces.length; i++) {
                    forces[i] += factor * column[i];
                }
            }
            ElementLoad[] on = new ElementLoad[elements.size()];
            position.loads.forEach(
                    (leg, load) -> {
                        Integer number = legOf.get(leg);
                        if (number != null) {
                            on[number] = load;
                            double[] clamped = elements.get(number).clamped(load);
                            for (int k = 0; k < 6; k++) {
                                forces[6 * number + k] += clamped[6 + k];
                            }
                        }
                    });
            for (int m = 0; m < here.size(); m++) {
                offer(here.get(m), elements.get(m).length(), forces, 6 * m, on[m], p + 1, s);
            }
        }
    }

    private static void offer(
            Envelope.Strip strip,
            double length,
            double[] forces,
            int at,
            @Nullable ElementLoad load,
            int cause,
            double[] s) {
        double[] places = strip.stations();
        for (int i = 0; i < places.length; i++) {
            double arm = length - places[i];
            for (int side = 0; side < 2; side++) {
                s[0] = forces[at];
                s[1] = -forces[at + 1];
                s[2] = -forces[at + 2];
                s[3] = forces[at + 3];
                s[4] = arm * forces[at + 2] - forces[at + 4];
                s[5] = arm * forces[at + 1] + forces[at + 5];
                if (load != null) {
                    load.addForcesBeyond(places[i], side == 1, s);
                } else {
                    side = 1;
                }
                strip.offer(i, s, cause);
            }
        }
    }

    /** Forces on the ends of members, six a member, for a unit force at each used unknown. */
    private double[][] unitForces(List<Element> elements) {
        double[][] unit = new double[columns.length][6 * elements.size()];
        FrameSystem system = analysis.system();
        AppliedLoads none = system.apply(List.of());
        double[] twelve = new double[12];
        for (int from = 0; from < columns.length; from += BLOCK) {
            int block = Math.min(BLOCK, columns.length - from);
            double[][] right = new double[block][analysis.unknowns()];
            for (int c = 0; c < block; c++) {
                right[c][columns[from + c]] = 1;
            }
            double[][] solutions = analysis.factorization().solve(right);
            for (int c = 0; c < block; c++) {
                double[] u = system.movements(solutions[c], none);
                for (int m = 0; m < elements.size(); m++) {
                    Element element = elements.get(m);
                    FrameSystem.gather(element, u, twelve);
                    element.endForces(twelve, unit[from + c], 6 * m);
                }
            }
        }
        return unit;
    }
}
