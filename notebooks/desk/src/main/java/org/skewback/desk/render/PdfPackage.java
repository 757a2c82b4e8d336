package org.skewback.desk.render;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.Diagnostic;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Calendar;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.logging.Level;
import java.util.zip.CRC32;
import javax.xml.transform.TransformerException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.xmpbox.XMPMetadata;
import org.apache.xmpbox.schema.XMPBasicSchema;
import org.apache.xmpbox.xml.DomXmpParser;
import org.apache.xmpbox.xml.XmpParsingException;
import org.apache.xmpbox.xml.XmpSerializer;
import org.skewback.desk.issue.Manifest;
import org.skewback.desk.issue.PackageInfo;
import org.skewback.desk.issue.RunPackage;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Writes a package as one PDF for paper, {@code package.pdf}.
 *
 * <p>The file is tagged, follows PDF/A-3a and PDF/UA-1, holds its fonts and the records and notebooks
 * from which it was made, and is the same to the last byte whenever the same package is written: its
 * dates are the package's own. Nothing outside the package is read while it is made.
 */
public final class PdfPackage implements PackageRenderer {

    /**
     * Objects that are compressed together. Whoever reads one reads all of its stream, and the library
     * that reads these files again takes note of every object of the file for each stream, so that
     * many small streams take the longest.
     */
    private static final int OBJECTS_A_STREAM = 10_000;

    private static final Set<Fonts> FONTS =
            EnumSet.of(Fonts.TEXT, Fonts.HEAVY, Fonts.SLANTED, Fonts.SPARE, Fonts.CODE);

    /**
     * Makes a writer; it keeps nothing between packages.
     *
     * <p>On Linux, sets the system property {@code sun.awt.fontconfig} where nobody has set it, so
     * that print does not depend on the machine's fonts.
     */
    public PdfPackage() {
        PrintEngine.prepare();
    }

    @Override
    public void render(RunPackage run, Path folder) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        List<String> content = Manifest.content(folder);
        for (String path : content) {
            files.put(path, Files.readAllBytes(folder.resolve(path)));
        }
        String manifest = Manifest.of(folder, content, run.info(), run.environment());
        files.put(Manifest.FILE, manifest.getBytes(StandardCharsets.UTF_8));
        Files.write(folder.resolve("package.pdf"), bytes(run, files));
    }

    /**
     * Makes the PDF.
     *
     * @param run the package as run
     * @param files what to put into it, by path: records, notebooks and their manifest
     * @return its bytes
     * @throws IOException when it cannot be made
     */
    public byte[] bytes(RunPackage run, Map<String, byte[]> files) throws IOException {
        // To cut fonts takes long, and they are not needed before the text is there.
        Map<Fonts, CompletableFuture<byte[]>> fonts = new EnumMap<>(Fonts.class);
        for (Fonts font : FONTS) {
            fonts.put(font, CompletableFuture.supplyAsync(font::plain));
        }
        String page = text(run);
        Document document = page(page);
        nameLinks(document);
        try {
            return pdf(document, run.info(), page, files, fonts);
        } catch (RuntimeException e) {
            // The engine has no exception of its own for what it cannot lay out.
            throw new IOException("the PDF cannot be made: " + e, e);
        }
    }

    /**
     * Gives the words of the page from which the PDF is made, before it is broken into sheets of
     * paper; its style and the drawings of its equations and pictures are left out.
     *
     * @param whole the package
     * @param pictures whether each picture is tried, as when the PDF is made, and one that cannot be
     *     printed is named; else words stand there as for one that can
     * @return a tree of XHTML
     */
    public static Document words(ReadPackage whole, boolean pictures) {
        return page(new PrintedBook(whole, pictures ? Drawing.TRIED : Drawing.LEFT_OUT).page());
    }

    /**
     * Gives the identifier of a block's element in {@link #words}.
     *
     * @param slug name of the document's files
     * @param block identifier of the block
     * @return the identifier
     */
    public static String identifier(String slug, String block) {
        return PrintMedium.anchor(slug, block);
    }

    /**
     * Gives what stands at the head of each printed page besides the title.
     *
     * @param info what the package says of itself
     * @return number, revision and status
     */
    public static String identity(PackageInfo info) {
        return info.number() + " · revision " + info.revision() + " · " + info.status();
    }

    private static String text(RunPackage run) {
        return new PrintedBook(ReadPackage.of(run), Drawing.DONE).page();
    }

    private static Document page(String text) {
        Document document = Xml.parse(text);
        if (document == null) {
            throw new IllegalStateException("the printed page is not well-formed");
        }
        return document;
    }

    /** ISO 14289-1, 7.18.5: a link says in words where it leads. */
    private static void nameLinks(Document document) {
        // The list of the tree is counted anew after every change.
        NodeList living = document.getElementsByTagName("a");
        List<Element> links = new ArrayList<>();
        for (int i = 0; i < living.getLength(); i++) {
            links.add((Element) living.item(i));
        }
        for (Element link : links) {
            if (!link.hasAttribute("title")) {
                link.setAttribute("title", link.getTextContent());
            }
        }
    }

    private static byte[] pdf(
            Document document,
            PackageInfo info,
            String page,
            Map<String, byte[]> files,
            Map<Fonts, CompletableFuture<byte[]>> fonts)
            throws IOException {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        List<String> trouble = new ArrayList<>();
        builder.withDiagnosticConsumer(told -> note(told, trouble));
        builder.withW3cDocument(document, null);
        builder.usePdfUaAccessibility(true);
        builder.usePdfAConformance(PdfRendererBuilder.PdfAConformance.PDFA_3_A);
        builder.useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
        builder.withProducer("Skewback");
        builder.useReplacementText("\uFFFD");
        for (ExternalResourceControlPriority when : ExternalResourceControlPriority.values()) {
            builder.useExternalResourceAccessControl(
                    (address, kind) -> address.startsWith("data:"), when);
        }
        for (Map.Entry<Fonts, CompletableFuture<byte[]>> entry : fonts.entrySet()) {
            Fonts font = entry.getKey();
            byte[] bytes = entry.getValue().join();
            builder.useFont(
                    () -> new ByteArrayInputStream(bytes),
                    font.family(),
                    font.weight(),
                    font.isItalic() ? FontStyle.ITALIC : FontStyle.NORMAL,
                    true);
        }
        try (BatikSVGDrawer drawer =
                        new BatikSVGDrawer(
                                BatikSVGDrawer.SvgScriptMode.SECURE,
                                BatikSVGDrawer.SvgExternalResourceMode.SECURE);
                PdfBoxRenderer renderer = builder.useSVGDrawer(drawer).buildPdfRenderer()) {
            renderer.layout();
            renderer.createPDFWithoutClosing();
            if (!trouble.isEmpty()) {
                throw new IOException("the PDF cannot be made: " + String.join("; ", trouble));
            }
            try (PDDocument pdf = renderer.getPdfDocument()) {
                fixIdentity(pdf, info, page);
                fixColours(pdf);
                EmbeddedFiles.put(pdf, files, date(info));
                ByteArrayOutputStream out = new ByteArrayOutputStream();
                pdf.save(out, new CompressParameters(OBJECTS_A_STREAM));
                return out.toByteArray();
            }
        }
    }

    /**
     * Blanks the name of the platform in the colour profile, bytes 40 to 43 of its header (ICC.1:2010,
     * 7.2.10; clause from memory), in which editions of Java differ; zero says that there is none.
     */
    private static void fixColours(PDDocument pdf) throws IOException {
        for (PDOutputIntent intent : pdf.getDocumentCatalog().getOutputIntents()) {
            PDStream stream = new PDStream(intent.getDestOutputIntent());
            byte[] profile = stream.toByteArray();
            Arrays.fill(profile, 40, 44, (byte) 0);
            try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
                out.write(profile);
            }
        }
    }

    /** What the engine only warns of would be missing from the page without a word. */
    private static void note(Diagnostic told, List<String> trouble) {
        if (told.getLevel().intValue() >= Level.WARNING.intValue()) {
            trouble.add(told.getFormattedMessage());
        }
    }

    /** The engine stamps the clock and a random number; the package's own date and text stand in. */
    private static void fixIdentity(PDDocument pdf, PackageInfo info, String page)
            throws IOException {
        Calendar date = date(info);
        PDDocumentInformation about = pdf.getDocumentInformation();
        about.setCreationDate(date);
        about.setModificationDate(date);
        CRC32 sum = new CRC32();
        sum.update(page.getBytes(StandardCharsets.UTF_8));
        pdf.setDocumentId(sum.getValue());
        PDMetadata metadata = pdf.getDocumentCatalog().getMetadata();
        try {
            XMPMetadata xmp = new DomXmpParser().parse(metadata.toByteArray());
            XMPBasicSchema basic = xmp.getXMPBasicSchema();
            if (basic == null) {
                basic = xmp.createAndAddXMPBasicSchema();
            }
            basic.setCreateDate(date);
            basic.setModifyDate(date);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            new XmpSerializer().serialize(xmp, out, true);
            metadata.importXMPMetadata(out.toByteArray());
        } catch (XmpParsingException | TransformerException e) {
            throw new IOException("the description in the PDF cannot be rewritten", e);
        }
    }

    private static Calendar date(PackageInfo info) {
        Calendar date = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        date.setTimeInMillis(info.date().atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli());
        return date;
    }

    static String normal(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFC);
    }
}
