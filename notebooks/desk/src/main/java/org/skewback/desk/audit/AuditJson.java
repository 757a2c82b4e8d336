package org.skewback.desk.audit;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Json;

/** Writes the report of an audit for a machine. */
public final class AuditJson {

    private static final String FORMAT = "skewback-audit";
    private static final int EDITION = 1;

    private AuditJson() {}

    /**
     * Writes a report.
     *
     * @param report what came of an audit
     * @param times whether to say what each stage took, which differs from run to run
     * @return JSON
     */
    public static String of(AuditReport report, boolean times) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("format", FORMAT);
        root.put("edition", EDITION);
        root.put("program", report.program());
        @Nullable Identity identity = report.identity();
        if (identity != null) {
            ObjectNode of = root.putObject("package");
            of.put("title", identity.title());
            of.put("number", identity.number());
            of.put("revision", identity.revision());
            of.put("status", identity.status());
            of.put("date", identity.date());
            of.put("program", identity.program());
        }
        root.put("verdict", report.verdict().inWords());
        ObjectNode counts = root.putObject("counts");
        for (Tally tally : Tally.values()) {
            counts.put(FindingJson.key(tally), report.count(tally));
        }
        ArrayNode findings = root.putArray("findings");
        report.findings().forEach(finding -> findings.add(FindingJson.of(finding)));
        if (times) {
            ArrayNode efforts = root.putArray("times");
            report.efforts().forEach(effort -> efforts.add(EffortJson.of(effort)));
        }
        return Json.page(root);
    }
}
