package org.skewback.sheet;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;
import org.skewback.quantity.FlatCall;
import org.skewback.quantity.FlatGraph;
import org.skewback.quantity.FlatNode;
import org.skewback.quantity.InterpolationTable;
import org.skewback.quantity.Numerals;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;

/**
 * Writes records as JSON: the same bytes for the same content.
 *
 * <p>Numbers are the shortest decimals that read back as the same double; lines end in LF.
 */
public final class RecordWriter {

    /** What every record says it is. */
    public static final String FORMAT = "skewback-record";

    /** Edition of the format; rises whenever an older reader could not read a newer record. */
    public static final int EDITION = 3;

    /** Most characters that one text of a record may have. */
    public static final int LONGEST_TEXT = 32 << 20;

    private final JsonGenerator json;

    RecordWriter(JsonGenerator json) {
        this.json = json;
    }

    /**
     * Writes a record.
     *
     * @param record the record
     * @return JSON text that ends in a line feed
     */
    public static String write(SheetRecord record) {
        return text(writer -> writer.record(record)) + "\n";
    }

    /** Writes which blocks of which sheet a cell showed. */
    static String part(Part part) {
        return text(
                writer -> {
                    writer.json.writeStartObject();
                    writer.json.writeStringField("format", "skewback-part");
                    writer.json.writeNumberField("edition", EDITION);
                    writer.json.writeStringField("number", part.sheet().number());
                    writer.json.writeStringField("title", part.sheet().title());
                    writer.json.writeArrayFieldStart("blocks");
                    for (Entry entry : part.entries()) {
                        writer.json.writeString(entry.id());
                    }
                    writer.json.writeEndArray();
                    // A sheet counts its blocks; these tell them from those of a namesake.
                    writer.json.writeArrayFieldStart("sums");
                    for (Entry entry : part.entries()) {
                        writer.json.writeString(sum(PlainSheet.words(entry)));
                    }
                    writer.json.writeEndArray();
                    writer.json.writeEndObject();
                });
    }

    private static String sum(String words) {
        CRC32 sum = new CRC32();
        sum.update(words.getBytes(StandardCharsets.UTF_8));
        return Long.toHexString(sum.getValue());
    }

    private interface Writing {
        void with(RecordWriter writer) throws IOException;
    }

    private static String text(Writing writing) {
        StringWriter text = new StringWriter();
        DefaultIndenter lines = new DefaultIndenter(" ", "\n");
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(lines));
            writing.with(new RecordWriter(json));
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory failed", e);
        }
        return text.toString();
    }

    private void record(SheetRecord record) throws IOException {
        FlatGraph.Positions positions = FlatGraph.lay(record.quantities());
        json.writeStartObject();
        json.writeStringField("format", FORMAT);
        json.writeNumberField("edition", EDITION);
        json.writeStringField("number", record.number());
        json.writeStringField("title", record.title());
        json.writeStringField("library", record.library());
        json.writeArrayFieldStart("entries");
        for (Entry entry : record.entries()) {
            entry(entry, positions);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("checks");
        for (Entry entry : record.checks()) {
            check(entry, positions);
        }
        json.writeEndArray();
        graph(positions.graph());
        json.writeEndObject();
    }

    /** Writes the fields of a graph laid flat. */
    void graph(FlatGraph graph) throws IOException {
        json.writeArrayFieldStart("nodes");
        for (FlatNode node : graph.nodes()) {
            node(node);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("calls");
        for (FlatCall call : graph.calls()) {
            call(call);
        }
        json.writeEndArray();
        if (!graph.tables().isEmpty()) {
            json.writeArrayFieldStart("tables");
            for (InterpolationTable table : graph.tables()) {
                interpolation(table);
            }
            json.writeEndArray();
        }
    }

    private void interpolation(InterpolationTable table) throws IOException {
        json.writeStartObject();
        json.writeStringField("symbol", table.symbol());
        json.writeStringField("note", table.note());
        axis("x", table.x());
        axis("y", table.y());
        source(table.source());
        json.writeEndObject();
    }

    private void axis(String name, InterpolationTable.Axis axis) throws IOException {
        json.writeObjectFieldStart(name);
        json.writeStringField("unit", axis.unit());
        json.writeStringField("scale", axis.scale().inWords());
        json.writeArrayFieldStart("values");
        for (double value : axis.values()) {
            json.writeNumber(Numerals.exact(value));
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void entry(Entry entry, FlatGraph.Positions positions) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", entry.id());
        String cell = entry.cell();
        if (cell != null) {
            json.writeStringField("cell", cell);
        }
        Block block = entry.block();
        if (block instanceof Block.Purpose purpose) {
            words("purpose", purpose.text());
        } else if (block instanceof Block.Assumption assumption) {
            words("assumption", assumption.text());
        } else if (block instanceof Block.Caution caution) {
            words("caution", caution.text());
        } else if (block instanceof Block.Conclusion conclusion) {
            words("conclusion", conclusion.text());
        } else if (block instanceof Block.Note note) {
            words("note", note.text());
        } else if (block instanceof Block.Section section) {
            json.writeStringField("kind", "section");
            json.writeNumberField("level", section.level());
            json.writeStringField("title", section.title());
        } else if (block instanceof Block.Signed signed) {
            json.writeStringField("kind", "signature");
            json.writeStringField("role", signed.role().inWords());
            json.writeStringField("name", signed.name());
            json.writeStringField("date", signed.date().toString());
        } else if (block instanceof Block.Comment comment) {
            json.writeStringField("kind", "comment");
            json.writeStringField("by", comment.by());
            json.writeStringField("date", comment.date().toString());
            json.writeStringField("text", comment.text());
        } else if (block instanceof Block.Given given) {
            json.writeStringField("kind", "given");
            json.writeNumberField("node", positions.of(given.quantity()));
        } else if (block instanceof Block.Step step) {
            json.writeStringField("kind", "step");
            json.writeNumberField("node", positions.of(step.quantity()));
        } else if (block instanceof Block.Series series) {
            json.writeStringField("kind", "series");
            json.writeStringField("symbol", series.symbol());
            json.writeStringField("note", series.note());
            source(series.source());
            nodes("nodes", series.values(), positions);
        } else if (block instanceof Block.Tabulated tabulated) {
            table(tabulated.table(), positions);
            restsOn(tabulated.restsOn(), positions);
        } else if (block instanceof Block.Drawn drawn) {
            json.writeStringField("kind", "figure");
            json.writeStringField("title", drawn.title());
            json.writeStringField("description", drawn.description());
            json.writeStringField("svg", drawn.svg());
            restsOn(drawn.restsOn(), positions);
            FigureStates states = drawn.states();
            if (states != null) {
                states(states);
            }
        } else if (block instanceof Block.Checked checked) {
            json.writeStringField("kind", "check");
            comparison(checked.check(), positions);
        }
        json.writeBooleanField("stale", entry.stale());
        if (!entry.changes().isEmpty()) {
            json.writeArrayFieldStart("changes");
            for (Change change : entry.changes()) {
                json.writeStartObject();
                json.writeNumberField("was", positions.of(change.was()));
                Quantity now = change.now();
                if (now != null) {
                    json.writeNumberField("now", positions.of(now));
                }
                json.writeEndObject();
            }
            json.writeEndArray();
        }
        json.writeEndObject();
    }

    private void words(String kind, String text) throws IOException {
        json.writeStringField("kind", kind);
        json.writeStringField("text", text);
    }

    private void states(FigureStates states) throws IOException {
        json.writeStringField("parameter", states.parameter());
        json.writeNumberField("opening", states.opening());
        json.writeArrayFieldStart("printed");
        for (int index : states.printed()) {
            json.writeNumber(index);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("states");
        for (FigureStates.State state : states.states()) {
            json.writeStartObject();
            number("value", state.value());
            json.writeStringField("unit", state.unit());
            json.writeStringField("label", state.label());
            json.writeStringField("description", state.description());
            json.writeStringField("svg", state.svg());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void restsOn(List<Quantity> quantities, FlatGraph.Positions positions)
            throws IOException {
        if (!quantities.isEmpty()) {
            nodes("basis", quantities, positions);
        }
    }

    private void nodes(String name, List<Quantity> quantities, FlatGraph.Positions positions)
            throws IOException {
        json.writeArrayFieldStart(name);
        for (Quantity quantity : quantities) {
            json.writeNumber(positions.of(quantity));
        }
        json.writeEndArray();
    }

    private void table(Table table, FlatGraph.Positions positions) throws IOException {
        json.writeStringField("kind", "table");
        json.writeStringField("title", table.title());
        json.writeArrayFieldStart("columns");
        for (Column column : table.columns()) {
            json.writeStartObject();
            json.writeStringField("heading", column.heading());
            json.writeStringField("unit", column.unit());
            if (column.isNumeric()) {
                nodes("nodes", column.values(), positions);
                Precision precision = column.precision();
                json.writeNumberField(precision.kind().word(), precision.digits());
            }
            json.writeArrayFieldStart("texts");
            for (String text : column.texts()) {
                json.writeString(text);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void check(Entry entry, FlatGraph.Positions positions) throws IOException {
        Check check = ((Block.Checked) entry.block()).check();
        json.writeStartObject();
        json.writeStringField("id", entry.id());
        comparison(check, positions);
        Quantity utilisation = check.utilisation();
        if (utilisation != null) {
            number("utilisation", utilisation.si());
        }
        number("margin", check.margin().si());
        json.writeStringField("verdict", entry.verdict().inWords());
        json.writeEndObject();
    }

    private void comparison(Check check, FlatGraph.Positions positions) throws IOException {
        json.writeStringField("title", check.title());
        json.writeNumberField("demand", positions.of(check.demand()));
        Quantity least = check.least();
        if (least != null) {
            json.writeNumberField("least", positions.of(least));
        }
        Quantity most = check.most();
        if (most != null) {
            json.writeNumberField("most", positions.of(most));
        }
    }

    private void node(FlatNode node) throws IOException {
        json.writeStartObject();
        json.writeStringField("operation", node.operation());
        if (!node.arguments().isEmpty()) {
            integers("arguments", node.arguments());
        }
        number("value", node.value());
        json.writeArrayFieldStart("dimension");
        for (String power : node.dimension()) {
            json.writeString(power);
        }
        json.writeEndArray();
        optional("unit", node.unit());
        optional("symbol", node.symbol());
        if (!node.note().isEmpty()) {
            json.writeStringField("note", node.note());
        }
        Source source = node.source();
        if (source != null) {
            source(source);
        }
        if (!node.detail().isEmpty()) {
            json.writeStringField("detail", node.detail());
        }
        if (node.call() >= 0) {
            json.writeNumberField("call", node.call());
        }
        json.writeEndObject();
    }

    private void call(FlatCall call) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", call.name());
        json.writeNumberField("edition", call.edition());
        integers("inputs", call.inputs());
        json.writeObjectFieldStart("components");
        for (Map.Entry<String, Object> component : call.components().entrySet()) {
            json.writeFieldName(component.getKey());
            component(component.getValue());
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    private void component(Object value) throws IOException {
        if (value instanceof List<?> list) {
            json.writeStartArray();
            for (Object element : list) {
                json.writeString(element.toString());
            }
            json.writeEndArray();
        } else if (value instanceof Boolean truth) {
            json.writeBoolean(truth);
        } else if (value instanceof Number number) {
            json.writeNumber(Numerals.exact(number.doubleValue()));
        } else {
            json.writeString(value.toString());
        }
    }

    private void integers(String name, List<Integer> values) throws IOException {
        json.writeArrayFieldStart(name);
        for (int value : values) {
            json.writeNumber(value);
        }
        json.writeEndArray();
    }

    private void source(Source source) throws IOException {
        json.writeObjectFieldStart("source");
        json.writeStringField("kind", source.kind().inWords());
        json.writeStringField("reference", source.reference());
        json.writeStringField("place", source.place());
        json.writeEndObject();
    }

    private void optional(String name, @Nullable String text) throws IOException {
        if (text != null) {
            json.writeStringField(name, text);
        }
    }

    private void number(String name, double value) throws IOException {
        json.writeFieldName(name);
        json.writeNumber(Numerals.exact(value));
    }
}
