package org.skewback.frame;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * What a unit force at a station of a lane does to a response: the movement of the lane under the
 * response's unit cause, so that one solution gives the whole line.
 *
 * <p>Values are exact. Peaks and areas are exact along uniform members; along tapered ones they are
 * those of quartics through 17 points a member.
 */
public final class InfluenceLine {

    private static final int PARTS = 4;

    private final Lane lane;
    private final Vector direction;
    private final List<ElementState> states;
    private final List<Piece> pieces;

    /** A quartic through five values at even distances. */
    private record Piece(double from, double width, Quartic values) {}

    private InfluenceLine(Lane lane, Vector direction, List<ElementState> states) {
        this.lane = lane;
        this.direction = direction;
        this.states = states;
        List<Piece> all = new ArrayList<>();
        for (int l = 0; l < states.size(); l++) {
            addPieces(l, all);
        }
        pieces = List.copyOf(all);
    }

    /**
     * Makes influence lines of a response, one for each lane, from one solution.
     *
     * @param analysis the structure
     * @param response what is wanted
     * @param lanes where the load travels
     * @param direction direction of the unit force, global axes; (0, 0, −1) for a weight
     * @return one line for each lane, in order
     * @throws IllegalArgumentException if the response or a lane names what is not there
     */
    public static List<InfluenceLine> of(
            LinearAnalysis analysis, Response response, List<Lane> lanes, Vector direction) {
        FrameSolution adjoint = analysis.solve(new LoadCase("influence", response.unitCause()));
        List<InfluenceLine> lines = new ArrayList<>();
        for (Lane lane : lanes) {
            List<ElementState> states = new ArrayList<>();
            for (Lane.Leg leg : lane.legs()) {
                states.add(adjoint.state(analysis.model().indexOfMember(leg.member())));
            }
            lines.add(new InfluenceLine(lane, direction.unit(), List.copyOf(states)));
        }
        return List.copyOf(lines);
    }

    /**
     * Makes the influence line of a response under a weight on a lane.
     *
     * @param analysis the structure
     * @param response what is wanted
     * @param lane where the load travels
     * @return the line for a unit force downward
     * @throws IllegalArgumentException if the response or the lane names what is not there
     */
    public static InfluenceLine of(LinearAnalysis analysis, Response response, Lane lane) {
        return of(analysis, response, List.of(lane), Vector.Z.times(-1)).get(0);
    }

    private void addPieces(int number, List<Piece> all) {
        Lane.Leg leg = lane.legs().get(number);
        double[] breaks = states.get(number).load().breaks(leg.length());
        for (int b = 1; b < breaks.length; b++) {
            double width = (breaks[b] - breaks[b - 1]) / PARTS;
            for (int i = 0; i < PARTS; i++) {
                double low = breaks[b - 1] + i * width;
                double from = leg.backward() ? leg.length() - low - width : low;
                double[] values = new double[5];
                for (int k = 0; k < 5; k++) {
                    double along = from + k * width / 4;
                    // A gap makes the line jump: each piece takes its own side.
                    double inward = (k == 0 ? 1 : k == 4 ? -1 : 0) * 1e-13 * leg.length();
                    double position = leg.position(leg.from() + along + inward);
                    values[k] = value(number, position);
                }
                all.add(new Piece(leg.from() + from, width, Quartic.through(values)));
            }
        }
        if (leg.backward()) {
            int count = PARTS * (breaks.length - 1);
            Collections.reverse(all.subList(all.size() - count, all.size()));
        }
    }

    private double value(int number, double position) {
        ElementState state = states.get(number);
        double[] local = state.movement(position);
        Vector u = state.element().globalVector(local, 0);
        Vector turn = state.element().globalVector(local, 3);
        Vector eccentricity = lane.legs().get(number).eccentricity();
        return direction.dot(u.plus(turn.cross(eccentricity)));
    }

    /**
     * Gives the lane.
     *
     * @return where the load travels
     */
    public Lane lane() {
        return lane;
    }

    /**
     * Gives the influence of a unit force.
     *
     * @param station where on the lane, m
     * @return the response per newton; 0 off the lane
     */
    public double value(double station) {
        if (!(station >= 0 && station <= lane.length())) {
            return 0;
        }
        int number = lane.legAt(station);
        return value(number, lane.legs().get(number).position(station));
    }

    /**
     * A peak of an influence line.
     *
     * @param station where on the lane, m
     * @param value the influence there
     */
    public record Peak(double station, double value) {}

    /**
     * Finds where a force does most.
     *
     * @return the largest value, at least that at the ends
     */
    public Peak largest() {
        return extreme(1);
    }

    /**
     * Finds where a force does most the other way.
     *
     * @return the smallest value
     */
    public Peak smallest() {
        return extreme(-1);
    }

    private Peak extreme(int sense) {
        Peak best = new Peak(0, sense * Double.NEGATIVE_INFINITY);
        for (Peak peak : peaks()) {
            if (sense * peak.value > sense * best.value) {
                best = peak;
            }
        }
        return best;
    }

    /** Ends of pieces and the peaks between them. */
    List<Peak> peaks() {
        List<Peak> all = new ArrayList<>();
        for (Piece piece : pieces) {
            Quartic q = piece.values;
            all.add(new Peak(piece.from, q.value(0)));
            all.add(new Peak(piece.from + piece.width, q.value(1)));
            for (double t : q.stationary()) {
                all.add(new Peak(piece.from + t * piece.width, q.value(t)));
            }
        }
        return all;
    }

    /**
     * Gives the effect of a uniform load on a part of the lane.
     *
     * @param from station where it begins, m
     * @param to station where it ends, m
     * @return ∫ influence ds; times the load per length it is the response
     */
    public double area(double from, double to) {
        double sum = 0;
        for (Piece piece : pieces) {
            double low = Math.max(0, (from - piece.from) / piece.width);
            double high = Math.min(1, (to - piece.from) / piece.width);
            if (high > low) {
                sum += piece.width * piece.values.integral(low, high);
            }
        }
        return sum;
    }

    /**
     * Gives the effect of a uniform load wherever it raises the response.
     *
     * @return area of the positive parts of the line
     */
    public double positiveArea() {
        return signedArea(1, 0, lane.length());
    }

    /**
     * Gives the effect of a uniform load wherever it lowers the response.
     *
     * @return area of the negative parts of the line, not positive
     */
    public double negativeArea() {
        return signedArea(-1, 0, lane.length());
    }

    /**
     * Gives the effect of a uniform load on a part of the lane, wherever it raises the response.
     *
     * @param from station where the part begins, m
     * @param to station where it ends, m
     * @return area of the positive parts of the line between
     */
    public double positiveArea(double from, double to) {
        return signedArea(1, from, to);
    }

    /**
     * Gives the effect of a uniform load on a part of the lane, wherever it lowers the response.
     *
     * @param from station where the part begins, m
     * @param to station where it ends, m
     * @return area of the negative parts of the line between, not positive
     */
    public double negativeArea(double from, double to) {
        return signedArea(-1, from, to);
    }

    private double signedArea(int sense, double from, double to) {
        double sum = 0;
        for (Piece piece : pieces) {
            double low = Math.max(0, (from - piece.from) / piece.width);
            double end = Math.min(1, (to - piece.from) / piece.width);
            if (!(end > low)) {
                continue;
            }
            double[] cuts = piece.values.roots();
            for (int i = 0; i <= cuts.length; i++) {
                double high = i < cuts.length ? Math.max(low, Math.min(end, cuts[i])) : end;
                double part = piece.width * piece.values.integral(low, high);
                sum += sense * part > 0 ? part : 0;
                low = high;
            }
        }
        return sum;
    }
}
