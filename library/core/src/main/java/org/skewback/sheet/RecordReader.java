package org.skewback.sheet;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.skewback.quantity.FlatCall;
import org.skewback.quantity.FlatGraph;
import org.skewback.quantity.FlatNode;
import org.skewback.quantity.InterpolationTable;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;

/** Reads records back; runs nothing and trusts nothing. */
public final class RecordReader {

    /** All that edition 2 says is said in the same way since. */
    private static final int OLDEST = 2;

    private final List<Quantity> nodes;

    private RecordReader(List<Quantity> nodes) {
        this.nodes = nodes;
    }

    /**
     * Reads a record.
     *
     * @param json what {@link RecordWriter#write} wrote
     * @return the record, with its quantities and the graph behind them
     * @throws IllegalArgumentException when the text is no record, or of a newer edition; says where
     */
    public static SheetRecord read(String json) {
        Json record = Json.object(json, "the record");
        return read(record, graph(record));
    }

    static SheetRecord read(Json record, FlatGraph graph) {
        RecordReader reader = new RecordReader(graph.restore());
        return new SheetRecord(
                record.text("number"),
                record.text("title"),
                record.text("library"),
                record.objects("entries").stream().map(reader::entry).toList());
    }

    /** Takes the graph as it stands in a record of this edition or an older one. */
    static FlatGraph graph(Json record) {
        if (!record.text("format").equals(RecordWriter.FORMAT)) {
            throw new IllegalArgumentException(
                    "the record's format is \""
                            + record.text("format")
                            + "\"; allowed: \""
                            + RecordWriter.FORMAT
                            + "\"");
        }
        int edition = record.whole("edition");
        if (edition < OLDEST || edition > RecordWriter.EDITION) {
            throw new IllegalArgumentException(
                    "the record is of edition "
                            + edition
                            + "; this library reads editions "
                            + OLDEST
                            + " to "
                            + RecordWriter.EDITION);
        }
        return nodes(record);
    }

    /** Takes the fields of a graph laid flat. */
    static FlatGraph nodes(Json record) {
        return new FlatGraph(
                record.objects("nodes").stream().map(RecordReader::node).toList(),
                record.objects("calls").stream().map(RecordReader::call).toList(),
                record.has("tables")
                        ? record.objects("tables").stream()
                                .map(RecordReader::interpolation)
                                .toList()
                        : List.of());
    }

    private Entry entry(Json json) {
        return new Entry(
                json.text("id"),
                json.textOrNull("cell"),
                block(json),
                json.truth("stale"),
                json.has("changes")
                        ? json.objects("changes").stream().map(this::change).toList()
                        : List.of());
    }

    private Change change(Json json) {
        return new Change(quantity(json, "was"), json.has("now") ? quantity(json, "now") : null);
    }

    private Block block(Json json) {
        String kind = json.text("kind");
        return switch (kind) {
            case "purpose" -> new Block.Purpose(json.text("text"));
            case "assumption" -> new Block.Assumption(json.text("text"));
            case "caution" -> new Block.Caution(json.text("text"));
            case "conclusion" -> new Block.Conclusion(json.text("text"));
            case "given" -> new Block.Given(quantity(json, "node"));
            case "step" -> new Block.Step(quantity(json, "node"));
            case "series" ->
                    new Block.Series(
                            json.text("symbol"),
                            json.text("note"),
                            source(json.object("source")),
                            quantities(json, "nodes"));
            case "table" ->
                    new Block.Tabulated(
                            new Table(
                                    json.text("title"),
                                    json.objects("columns").stream().map(this::column).toList()),
                            restsOn(json));
            case "figure" ->
                    new Block.Drawn(
                            json.text("title"),
                            json.text("description"),
                            json.text("svg"),
                            restsOn(json),
                            json.has("states") ? states(json) : null);
            case "check" ->
                    new Block.Checked(
                            new Check(
                                    json.text("title"),
                                    quantity(json, "demand"),
                                    json.has("least") ? quantity(json, "least") : null,
                                    json.has("most") ? quantity(json, "most") : null));
            case "note" -> new Block.Note(json.text("text"));
            case "section" -> new Block.Section(json.whole("level"), json.text("title"));
            case "signature" ->
                    new Block.Signed(role(json.text("role")), json.text("name"), date(json));
            case "comment" -> new Block.Comment(json.text("by"), date(json), json.text("text"));
            default ->
                    throw new IllegalArgumentException(
                            "the record has a block of kind \"" + kind + "\", which is not known");
        };
    }

    private static FigureStates states(Json json) {
        return new FigureStates(
                json.text("parameter"),
                json.whole("opening"),
                json.wholes("printed"),
                json.objects("states").stream()
                        .map(
                                state ->
                                        new FigureStates.State(
                                                state.number("value"),
                                                state.text("unit"),
                                                state.text("label"),
                                                state.text("description"),
                                                state.text("svg")))
                        .toList());
    }

    private Column column(Json json) {
        String heading = json.text("heading");
        String unit = json.text("unit");
        if (!json.has("nodes")) {
            return Column.texts(heading, json.texts("texts"));
        }
        List<Quantity> values = quantities(json, "nodes");
        if (values.isEmpty()) {
            throw new IllegalArgumentException(
                    "the record's column \"" + heading + "\" has an empty list of nodes");
        }
        return Column.of(heading, unit, values, precision(heading, json));
    }

    private static Precision precision(String heading, Json json) {
        Precision found = null;
        for (Precision.Kind kind : Precision.Kind.values()) {
            if (json.has(kind.word())) {
                if (found != null) {
                    throw new IllegalArgumentException(
                            "the record's column \""
                                    + heading
                                    + "\" counts its digits in two ways");
                }
                found = new Precision(kind, json.whole(kind.word()));
            }
        }
        return found == null ? Precision.decimals(json.whole("decimals")) : found;
    }

    private Quantity quantity(Json json, String name) {
        return quantity(json.whole(name));
    }

    private List<Quantity> restsOn(Json json) {
        return json.has("basis") ? quantities(json, "basis") : List.of();
    }

    private List<Quantity> quantities(Json json, String name) {
        List<Quantity> quantities = new ArrayList<>();
        for (int position : json.wholes(name)) {
            quantities.add(quantity(position));
        }
        return quantities;
    }

    private Quantity quantity(int position) {
        if (position < 0 || position >= nodes.size()) {
            throw new IllegalArgumentException(
                    "the record refers to node " + position + " of " + nodes.size());
        }
        return nodes.get(position);
    }

    private static FlatNode node(Json json) {
        return new FlatNode(
                json.text("operation"),
                json.has("arguments") ? json.wholes("arguments") : List.of(),
                json.number("value"),
                json.texts("dimension"),
                json.textOrNull("unit"),
                json.textOrNull("symbol"),
                json.has("note") ? json.text("note") : "",
                json.has("source") ? source(json.object("source")) : null,
                json.has("detail") ? json.text("detail") : "",
                json.has("call") ? json.whole("call") : -1);
    }

    private static FlatCall call(Json json) {
        return new FlatCall(
                json.text("name"),
                json.whole("edition"),
                json.wholes("inputs"),
                json.object("components").fields());
    }

    private static InterpolationTable interpolation(Json json) {
        return new InterpolationTable(
                json.text("symbol"),
                json.text("note"),
                axis(json.object("x")),
                axis(json.object("y")),
                source(json.object("source")));
    }

    private static InterpolationTable.Axis axis(Json json) {
        return new InterpolationTable.Axis(
                json.text("unit"),
                InterpolationTable.Scale.ofWords(json.text("scale")),
                json.numbers("values"));
    }

    private static Source source(Json json) {
        String kind = json.text("kind");
        try {
            return new Source(
                    Source.Kind.valueOf(kind.toUpperCase(Locale.ROOT).replace(' ', '_')),
                    json.text("reference"),
                    json.text("place"));
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "the record has a source of kind \"" + kind + "\"", e);
        }
    }

    private static Role role(String words) {
        for (Role role : Role.values()) {
            if (role.inWords().equals(words)) {
                return role;
            }
        }
        throw new IllegalArgumentException(
                "the record has a signature \"" + words + "\", which is not known");
    }

    private static LocalDate date(Json json) {
        String text = json.text("date");
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(
                    "the record has the date \"" + text + "\", which is none", e);
        }
    }
}
