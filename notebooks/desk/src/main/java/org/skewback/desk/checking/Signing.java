package org.skewback.desk.checking;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.PrivateKey;
import java.time.LocalDate;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.issue.IssuedManifest;
import org.skewback.desk.issue.Manifest;

/** Puts signatures over an issued manifest into the package folder. */
public final class Signing {

    private Signing() {}

    /**
     * Signs an issue.
     *
     * @param issue an issued folder
     * @param folder the package folder it was issued from
     * @param role prepared, checked or approved
     * @param date the signer's date
     * @param key the signer's private key
     * @param anew whether signatures over another manifest are given up
     * @return who signed
     * @throws Problem when the issue has no manifest, nobody is named for the role, the key is not
     *     theirs, or the folder holds signatures over another manifest
     */
    public static Signatory sign(
            Path issue, Path folder, String role, LocalDate date, PrivateKey key, boolean anew)
            throws Problem {
        byte[] manifest = bytes(issue.resolve(Manifest.FILE));
        IssuedManifest.read(manifest);
        Checking checking = CheckingReader.read(folder);
        @Nullable Signatory signatory = checking.signatories().get(role);
        if (signatory == null) {
            throw new Problem(
                    "nobody is named in "
                            + folder.resolve(Checking.SIGNATORIES)
                            + " who may sign as "
                            + role);
        }
        String signed = Keys.sign(key, manifest);
        if (!Keys.holds(signatory.key(), manifest, signed)) {
            throw new Problem(
                    "the key is not that of " + signatory.name() + " in signatories.toml");
        }
        byte @Nullable [] before = checking.files().get(Checking.SIGNED);
        boolean other = before != null && !Arrays.equals(before, manifest);
        if (other && !checking.signatures().isEmpty() && !anew) {
            throw new Problem(
                    folder.resolve(Checking.SIGNATURES)
                            + " holds signatures over another issue; --anew gives them up");
        }
        try {
            Files.createDirectories(folder.resolve(Checking.SIGNATURES));
            if (other) {
                for (String each : Checking.ROLES) {
                    Files.deleteIfExists(folder.resolve(Checking.signaturePath(each)));
                }
            }
            put(folder.resolve(Checking.SIGNED), manifest);
            put(
                    folder.resolve(Checking.signaturePath(role)),
                    toml(signatory, date, signed).getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw Problem.of("cannot write the signature", e);
        }
        return signatory;
    }

    private static String toml(Signatory signatory, LocalDate date, String signed) {
        StringBuilder text = new StringBuilder();
        text.append("name = ").append(quoted(signatory.name()));
        text.append("\ndate = ").append(date);
        text.append("\nkey = ").append(quoted(signatory.key()));
        text.append("\nsignature = ").append(quoted(signed)).append('\n');
        return text.toString();
    }

    /** A basic string of TOML 1.0. */
    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints()
                .forEach(
                        c -> {
                            if (c == '"' || c == '\\') {
                                quoted.append('\\').appendCodePoint(c);
                            } else if (c < 0x20 || c == 0x7F) {
                                quoted.append(String.format("\\u%04X", c));
                            } else {
                                quoted.appendCodePoint(c);
                            }
                        });
        return quoted.append('"').toString();
    }

    private static byte[] bytes(Path file) throws Problem {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw Problem.of("cannot read " + file, e);
        }
    }

    private static void put(Path file, byte[] bytes) throws IOException {
        Path beside = file.resolveSibling("." + file.getFileName() + ".new");
        Files.write(beside, bytes);
        Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
    }
}
