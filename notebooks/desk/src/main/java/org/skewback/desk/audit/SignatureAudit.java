package org.skewback.desk.audit;

import java.io.IOException;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.checking.Checking;
import org.skewback.desk.checking.CheckingReader;
import org.skewback.desk.checking.Keys;
import org.skewback.desk.checking.Signature;
import org.skewback.desk.checking.Signatures;
import org.skewback.desk.holding.Holding;
import org.skewback.desk.issue.IssuedManifest;
import org.skewback.desk.issue.Manifest;

/**
 * Holds signatures against the issue and against the keys that whoever audits knows.
 *
 * <p>Files, numbers and pages that fit each other can be made by anybody; only a signature by a key
 * that came by another way tells who made them.
 */
final class SignatureAudit {

    private final Holding holding;
    private final Findings findings;
    private final Map<String, String> keys;

    /** Makes one with the keys known, by role. */
    SignatureAudit(Holding holding, Findings findings, Map<String, String> keys) {
        this.holding = holding;
        this.findings = findings;
        this.keys = Map.copyOf(keys);
    }

    void audit(IssuedManifest manifest) throws IOException, Problem {
        Map<String, byte[]> files = new TreeMap<>();
        for (String path : holding.paths()) {
            if (Checking.isKnown(path)) {
                files.put(path, holding.read(path, Holding.LONGEST));
            }
        }
        Checking checking = CheckingReader.of(files);
        Map<String, String> content = new TreeMap<>();
        for (IssuedManifest.File file : manifest.files()) {
            if (Manifest.isContent(file.path())) {
                content.put(file.path(), file.sha256());
            }
        }
        Map<String, String> faults = Signatures.faults(checking, manifest.info(), content);
        boolean any = false;
        for (String role : Checking.ROLES) {
            @Nullable Signature signature = checking.signatures().get(role);
            @Nullable String known = keys.get(role);
            if (signature == null) {
                if (known != null) {
                    findings.differs(Subject.SIGNATURES, role, "is not signed");
                }
                continue;
            }
            any = true;
            audit(role, signature, known, faults.getOrDefault(role, ""));
        }
        if (!any && keys.isEmpty()) {
            findings.remark(
                    Subject.SIGNATURES,
                    "manifest",
                    "nobody has signed it: whether these are the author's numbers cannot be seen");
        }
    }

    private void audit(String role, Signature signature, @Nullable String known, String fault) {
        String who = signature.name() + ", key " + Keys.fingerprint(signature.key());
        if (!fault.isEmpty()) {
            findings.differs(Subject.SIGNATURES, role, who + ": " + fault);
        } else if (known == null) {
            findings.remark(
                    Subject.SIGNATURES,
                    role,
                    who
                            + ": holds, by a key that you did not name, so whose it is cannot be"
                            + " seen; name it with --signer "
                            + role
                            + "=<file>");
        } else if (!known.equals(signature.key())) {
            findings.differs(
                    Subject.SIGNATURES,
                    role,
                    who + ": is by another key than yours, " + Keys.fingerprint(known));
        } else {
            findings.count(Tally.SIGNED, 1);
        }
    }
}
