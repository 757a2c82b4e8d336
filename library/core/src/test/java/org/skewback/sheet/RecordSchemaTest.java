package org.skewback.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.skewback.form.FunicularRoutine;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routines;
import org.skewback.quantity.Source;

/** Records are what the published schema says they are. */
class RecordSchemaTest {

    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Schema SCHEMA = REGISTRY.getSchema(text());

    static String text() {
        try (InputStream in =
                Objects.requireNonNull(
                        SheetRecord.class.getResourceAsStream("record.schema.json"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void theSchemaIsASchema() {
        Schema ofSchemas =
                REGISTRY.getSchema(
                        SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertEquals(List.of(), ofSchemas.validate(text(), InputFormat.JSON));
        assertTrue(text().contains("\"urn:skewback:record:" + RecordWriter.EDITION + "\""));
        assertTrue(text().contains("\"maxLength\": " + RecordWriter.LONGEST_TEXT));
    }

    @Property(tries = 300)
    void recordsOfRandomSheetsAreValidAndComeBackTheSame(
            @ForAll long seed, @ForAll @IntRange(min = 0, max = 40) int blocks) {
        SheetRecord record = RandomSheet.of(seed, blocks).record();
        String json = RecordWriter.write(record);
        assertEquals(List.of(), SCHEMA.validate(json, InputFormat.JSON), json);
        SheetRecord read = RecordReader.read(json);
        assertEquals(record, read);
        assertEquals(record.sources(), read.sources());
        assertEquals(json, RecordWriter.write(read));
        assertEquals(json, RecordWriter.write(RandomSheet.of(seed, blocks).record()));
        RecordReevaluation again = RecordReevaluation.of(json);
        assertTrue(again.isConsistent(), again.toString());
    }

    @Test
    void everyKindOfBlockIsTried() {
        Set<Class<?>> said = new LinkedHashSet<>();
        for (long seed = 0; seed < 20; seed++) {
            RandomSheet.of(seed, 40)
                    .record()
                    .entries()
                    .forEach(e -> said.add(e.block().getClass()));
        }
        assertEquals(Set.of(Block.class.getPermittedSubclasses()), said);
    }

    @Test
    void aFigureKeepsEachOfItsStatesWithItsValue() {
        Sheet sheet = Sheet.numbered("06", "Form of the rib");
        FigureStates states =
                new FigureStates(
                        "sag",
                        1,
                        List.of(0, 1),
                        List.of(
                                new FigureStates.State(2, "m", "2 m", "shallow", "<svg>2</svg>"),
                                new FigureStates.State(3, "m", "3 m", "deep", "<svg>3</svg>")));
        Block.Drawn drawn =
                new Block.Drawn("Chains", "One of two", "<svg>3</svg>", List.of(), states);
        sheet.figure(
                new Figure() {
                    @Override
                    public String title() {
                        return drawn.title();
                    }

                    @Override
                    public String description() {
                        return drawn.description();
                    }

                    @Override
                    public String svg() {
                        return drawn.svg();
                    }

                    @Override
                    public byte[] png() {
                        return new byte[0];
                    }

                    @Override
                    public Optional<FigureStates> states() {
                        return Optional.of(states);
                    }
                });
        String json = RecordWriter.write(sheet.record());
        assertEquals(List.of(), SCHEMA.validate(json, InputFormat.JSON));
        assertEquals(drawn, RecordReader.read(json).entries().get(0).block());
        String other = json.replace("\"opening\" : 1", "\"opening\" : 0");
        assertFalse(isSound(other), "the picture is not that of the state it opens on");
        assertFalse(isSound(json.replace("\"opening\" : 1", "\"opening\" : 2")));
        assertFalse(isSound(json.replace("\"printed\" : [ 0", "\"printed\" : [ 7")));
        assertFalse(
                SCHEMA.validate(json.replace("\"parameter\"", "\"parametre\""), InputFormat.JSON)
                        .isEmpty());
    }

    private static boolean isSound(String json) {
        try {
            return !RecordReader.read(json).entries().isEmpty();
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    @Test
    void whatIsNoRecordIsNotValid() {
        String json = RecordWriter.write(RandomSheet.of(7, 60).record());
        assertEquals(List.of(), SCHEMA.validate(json, InputFormat.JSON));
        Map<String, String> spoiled =
                Map.of(
                        "\"edition\" : 3,", "\"edition\" : 2,",
                        "\"kind\" : \"step\"", "\"kind\" : \"jump\"",
                        "\"operation\" : \"named\"", "\"operation\" : \"run\"",
                        "\"stale\" : false", "\"stale\" : \"no\"",
                        "\"verdict\" : \"", "\"verdict\" : \"un",
                        "\"demand\" : ", "\"demand\" : -1",
                        "\"title\" : ", "\"more\" : 1, \"title\" : ",
                        "\"role\" : \"", "\"role\" : \"not ",
                        "\"dimension\" : [ ", "\"dimension\" : [ \"0\", ");
        spoiled.forEach(
                (sound, spoilt) -> {
                    assertTrue(json.contains(sound), sound);
                    assertFalse(
                            SCHEMA.validate(json.replace(sound, spoilt), InputFormat.JSON)
                                    .isEmpty(),
                            spoilt);
                });
    }

    /** Every value in turn, the whole record read again each time. */
    @Test
    void noTamperedNumberTextOrVerdictIsMissed() {
        String json = RecordWriter.write(sample().record());
        List<String> missed = new ArrayList<>();
        Set<String> tried = new LinkedHashSet<>();
        String[] lines = json.split("\n");
        for (int i = 0; i < lines.length; i++) {
            for (Map.Entry<String, String> change : TAMPERINGS.entrySet()) {
                String tampered = lines[i].replaceFirst(change.getKey(), change.getValue());
                if (tampered.equals(lines[i])) {
                    continue;
                }
                tried.add(change.getKey());
                String before = lines[i];
                lines[i] = tampered;
                String whole = String.join("\n", lines);
                lines[i] = before;
                if (!isCaught(whole)) {
                    missed.add(before.strip() + " to " + tampered.strip());
                }
            }
        }
        assertEquals(List.of(), missed);
        assertEquals(TAMPERINGS.keySet(), tried);
    }

    private static final Map<String, String> TAMPERINGS =
            Map.of(
                    "(\"value\" : )(-?)[0-9.e-]+", "$1$27.25",
                    "(\"texts\" : \\[ \")[0-9]+\\.", "$1" + "9.",
                    "(\"texts\" : .*, \"[0-9.]+)[0-9]\"", "$1\"",
                    "\"(decimals|significant)\" : [0-9]+", "\"$1\" : 7",
                    "(\"utilisation\" : )[0-9.e-]+", "$1" + "0.5",
                    "(\"margin\" : )[0-9.e-]+", "$1" + "12",
                    "\"verdict\" : \"failed\"", "\"verdict\" : \"passed\"",
                    "\"verdict\" : \"passed\"", "\"verdict\" : \"failed\"",
                    " held\"", " did not hold\"",
                    "\"operation\" : \"multiply\"", "\"operation\" : \"divide\"");

    private static boolean isCaught(String json) {
        try {
            return !RecordReevaluation.of(json).isConsistent();
        } catch (IllegalArgumentException e) {
            return true;
        }
    }

    /** Each of its numbers decides something. */
    private static Sheet sample() {
        Sheet sheet = Sheet.numbered("06", "Form of the rib");
        Source drawing = Source.drawing("OG-201", "B");
        Quantity span = sheet.given("L", 336, "m", "span", drawing);
        Quantity rise = sheet.given("f", 72, "m", "rise", drawing);
        Quantity load = sheet.given("g", 148, "kN/m", "load", drawing);
        Quantity thrust =
                sheet.step("H", load.times(span.squared()).over(rise.times(8)), "kN", "thrust");
        Quantity factor =
                Quantity.choose(
                        load.lessThan(Quantity.of(200, "kN/m")),
                        () -> Quantity.of(1.125),
                        () -> rise.over(span));
        Quantity design = sheet.step("H_d", thrust.times(factor), "kN", "thrust for design");
        List<Quantity> columns =
                sheet.series("x", new double[] {48.5, 96.25}, "m", "columns", drawing);
        FunicularRoutine.Output line =
                Routines.call(
                        new FunicularRoutine(),
                        FunicularRoutine.Input.ofPointLoads(
                                columns, List.of(design, design), span, span.over(2), rise));
        sheet.table(
                Table.of(
                        "Heights of the line",
                        Column.texts("column", List.of("west", "east")),
                        Column.of("x", "m", columns, Precision.significant(3)),
                        Column.of("line", "m", line.ordinates(), 2)));
        sheet.check("thrust", design).atMost(Quantity.of(35, "MN"));
        sheet.check("ratio", rise.over(span)).between(Quantity.of(0.1), Quantity.of(0.2));
        sheet.check("length", line.length()).atLeast(span);
        sheet.conclude("It holds.");
        return sheet;
    }
}
