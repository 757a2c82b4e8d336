package org.skewback.desk.command;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.kernel.install.KernelInstaller;
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
    private static KernelInstaller installer(@Nullable Path data) {
        return data == null ? KernelInstaller.ofThisUser() : new KernelInstaller(data);
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
                names = "--data",
                paramLabel = "<folder>",
                description = "data folder of Jupyter (default: your own)")
        private @Nullable Path data;

        /** Makes the part; the command line library calls this. */
        Install() {}

        @Override
        public Integer call() throws Problem {
            KernelInstaller installer = installer(data);
            Path folder;
            try {
                folder = installer.install(program());
            } catch (IOException e) {
                throw Problem.of("cannot install the kernel in " + installer.folder(), e);
            }
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
                names = "--data",
                paramLabel = "<folder>",
                description = "data folder of Jupyter (default: your own)")
        private @Nullable Path data;

        /** Makes the part; the command line library calls this. */
        Remove() {}

        @Override
        public Integer call() throws Problem {
            KernelInstaller installer = installer(data);
            Path folder = installer.folder();
            try {
                if (!installer.remove()) {
                    throw new Problem("no kernel is installed in " + folder);
                }
            } catch (IOException e) {
                throw Problem.of("cannot remove " + folder, e);
            }
            if (spec != null) {
                spec.commandLine().getOut().println("Removed the kernel from " + folder);
            }
            return ExitCode.DONE;
        }
    }
}
