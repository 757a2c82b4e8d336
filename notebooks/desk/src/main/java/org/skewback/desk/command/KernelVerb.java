package org.skewback.desk.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.kernel.install.Finding;
import org.skewback.kernel.install.KernelCheck;
import org.skewback.kernel.install.KernelInstaller;
import org.skewback.kernel.install.WorkerOptions;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The verb {@code kernel} with its parts. */
@Command(
        name = "kernel",
        description = "Installs, checks or removes the kernel for your Jupyter.",
        subcommands = {KernelVerb.Install.class, KernelVerb.Check.class, KernelVerb.Remove.class})
final class KernelVerb implements Runnable {

    @Spec private @Nullable CommandSpec spec;

    /** Makes the verb; the command line library calls this. */
    KernelVerb() {}

    @Override
    public void run() {
        if (spec != null) {
            throw new ParameterException(
                    spec.commandLine(), "Say which: kernel install, kernel check or kernel remove");
        }
    }

    /** Where the kernel is or goes, for all parts. */
    static final class Place {

        @Option(
                names = "--data",
                paramLabel = "<folder>",
                description = "data folder of Jupyter (default: your own)")
        private @Nullable Path data;

        @Option(
                names = "--prefix",
                paramLabel = "<folder>",
                description = "folder of an environment that has its own Jupyter")
        private @Nullable Path prefix;

        /** Makes the choice; the command line library calls this. */
        Place() {}

        /** The installer of a place, or of the user where none is named. */
        static KernelInstaller installer(@Nullable Place place) {
            if (place != null && place.prefix != null) {
                return KernelInstaller.ofEnvironment(place.prefix);
            }
            return place == null || place.data == null
                    ? KernelInstaller.ofThisUser()
                    : new KernelInstaller(place.data);
        }
    }

    /** The jar of this program, or null if it is not packaged. */
    private static @Nullable Path program() throws Problem {
        @Nullable CodeSource source = KernelVerb.class.getProtectionDomain().getCodeSource();
        try {
            if (source != null && source.getLocation() != null) {
                Path jar = Path.of(source.getLocation().toURI());
                return Files.isRegularFile(jar) ? jar : null;
            }
            return null;
        } catch (URISyntaxException e) {
            throw new Problem("cannot tell where this program lies", e);
        }
    }

    /** The part {@code kernel install}. */
    @Command(
            name = "install",
            description = {
                "Installs the kernel for your Jupyter.",
                "",
                "The program is copied, so a later build does not disturb the kernel; install again"
                        + " to renew it. The kernel runs on the Java that runs this command. It is"
                        + " run once, to make the archives that let it start quickly."
            },
            exitCodeListHeading = "%nExit codes:%n",
            exitCodeList = {
                "0:installed",
                "2:not installed",
                "64:the command line is not understood"
            })
    static final class Install implements Callable<Integer> {

        @Spec private @Nullable CommandSpec spec;

        @ArgGroup private @Nullable Place place;

        @Option(
                names = "--heap",
                paramLabel = "<size>",
                description =
                        "most memory for what the cells keep, such as 4g (default: a quarter of"
                                + " this machine's)")
        private @Nullable String heap;

        @Option(
                names = "--java-option",
                paramLabel = "<option>",
                description =
                        "further option of the Java that runs the cells, such as -Xss4m; may be"
                                + " given again. The environment variable SKEWBACK_WORKER_OPTIONS"
                                + " adds to them at each start")
        private List<String> javaOptions = new ArrayList<>();

        /** Makes the part; the command line library calls this. */
        Install() {}

        @Override
        public Integer call() throws Problem {
            WorkerOptions worker;
            try {
                worker = new WorkerOptions(heap, javaOptions);
            } catch (IllegalArgumentException e) {
                throw new Problem(String.valueOf(e.getMessage()), e);
            }
            @Nullable Path program = program();
            if (program == null) {
                throw new Problem(
                        "only the packaged program, skewback.jar, can install its kernel");
            }
            KernelInstaller installer = Place.installer(place);
            KernelInstaller.Installed installed;
            try {
                installed = installer.install(program, worker);
            } catch (IOException e) {
                throw Problem.of("cannot install the kernel in " + installer.folder(), e);
            }
            if (spec != null) {
                PrintWriter out = spec.commandLine().getOut();
                out.println("Installed the kernel in " + installed.folder());
                if (installed.slowStart() != null) {
                    out.println(
                            "It works, but will start more slowly than it could: "
                                    + installed.slowStart());
                }
            }
            return ExitCode.DONE;
        }
    }

    /** The part {@code kernel check}. */
    @Command(
            name = "check",
            description = {
                "Looks whether the installed kernel runs.",
                "",
                "Starts the kernel once and runs one line in it. Says in plain words what is wrong"
                        + " and how to mend it."
            },
            exitCodeListHeading = "%nExit codes:%n",
            exitCodeList = {
                "0:all is well",
                "1:the kernel runs, but something is to be mended",
                "2:the kernel does not run",
                "64:the command line is not understood"
            })
    static final class Check implements Callable<Integer> {

        @Spec private @Nullable CommandSpec spec;

        @ArgGroup private @Nullable Place place;

        @Option(
                names = "--jupyter",
                paramLabel = "<program>",
                description = "the Jupyter that is to see the kernel (default: jupyter)")
        private String jupyter = "jupyter";

        /** Makes the part; the command line library calls this. */
        Check() {}

        @Override
        public Integer call() throws Problem {
            KernelInstaller installer = Place.installer(place);
            List<Finding> findings = new KernelCheck(installer, program(), List.of(jupyter)).run();
            Finding.Weight worst = Finding.Weight.GOOD;
            for (Finding finding : findings) {
                if (finding.weight().compareTo(worst) > 0) {
                    worst = finding.weight();
                }
                if (spec != null) {
                    print(spec.commandLine().getOut(), finding);
                }
            }
            return switch (worst) {
                case GOOD -> ExitCode.DONE;
                case TO_MEND -> ExitCode.TO_MEND;
                case BROKEN -> ExitCode.NOT_DONE;
            };
        }

        private static void print(PrintWriter out, Finding finding) {
            String mark =
                    switch (finding.weight()) {
                        case GOOD -> "good     ";
                        case TO_MEND -> "to mend  ";
                        case BROKEN -> "broken   ";
                    };
            out.println(mark + finding.text());
            if (finding.remedy() != null) {
                out.println(" ".repeat(mark.length()) + "-> " + finding.remedy());
            }
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

        @ArgGroup private @Nullable Place place;

        /** Makes the part; the command line library calls this. */
        Remove() {}

        @Override
        public Integer call() throws Problem {
            KernelInstaller installer = Place.installer(place);
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
