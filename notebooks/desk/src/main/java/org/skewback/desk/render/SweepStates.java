package org.skewback.desk.render;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.skewback.sheet.FigureStates;

/**
 * The states of a sweep, as a notebook keeps them.
 *
 * @param title title of the sweep
 * @param parameter what varies, in words
 * @param opening index of the state to open on
 * @param printed indices of the states that paper shows
 * @param states the states in order
 */
record SweepStates(
        String title, String parameter, int opening, List<Integer> printed, List<State> states) {

    /** MIME type under which a notebook keeps them. */
    static final String MIME = "application/vnd.skewback.sweep+json";

    /** The most states that a page can show; its style has a rule for each. */
    static final int MOST = FigureStates.MOST;

    private static final String FORMAT = "skewback-sweep";
    private static final int EDITION = 1;

    /**
     * One state.
     *
     * @param label the parameter's value with its unit
     * @param description what is drawn, in words
     * @param base64 the SVG
     */
    record State(String label, String description, String base64) {}

    /** Keeps copies of the lists. */
    SweepStates {
        printed = List.copyOf(printed);
        states = List.copyOf(states);
    }

    /** Takes the states that a record keeps of a figure. */
    static SweepStates of(String title, FigureStates kept) {
        List<State> states = new ArrayList<>();
        for (FigureStates.State state : kept.states()) {
            states.add(new State(state.label(), state.description(), base64(state.svg())));
        }
        return new SweepStates(title, kept.parameter(), kept.opening(), kept.printed(), states);
    }

    private static String base64(String svg) {
        return Base64.getEncoder().encodeToString(svg.getBytes(StandardCharsets.UTF_8));
    }

    /** Reads what a notebook keeps, or gives null where it is no sweep that this program knows. */
    static @Nullable SweepStates read(JsonNode shown) {
        if (!shown.path("format").asText("").equals(FORMAT)
                || shown.path("edition").asInt() != EDITION) {
            return null;
        }
        List<State> states = new ArrayList<>();
        for (JsonNode state : shown.path("states")) {
            states.add(
                    new State(
                            state.path("label").asText(""),
                            state.path("description").asText(""),
                            base64(state.path("svg").asText(""))));
        }
        int opening = shown.path("opening").asInt(-1);
        List<Integer> printed = new ArrayList<>();
        shown.path("printed").forEach(index -> printed.add(index.asInt(-1)));
        boolean inside =
                printed.stream().allMatch(i -> i >= 0 && i < states.size())
                        && opening >= 0
                        && opening < states.size();
        return states.size() < 2 || states.size() > MOST || printed.isEmpty() || !inside
                ? null
                : new SweepStates(
                        shown.path("title").asText(""),
                        shown.path("parameter").asText(""),
                        opening,
                        printed,
                        states);
    }
}
