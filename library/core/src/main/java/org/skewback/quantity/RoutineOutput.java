package org.skewback.quantity;

/**
 * One output of one call.
 *
 * @param call the call
 * @param component name of the output record's component
 * @param index position in the list, or −1 where the component is a single quantity
 */
record RoutineOutput(RoutineCall call, String component, int index) {

    String inWords() {
        return index < 0 ? component : component + " " + (index + 1);
    }
}
