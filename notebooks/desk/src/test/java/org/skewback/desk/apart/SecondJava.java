package org.skewback.desk.apart;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A program that starts itself again and, the second time, works until it is ended. */
public final class SecondJava {

    private SecondJava() {}

    /**
     * Runs the program.
     *
     * @param words the exit code, or {@code wait} and a file to write when it ends in good order
     * @throws Exception when anything goes wrong
     */
    public static void main(String[] words) throws Exception {
        LeanJava.endWithFirst();
        if (LeanJava.isWanted()) {
            System.exit(LeanJava.run(SecondJava.class.getName(), List.of(words)));
        }
        System.out.println(ProcessHandle.current().pid() + " " + System.getProperty("of.user"));
        if (!words[0].equals("wait")) {
            System.exit(Integer.parseInt(words[0]));
        }
        Path file = Path.of(words[1]);
        Runtime.getRuntime().addShutdownHook(new Thread(() -> write(file)));
        System.out.println("waits");
        Thread.sleep(Long.MAX_VALUE);
    }

    private static void write(Path file) {
        try {
            Files.writeString(file, "ended");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
