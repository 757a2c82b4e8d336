package org.skewback.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.skewback.quantity.Quantity;

/**
 * A response asked for in words: {@code M_y of beam at 4.0}, {@code movement of n along z} or {@code
 * reaction of n about y}.
 *
 * @param place the member or node
 * @param position distance from the start of the member, m
 * @param force the force, where one is wanted
 * @param motion the movement or reaction, where one is wanted
 * @param reaction whether a reaction is wanted
 */
record Wanted(
        String place,
        double position,
        @Nullable ForceComponent force,
        @Nullable Motion motion,
        boolean reaction) {

    private static final Pattern FORCE = Pattern.compile("(\\S+) of (.+) at (.+)");
    private static final Pattern NODE =
            Pattern.compile("(movement|reaction) of (.+) ((?:along|about) [xyz])");

    static List<Wanted> all(String texts) {
        List<Wanted> all = new ArrayList<>();
        for (String text : FrameInput.parts(texts, ";")) {
            all.add(of(text));
        }
        return List.copyOf(all);
    }

    private static Wanted of(String text) {
        Matcher node = NODE.matcher(text);
        if (node.matches()) {
            for (Motion motion : Motion.values()) {
                if (motion.toString().equals(node.group(3))) {
                    return new Wanted(
                            node.group(2), 0, null, motion, node.group(1).equals("reaction"));
                }
            }
        }
        Matcher force = FORCE.matcher(text);
        if (force.matches()) {
            for (ForceComponent component : ForceComponent.values()) {
                if (component.symbol().equals(force.group(1))) {
                    return new Wanted(
                            force.group(2), position(text, force.group(3)), component, null, false);
                }
            }
        }
        throw refused(text);
    }

    private static double position(String text, String number) {
        try {
            return Double.parseDouble(number);
        } catch (NumberFormatException e) {
            throw refused(text);
        }
    }

    private static IllegalArgumentException refused(String text) {
        return new IllegalArgumentException(
                "response wanted is \""
                        + text
                        + "\"; allowed are such as \"M_y of beam at 4.0\", \"movement of n along"
                        + " z\" and \"reaction of n about y\".");
    }

    private static double of(Motion motion, Vector along, Vector about) {
        return motion.isRotation() ? about.get(motion.index() - 3) : along.get(motion.index());
    }

    double in(FrameSolution solution) {
        if (force != null) {
            return solution.member(place).at(position).get(force);
        } else if (motion == null) {
            throw new IllegalStateException("nothing is wanted");
        } else if (reaction) {
            Reaction found = solution.reaction(place);
            return of(motion, found.force(), found.moment());
        }
        Movement found = solution.movement(place);
        return of(motion, found.translation(), found.rotation());
    }

    double in(SpectrumResponse response) {
        if (force != null) {
            return response.forces(place, position).get(force);
        } else if (motion == null) {
            throw new IllegalStateException("nothing is wanted");
        } else if (reaction) {
            Reaction found = response.reaction(place);
            return of(motion, found.force(), found.moment());
        }
        Movement found = response.movement(place);
        return of(motion, found.translation(), found.rotation());
    }

    double[] in(FrameHistory history) {
        if (force != null) {
            return history.force(place, position, force);
        } else if (motion == null) {
            throw new IllegalStateException("nothing is wanted");
        }
        return reaction ? history.reaction(place, motion) : history.movement(place, motion);
    }

    Quantity quantity(double value) {
        if (motion != null && !reaction) {
            return Quantity.of(value, motion.isRotation() ? "rad" : "m");
        }
        boolean moment = force != null ? force.isMoment() : motion != null && motion.isRotation();
        return Quantity.of(value, moment ? "N·m" : "N");
    }
}
