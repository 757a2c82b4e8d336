package org.skewback.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What a unit force anywhere on a deck does to a response: influence lines of lanes side by side,
 * linear between them. All lines come from one solution.
 */
public final class InfluenceSurface {

    private final List<Strip> strips;

    /** A lane and how far across it lies. */
    private record Strip(double across, InfluenceLine line) {}

    private InfluenceSurface(List<Strip> strips) {
        this.strips = strips;
    }

    /**
     * Makes the influence surface of a response under a weight.
     *
     * @param analysis the structure
     * @param response what is wanted
     * @param lanes lanes side by side, at least one
     * @param across how far across each lane lies, m, each different
     * @return the surface for a unit force downward
     * @throws IllegalArgumentException if numbers of lanes and places differ, two places are equal, or
     *     there is no lane
     */
    public static InfluenceSurface of(
            LinearAnalysis analysis, Response response, List<Lane> lanes, double... across) {
        if (lanes.isEmpty() || lanes.size() != across.length) {
            throw new IllegalArgumentException(
                    "an influence surface of "
                            + lanes.size()
                            + " lanes at "
                            + across.length
                            + " places; allowed is at least one lane, each with its place.");
        }
        List<InfluenceLine> lines = InfluenceLine.of(analysis, response, lanes, Vector.Z.times(-1));
        List<Strip> strips = new ArrayList<>();
        for (int i = 0; i < across.length; i++) {
            strips.add(new Strip(Require.finite("place of a lane", across[i], "m"), lines.get(i)));
        }
        strips.sort(Comparator.comparingDouble(Strip::across));
        for (int i = 1; i < across.length; i++) {
            if (strips.get(i).across == strips.get(i - 1).across) {
                throw Require.refused(
                        "place of two lanes", strips.get(i).across, "m", "different places");
            }
        }
        return new InfluenceSurface(List.copyOf(strips));
    }

    /**
     * Gives the influence of a unit force.
     *
     * @param station distance along the lanes, m
     * @param across distance across, m, between the outermost lanes
     * @return the response per newton
     * @throws IllegalArgumentException if it lies outside the lanes
     */
    public double value(double station, double across) {
        Strip first = strips.get(0);
        Strip last = strips.get(strips.size() - 1);
        Require.within("distance across", across, first.across, last.across, "m");
        for (int i = 1; i < strips.size(); i++) {
            Strip right = strips.get(i);
            if (across <= right.across) {
                Strip left = strips.get(i - 1);
                double share = (across - left.across) / (right.across - left.across);
                return (1 - share) * left.line.value(station) + share * right.line.value(station);
            }
        }
        return first.line.value(station);
    }

    /**
     * Lists the lines.
     *
     * @return one for each lane, from the smallest distance across
     */
    public List<InfluenceLine> lines() {
        return strips.stream().map(Strip::line).toList();
    }
}
