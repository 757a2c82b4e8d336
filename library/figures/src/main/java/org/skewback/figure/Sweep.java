package org.skewback.figure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.skewback.display.Displayable;
import org.skewback.quantity.Quantity;
import org.skewback.sheet.Figure;
import org.skewback.sheet.FigureStates;

/**
 * A row of figures, one for each value of a parameter, of which a slider shows one at a time. All
 * states are computed beforehand, so it needs neither a kernel nor a script to be moved.
 *
 * <pre>{@code
 * Sweep.of("Line of thrust under a moving load", "position of the load", positions,
 *          x -> ArchElevation.…)
 *      .opening(quarter)
 *      .printing(List.of(start, quarter, crown));
 * }</pre>
 *
 * <p>On a sheet too it can be moved, and the record keeps every state with its value; whatever shows
 * only one picture shows the opening state. Paper shows the states chosen for printing side by side.
 * Immutable.
 */
public final class Sweep implements Figure, Displayable {

    /** MIME type under which a notebook keeps the states, for whoever issues it. */
    public static final String TYPE = "application/vnd.skewback.sweep+json";

    /** The most states that a sweep may have. */
    public static final int MOST_STATES = FigureStates.MOST;

    private static final int MOST_PRINTED = 6;

    /**
     * One state.
     *
     * @param label the parameter's value with its unit, as it is printed
     * @param figure what is drawn for it
     */
    record State(String label, Figure figure) {

        String description() {
            return label + ": " + figure.title() + ". " + figure.description();
        }
    }

    private final String title;
    private final String parameter;
    private final List<Quantity> values;
    private final List<State> states;
    private final int opening;
    private final List<Integer> printed;

    private Sweep(
            String title,
            String parameter,
            List<Quantity> values,
            List<State> states,
            int opening,
            List<Integer> printed) {
        this.title = title;
        this.parameter = parameter;
        this.values = values;
        this.states = states;
        this.opening = opening;
        this.printed = printed;
    }

    /**
     * Draws a state for each value. It opens on the first; paper shows the first, the middle and the
     * last.
     *
     * @param title the sweep's title, one line
     * @param parameter what varies, in words
     * @param values its values in the order of the slider, 2 to {@value #MOST_STATES}, of one
     *     dimension and each printed differently
     * @param draw draws the figure of a value
     * @return the sweep
     * @throws IllegalArgumentException if a text is blank, or the values are too few, too many, of
     *     different dimensions or alike
     */
    public static Sweep of(
            String title,
            String parameter,
            List<Quantity> values,
            Function<Quantity, Figure> draw) {
        Check.words("title of the sweep", title);
        Check.words("parameter of the sweep", parameter);
        if (values.size() < 2 || values.size() > MOST_STATES) {
            throw new IllegalArgumentException(
                    "sweep \""
                            + title
                            + "\" has "
                            + values.size()
                            + " states; it must have 2 to "
                            + MOST_STATES);
        }
        List<State> states = new ArrayList<>();
        Set<String> labels = new LinkedHashSet<>();
        for (Quantity value : values) {
            if (!value.dimension().equals(values.get(0).dimension())) {
                throw new IllegalArgumentException(
                        "sweep \""
                                + title
                                + "\" has the values "
                                + written(values.get(0))
                                + " and "
                                + written(value)
                                + "; all must be of one dimension");
            }
            String label = written(value);
            if (!labels.add(label)) {
                throw new IllegalArgumentException(
                        "sweep \"" + title + "\" has two states for " + label);
            }
            states.add(new State(label, draw.apply(value)));
        }
        Set<Integer> printed = new LinkedHashSet<>();
        printed.add(0);
        printed.add(states.size() / 2);
        printed.add(states.size() - 1);
        return new Sweep(
                title,
                parameter,
                List.copyOf(values),
                List.copyOf(states),
                0,
                List.copyOf(printed));
    }

    /**
     * Chooses the state that it opens on.
     *
     * @param value one of the values
     * @return the sweep that opens on it
     * @throws IllegalArgumentException if it is none of the values
     */
    public Sweep opening(Quantity value) {
        return new Sweep(title, parameter, values, states, index(value), printed);
    }

    /**
     * Chooses the states that paper shows side by side.
     *
     * @param shown one to six of the values, in the order to print
     * @return the sweep that prints them
     * @throws IllegalArgumentException if one is none of the values, or there are too few or too many
     */
    public Sweep printing(List<Quantity> shown) {
        if (shown.isEmpty() || shown.size() > MOST_PRINTED) {
            throw new IllegalArgumentException(
                    "sweep \""
                            + title
                            + "\" is to print "
                            + shown.size()
                            + " states; allowed: 1 to "
                            + MOST_PRINTED);
        }
        return new Sweep(
                title,
                parameter,
                values,
                states,
                opening,
                shown.stream().map(this::index).distinct().toList());
    }

    private int index(Quantity value) {
        for (int i = 0; i < values.size(); i++) {
            if (values.get(i).dimension().equals(value.dimension())
                    && values.get(i).si() == value.si()) {
                return i;
            }
        }
        throw new IllegalArgumentException(
                "sweep \""
                        + title
                        + "\" has no state for "
                        + written(value)
                        + "; it has "
                        + String.join(", ", states.stream().map(State::label).toList()));
    }

    private static String written(Quantity value) {
        return Tornado.amount(value.si(), value.unit());
    }

    String parameter() {
        return parameter;
    }

    List<State> drawn() {
        return states;
    }

    int opening() {
        return opening;
    }

    List<Integer> printed() {
        return printed;
    }

    @Override
    public String title() {
        return title;
    }

    @Override
    public String description() {
        State state = states.get(opening);
        return "One of "
                + states.size()
                + " states, from "
                + states.get(0).label()
                + " to "
                + states.get(states.size() - 1).label()
                + ", of the "
                + parameter
                + ": here "
                + state.label()
                + ". "
                + state.figure().description();
    }

    @Override
    public String svg() {
        return states.get(opening).figure().svg();
    }

    @Override
    public byte[] png() {
        return states.get(opening).figure().png();
    }

    @Override
    public Optional<FigureStates> states() {
        return Optional.of(kept());
    }

    FigureStates kept() {
        List<FigureStates.State> all = new ArrayList<>();
        for (int i = 0; i < states.size(); i++) {
            State state = states.get(i);
            Quantity value = values.get(i);
            all.add(
                    new FigureStates.State(
                            value.unit().fromSi(value.si()),
                            value.unit().symbol(),
                            state.label(),
                            state.description(),
                            state.figure().svg()));
        }
        return new FigureStates(parameter, opening, printed, all);
    }

    @Override
    public Map<String, String> display() {
        Map<String, String> bundle = new LinkedHashMap<>();
        bundle.put(TYPE, SweepWriter.json(this));
        bundle.put("text/html", SweepWriter.html(this));
        bundle.put("text/plain", toString());
        return Collections.unmodifiableMap(bundle);
    }

    @Override
    public String toString() {
        return title + "\n" + description();
    }
}
