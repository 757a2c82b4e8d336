package org.skewback.figure;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** Writes a sweep for a notebook, to be moved there, and as JSON for whoever issues the notebook. */
final class SweepWriter {

    private static final int EDITION = 1;

    private SweepWriter() {}

    static String json(Sweep sweep) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.writeStartObject();
            json.writeStringField("format", "skewback-sweep");
            json.writeNumberField("edition", EDITION);
            json.writeStringField("title", sweep.title());
            json.writeStringField("parameter", sweep.parameter());
            json.writeNumberField("opening", sweep.opening());
            json.writeArrayFieldStart("printed");
            for (int index : sweep.printed()) {
                json.writeNumber(index);
            }
            json.writeEndArray();
            json.writeArrayFieldStart("states");
            for (Sweep.State state : sweep.drawn()) {
                json.writeStartObject();
                json.writeStringField("label", state.label());
                json.writeStringField("description", state.description());
                json.writeStringField("svg", state.figure().svg());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    static String html(Sweep sweep) {
        return "<p><b>" + SvgWriter.escape(sweep.title()) + "</b></p>" + sweep.kept().html();
    }
}
