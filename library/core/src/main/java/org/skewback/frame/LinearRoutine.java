package org.skewback.frame;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.skewback.data.CsvTable;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/**
 * Linear statics of a frame as a routine, so that a sheet can hold its results with all that they come
 * from: the model as tables, in which fields such as {@code =g} stand for quantities of the sheet.
 */
public final class LinearRoutine implements Routine<LinearRoutine.Input, LinearRoutine.Output> {

    private static final Pattern FORCE = Pattern.compile("(\\S+) of (.+) at (.+)");
    private static final Pattern NODE =
            Pattern.compile("(movement|reaction) of (.+) ((?:along|about) [xyz])");

    /** Makes the routine. */
    public LinearRoutine() {}

    /**
     * A frame, its loads, and what is wanted.
     *
     * @param nodes table of nodes, CSV; for all tables see {@link FrameTables}
     * @param materials table of materials, CSV
     * @param sections table of sections, CSV
     * @param members table of members, CSV
     * @param supports table of supports, CSV
     * @param loads table of loads, CSV
     * @param names names of the quantities in {@code given}, separated by {@code ;}
     * @param given quantities that fields such as {@code =g} stand for
     * @param combination cases with factors, such as {@code 1.35 G + 1.5 Q}
     * @param responses what is wanted, separated by {@code ;}: {@code M_y of beam at 4.0} (a force, a
     *     member, a position in m), {@code movement of n along z}, {@code reaction of n about y}
     */
    public record Input(
            String nodes,
            String materials,
            String sections,
            String members,
            String supports,
            String loads,
            String names,
            List<Quantity> given,
            String combination,
            String responses) {

        /**
         * Copies the list.
         *
         * @param nodes table of nodes, CSV
         * @param materials table of materials, CSV
         * @param sections table of sections, CSV
         * @param members table of members, CSV
         * @param supports table of supports, CSV
         * @param loads table of loads, CSV
         * @param names names of the quantities in {@code given}, separated by {@code ;}
         * @param given quantities that fields stand for
         * @param combination cases with factors
         * @param responses what is wanted, separated by {@code ;}
         */
        public Input {
            given = List.copyOf(given);
        }
    }

    /**
     * What was wanted.
     *
     * @param responses one quantity for each response, in N, N·m, m or rad
     * @param residual residual of equilibrium, see {@link Equilibrium}
     */
    public record Output(List<Quantity> responses, Quantity residual) {

        /**
         * Copies the list.
         *
         * @param responses one quantity for each response
         * @param residual residual of equilibrium
         */
        public Output {
            responses = List.copyOf(responses);
        }
    }

    @Override
    public String name() {
        return "frame.linear";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input input, Stop stop) {
        Map<String, Quantity> given = new HashMap<>();
        List<String> names = parts(input.names(), ";");
        if (names.size() != input.given().size()) {
            throw new IllegalArgumentException(
                    "number of quantities given is "
                            + input.given().size()
                            + "; allowed is one for each of the names "
                            + names
                            + ".");
        }
        for (int i = 0; i < names.size(); i++) {
            given.put(names.get(i), input.given().get(i));
        }
        FrameModel model =
                FrameTables.model(
                        new FrameTables.Tables(
                                CsvTable.parse("nodes", input.nodes()),
                                CsvTable.parse("materials", input.materials()),
                                CsvTable.parse("sections", input.sections()),
                                CsvTable.parse("members", input.members()),
                                CsvTable.parse("supports", input.supports())),
                        given);
        List<FrameSolution> cases =
                LinearAnalysis.of(model)
                        .solve(FrameTables.loads(CsvTable.parse("loads", input.loads()), given));
        stop.check();
        FrameSolution solution = Superposition.of(cases, combination(input.combination()));
        List<Quantity> responses = new ArrayList<>();
        for (String response : parts(input.responses(), ";")) {
            responses.add(response(solution, response));
        }
        return new Output(responses, Quantity.of(solution.equilibrium().residual(), ""));
    }

    private static List<String> parts(String text, String separator) {
        List<String> parts = new ArrayList<>();
        for (String part : text.split(separator, -1)) {
            if (!part.isBlank()) {
                parts.add(part.strip());
            }
        }
        return parts;
    }

    private static Combination combination(String text) {
        Map<String, Double> factors = new HashMap<>();
        for (String term : parts(text, "\\+")) {
            int gap = term.indexOf(' ');
            try {
                double factor = gap < 0 ? 1 : Double.parseDouble(term.substring(0, gap));
                factors.merge(term.substring(gap + 1).strip(), factor, Double::sum);
            } catch (NumberFormatException e) {
                throw new IllegalArgumentException(
                        "combination is \"" + text + "\"; allowed is such as 1.35 G + 1.5 Q.", e);
            }
        }
        return new Combination(text, factors);
    }

    private static Quantity response(FrameSolution solution, String text) {
        Matcher node = NODE.matcher(text);
        if (node.matches()) {
            Motion motion = motion(node.group(3));
            boolean reaction = node.group(1).equals("reaction");
            Response response =
                    reaction
                            ? motion.isRotation()
                                    ? Response.reactionMoment(node.group(2), motion.axis())
                                    : Response.reaction(node.group(2), motion.axis())
                            : motion.isRotation()
                                    ? Response.rotation(node.group(2), motion.axis())
                                    : Response.displacement(node.group(2), motion.axis());
            String unit =
                    reaction
                            ? motion.isRotation() ? "N·m" : "N"
                            : motion.isRotation() ? "rad" : "m";
            return Quantity.of(response.in(solution), unit);
        }
        Matcher force = FORCE.matcher(text);
        if (force.matches()) {
            for (ForceComponent component : ForceComponent.values()) {
                if (component.symbol().equals(force.group(1))) {
                    return Quantity.of(
                            solution.member(force.group(2))
                                    .at(position(text, force.group(3)))
                                    .get(component),
                            component.isMoment() ? "N·m" : "N");
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

    private static Motion motion(String words) {
        for (Motion motion : Motion.values()) {
            if (motion.toString().equals(words)) {
                return motion;
            }
        }
        throw refused(words);
    }

    private static IllegalArgumentException refused(String response) {
        return new IllegalArgumentException(
                "response wanted is \""
                        + response
                        + "\"; allowed are such as \"M_y of beam at 4.0\", \"movement of n along"
                        + " z\" and \"reaction of n about y\".");
    }
}
