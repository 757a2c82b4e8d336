package org.skewback.quantity;

import java.util.Locale;

/**
 * One output of one call.
 *
 * @param call the call
 * @param component name of the output record's component
 * @param index position in the list, or −1 where the component is a single quantity
 */
record RoutineOutput(RoutineCall call, String component, int index) {

    /** The component's name as words, such as "left vertical" or "ordinates 3". */
    String inWords() {
        String words = component.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
        return index < 0 ? words : words + " " + (index + 1);
    }
}
