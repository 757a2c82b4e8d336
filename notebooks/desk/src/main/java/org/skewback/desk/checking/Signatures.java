package org.skewback.desk.checking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.issue.IssuedManifest;
import org.skewback.desk.issue.Manifest;
import org.skewback.desk.issue.PackageInfo;

/**
 * Whether signatures hold for what is issued.
 *
 * <p>A signature is over the manifest of an earlier issue, mostly one for checking. It holds for a
 * later one that has the same content to the last byte: records, notebooks as run, the checker's
 * files, and what the package says of itself except status and date.
 */
public final class Signatures {

    private Signatures() {}

    /**
     * Says of each role why its signature does not hold.
     *
     * @param checking the checker's side
     * @param info what the package to be issued says of itself
     * @param content digests of the content to be issued, by path
     * @return a reason for each role, in order; an empty one where the signature holds
     */
    public static Map<String, String> faults(
            Checking checking, PackageInfo info, Map<String, String> content) {
        Map<String, String> faults = new LinkedHashMap<>();
        String differs = contentFault(checking, info, content);
        for (String role : Checking.ROLES) {
            faults.put(role, fault(checking, role, differs));
        }
        return faults;
    }

    private static String fault(Checking checking, String role, String contentFault) {
        @Nullable Signature signature = checking.signatures().get(role);
        @Nullable Signatory signatory = checking.signatories().get(role);
        byte @Nullable [] signed = checking.files().get(Checking.SIGNED);
        if (signature == null || signed == null) {
            return "the signature of who " + role + " it is missing";
        } else if (signatory == null) {
            return "nobody is named in " + Checking.SIGNATORIES + " who may sign as " + role;
        } else if (!signature.key().equals(signatory.key())) {
            return "the signature of who "
                    + role
                    + " it is by a key that is not "
                    + signatory.name()
                    + "'s";
        } else if (!Keys.holds(signature.key(), signed, signature.signature())) {
            return "the signature of who " + role + " it does not hold over the manifest signed";
        }
        return contentFault.isEmpty()
                ? ""
                : "the signature of who " + role + " it is over something else: " + contentFault;
    }

    private static String contentFault(
            Checking checking, PackageInfo info, Map<String, String> content) {
        byte @Nullable [] signed = checking.files().get(Checking.SIGNED);
        if (signed == null) {
            return "";
        }
        IssuedManifest manifest;
        try {
            manifest = IssuedManifest.read(signed);
        } catch (Problem e) {
            return String.valueOf(e.getMessage());
        }
        if (!identity(manifest.info()).equals(identity(info))) {
            return "what the package says of itself has changed";
        }
        Map<String, String> before = new TreeMap<>();
        for (IssuedManifest.File file : manifest.files()) {
            if (isSigned(file.path())) {
                before.put(file.path(), file.sha256());
            }
        }
        Map<String, String> now = new TreeMap<>(content);
        now.keySet().removeIf(path -> !isSigned(path));
        if (before.equals(now)) {
            return "";
        }
        List<String> changed = new ArrayList<>();
        for (String path : merged(before, now).keySet()) {
            if (!String.valueOf(before.get(path)).equals(String.valueOf(now.get(path)))) {
                changed.add(path);
            }
        }
        return "since then changed " + String.join(", ", changed);
    }

    private static Map<String, String> merged(Map<String, String> a, Map<String, String> b) {
        Map<String, String> merged = new TreeMap<>(a);
        merged.putAll(b);
        return merged;
    }

    /** Signatures cannot be part of what they sign. */
    private static boolean isSigned(String path) {
        return Manifest.isContent(path) && !path.startsWith(Checking.SIGNATURES);
    }

    private static List<String> identity(PackageInfo info) {
        List<String> said =
                new ArrayList<>(
                        List.of(
                                info.name(),
                                info.title(),
                                info.number(),
                                info.revision(),
                                info.preparedBy(),
                                info.summary()));
        said.addAll(info.cautions());
        said.addAll(info.order());
        said.add(info.basis().toString());
        return said;
    }
}
