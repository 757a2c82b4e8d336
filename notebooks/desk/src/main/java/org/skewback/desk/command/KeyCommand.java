package org.skewback.desk.command;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.KeyPair;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.checking.Keys;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb {@code key}. */
@Command(
        name = "key",
        description = {
            "Makes a pair of keys to sign with.",
            "",
            "<file> gets the private key, which stays with you and which nobody but you may read;"
                    + " <file>.pub gets the public one, which goes into signatories.toml and, by"
                    + " another way, to whoever audits. Files that are there are left alone.",
            ""
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:made",
            "2:not made, for example because there is such a file",
            "64:the command line is not understood"
        })
final class KeyCommand implements Callable<Integer> {

    @Spec private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "<file>", description = "file for the private key")
    private Path file = Path.of("");

    /** Makes the verb. */
    KeyCommand() {}

    @Override
    public Integer call() throws Problem {
        KeyPair pair = Keys.fresh();
        Path open = file.resolveSibling(file.getFileName() + ".pub");
        boolean posix = file.getFileSystem().supportedFileAttributeViews().contains("posix");
        FileAttribute<?>[] mine =
                posix
                        ? new FileAttribute<?>[] {
                            PosixFilePermissions.asFileAttribute(
                                    PosixFilePermissions.fromString("rw-------"))
                        }
                        : new FileAttribute<?>[0];
        try {
            try (SeekableByteChannel channel =
                    Files.newByteChannel(
                            file,
                            Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE),
                            mine)) {
                channel.write(
                        ByteBuffer.wrap(
                                Keys.text(pair.getPrivate()).getBytes(StandardCharsets.US_ASCII)));
            }
            Files.writeString(
                    open, Keys.text(pair.getPublic()) + "\n", StandardOpenOption.CREATE_NEW);
        } catch (IOException e) {
            throw Problem.of("cannot make the keys " + file + " and " + open, e);
        }
        if (spec != null) {
            spec.commandLine()
                    .getOut()
                    .println(
                            "Made "
                                    + file
                                    + " (keep it) and "
                                    + open
                                    + " (give it away), key "
                                    + Keys.fingerprint(Keys.text(pair.getPublic())));
        }
        return ExitCode.DONE;
    }
}
