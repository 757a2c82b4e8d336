package org.skewback.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.skewback.kernel.wire.Message;

/**
 * Runs cells in a real kernel. What a reply must hold is said by the Jupyter client documentation,
 * "Messaging in Jupyter".
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class KernelTest {

    private static final String DISPLAYABLE =
            "package org.skewback.display; public interface Displayable {"
                    + " java.util.Map<String, String> display(); }";
    private static final String CELL_AWARE =
            "package org.skewback.display; public interface CellAware {"
                    + " void cellStarts(String cell); }";
    private static final String CHANGING =
            "package org.skewback.display; public interface Changing extends Displayable {"
                    + " void whenChanged(Runnable show); }";
    private static final String SHEET =
            "package test; import java.util.*; public class Sheet"
                    + " implements org.skewback.display.Displayable,"
                    + " org.skewback.display.CellAware { public String cell = \"\";"
                    + " public void cellStarts(String c) { cell = c; }"
                    + " public Map<String, String> display() { var m = new"
                    + " LinkedHashMap<String, String>(); m.put(\"text/html\", \"<b>x</b>\");"
                    + " m.put(\"application/vnd.test+json\", \"{\\\"a\\\": [1]}\");"
                    + " m.put(\"text/plain\", \"x\"); return m; } }";

    private final KernelClient client;
    private final Path classes;

    KernelTest(@TempDir Path folder) throws IOException {
        classes =
                TinyRepository.compile(
                        folder,
                        Map.of(
                                "org/skewback/display/Displayable.java",
                                DISPLAYABLE,
                                "org/skewback/display/CellAware.java",
                                CELL_AWARE));
        TinyRepository.compile(folder, Map.of("org/skewback/display/Changing.java", CHANGING));
        TinyRepository.compile(folder, Map.of("test/Sheet.java", SHEET));
        Path repository = folder.resolve("repository");
        TinyRepository.install(
                repository,
                "sheets",
                TinyRepository.dependency("display", "compile"),
                Map.of("test/Sheet.class", classes.resolve("test/Sheet.class")));
        TinyRepository.install(
                repository,
                "display",
                "",
                Map.of(
                        "org/skewback/display/Displayable.class",
                        classes.resolve("org/skewback/display/Displayable.class"),
                        "org/skewback/display/CellAware.class",
                        classes.resolve("org/skewback/display/CellAware.class"),
                        "org/skewback/display/Changing.class",
                        classes.resolve("org/skewback/display/Changing.class")));
        client =
                new KernelClient(
                        folder, Map.of("SKEWBACK_LOCAL_REPOSITORY", repository.toString()));
    }

    @BeforeAll
    void warm() throws IOException {
        assertEquals("ok", client.run("").reply().path("status").asText());
    }

    @AfterAll
    void close() {
        client.close();
    }

    private static String status(KernelClient.Run run) {
        return run.reply().path("status").asText();
    }

    private String value(String code) throws IOException {
        KernelClient.Run run = client.run(code);
        assertEquals("ok", status(run), () -> run.traceback());
        return run.text();
    }

    @Test
    void tellsAllAboutItself() throws IOException {
        JsonNode info = client.ask("kernel_info_request", KernelClient.object());
        assertEquals("ok", info.path("status").asText());
        assertEquals("5.4", info.path("protocol_version").asText());
        assertEquals("java", info.path("language_info").path("name").asText());
        assertEquals(".java", info.path("language_info").path("file_extension").asText());
        assertFalse(info.path("implementation_version").asText().isEmpty());
        assertEquals("[]", info.path("supported_features").toString());
        assertFalse(info.path("debugger").asBoolean(true));
    }

    /** What version 5.4 of the specification has brought. */
    @Test
    void welcomesWhoeverSubscribes() throws IOException {
        assertEquals("status", client.welcome("status").content().path("subscription").asText());
    }

    @Test
    void numbersInJsonAreShownWithTheDigitsTheyHave() throws IOException {
        String json = "{\"n\":[1.10,1e400,-0.0,1E5,123456789012345678901234567890]}";
        KernelClient.Run run = client.run("json(\"" + json.replace("\"", "\\\"") + "\")");
        assertEquals(json, run.data().path("application/json").toString());
    }

    @Test
    void whatLooksLikeAMagicInATextBlockIsText() throws IOException {
        assertEquals(
                "%maven a:b:1\n%word\n",
                value("/*\n%word\n*/\n\"\"\"\n%maven a:b:1\n%word\n\"\"\""));
    }

    @Test
    void showsTheValueOfTheLastExpressionBetweenBusyAndIdle() throws IOException {
        KernelClient.Run run = client.run("int one = 1;\none + 1");
        assertEquals("2", run.text());
        List<String> types = new ArrayList<>();
        run.published().forEach(m -> types.add(m.type()));
        assertEquals(List.of("status", "execute_input", "execute_result", "status"), types);
        assertEquals(
                run.reply().path("execution_count"),
                run.of("execute_result").get(0).content().path("execution_count"));
    }

    /** A program that drives the kernel learns of a sheet that no cell showed. */
    @Test
    void livingValuesThatHearOfCellsHandOverWhatIsForPrograms() throws IOException {
        client.run("%maven test:sheets:1.0\ntest.Sheet unshown = new test.Sheet(); int n = 3;");
        KernelClient.Run run = client.run("%living");
        assertEquals("ok", status(run), run::traceback);
        boolean handed = false;
        for (var shown : run.of("display_data")) {
            JsonNode data = shown.content().path("data");
            handed |= data.path("application/vnd.test+json").path("a").path(0).asInt() == 1;
            assertTrue(data.path("text/plain").isMissingNode(), data::toString);
        }
        assertTrue(handed);
        client.run("unshown = null;");
    }

    @Test
    void declarationsAndAssignmentsAreSilent() throws IOException {
        assertTrue(client.run("int quiet = 3;\nquiet = 4;").of("execute_result").isEmpty());
    }

    @Test
    void printsUnderBothStreamsInOrder() throws IOException {
        KernelClient.Run run = client.run("System.out.println(\"é€\"); System.err.print(\"e\");");
        assertEquals("é€\n", run.stream("stdout"));
        assertEquals("e", run.stream("stderr"));
    }

    @Test
    void manyLinesAllArriveInFewMessages() throws IOException {
        KernelClient.Run run =
                client.run("for (int i = 0; i < 20_000; i++) { System.out.println(i); }");
        assertEquals(20_000, run.stream("stdout").lines().count());
        assertTrue(run.of("stream").size() <= 100, "messages: " + run.of("stream").size());
    }

    @Test
    void whatAThreadPrintsLaterBelongsToItsOwnCell() throws IOException {
        client.run("var gate = new java.util.concurrent.CountDownLatch(1);");
        var starts =
                KernelClient.execute(
                        "new Thread(() -> { try { gate.await(); System.out.print(\"late\"); }"
                                + " catch (InterruptedException e) { } }).start();");
        client.send(starts);
        client.await(starts);
        client.send(KernelClient.execute("gate.countDown();"));
        assertEquals("late", client.published(starts, "stream").content().path("text").asText());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "new Thread(() -> late()).start();",
                "var tasks = java.util.concurrent.Executors.newFixedThreadPool(2);"
                        + " tasks.submit(() -> late());",
                "java.util.concurrent.CompletableFuture.runAsync(() -> late());",
                "var clock = java.util.concurrent.Executors.newScheduledThreadPool(1);"
                        + " clock.schedule(() -> late(), 10,"
                        + " java.util.concurrent.TimeUnit.MILLISECONDS);"
            })
    void whatIsLeftRunningCanBeWaitedFor(String code) throws IOException {
        client.run(
                "void late() { try { Thread.sleep(200); } catch (InterruptedException e) { }"
                        + " System.out.print(\"late\"); }");
        var starts = KernelClient.execute(code);
        client.send(starts);
        client.await(starts);
        var settles = KernelClient.execute("%settle");
        client.send(settles);
        List<String> seen = new ArrayList<>();
        for (Message message = client.published(); ; message = client.published()) {
            if (message.type().equals("stream")) {
                assertEquals(starts.id(), message.parentId());
                seen.add(message.content().path("text").asText());
            } else if (message.parentId().equals(settles.id())
                    && message.content().path("execution_state").asText().equals("idle")) {
                break;
            }
        }
        assertEquals(List.of("late"), seen);
    }

    @Test
    void whatNeverEndsIsNamedUnderTheLastCell() throws IOException {
        client.run(
                "var endless = new Thread(() -> { try { Thread.sleep(Long.MAX_VALUE); } catch"
                        + " (InterruptedException e) { } }, \"endless\");\nendless.start();");
        var last = KernelClient.execute("1");
        client.send(last);
        client.await(last);
        client.send(KernelClient.execute("%settle"));
        String told = client.published(last, "stream").content().path("text").asText();
        assertTrue(told.startsWith("the thread endless was still running 5 s after"), told);
        client.run("endless.interrupt();");
    }

    @Test
    void outputClosedByOneCellIsOpenForTheNext() throws IOException {
        client.run("System.out.close(); System.err.close();");
        KernelClient.Run run = client.run("System.out.print(\"o\"); System.err.print(\"e\");");
        assertEquals("o", run.stream("stdout"));
        assertEquals("e", run.stream("stderr"));
    }

    @Test
    void aFloodOfOutputIsCutAndSaysSo() throws IOException {
        KernelClient.Run run =
                client.run("for (int i = 0; i < 1_000_000; i++) System.out.println(1e6 + i);");
        String text = run.stream("stdout");
        assertTrue(text.endsWith("the rest is not shown)\n"), text.substring(text.length() - 80));
        assertTrue(text.length() < 5 << 20, "characters: " + text.length());
        assertEquals("x", client.run("System.out.print(\"x\");").stream("stdout"));
    }

    @Test
    void aThreadThatFailsIsTold() throws IOException {
        KernelClient.Run run =
                client.run(
                        "var failing = new Thread(() -> { throw new"
                                + " IllegalStateException(\"too thin\"); });\n"
                                + "failing.start();\nfailing.join();\nThread.sleep(100);");
        String told = run.stream("stderr");
        assertTrue(told.contains("java.lang.IllegalStateException: too thin"), told);
        assertTrue(told.contains("at cell " + run.reply().path("execution_count").asInt()), told);
        assertFalse(told.contains("REPL"), told);
    }

    @Test
    void aDisplayWithANameIsShownAgainInItsPlace() throws IOException {
        KernelClient.Run run =
                client.run("display(1, \"progress\"); updateDisplay(2, \"progress\");");
        JsonNode shown = run.of("display_data").get(0).content();
        JsonNode again = run.of("update_display_data").get(0).content();
        assertEquals("1", shown.path("data").path("text/plain").asText());
        assertEquals("2", again.path("data").path("text/plain").asText());
        assertEquals("progress", shown.path("transient").path("display_id").asText());
        assertEquals(shown.path("transient"), again.path("transient"));
    }

    @Test
    void whatChangesByItselfIsShownAgainInItsPlace() throws IOException {
        client.run("%maven test:sheets:1.0");
        KernelClient.Run run =
                client.run(
                        """
                        class Count implements org.skewback.display.Changing {
                            int at;
                            Runnable show = () -> {};
                            public Map<String, String> display() {
                                return Map.of("text/plain", "at " + at);
                            }
                            public void whenChanged(Runnable show) { this.show = show; }
                        }
                        Count count = new Count();
                        display(count);
                        count.at = 7;
                        count.show.run();
                        """);
        JsonNode shown = run.of("display_data").get(0).content();
        JsonNode again = run.of("update_display_data").get(0).content();
        assertEquals("at 0", shown.path("data").path("text/plain").asText());
        assertEquals("at 7", again.path("data").path("text/plain").asText());
        assertFalse(shown.path("transient").path("display_id").asText().isEmpty());
        assertEquals(shown.path("transient"), again.path("transient"));
    }

    @Test
    void clearsTheOutputInTurnWithWhatIsPrinted() throws IOException {
        KernelClient.Run run =
                client.run(
                        "System.out.print(1); clearOutput(false); System.out.print(2);"
                                + " clearOutput(true);");
        List<String> types = new ArrayList<>();
        run.published().forEach(m -> types.add(m.type()));
        assertEquals(
                List.of(
                        "status",
                        "execute_input",
                        "stream",
                        "clear_output",
                        "stream",
                        "clear_output",
                        "status"),
                types);
        assertTrue(run.of("clear_output").get(1).content().path("wait").asBoolean());
    }

    @Test
    void anErrorNamesExceptionCellAndLine() throws IOException {
        KernelClient.Run defined = client.run("int broken(int a) {\n\n    return a / 0;\n}");
        int definedIn = defined.reply().path("execution_count").asInt();
        KernelClient.Run run = client.run("// a comment\nint before = 1;\n\nbroken(before)");
        int cell = run.reply().path("execution_count").asInt();
        assertEquals("error", status(run));
        assertEquals("java.lang.ArithmeticException", run.reply().path("ename").asText());
        assertEquals(
                "java.lang.ArithmeticException: / by zero\n"
                        + ("    at broken (cell " + definedIn + ", line 3)\n")
                        + ("    at cell " + cell + ", line 4"),
                run.traceback());
        assertEquals(
                run.reply().path("traceback"), run.of("error").get(0).content().path("traceback"));
    }

    @Test
    void aMistakeOfTheAuthorIsShownWithLineAndCaret() throws IOException {
        KernelClient.Run run = client.run("int fine = 1;\nint wrong = fine + missing;");
        List<String> lines = run.traceback().lines().toList();
        assertTrue(lines.get(0).endsWith("line 2: cannot find symbol"), run.traceback());
        assertEquals("    int wrong = fine + missing;", lines.get(lines.size() - 2));
        assertEquals(
                lines.get(lines.size() - 2).indexOf("missing"),
                lines.get(lines.size() - 1).indexOf('^'));
    }

    @Test
    void nothingOfACellRunsThatTheParserCannotRead() throws IOException {
        KernelClient.Run run = client.run("System.out.println(\"ran\");\nint x = (1 + ;");
        assertEquals("error", status(run));
        assertEquals("", run.stream("stdout"));
    }

    @Test
    void anEndlessRecursionHasAShortTraceback() throws IOException {
        client.run("int deeper(int n) { return deeper(n + 1) + 1; }");
        KernelClient.Run run = client.run("deeper(0)");
        assertEquals("java.lang.StackOverflowError", run.reply().path("ename").asText());
        assertTrue(run.reply().path("traceback").size() < 20);
    }

    @Test
    void changingADeclarationKeepsWhatWasComputedFromIt() throws IOException {
        client.run(
                "double span = 336;\nvar area = new double[] {span * 2};\nint copy = (int) span;");
        client.run("double span = 400;");
        client.run("var span = 500.0;");
        assertEquals("672.0", value("area[0]"));
        assertEquals("336", value("copy"));
        assertEquals("500.0", value("span"));
    }

    @Test
    void declaringAClassAgainKeepsItsValuesAndChangingItsFieldsSaysWhatIsLost() throws IOException {
        client.run("class Pier { int height = 70; }\nvar pier = new Pier();");
        client.run("class Pier { int height = 70; }");
        assertEquals("70", value("pier.height"));
        KernelClient.Run run = client.run("class Pier { int height = 44; int width; }");
        assertTrue(run.stream("stderr").contains("pier has lost its value"));
    }

    @Test
    void aMethodThatIsDeclaredAgainIsNamedByItsLastCell() throws IOException {
        client.run("int fails() { return 1; }");
        KernelClient.Run changed = client.run("\nint fails() {\n    return 1 / 0;\n}");
        int cell = changed.reply().path("execution_count").asInt();
        String traceback = client.run("fails()").traceback();
        assertTrue(traceback.contains("at fails (cell " + cell + ", line 3)"), traceback);
    }

    @Test
    void whatNoLongerFitsAChangedDeclarationIsToldAtOnce() throws IOException {
        client.run("int load = 2;\nint doubled() { return load * 2; }");
        String told = client.run("String load = \"two\";").stream("stderr");
        assertTrue(told.contains("doubled no longer fits"), told);
        String traceback = client.run("doubled()").traceback();
        assertTrue(traceback.contains("no longer fits"), traceback);
        client.run("int load = 3;");
        assertEquals("6", value("doubled()"));
    }

    @Test
    void aFunctionThatKeepsAFormerVariableIsNamedAtOnce() throws IOException {
        client.run("int width = 2;\nSupplier<Object> later = () -> width;");
        client.run("int width = 3;");
        assertEquals("3", value("later.get()"));
        String told = client.run("double width = 4;").stream("stderr");
        assertTrue(told.contains("later still uses the former width"), told);
    }

    @Test
    void aMethodThatIsChangedIsCalledByThoseThatUsedIt() throws IOException {
        client.run("double factor() { return 1.5; }\ndouble twice() { return 2 * factor(); }");
        assertEquals("3.0", value("twice()"));
        client.run("double factor() { return 2.5; }");
        assertEquals("5.0", value("twice()"));
    }

    @Test
    void declarationsMayUseWhatFollowsThem() throws IOException {
        assertEquals(
                "7",
                value(
                        """
                        class East { West other; }
                        class West { East other; }
                        int early = later(6);
                        int later(int i) { return i + 1; }
                        early\
                        """));
    }

    @Test
    void aRecordMayCheckItsComponents() throws IOException {
        assertEquals(
                "Rise[metres=3.0]",
                value(
                        "record Rise(double metres) { Rise { if (metres < 0) throw new"
                                + " IllegalArgumentException(); } }\nnew Rise(3)"));
    }

    @Test
    void valuesAreReadable() throws IOException {
        assertEquals("[1.0, 2.5]", value("new double[] {1, 2.5}"));
        assertEquals("[[0, 0], [0, 0]]", value("new int[2][2]"));
        assertEquals("{a=[1]}", value("Map.of(\"a\", new int[] {1})"));
        assertEquals("null", value("(Object) null"));
        assertEquals("a text", value("\"a text\""));
        assertTrue(value("new int[1000]").endsWith("… (1000 elements)]"));
    }

    @Test
    void aValueThatCannotShowItselfIsStillNamed() throws IOException {
        client.run(
                "class Sulky { public String toString() { throw new IllegalStateException(); } }");
        assertTrue(value("new Sulky()").contains("Sulky"));
    }

    @Test
    void showsRichValuesOfAnyClassThatHasTheInterface() throws IOException {
        client.run("%classpath " + classes);
        KernelClient.Run run = client.run("new test.Sheet()");
        assertEquals("<b>x</b>", run.data().path("text/html").asText());
        assertEquals(1, run.data().path("application/vnd.test+json").path("a").get(0).asInt());
        assertEquals("x", run.text());
        KernelClient.Run displayed = client.run("display(new test.Sheet());\nint after = 1;");
        assertEquals(
                "<b>x</b>",
                displayed
                        .of("display_data")
                        .get(0)
                        .content()
                        .path("data")
                        .path("text/html")
                        .asText());
    }

    @Test
    void liveValuesHearWhichCellStarts() throws IOException {
        client.run("%classpath " + classes + "\nvar listening = new test.Sheet();");
        assertEquals("", value("listening.cell"));
        var request = KernelClient.execute("listening.cell");
        request.metadata().put("cellId", "cell-17");
        client.send(request);
        assertEquals("cell-17", client.await(request).text());
        // A front end that names its cells now and then must not have two taken for one.
        KernelClient.Run nameless = client.run("listening.cell");
        assertFalse(nameless.text().isEmpty());
        assertFalse(nameless.text().equals("cell-17"));
        assertFalse(nameless.text().equals(client.run("listening.cell").text()));
    }

    @Test
    void bringsALibraryWithWhatItNeedsAndOnlyOnce() throws IOException {
        for (int i = 0; i < 2; i++) {
            assertEquals(
                    "x",
                    value(
                            "%maven test:sheets:1.0\n"
                                    + "new test.Sheet().display().get(\"text/plain\")"));
        }
    }

    @Test
    void aMissingLibraryIsExplained() throws IOException {
        KernelClient.Run run = client.run("int a = 1;\n%maven org.skewback:skewback-library:9.9");
        assertTrue(run.traceback().contains("line 2"), run.traceback());
        assertTrue(run.traceback().contains("org.skewback:skewback-library:9.9"));
        assertTrue(run.traceback().contains("mvn -q -DskipTests install"));
    }

    @Test
    void cellsSeeNothingOfTheKernelsOwnLibraries() throws IOException {
        assertEquals("error", status(client.run("org.zeromq.ZMQ.getVersionString()")));
    }

    @Test
    void exitInACellIsAnErrorAndKeepsTheVariables() throws IOException {
        client.run("int kept = 5;");
        KernelClient.Run run = client.run("System.exit(1);");
        assertEquals("error", status(run));
        assertTrue(run.traceback().contains("exit"));
        assertEquals("5", value("kept"));
    }

    @Test
    void aLoopThatIsInterruptedEndsAndKeepsTheVariables() throws IOException {
        client.run("int held = 6;");
        var endless = KernelClient.execute("display(\"started\");\nwhile (true) { }");
        client.send(endless);
        client.published(endless, "display_data");
        assertEquals("ok", client.askControl("interrupt_request").path("status").asText());
        KernelClient.Run run = client.await(endless);
        assertEquals("CellInterrupted", run.reply().path("ename").asText());
        assertEquals("6", value("held"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "while (true) { try { Thread.sleep(100_000); } catch (InterruptedException e) { }"
                        + " }",
                "int fall(int i) { return fall(i) + fall(i + 1) > 0 ? i % 1000 : fall(0); }"
                        + " while (true) { try { fall(0); } catch (StackOverflowError e) { } }",
                "IntStream.iterate(0, i -> 1).filter(i -> i > 1).findFirst()",
                "IntStream.range(0, 4).parallel().forEach(i -> { while (true) { } });",
                "while (true) { System.out.println(1); }",
                "while (true) { display(1); }",
                "while (true) { updateDisplay(1, \"started\"); }",
                "synchronized (Object.class) { Object.class.wait(); }"
            })
    void whateverACellIsBusyWithEndsAndKeepsTheVariables(String code) throws IOException {
        client.run("int held = 6;");
        var endless = KernelClient.execute("display(0, \"started\");\n" + code);
        client.send(endless);
        client.published(endless, "display_data");
        assertEquals("ok", client.askControl("interrupt_request").path("status").asText());
        KernelClient.Run run = client.await(endless);
        assertEquals("CellInterrupted", run.reply().path("ename").asText(), run.traceback());
        assertEquals("6", value("held"));
    }

    /** Code that runs until there is a file. */
    private static String until(Path file) {
        return "while (!java.nio.file.Files.exists(java.nio.file.Path.of(\""
                + file.toString().replace("\\", "\\\\")
                + "\"))) { Thread.sleep(5); }";
    }

    /** Returns once the kernel has all that was sent on the control channel before. */
    private void controlIsRead() throws IOException {
        assertEquals("ok", client.askControl("kernel_info_request").path("status").asText());
    }

    @Test
    void whatAsksTheCompilerOnTheControlChannelWaitsForTheCellThatRuns(@TempDir Path folder)
            throws IOException {
        Path go = folder.resolve("go");
        var cell = KernelClient.execute("int first = 1;\ndisplay(0);\n" + until(go));
        client.send(cell);
        client.published(cell, "display_data");
        var other = KernelClient.execute("first + 1");
        client.sendControl(other);
        var completion =
                Message.request(
                        "test",
                        "complete_request",
                        KernelClient.object().put("code", "firs").put("cursor_pos", 4));
        client.sendControl(completion);
        controlIsRead();
        Files.createFile(go);
        // Whatever is published of the other before the cell has ended is passed over here.
        assertEquals("ok", status(client.await(cell)));
        assertEquals(
                "busy",
                client.published(other, "status").content().path("execution_state").asText());
        assertEquals(
                "2",
                client.published(other, "execute_result")
                        .content()
                        .path("data")
                        .path("text/plain")
                        .asText());
        assertEquals("ok", client.awaitControl(other).path("status").asText());
        assertEquals("first", client.awaitControl(completion).path("matches").path(0).asText());
    }

    @Test
    void aFailedCellAbortsWhatWaitsOnEitherChannel(@TempDir Path folder) throws IOException {
        Path go = folder.resolve("go");
        var failing = KernelClient.execute("display(0);\n" + until(go) + "\nint a = 1 / 0;");
        client.send(failing);
        client.published(failing, "display_data");
        var other = KernelClient.execute("1");
        client.sendControl(other);
        controlIsRead();
        Files.createFile(go);
        assertEquals("error", status(client.await(failing)));
        assertEquals("aborted", client.awaitControl(other).path("status").asText());
    }

    @Test
    void aCellThatWaitsForInputCanBeInterrupted() throws IOException {
        var waiting = KernelClient.execute("new Scanner(System.in).nextLine()");
        waiting.content().put("allow_stdin", true);
        client.send(waiting);
        client.inputRequest();
        assertEquals("ok", client.askControl("interrupt_request").path("status").asText());
        assertEquals("CellInterrupted", client.await(waiting).reply().path("ename").asText());
    }

    @Test
    void whatAnInterruptedCellHasStartedEndsWithIt() throws IOException {
        var endless =
                KernelClient.execute(
                        "var busy = new Thread(() -> { try { while (true) { } } finally {"
                                + " System.out.print(\"ended\"); } });\n"
                                + "busy.start();\ndisplay(0);\nbusy.join();");
        client.send(endless);
        client.published(endless, "display_data");
        client.askControl("interrupt_request");
        assertEquals("ended", client.published(endless, "stream").content().path("text").asText());
        // What is asked before the cell has failed would be aborted with it.
        client.awaitReply(endless);
    }

    @Test
    void aDisplayThatChangesFasterThanItCanBeSeenEndsInItsLastState() throws IOException {
        KernelClient.Run run =
                client.run(
                        "display(-1, \"count\");\n"
                            + "for (int i = 0; i < 20_000; i++) { updateDisplay(i, \"count\"); }");
        List<Message> states = run.of("update_display_data");
        assertTrue(states.size() < 1000, "states: " + states.size());
        assertEquals(
                "19999",
                states.get(states.size() - 1).content().path("data").path("text/plain").asText());
    }

    @Test
    void moreValuesThanCanBeReadAreLeftOut() throws IOException {
        KernelClient.Run run = client.run("for (int i = 0; i < 2_100; i++) { display(i); }");
        List<Message> shown = run.of("display_data");
        assertEquals(2_001, shown.size());
        String last = shown.get(2_000).content().path("data").path("text/plain").asText();
        assertTrue(last.contains("the rest is left out"), last);
    }

    @Test
    void readingWhereNobodyAnswersIsAClearError() throws IOException {
        KernelClient.Run run = client.run("new Scanner(System.in).nextLine()");
        assertEquals("error", status(run));
        assertTrue(run.reply().path("evalue").asText().contains("System.in"));
    }

    @Test
    void readsInputWhereItIsAllowed() throws IOException {
        var request = KernelClient.execute("new Scanner(System.in).nextLine() + \"!\"");
        request.content().put("allow_stdin", true);
        client.send(request);
        client.giveInput("é");
        assertEquals("é!", client.await(request).text());
    }

    @Test
    void asksWithAPromptAndForWhatMustNotBeSeen() throws IOException {
        var request = KernelClient.execute("input(\"Span?\") + password(\"Key?\")");
        request.content().put("allow_stdin", true);
        client.send(request);
        JsonNode first = client.giveInput("336");
        assertEquals("Span?", first.path("prompt").asText());
        assertFalse(first.path("password").asBoolean());
        JsonNode second = client.giveInput("k");
        assertEquals("Key?", second.path("prompt").asText());
        assertTrue(second.path("password").asBoolean());
        assertEquals("336k", client.await(request).text());
    }

    @Test
    void aFailedCellAbortsWhatWaits() throws IOException {
        var slow = KernelClient.execute("Thread.sleep(1500); throw new IllegalStateException();");
        var waiting = KernelClient.execute("1 + 1");
        client.send(slow);
        client.send(waiting);
        assertEquals("error", status(client.await(slow)));
        assertEquals("aborted", status(client.await(waiting)));
    }

    @Test
    void aFailedCellThatMayFailAbortsNothing() throws IOException {
        var slow = KernelClient.execute("Thread.sleep(1500); throw new IllegalStateException();");
        slow.content().put("stop_on_error", false);
        var waiting = KernelClient.execute("1 + 1");
        client.send(slow);
        client.send(waiting);
        assertEquals("error", status(client.await(slow)));
        assertEquals("2", client.await(waiting).text());
    }

    @Test
    void aSilentCellShowsNothingAndIsNotCounted() throws IOException {
        int before = client.run("").reply().path("execution_count").asInt();
        var request = KernelClient.execute("1 + 1");
        request.content().put("silent", true).put("code", "System.out.println(1); display(1); 1");
        client.send(request);
        KernelClient.Run run = client.await(request);
        assertEquals(before, run.reply().path("execution_count").asInt());
        assertEquals(2, run.published().size(), "busy and idle only");
    }

    @Test
    void aCellThatIsNotToBeStoredIsNeitherCountedNorRemembered() throws IOException {
        int before = client.run("").reply().path("execution_count").asInt();
        var request = KernelClient.execute("int unstored = 1;\nunstored");
        request.content().put("store_history", false);
        client.send(request);
        KernelClient.Run run = client.await(request);
        assertEquals(before, run.reply().path("execution_count").asInt());
        assertEquals("1", run.text());
        ObjectNode search = KernelClient.object().put("hist_access_type", "search");
        JsonNode found = client.ask("history_request", search.put("pattern", "*unstored*"));
        assertEquals("[]", found.path("history").toString());
    }

    @Test
    void evaluatesUserExpressions() throws IOException {
        var request = KernelClient.execute("int base = 20;");
        request.content().putObject("user_expressions").put("a", "base + 1").put("b", "nothing");
        client.send(request);
        JsonNode values = client.await(request).reply().path("user_expressions");
        assertEquals("21", values.path("a").path("data").path("text/plain").asText());
        assertEquals("error", values.path("b").path("status").asText());
    }

    @Test
    void aWrongSignatureAndBrokenJsonAreDroppedAndTheNextIsServed() throws IOException {
        List<byte[]> wrong = new ArrayList<>(client.frames(KernelClient.execute("1")));
        wrong.set(1, "0".repeat(64).getBytes(StandardCharsets.US_ASCII));
        client.sendRaw(wrong);
        List<byte[]> broken = new ArrayList<>(client.frames(KernelClient.execute("1")));
        broken.set(broken.size() - 1, "{".getBytes(StandardCharsets.US_ASCII));
        client.sendRaw(broken);
        client.sendRaw(List.of("x".getBytes(StandardCharsets.US_ASCII)));
        assertEquals("3", value("1 + 2"));
    }

    @Test
    void saysWhetherCodeIsComplete() throws IOException {
        assertEquals("complete", completeness("int a = 1;").path("status").asText());
        assertEquals("complete", completeness("%maven a:b:1").path("status").asText());
        JsonNode open = completeness("for (int i = 0; i < 3; i++) {");
        assertEquals("incomplete", open.path("status").asText());
        assertEquals("    ", open.path("indent").asText());
        assertEquals("", completeness("String s = \"\"\"\n  {").path("indent").asText("none"));
        JsonNode call = completeness("Math.max(1, // (\n    Math.min(\"(\".length(),");
        assertEquals("        ", call.path("indent").asText());
        assertEquals("invalid", completeness("int a = )").path("status").asText());
    }

    private JsonNode completeness(String code) throws IOException {
        return client.ask("is_complete_request", KernelClient.object().put("code", code));
    }

    @Test
    void completesMembersBehindEarlierStatements() throws IOException {
        client.run("String word = \"w\";");
        String code = "int 𝑎 = 1; word.toUpp";
        ObjectNode content = KernelClient.object().put("code", code);
        content.put("cursor_pos", code.codePointCount(0, code.length()));
        JsonNode reply = client.ask("complete_request", content);
        assertEquals("toUpperCase(", reply.path("matches").get(0).asText());
        assertEquals("int ? = 1; word.".length(), reply.path("cursor_start").asInt());
    }

    private JsonNode complete(String code) throws IOException {
        return client.ask("complete_request", KernelClient.object().put("code", code));
    }

    @Test
    void completesBehindAMagic() throws IOException {
        String magic = "%classpath " + classes + "\n";
        JsonNode reply = complete(magic + "\"w\".toUpp");
        assertEquals("toUpperCase(", reply.path("matches").get(0).asText());
        assertEquals(magic.length() + 4, reply.path("cursor_start").asInt());
        assertEquals(magic.length() + 9, reply.path("cursor_end").asInt());
    }

    @Test
    void completesWhatTheSameCellDeclares() throws IOException {
        JsonNode reply = complete("var parts = new ArrayList<String>();\nparts.trimT");
        assertEquals("trimToSize()", reply.path("matches").get(0).asText());
    }

    @Test
    void completionsTellWhatTheyAre() throws IOException {
        client.run("double thickness = 0.4;");
        JsonNode variable = complete("thickn").path("metadata");
        JsonNode told = variable.path("_jupyter_types_experimental").get(0);
        assertEquals("instance", told.path("type").asText());
        assertEquals("double thickness", told.path("signature").asText());
        JsonNode function = complete("Math.sqr").path("metadata");
        told = function.path("_jupyter_types_experimental").get(0);
        assertEquals("sqrt(", told.path("text").asText());
        assertEquals("function", told.path("type").asText());
        assertEquals("double Math.sqrt(double a)", told.path("signature").asText());
        assertEquals("return", complete("retur").path("matches").get(0).asText());
    }

    @Test
    void inspectsTheCallThatTheCursorStandsInOrBehind() throws IOException {
        String code = "int a = 𝑎.length(); Math.sqrt( 2 )";
        int from = "int a = ?.length(); Math.".length();
        for (int cursor = from; cursor <= code.codePointCount(0, code.length()); cursor++) {
            JsonNode reply =
                    client.ask(
                            "inspect_request",
                            KernelClient.object().put("code", code).put("cursor_pos", cursor));
            assertTrue(
                    reply.path("data").path("text/plain").asText().contains("Math.sqrt(double"),
                    "cursor " + cursor + ": " + reply);
        }
    }

    @Test
    void inspectsAtEveryPositionOfAName() throws IOException {
        client.run("double springing = 764;");
        String code = "springing";
        for (int cursor = 0; cursor <= code.length(); cursor++) {
            JsonNode reply =
                    client.ask(
                            "inspect_request",
                            KernelClient.object().put("code", code).put("cursor_pos", cursor));
            assertTrue(reply.path("found").asBoolean(), "cursor " + cursor);
            assertTrue(reply.path("data").path("text/plain").asText().contains("double springing"));
        }
    }

    @Test
    void remembersWhatWasRun() throws IOException {
        client.run("int remembered = 99;");
        ObjectNode search = KernelClient.object().put("hist_access_type", "search");
        search.put("pattern", "*remembered*").put("n", 1);
        JsonNode found = client.ask("history_request", search).path("history");
        assertEquals("int remembered = 99;", found.get(0).get(2).asText());
    }

    private static ObjectNode comm(String id) {
        ObjectNode content = KernelClient.object().put("comm_id", id).put("target_name", "echo");
        content.putObject("data").put("load", 1.5);
        return content;
    }

    private Message say(String type, ObjectNode content) {
        Message message = Message.request("test", type, content);
        client.send(message);
        return message;
    }

    @Test
    void speaksOverACommThatTheFrontEndOpens() throws IOException {
        client.run(
                "offerComm(\"echo\", comm -> { comm.onMessage(json -> { System.out.print(\"in\");"
                        + " comm.send(json); }); comm.onClose(() ->"
                        + " System.out.print(\"closed\")); });");
        client.published(say("comm_open", comm("line")), "status");
        JsonNode info = client.ask("comm_info_request", KernelClient.object()).path("comms");
        assertEquals("echo", info.path("line").path("target_name").asText());
        Message said = say("comm_msg", comm("line"));
        assertEquals("in", client.published(said, "stream").content().path("text").asText());
        JsonNode echoed = client.published(said, "comm_msg").content();
        assertEquals("line", echoed.path("comm_id").asText());
        assertEquals("{\"load\":1.5}", echoed.path("data").toString());
        Message closed = say("comm_close", comm("line"));
        assertEquals("closed", client.published(closed, "stream").content().path("text").asText());
        info = client.ask("comm_info_request", KernelClient.object()).path("comms");
        assertTrue(info.path("line").isMissingNode());
    }

    @Test
    void speaksOverACommThatACellOpens() throws IOException {
        KernelClient.Run run =
                client.run(
                        "var line = openComm(\"panel\", \"{\\\"a\\\": 1e-7}\");\n"
                                + "line.onMessage(json -> { throw new"
                                + " IllegalStateException(json); });");
        JsonNode opened = run.of("comm_open").get(0).content();
        assertEquals("panel", opened.path("target_name").asText());
        assertEquals("{\"a\":1e-7}", opened.path("data").toString());
        String id = opened.path("comm_id").asText();
        Message failing = say("comm_msg", comm(id));
        String told = client.published(failing, "stream").content().path("text").asText();
        assertTrue(told.contains("java.lang.IllegalStateException: {\"load\":1.5}"), told);
        assertEquals(
                id,
                client.run("line.close();")
                        .of("comm_close")
                        .get(0)
                        .content()
                        .path("comm_id")
                        .asText());
    }

    @Test
    void aCommToWhatNobodyOffersIsClosed() throws IOException {
        ObjectNode content = comm("stray").put("target_name", "nobody");
        Message opened = say("comm_open", content);
        assertEquals(
                "stray", client.published(opened, "comm_close").content().path("comm_id").asText());
    }

    @Test
    void answersWhatItDoesNotHave() throws IOException {
        JsonNode debug = client.askControl("debug_request");
        assertEquals("error", debug.path("status").asText());
        assertTrue(debug.path("evalue").asText().contains("no debugger"));
        JsonNode subshell = client.askControl("create_subshell_request");
        assertEquals("error", subshell.path("status").asText());
        assertTrue(subshell.path("evalue").asText().contains("does not know"));
    }
}
