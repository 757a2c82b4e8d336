package org.skewback.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import jdk.jshell.Snippet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.skewback.kernel.evaluation.Libraries.MissingException;

/** A long session keeps nothing but what is declared, and no cell notices that it does not. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RenewalTest {

    private static final String CLASS_PATH = "java.class.path";
    private static final int RENEW_AFTER = 30;

    private final String classPath = System.getProperty(CLASS_PATH);
    private final List<String> printed = new CopyOnWriteArrayList<>();
    private final Evaluator evaluator;
    private int runs;

    RenewalTest() throws IOException {
        evaluator =
                new Evaluator(
                        new Printing(),
                        coordinates -> {
                            throw new MissingException(coordinates);
                        },
                        Set.of(),
                        RENEW_AFTER);
    }

    private final class Printing implements CellEvents {
        @Override
        public void printed(int run, boolean error, String text) {
            printed.add(text);
        }

        @Override
        public void shows(int run, Shown shown) {
            // Nothing is displayed here.
        }

        @Override
        public void clears(int run, boolean wait) {
            // Nothing is cleared here.
        }

        @Override
        public void says(int run, CommMessage message) {
            // Nobody listens here.
        }

        @Override
        public void wantsInput(int run, String prompt, boolean secret) {
            evaluator.giveInput(null);
        }
    }

    @BeforeAll
    void warm() {
        value("1");
    }

    @AfterAll
    void close() throws IOException {
        evaluator.close();
        System.setProperty(CLASS_PATH, classPath);
    }

    private CellResult run(String code) {
        runs++;
        return evaluator.run(new Cell(runs, runs, null, code));
    }

    private String value(String code) {
        CellResult result = run(code);
        if (result instanceof CellResult.Done done) {
            return done.content().getOrDefault("text/plain", "");
        }
        throw new AssertionError(code + ": " + result);
    }

    private List<String> traceback(String code) {
        if (run(code) instanceof CellResult.Failed failed) {
            return failed.traceback();
        }
        throw new AssertionError(code + " did not fail");
    }

    private boolean isRenewed() {
        JavaSession session = evaluator.session();
        int before = session.renewals();
        session.renewSoon();
        for (int i = 0; i < 3 && session.renewals() == before; i++) {
            value("1 + " + i);
            session.awaitRenewal();
        }
        return session.renewals() > before;
    }

    private void renew() {
        assertTrue(isRenewed(), "JShell was not replaced");
    }

    private long snippets() {
        return evaluator.session().shell().snippets().count();
    }

    private int declared() {
        return evaluator.session().declared();
    }

    @Test
    void whatHasBeenRunAndReplacedIsNotKept() {
        for (int i = 0; i < 60; i++) {
            assertEquals(String.valueOf(i + 1), value(i + " + 1"));
            run("double load = " + i + "; record Place(double x" + i % 2 + ") {}");
            run("int of(int a) { return a + " + i + "; } of(1);");
            run("int missing = unknown;");
            run("throw new IllegalStateException();");
            evaluator.session().awaitRenewal();
            // Four times what is declared, or the bound above, and what the last cell has run.
            long most = Math.max(RENEW_AFTER, 3L * declared()) + declared() + 20;
            assertTrue(snippets() <= most, snippets() + " of " + most + " snippets");
        }
    }

    @Test
    void anExpressionLeavesNoVariableBehindWhenItFails() {
        long before = evaluator.session().shell().variables().count();
        run("List.of(1).get(1)");
        run("Integer.parseInt(\"a\") + 1");
        assertEquals(before, evaluator.session().shell().variables().count());
    }

    @Test
    void valuesAreKeptAndNothingRunsAgain() {
        run("int made = 0; int make() { return ++made; } int a = make(), b = make();");
        run("record Pier(String name, double height) {} var piers = List.of(new Pier(\"P\", 4));");
        run("var odd = new Object() { int seen = 5; int more() { return seen + 1; } };");
        renew();
        assertEquals("3", value("a + b"));
        assertEquals("2", value("made"));
        assertEquals("4.0", value("Pier first = piers.get(0); first.height()"));
        assertEquals("11", value("odd.seen + odd.more()"));
        renew();
        assertEquals("true", value("piers.get(0).equals(new Pier(\"P\", 4))"));
        assertEquals("6", value("odd.more()"));
        assertEquals("3", value("make()"));
    }

    @Test
    void whatIsDeclaredAnewReachesWhatUsesIt() {
        run("int depth(int a) { return a + 1; } int twice(int a) { return 2 * depth(a); }");
        run("Supplier<Integer> later = () -> depth(3);");
        renew();
        run("int depth(int a) { return a + 10; }");
        assertEquals("22", value("twice(1)"));
        assertEquals("13", value("later.get()"));
        run("String depth(int a) { return \"d\" + a; } String twice(int a) { return depth(a); }");
        renew();
        assertEquals("d1", value("twice(1)"));
    }

    @Test
    void classesThatNeedEachOtherAreKept() {
        run(
                "class Nut { Bolt bolt; int size() { return 7; } } class Bolt { Nut nut = new"
                        + " Nut(); }");
        run("Bolt held = new Bolt();");
        renew();
        assertEquals("7", value("held.nut.size()"));
        run("class Nut { Bolt bolt; int size() { return 8; } }");
        assertEquals("8", value("new Bolt().nut.size()"));
    }

    @Test
    void methodsOfOneNameAreKept() {
        run("int area(int a) { return area(a, a); }\nint area(int a, int b) { return a * b; }");
        renew();
        assertEquals("9", value("area(3)"));
        run("int area(int a, int b) { return a + b; }");
        assertEquals("6", value("area(3)"));
    }

    @Test
    void anErrorIsFoundWhereItStands() {
        run("\n\nint fails(int a) {\n    return a / 0;\n}");
        int cell = runs;
        run("Runnable failing = () -> {\n    fails(1);\n};");
        int inner = runs;
        run("var calls = new ArrayList<Runnable>();");
        run("calls.add(() -> fails(2));");
        int lost = runs;
        renew();
        List<String> trace = traceback("\nfailing.run();");
        assertEquals("    at fails (cell " + cell + ", line 4)", trace.get(1));
        assertTrue(trace.get(2).contains("(cell " + inner + ", line 2)"), trace::toString);
        assertEquals("    at cell " + runs + ", line 2", trace.get(3));
        assertTrue(
                traceback("calls.get(0).run();").contains("    at cell " + lost),
                () -> traceback("calls.get(0).run();").toString());
        run("int fails(int a) {\n    return a / 0;\n}");
        cell = runs;
        assertEquals("    at fails (cell " + cell + ", line 2)", traceback("fails(1);").get(1));
        printed.clear();
        run("var thread = new Thread(() -> fails(1)); thread.start(); thread.join();");
        run("Thread.sleep(100);");
        String told = String.join("", printed);
        assertTrue(told.contains("at cell " + cell + "\n"), told);
    }

    @Test
    void aFunctionGoesOnUsingTheFormerVariableItWasMadeWith() {
        run("int width = 3; Supplier<Object> wide = () -> width;");
        run("String width = \"w\";");
        run("Supplier<Integer> narrow = () -> shallow(1); int shallow(int a) { return a; }");
        run("Supplier<Integer> narrow = () -> shallow(1); String shallow(int a) { return \"\"; }");
        renew();
        assertEquals("3", value("wide.get()"));
        renew();
        assertEquals("3", value("wide.get()"));
        assertEquals("1", value("narrow.get()"));
        run("Supplier<Object> wide = () -> width;");
        renew();
        assertEquals("w", value("wide.get()"));
    }

    @Test
    void whatIsNotCompleteWaits() {
        run("int open(int a) { return a + toCome; }");
        assertFalse(isRenewed());
        run("int toCome = 4;");
        assertEquals("5", value("open(1)"));
        renew();
        assertEquals("5", value("open(1)"));
        assertEquals(Snippet.Status.VALID, statusOf("open"));
    }

    private Snippet.Status statusOf(String method) {
        var shell = evaluator.session().shell();
        return shell.methods()
                .filter(m -> m.name().equals(method))
                .map(shell::status)
                .findFirst()
                .orElseThrow();
    }
}
