package org.skewback.frame;

import java.util.ArrayList;
import java.util.List;

/**
 * A line along members on which loads travel. Its station runs from 0 at its begin, over the flexible
 * lengths of the members one after the other; rigid arms between them have no length on it.
 */
public final class Lane {

    private final String name;
    private final FrameModel model;
    private final List<Leg> legs;
    private final double length;

    /**
     * One member of a lane.
     *
     * @param member name of the member
     * @param backward whether the lane runs from its end to its start
     * @param from station where it begins, m
     * @param length its length, m
     * @param eccentricity from the member's axis to the lane, global axes, m
     */
    record Leg(String member, boolean backward, double from, double length, Vector eccentricity) {

        double position(double station) {
            double along = Math.max(0, Math.min(length, station - from));
            return backward ? length - along : along;
        }
    }

    private Lane(String name, FrameModel model, List<Leg> legs, double length) {
        this.name = name;
        this.model = model;
        this.legs = List.copyOf(legs);
        this.length = length;
    }

    /**
     * Makes a lane along members that join one to the next.
     *
     * @param name what the lane is called
     * @param model the structure
     * @param members the members in the order of travel
     * @param eccentricity vector from the members' axes to the lane, global axes, m
     * @return the lane
     * @throws IllegalArgumentException if there is no member, one is a link, or two do not join
     */
    public static Lane along(
            String name, FrameModel model, List<String> members, Vector eccentricity) {
        if (members.isEmpty()) {
            throw new IllegalArgumentException(
                    "lane " + name + " has no members; allowed is at least one.");
        }
        List<Leg> legs = new ArrayList<>();
        double station = 0;
        for (int i = 0; i < members.size(); i++) {
            Member member = model.member(members.get(i));
            Element element = Element.of(model, member);
            if (element.length() == 0) {
                throw new IllegalArgumentException(
                        "lane "
                                + name
                                + " runs over link "
                                + member.name()
                                + "; allowed are members with a length.");
            }
            Member near =
                    model.member(members.get(i == 0 ? Math.min(1, members.size() - 1) : i - 1));
            boolean atStart = touches(near, member.start());
            boolean atEnd = touches(near, member.end());
            if (!atStart && !atEnd) {
                throw new IllegalArgumentException(
                        "members "
                                + near.name()
                                + " and "
                                + member.name()
                                + " of lane "
                                + name
                                + " do not join; allowed are members with a common node.");
            }
            boolean backward =
                    members.size() > 1 && (i == 0 ? atStart && !atEnd : atEnd && !atStart);
            legs.add(new Leg(member.name(), backward, station, element.length(), eccentricity));
            station += element.length();
        }
        return new Lane(name, model, legs, station);
    }

    private static boolean touches(Member member, String node) {
        return member.start().equals(node) || member.end().equals(node);
    }

    /**
     * Gives the name.
     *
     * @return what the lane is called
     */
    public String name() {
        return name;
    }

    /**
     * Gives the length.
     *
     * @return sum of the lengths of its members, m
     */
    public double length() {
        return length;
    }

    /**
     * Gives the loads that put a force on the lane.
     *
     * @param station where on the lane, m
     * @param force the force, global axes, N
     * @return one load on the member there; none off the lane
     */
    public List<Load> force(double station, Vector force) {
        if (station < 0 || station > length) {
            return List.of();
        }
        Leg leg = legs.get(legAt(station));
        return List.of(
                new PointLoad(
                        leg.member(),
                        leg.position(station),
                        force,
                        leg.eccentricity().cross(force),
                        LoadAxes.GLOBAL));
    }

    FrameModel model() {
        return model;
    }

    List<Leg> legs() {
        return legs;
    }

    /** Number of the leg at a station; at a joint, of the one that ends there. */
    int legAt(double station) {
        int low = 0;
        int high = legs.size() - 1;
        while (low < high) {
            int middle = (low + high) / 2;
            Leg leg = legs.get(middle);
            if (station <= leg.from() + leg.length()) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }
}
