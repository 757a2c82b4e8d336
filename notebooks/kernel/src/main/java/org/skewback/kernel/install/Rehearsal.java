package org.skewback.kernel.install;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarOutputStream;
import java.util.zip.ZipEntry;
import org.skewback.kernel.Kernel;
import org.skewback.kernel.wire.ConnectionFile;

/**
 * Runs a kernel through what notebooks commonly do, so that the VMs, as they end, can write down the
 * classes that this took. Run in a VM of its own by {@link ClassDataArchives}, and by the build for the
 * kernels that the program starts to issue.
 */
public final class Rehearsal {

    static final int MOST_SECONDS = 120;

    /**
     * Folder, in that of the rehearsal, of the local repository that the environment must name; it is
     * made when the rehearsal starts.
     */
    static final String REPOSITORY = "repository";

    private static final String GROUP = "rehearsal";

    /** No status of a program that a build lets pass. */
    private static final int FAILED = 2;

    private static final List<String> CELLS =
            List.of(
                    "1 + 1",
                    "%maven " + GROUP + ":library:1",
                    """
                    int a = 3;
                    int b = a * a;
                    b\
                    """,
                    "int a = 4;",
                    """
                    record Place(double x, double y) {}
                    List<Place> places = List.of(new Place(1, 2));
                    places.stream().mapToDouble(Place::x).sum()\
                    """,
                    """
                    class Sum { int of(int n) { return n < 2 ? n : of(n - 1) + of(n - 2); } }
                    for (int i = 0; i < 3; i++) System.out.println(new Sum().of(i));\
                    """,
                    "display(new double[] {1, 2});",
                    "Map.of(\"span\", 336)",
                    "places",
                    "int later = 1 / 0;",
                    "int wrong = ;");

    // Called by reflection, which no check woven into cells sees: the worker has to end in the way
    // that lets its VM write the archive.
    private static final String END_OF_WORKER =
            "Class.forName(\"java.lang.System\").getMethod(\"exit\", int.class).invoke(null, 0);";

    private Rehearsal() {}

    /**
     * Runs the rehearsal and ends this VM.
     *
     * @param arguments a folder of its own for temporary files, which is made where it is missing
     */
    public static void main(String[] arguments) {
        int status = 0;
        try {
            run(Path.of(arguments[0]));
        } catch (IOException | RuntimeException e) {
            System.err.println("the rehearsal failed: " + e);
            status = FAILED;
        }
        System.exit(status);
    }

    private static void run(Path folder) throws IOException {
        writeRepository(folder.resolve(REPOSITORY));
        ConnectionFile connection = ConnectionFile.onLoopback();
        Path file = folder.resolve("connection.json");
        // A build that is run again rehearses in the same folder.
        Files.deleteIfExists(file);
        connection.write(file);
        Kernel.main(new String[] {file.toString()});
        try (KernelTalk talk = new KernelTalk(connection, () -> true)) {
            talk.ask("kernel_info_request", KernelTalk.object());
            for (String cell : CELLS) {
                talk.execute(cell);
            }
            String code = "Math.sqr";
            ObjectNode at = KernelTalk.object().put("code", code).put("cursor_pos", code.length());
            talk.ask("complete_request", at);
            talk.ask("inspect_request", at.deepCopy().put("code", "Math.sqrt("));
            talk.ask("is_complete_request", KernelTalk.object().put("code", "int x ="));
            talk.ask(
                    "history_request",
                    KernelTalk.object().put("hist_access_type", "tail").put("n", 9));
            talk.execute(END_OF_WORKER);
            String status = talk.execute("1 + 1").path("status").asText();
            if (!status.equals("ok")) {
                throw new IOException("1 + 1 ended with status \"" + status + "\"");
            }
        }
    }

    /** Makes a local repository with the library that the rehearsal asks for. */
    private static void writeRepository(Path folder) throws IOException {
        Path library =
                Files.createDirectories(folder.resolve(GROUP).resolve("library").resolve("1"));
        Files.writeString(
                library.resolve("library-1.pom"),
                "<project><modelVersion>4.0.0</modelVersion><groupId>"
                        + GROUP
                        + "</groupId><artifactId>library</artifactId><version>1</version></project>");
        try (OutputStream out = Files.newOutputStream(library.resolve("library-1.jar"));
                JarOutputStream jar = new JarOutputStream(out)) {
            jar.putNextEntry(new ZipEntry("rehearsal.txt"));
            jar.closeEntry();
        }
    }
}
