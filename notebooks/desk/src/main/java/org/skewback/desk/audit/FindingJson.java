package org.skewback.desk.audit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Writes findings as JSON and reads them back. */
final class FindingJson {

    private FindingJson() {}

    static ObjectNode of(Finding finding) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("verdict", finding.verdict().inWords());
        node.put("part", finding.subject().inWords());
        node.put("place", finding.place());
        node.put("finding", finding.words());
        @Nullable Change change = finding.change();
        if (change != null) {
            node.put("sheet", change.sheet());
            node.put("quantity", change.quantity());
            node.put("recorded", change.before());
            if (!change.now().isEmpty()) {
                node.put("now", change.now());
            }
            if (Double.isFinite(change.relative())) {
                node.put("relativeChange", change.relative());
            }
            change.givens().forEach(node.putArray("fedBy")::add);
        }
        return node;
    }

    /**
     * Reads a finding.
     *
     * @throws IllegalArgumentException when it is none
     */
    static Finding read(JsonNode node) {
        @Nullable Change change = null;
        if (node.has("quantity")) {
            List<String> givens = new ArrayList<>();
            node.path("fedBy").forEach(given -> givens.add(given.asText("")));
            change =
                    new Change(
                            node.path("sheet").asText(""),
                            node.path("quantity").asText(""),
                            node.path("recorded").asText(""),
                            node.path("now").asText(""),
                            node.path("relativeChange").asDouble(Double.NaN),
                            givens);
        }
        return new Finding(
                verdict(node.path("verdict").asText("")),
                subject(node.path("part").asText("")),
                node.path("place").asText(""),
                node.path("finding").asText(""),
                change);
    }

    private static Verdict verdict(String words) {
        for (Verdict verdict : Verdict.values()) {
            if (verdict.inWords().equals(words)) {
                return verdict;
            }
        }
        throw new IllegalArgumentException("no verdict is called \"" + words + "\"");
    }

    private static Subject subject(String words) {
        for (Subject subject : Subject.values()) {
            if (subject.inWords().equals(words)) {
                return subject;
            }
        }
        throw new IllegalArgumentException("no part is called \"" + words + "\"");
    }

    /** Name of a count in JSON. */
    static String key(Tally tally) {
        return tally.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
