package org.skewback.desk.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.TextNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.skewback.desk.Json;
import org.skewback.desk.Problem;

/** The notebook document against the published schema of the format, and its faults in words. */
class NotebookTest {

    private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

    private static Notebook parse(String json) throws Problem {
        return NotebookReader.parse("a.ipynb", json.getBytes(StandardCharsets.UTF_8));
    }

    private static Notebook withCells(String cells) throws Problem {
        return parse(
                "{\"nbformat\":4,\"nbformat_minor\":5,\"metadata\":{},\"cells\":[" + cells + "]}");
    }

    private static String fault(String json) {
        return String.valueOf(assertThrows(Problem.class, () -> parse(json)).getMessage());
    }

    private static String cellFault(String cells) {
        return String.valueOf(assertThrows(Problem.class, () -> withCells(cells)).getMessage());
    }

    /** A notebook with every kind of cell and output. */
    private static Notebook everything() throws IOException {
        Output.Display display =
                new Output.Display(
                        Map.of(
                                "text/plain", TextNode.valueOf("two\nlines"),
                                "image/png", TextNode.valueOf("AAAA"),
                                "application/vnd.skewback.record+json",
                                        Json.read("{\"b\":[1,2.50],\"a\":\"one\\ntwo\"}")),
                        MAKE.objectNode(),
                        false);
        Cell code =
                new Cell(
                        "c-1",
                        Cell.Kind.CODE,
                        "int a = 1;\na",
                        Json.read("{\"tags\":[\"keep\"]}"),
                        3,
                        List.of(
                                new Output.Stream("stdout", "no line end"),
                                display,
                                new Output.Display(
                                        Map.of("text/plain", TextNode.valueOf("1")),
                                        MAKE.objectNode(),
                                        true),
                                new Output.Failure("E", "why", List.of("l1", "l2"))));
        Cell prose =
                new Cell(
                        "m-1",
                        Cell.Kind.MARKDOWN,
                        "# Título\n",
                        Json.read("{\"attachments\":{\"a.png\":{\"image/png\":\"AAAA\"}}}"),
                        null,
                        List.of());
        Cell raw =
                new Cell(
                        "r_1", Cell.Kind.RAW, "", Json.read("{\"format\":\"x\"}"), null, List.of());
        Cell unrun = new Cell("c-2", Cell.Kind.CODE, "b", MAKE.objectNode(), null, List.of());
        return new Notebook(
                List.of(prose, code, raw, unrun),
                Json.read(
                        "{\"kernelspec\":{\"name\":\"skewback\",\"display_name\":\"Java\"},"
                                + "\"of_another_program\":{\"z\":1}}"));
    }

    @Test
    void writtenNotebooksAreValidByThePublishedSchema() throws IOException {
        try (InputStream in =
                Objects.requireNonNull(
                        getClass().getResourceAsStream("/nbformat/nbformat.v4.5.schema.json"))) {
            Schema schema =
                    SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_4).getSchema(in);
            assertEquals(
                    List.of(),
                    schema.validate(NotebookWriter.text(everything()), InputFormat.JSON));
            assertTrue(
                    !schema.validate(
                                    NotebookWriter.text(everything()).replace("\"m-1\"", "\"m 1\""),
                                    InputFormat.JSON)
                            .isEmpty(),
                    "the schema must refuse an identifier with a space, or it checks nothing");
        }
    }

    @Test
    void readingWhatWasWrittenGivesTheSameNotebook() throws Exception {
        Notebook once = parse(NotebookWriter.text(everything()));
        assertEquals(everything(), once);
        assertEquals(NotebookWriter.text(everything()), NotebookWriter.text(once));
    }

    /** Compared by hand with what the Jupyter project's nbformat 5.11.1 writes. */
    @Test
    void theTextIsLaidOutAsJupyterLaysItOut() throws Problem {
        assertEquals(
                """
                {
                 "cells": [
                  {
                   "cell_type": "code",
                   "execution_count": null,
                   "id": "a",
                   "metadata": {},
                   "outputs": [],
                   "source": [
                    "x\\n",
                    "y"
                   ]
                  }
                 ],
                 "metadata": {},
                 "nbformat": 4,
                 "nbformat_minor": 5
                }
                """,
                NotebookWriter.text(
                        withCells(
                                "{\"id\":\"a\",\"cell_type\":\"code\",\"metadata\":{},"
                                        + "\"source\":\"x\\ny\"}")));
    }

    @Test
    void sourceMayBeATextOrAListOfTexts() throws Problem {
        Notebook notebook =
                withCells(
                        "{\"id\":\"a\",\"cell_type\":\"markdown\",\"source\":\"x\\n"
                                + "y\"},{\"id\":\"b\",\"cell_type\":\"raw\",\"source\":[\"x\\n"
                                + "\",\"y\"]}");
        assertEquals("x\ny", notebook.cells().get(0).source());
        assertEquals("x\ny", notebook.cells().get(1).source());
    }

    @Test
    void twoCellsWithOneIdentifierAreBothNamed() {
        String cell = "{\"id\":\"twin\",\"cell_type\":\"raw\",\"source\":\"\"}";
        assertEquals(
                "a.ipynb, cells 1 and 2: both have the identifier \"twin\"; each cell needs its"
                        + " own",
                cellFault(cell + "," + cell));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{\"cell_type\":\"raw\",\"source\":\"\"}|cell 1: it has no identifier",
                "{\"id\":\"a b\",\"cell_type\":\"raw\",\"source\":\"\"}|identifier \"a b\"",
                "{\"id\":\"a\",\"cell_type\":\"sql\",\"source\":\"\"}|of the kind \"sql\"",
                "{\"id\":\"a\",\"cell_type\":\"raw\"}|cell 1 (a): it has no source",
                "{\"id\":\"a\",\"cell_type\":\"raw\",\"source\":7}|a source that is not text",
                "{\"id\":\"a\",\"cell_type\":\"raw\",\"source\":\"\",\"metadata\":1}|\"metadata\"",
                "7|cell 1: it is not a cell",
            })
    void aBadCellIsNamedWithItsFault(String cell, String message) {
        String said = cellFault(cell);
        assertTrue(said.startsWith("a.ipynb, cell 1"), said);
        assertTrue(said.contains(message), said);
    }

    @Test
    void whatIsNoNotebookIsToldFromABrokenOne() {
        assertTrue(fault("{}").contains("states no nbformat"));
        assertTrue(fault("").contains("is not a notebook"));
        assertTrue(fault("{\"nbformat\":4,\n oops}").contains("line 2"));
        assertTrue(fault("{\"nbformat\":4,\"nbformat\":4}").contains("Duplicate"));
        assertTrue(
                fault("{\"nbformat\":4,\"nbformat_minor\":4,\"cells\":[]}")
                        .contains("notebook format 4.4; 4.5 is needed"));
        assertTrue(fault("{\"nbformat\":4,\"nbformat_minor\":5}").contains("no list of cells"));
        assertEquals(
                "cannot read the notebook gone.ipynb: there is no gone.ipynb",
                assertThrows(Problem.class, () -> NotebookReader.read(Path.of("gone.ipynb")))
                        .getMessage());
    }
}
