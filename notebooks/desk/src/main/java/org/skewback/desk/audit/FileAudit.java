package org.skewback.desk.audit;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.holding.Holding;
import org.skewback.desk.issue.IssuedManifest;
import org.skewback.desk.issue.Manifest;

/** Holds the files of an issue against its manifest: each is as named, and none is not named. */
final class FileAudit {

    private static final Set<String> MUST =
            Set.of("index.html", "basis.html", "cautions.html", "package.pdf");

    private final Holding holding;
    private final Findings findings;

    FileAudit(Holding holding, Findings findings) {
        this.holding = holding;
        this.findings = findings;
    }

    /** Reads the manifest; null where there is none that can be read, which is then said. */
    static @Nullable IssuedManifest manifest(Holding holding, Findings findings) {
        try {
            if (!holding.paths().contains(Manifest.FILE)) {
                findings.cannotTell(
                        Subject.FILES, Manifest.FILE, "is missing: this is not a whole issue");
                return null;
            }
            byte[] bytes = holding.read(Manifest.FILE, IssuedManifest.LONGEST);
            IssuedManifest read = IssuedManifest.read(bytes);
            String again = Manifest.text(read.files(), read.info(), read.software());
            if (!Arrays.equals(again.getBytes(StandardCharsets.UTF_8), bytes)) {
                findings.differs(
                        Subject.FILES,
                        Manifest.FILE,
                        "is not to the last byte as an issue writes it");
            }
            return read;
        } catch (IOException | Problem e) {
            findings.cannotTell(Subject.FILES, Manifest.FILE, String.valueOf(e.getMessage()));
            return null;
        }
    }

    void audit(IssuedManifest manifest) {
        Set<String> named = new LinkedHashSet<>();
        for (IssuedManifest.File file : manifest.files()) {
            named.add(file.path());
            audit(file);
        }
        for (String path : holding.paths()) {
            if (!named.contains(path) && !path.equals(Manifest.FILE)) {
                findings.differs(Subject.FILES, path, "is there and the manifest does not name it");
            }
        }
        for (String path : holding.refused()) {
            findings.differs(
                    Subject.FILES, path, "is no plain file of the issue, so it was not opened");
        }
        requireParts(manifest, named);
    }

    private void requireParts(IssuedManifest manifest, Set<String> named) {
        for (String slug : manifest.slugs()) {
            requirePart("notebooks/" + slug + ".ipynb", named);
            if (!holding.isPrinted()) {
                requirePart("sheets/" + slug + ".html", named);
            }
        }
        if (!holding.isPrinted()) {
            MUST.stream().sorted().forEach(path -> requirePart(path, named));
        }
    }

    private void requirePart(String path, Set<String> named) {
        if (!named.contains(path)) {
            findings.differs(
                    Subject.FILES, path, "belongs to an issue and the manifest does not name it");
        }
    }

    private void audit(IssuedManifest.File file) {
        if (!holding.paths().contains(file.path())) {
            findings.differs(Subject.FILES, file.path(), "is missing");
            return;
        }
        try (InputStream in = holding.open(file.path());
                CountedInput counted = new CountedInput(in)) {
            boolean same = Manifest.sha256(counted).equals(file.sha256());
            if (same && counted.count() == file.size()) {
                findings.count(Tally.INTACT, 1);
            } else {
                findings.differs(
                        Subject.FILES,
                        file.path(),
                        same
                                ? "is not as it was issued: the manifest states another size"
                                : "is not as it was issued: its SHA-256 is another");
            }
        } catch (IOException e) {
            findings.differs(Subject.FILES, file.path(), "cannot be read: " + e.getMessage());
        }
    }

    /** Counts the bytes that are read through it. */
    private static final class CountedInput extends FilterInputStream {
        private long count;

        CountedInput(InputStream in) {
            super(in);
        }

        long count() {
            return count;
        }

        @Override
        public int read() throws IOException {
            int c = super.read();
            count += c < 0 ? 0 : 1;
            return c;
        }

        @Override
        public int read(byte[] bytes, int from, int most) throws IOException {
            int read = super.read(bytes, from, most);
            count += Math.max(0, read);
            return read;
        }
    }
}
