package org.skewback.desk.command;

import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.jupyter.KernelFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The verb {@code kernel} with its two parts. */
@Command(
        name = "kernel",
        description = "Installs or removes the kernel for your Jupyter.",
        subcommands = {KernelVerb.Install.class, KernelVerb.Remove.class})
final class KernelVerb implements Runnable {

    @Spec private @Nullable CommandSpec spec;

    /** Makes the verb; the command line library calls this. */
    KernelVerb() {}

    @Override
    public void run() {
        if (spec != null) {
            throw new ParameterException(
                    spec.commandLine(), "Say which: kernel install or kernel remove");
        }
    }

    /** Where the kernel goes, for both parts. */
    private static KernelFolder folder(@Nullable Path kernels) {
        return new KernelFolder(
                kernels != null
                        ? kernels
                        : KernelFolder.ofUser(
                                System.getenv(),
                                System.getProperty("os.name"),
                                Path.of(System.getProperty("user.home"))));
    }

    /** The part {@code kernel install}. */
    @Command(
            name = "install",
            description = {
                "Installs the kernel for your Jupyter.",
                "",
                "The program is copied, so a later build does not disturb the kernel; install again"
                        + " to renew it. The kernel runs on the Java that runs this command."
            },
            exitCodeListHeading = "%nExit codes:%n",
            exitCodeList = {
                "0:installed",
                "2:not installed",
                "64:the command line is not understood"
            })
    static final class Install implements Callable<Integer> {

        @Spec private @Nullable CommandSpec spec;

        @Option(
                names = "--kernels",
                paramLabel = "<folder>",
                description = "folder of kernels (default: your Jupyter's own)")
        private @Nullable Path kernels;

        @Option(
                names = "--java-option",
                paramLabel = "<option>",
                description = "option for the kernel's Java; may be given more than once")
        private List<String> options = new ArrayList<>();

        /** Makes the part; the command line library calls this. */
        Install() {}

        @Override
        public Integer call() throws Problem {
            Path folder = folder(kernels).install(program(), options);
            if (spec != null) {
                spec.commandLine().getOut().println("Installed the kernel in " + folder);
            }
            return ExitCode.DONE;
        }

        private static Path program() throws Problem {
            @Nullable CodeSource source = KernelVerb.class.getProtectionDomain().getCodeSource();
            try {
                if (source != null && source.getLocation() != null) {
                    Path jar = Path.of(source.getLocation().toURI());
                    if (Files.isRegularFile(jar)) {
                        return jar;
                    }
                }
            } catch (URISyntaxException e) {
                throw new Problem("cannot tell where this program lies", e);
            }
            throw new Problem("only the packaged program, skewback.jar, can install its kernel");
        }
    }

    /** The part {@code kernel remove}. */
    @Command(
            name = "remove",
            description = "Removes the kernel from your Jupyter.",
            exitCodeListHeading = "%nExit codes:%n",
            exitCodeList = {
                "0:removed",
                "2:not removed, for example because there is none",
                "64:the command line is not understood"
            })
    static final class Remove implements Callable<Integer> {

        @Spec private @Nullable CommandSpec spec;

        @Option(
                names = "--kernels",
                paramLabel = "<folder>",
                description = "folder of kernels (default: your Jupyter's own)")
        private @Nullable Path kernels;

        /** Makes the part; the command line library calls this. */
        Remove() {}

        @Override
        public Integer call() throws Problem {
            Path folder = folder(kernels).remove();
            if (spec != null) {
                spec.commandLine().getOut().println("Removed the kernel from " + folder);
            }
            return ExitCode.DONE;
        }
    }
}
