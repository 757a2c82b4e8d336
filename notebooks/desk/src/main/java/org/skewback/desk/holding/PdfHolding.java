package org.skewback.desk.holding;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.PDNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.issue.IssuedManifest;

/** The files embedded in a PDF (ISO 32000-1, 7.11.4), read into memory up to a bound. */
public final class PdfHolding implements Holding {

    private static final int MOST_FILES = 10_000;
    private static final int MOST_BYTES = 256 << 20;
    private static final int DEEPEST = 32;

    private final Path pdf;
    private final Map<String, byte[]> files = new TreeMap<>();
    private final Set<String> refused = new TreeSet<>();
    private final int most;
    private int bytes;
    private int seen;

    /**
     * Reads the files out of a PDF.
     *
     * @param pdf a PDF
     * @throws IOException when it cannot be read
     * @throws Problem when it holds none, or more than an issue would
     */
    public PdfHolding(Path pdf) throws IOException, Problem {
        this(pdf, MOST_BYTES);
    }

    /** Reads files of so many bytes at most together. */
    PdfHolding(Path pdf, int most) throws IOException, Problem {
        this.pdf = pdf;
        this.most = most;
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            take(document);
        }
    }

    /**
     * Reads the files out of a PDF that is open.
     *
     * @param pdf its file
     * @param document the document in it, which stays open
     * @throws IOException when it cannot be read
     * @throws Problem when it holds none, or more than an issue would
     */
    public PdfHolding(Path pdf, PDDocument document) throws IOException, Problem {
        this.pdf = pdf;
        this.most = MOST_BYTES;
        take(document);
    }

    private void take(PDDocument document) throws IOException, Problem {
        @Nullable PDDocumentNameDictionary names = document.getDocumentCatalog().getNames();
        @Nullable PDEmbeddedFilesNameTreeNode tree =
                names == null ? null : names.getEmbeddedFiles();
        if (tree != null) {
            take(tree, 0);
        }
        if (files.isEmpty() && refused.isEmpty()) {
            throw new Problem(
                    pdf
                            + " holds no records: it is not the PDF of an issue, or is of an"
                            + " earlier program; audit the issued folder");
        }
    }

    private void take(PDNameTreeNode<PDComplexFileSpecification> node, int depth)
            throws IOException, Problem {
        if (depth > DEEPEST || seen > MOST_FILES) {
            throw new Problem(pdf + " holds more files, or deeper, than an issue would");
        }
        @Nullable Map<String, PDComplexFileSpecification> here = node.getNames();
        if (here != null) {
            for (PDComplexFileSpecification file : here.values()) {
                seen++;
                take(file);
            }
        }
        if (node.getKids() != null) {
            for (PDNameTreeNode<PDComplexFileSpecification> kid : node.getKids()) {
                seen++;
                take(kid, depth + 1);
            }
        }
    }

    private void take(@Nullable PDComplexFileSpecification file) throws IOException, Problem {
        if (file == null) {
            return;
        }
        @Nullable String path =
                file.getFileUnicode() == null ? file.getFile() : file.getFileUnicode();
        @Nullable PDEmbeddedFile embedded =
                file.getEmbeddedFileUnicode() == null
                        ? file.getEmbeddedFile()
                        : file.getEmbeddedFileUnicode();
        if (path == null
                || embedded == null
                || !IssuedManifest.isInside(path)
                || files.containsKey(path)) {
            refused.add(String.valueOf(path));
            return;
        }
        try (InputStream in = embedded.createInputStream()) {
            byte[] read = in.readNBytes(most - bytes + 1);
            bytes += read.length;
            if (bytes > most) {
                throw new Problem(pdf + " holds files of more than " + most + " bytes");
            }
            files.put(path, read);
        }
    }

    @Override
    public Set<String> paths() {
        return files.keySet();
    }

    @Override
    public Set<String> refused() {
        return refused;
    }

    @Override
    public InputStream open(String path) throws IOException {
        byte @Nullable [] read = files.get(path);
        if (read == null) {
            throw new IOException(path + " is none of the files of the issue");
        }
        return new ByteArrayInputStream(read);
    }

    @Override
    public boolean isPrinted() {
        return true;
    }

    @Override
    public Path pdf() {
        return pdf;
    }

    @Override
    public void close() {
        files.clear();
    }
}
