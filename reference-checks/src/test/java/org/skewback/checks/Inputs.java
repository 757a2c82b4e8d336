package org.skewback.checks;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.skewback.quantity.Quantity;

/**
 * The inputs of a check, written as {@code span = 400 m; loads = 300, 600 kN; axis = parabola}.
 *
 * <p>A routine takes what it needs by name; what is left over at the end is a mistake in the row.
 */
final class Inputs {

    private final Map<String, String> values = new LinkedHashMap<>();
    private final Set<String> taken = new HashSet<>();

    Inputs(String text) {
        if (text.isBlank()) {
            return;
        }
        for (String part : text.split(";", -1)) {
            String[] sides = part.split("=", -1);
            if (sides.length != 2 || sides[0].isBlank() || sides[1].isBlank()) {
                throw new IllegalArgumentException(
                        "input \"" + part.strip() + "\"; allowed is name = value unit.");
            }
            if (values.put(sides[0].strip(), sides[1].strip()) != null) {
                throw new IllegalArgumentException(
                        "input " + sides[0].strip() + " is given twice.");
            }
        }
    }

    Quantity quantity(String name) {
        List<Quantity> all = quantities(name);
        if (all.size() != 1) {
            throw new IllegalArgumentException(
                    "input " + name + " has " + all.size() + " values; allowed is one.");
        }
        return all.get(0);
    }

    /** A number in SI base units. */
    double si(String name) {
        return quantity(name).si();
    }

    boolean has(String name) {
        return values.containsKey(name);
    }

    /** Several numbers separated by commas, the unit after the last. */
    List<Quantity> quantities(String name) {
        String text = text(name);
        int gap = text.lastIndexOf(' ');
        boolean plain = gap < 0 || text.charAt(gap - 1) == ',';
        String unit = plain ? "" : text.substring(gap + 1);
        String numbers = plain ? text : text.substring(0, gap);
        List<Quantity> quantities = new ArrayList<>();
        for (String number : numbers.split(",", -1)) {
            quantities.add(Quantity.of(Double.parseDouble(number.strip()), unit));
        }
        return List.copyOf(quantities);
    }

    String text(String name) {
        String value = values.get(name);
        if (value == null) {
            throw new IllegalArgumentException("there is no input " + name + ".");
        }
        taken.add(name);
        return value;
    }

    /** Refuses inputs that the routine did not ask for. */
    void requireAllTaken() {
        for (String name : values.keySet()) {
            if (!taken.contains(name)) {
                throw new IllegalArgumentException(
                        "input " + name + " is not one of the routine's.");
            }
        }
    }
}
