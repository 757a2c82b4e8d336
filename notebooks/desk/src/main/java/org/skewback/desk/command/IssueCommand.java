package org.skewback.desk.command;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.issue.CheckCount;
import org.skewback.desk.issue.Issued;
import org.skewback.desk.issue.PackageIssue;
import org.skewback.desk.issue.Progress;
import org.skewback.desk.jupyter.Durations;
import org.skewback.desk.jupyter.KernelLauncher;
import org.skewback.desk.render.PackageRenderer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** The verb {@code issue}. */
@Command(
        name = "issue",
        description = {
            "Runs every notebook of a package from clean, in order, and issues it.",
            "",
            "The package folder has a file package.toml with the keys name, title, number,"
                + " revision, status, date, prepared-by, checked-by, summary, cautions, order and,"
                + " where wanted, a table basis. An earlier issue is replaced only when the new one"
                + " is whole.",
            ""
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:issued, and every check passed",
            "1:issued, but a check failed, or a check, number, table or figure is stale",
            "2:not issued, for example because a cell failed or a notebook is missing",
            "64:the command line is not understood"
        })
final class IssueCommand implements Callable<Integer> {

    private final Supplier<List<PackageRenderer>> renderers;
    private final Function<Duration, KernelLauncher> kernels;

    @Spec private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "<package-folder>", description = "folder with package.toml")
    private Path folder = Path.of("");

    @Option(
            names = "--to",
            paramLabel = "<folder>",
            defaultValue = "target/issued",
            description = "folder of issued packages (default: ${DEFAULT-VALUE})")
    private Path to = Path.of("");

    @Option(
            names = "--local-repository",
            paramLabel = "<folder>",
            description = "local Maven repository in which notebooks find their libraries")
    private @Nullable Path localRepository;

    @Option(
            names = "--cell-time",
            paramLabel = "<time>",
            defaultValue = "5min",
            converter = TimeConverter.class,
            description =
                    "longest time that one cell may run, such as 90s, 5min or 1h30min (default:"
                            + " ${DEFAULT-VALUE})")
    private Duration cellTime = Duration.ZERO;

    @Option(
            names = "--at-once",
            paramLabel = "<number>",
            description =
                    "most notebooks that run side by side, where none takes from another (default:"
                            + " as many as there are processors)")
    private int atOnce = Runtime.getRuntime().availableProcessors();

    @Option(names = "--quiet", description = "show no progress, only how it ended")
    private boolean quiet;

    @Option(
            names = "--verbose",
            description = "show a line for each cell on a terminal too, and what each stage took")
    private boolean verbose;

    /**
     * Makes the verb.
     *
     * @param renderers gives what makes the readable forms of an issue
     * @param kernels gives what starts kernels, for the longest time that a cell may run
     */
    IssueCommand(
            Supplier<List<PackageRenderer>> renderers, Function<Duration, KernelLauncher> kernels) {
        this.renderers = renderers;
        this.kernels = kernels;
    }

    /** Reads a time from the command line. */
    static final class TimeConverter implements ITypeConverter<Duration> {

        /** Makes the converter; the command line library calls this. */
        TimeConverter() {}

        @Override
        public Duration convert(String value) {
            try {
                return Durations.parse(value);
            } catch (IllegalArgumentException e) {
                throw new TypeConversionException(String.valueOf(e.getMessage()));
            }
        }
    }

    @Override
    public Integer call() throws Problem {
        if (spec == null) {
            throw new IllegalStateException("called without a command line");
        }
        PrintWriter out = spec.commandLine().getOut();
        Progress progress =
                quiet ? Progress.SILENT : new ConsoleProgress(out, Ansi.AUTO.enabled(), verbose);
        if (atOnce < 1) {
            throw new ParameterException(
                    spec.commandLine(), "--at-once is " + atOnce + "; allowed is 1 or more");
        }
        PackageIssue issue =
                new PackageIssue(
                                kernels.apply(cellTime),
                                renderers.get(),
                                Version.ofAll(),
                                localRepository,
                                progress)
                        .atOnce(atOnce);
        Issued issued = issue.issue(folder, to);
        report(issued, out);
        return issued.unpassed().isEmpty() ? ExitCode.DONE : ExitCode.CHECKS_OPEN;
    }

    private static void report(Issued issued, PrintWriter out) {
        out.println();
        for (String title : issued.withoutSheet()) {
            out.println(
                    title
                            + "  keeps no sheet, so none of its checks are counted; a sheet is kept"
                            + " by a last cell that shows sheet.conclude(…)");
        }
        for (String line : issued.unpassed()) {
            out.println(line);
        }
        CheckCount checks = issued.checks();
        out.printf(
                "Issued %s and %s: %d passed, %d failed, %d stale%n",
                counted(issued.sheets(), "sheet"),
                counted(checks.total(), "check"),
                checks.passed(),
                checks.failed(),
                checks.stale());
        boolean any = false;
        for (String page : List.of("index.html", "package.pdf")) {
            Path file = issued.folder().resolve(page);
            if (Files.exists(file)) {
                out.println("  " + file);
                any = true;
            }
        }
        if (!any) {
            out.println("  " + issued.folder());
        }
        out.flush();
    }

    private static String counted(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }
}
