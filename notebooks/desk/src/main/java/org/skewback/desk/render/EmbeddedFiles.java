package org.skewback.desk.render;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Calendar;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/** Puts files into a PDF as associated files of the document (ISO 19005-3, 6.8). */
final class EmbeddedFiles {

    private static final Map<String, String> TYPES =
            Map.of(
                    "json", "application/json",
                    "ipynb", "application/x-ipynb+json",
                    "csv", "text/csv",
                    "toml", "application/toml");

    private EmbeddedFiles() {}

    /**
     * Puts files into a PDF.
     *
     * @param pdf the document
     * @param files their bytes by path
     * @param date date to state for all of them
     */
    static void put(PDDocument pdf, Map<String, byte[]> files, Calendar date) throws IOException {
        Map<String, PDComplexFileSpecification> names = new LinkedHashMap<>();
        COSArray associated = new COSArray();
        for (Map.Entry<String, byte[]> file : new TreeMap<>(files).entrySet()) {
            PDComplexFileSpecification one = one(pdf, file.getKey(), file.getValue(), date);
            names.put(file.getKey(), one);
            associated.add(one);
        }
        PDEmbeddedFilesNameTreeNode leaf = new PDEmbeddedFilesNameTreeNode();
        leaf.setNames(names);
        PDDocumentNameDictionary dictionary =
                new PDDocumentNameDictionary(pdf.getDocumentCatalog());
        dictionary.setEmbeddedFiles(leaf);
        pdf.getDocumentCatalog().setNames(dictionary);
        pdf.getDocumentCatalog().getCOSObject().setItem(COSName.getPDFName("AF"), associated);
    }

    private static PDComplexFileSpecification one(
            PDDocument pdf, String path, byte[] bytes, Calendar date) throws IOException {
        PDEmbeddedFile embedded =
                new PDEmbeddedFile(pdf, new ByteArrayInputStream(bytes), COSName.FLATE_DECODE);
        String ending = path.substring(path.lastIndexOf('.') + 1);
        embedded.setSubtype(TYPES.getOrDefault(ending, "application/octet-stream"));
        embedded.setSize(bytes.length);
        embedded.setCreationDate(date);
        embedded.setModDate(date);
        PDComplexFileSpecification specification = new PDComplexFileSpecification();
        specification.setFile(path);
        specification.setFileUnicode(path);
        specification.setFileDescription(description(path));
        specification.setEmbeddedFile(embedded);
        specification.setEmbeddedFileUnicode(embedded);
        // ISO 19005-3, 6.8: each says how it stands to the document.
        specification
                .getCOSObject()
                .setName("AFRelationship", path.endsWith(".ipynb") ? "Source" : "Data");
        return specification;
    }

    private static String description(String path) {
        if (path.startsWith("records/")) {
            return "Record of a sheet: its numbers and how they were worked out";
        } else if (path.startsWith("notebooks/")) {
            return "Notebook as run";
        } else if (path.startsWith("checking/")) {
            return "From the checker's side";
        }
        return "List of the files in this PDF, with digests";
    }
}
