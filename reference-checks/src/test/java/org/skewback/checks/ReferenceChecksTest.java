package org.skewback.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every row of every topic against the library; the register is written before any row can fail. */
class ReferenceChecksTest {

    private static List<Subject> subjects() {
        return ServiceLoader.load(Subject.class).stream().map(ServiceLoader.Provider::get).toList();
    }

    @TestFactory
    Stream<DynamicContainer> everyRowAgrees() throws IOException {
        Map<String, List<Outcome>> topics = new LinkedHashMap<>();
        List<Outcome> all = new ArrayList<>();
        for (Subject subject : subjects()) {
            List<Outcome> outcomes =
                    Row.of(subject).stream().map(row -> Outcome.of(row, subject)).toList();
            topics.computeIfAbsent(subject.topic(), topic -> new ArrayList<>()).addAll(outcomes);
            all.addAll(outcomes);
        }
        new Register(all).writeTo(Path.of(System.getProperty("basedir", ".")).resolve("target"));
        return topics.entrySet().stream()
                .map(
                        topic ->
                                dynamicContainer(
                                        topic.getKey(),
                                        topic.getValue().stream()
                                                .map(ReferenceChecksTest::agreement)));
    }

    private static DynamicTest agreement(Outcome outcome) {
        Row row = outcome.row();
        return dynamicTest(
                row.id() + ": " + row.routine() + ", " + row.quantity(),
                () -> {
                    Throwable failure = outcome.failure();
                    if (failure != null) {
                        throw new AssertionError(row.id() + ": the routine failed", failure);
                    }
                    assertTrue(
                            outcome.agrees(),
                            () ->
                                    row.id()
                                            + ": expected "
                                            + row.expected()
                                            + " "
                                            + row.unit()
                                            + ", computed "
                                            + outcome.computed().orElse(Double.NaN)
                                            + ", deviation "
                                            + outcome.deviation().orElse(Double.NaN)
                                            + ", tolerance "
                                            + row.tolerance()
                                            + " ("
                                            + row.source()
                                            + ")");
                });
    }

    @Test
    void noTwoRowsHaveOneName() {
        Set<String> seen = new HashSet<>();
        for (Subject subject : subjects()) {
            for (Row row : Row.of(subject)) {
                assertTrue(seen.add(row.id()), "check " + row.id() + " is there twice");
            }
        }
    }

    @Test
    void noValueFromMemoryStandsAlone() {
        Map<String, Set<Kind>> kinds = new TreeMap<>();
        for (Subject subject : subjects()) {
            for (Row row : Row.of(subject)) {
                kinds.computeIfAbsent(row.topic() + " " + row.routine(), key -> new TreeSet<>())
                        .add(row.kind());
            }
        }
        kinds.forEach(
                (routine, found) ->
                        assertTrue(
                                !found.equals(Set.of(Kind.FROM_MEMORY)),
                                routine + " rests on values from memory alone"));
    }

    @Test
    void everyRoutineNamedIsExercised() {
        for (Subject subject : subjects()) {
            Set<String> exercised = new TreeSet<>();
            Row.of(subject).forEach(row -> exercised.add(row.routine()));
            assertEquals(new TreeSet<>(subject.routines().keySet()), exercised);
        }
    }
}
