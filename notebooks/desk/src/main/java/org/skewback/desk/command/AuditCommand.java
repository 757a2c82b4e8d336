package org.skewback.desk.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.audit.Audit;
import org.skewback.desk.audit.AuditJson;
import org.skewback.desk.audit.AuditPage;
import org.skewback.desk.audit.AuditReport;
import org.skewback.desk.audit.AuditText;
import org.skewback.desk.audit.RerunAudit;
import org.skewback.desk.issue.PackageIssue;
import org.skewback.desk.issue.Progress;
import org.skewback.desk.jupyter.KernelLauncher;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb {@code audit}. */
@Command(
        name = "audit",
        description = {
            "Says whether an issue is whole, whether its numbers come out again, and whether its"
                    + " pages show them.",
            "",
            "Every number is worked out again from the records; no code of a notebook runs, and"
                    + " nothing is written but the reports that you ask for. A number whose routine"
                    + " is of another edition than the one installed cannot be told.",
            ""
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:reproduced",
            "1:differs: a file, a number or a page is not as it was issued or recorded",
            "2:can't tell: nothing differs, but something could not be looked at",
            "64:the command line is not understood"
        })
final class AuditCommand implements Callable<Integer> {

    @Spec private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "<issue>", description = "an issued folder, or its PDF by itself")
    private Path issue = Path.of("");

    @Option(
            names = "--redraw",
            description =
                    "also make the PDF again and compare it to the last byte, figures and equations"
                            + " included; takes as long as issuing it did")
    private boolean redraw;

    @Option(
            names = "--time",
            paramLabel = "<time>",
            defaultValue = "10min",
            converter = IssueCommand.TimeConverter.class,
            description = "longest time the audit may take (default: ${DEFAULT-VALUE})")
    private Duration time = Duration.ZERO;

    @Option(
            names = "--signer",
            paramLabel = "<role>=<file>",
            description =
                    "public key of who prepared, checked or approved, which you have by another way"
                            + " than this issue; may be given for each role")
    private Map<String, Path> signers = new TreeMap<>();

    @Option(
            names = "--html",
            paramLabel = "<file>",
            description = "also write the report as a page")
    private @Nullable Path html;

    @Option(names = "--json", paramLabel = "<file>", description = "also write the report as JSON")
    private @Nullable Path json;

    @Option(names = "--quiet", description = "show the verdict only")
    private boolean quiet;

    @Option(
            names = "--verbose",
            description =
                    "show every finding, however many there are, and how long each stage took; the"
                            + " JSON then says so too")
    private boolean verbose;

    @Option(
            names = "--rerun",
            description =
                    "also run the notebooks again in fresh kernels and compare every quantity; this"
                            + " runs the author's program, so only where you trust the author")
    private boolean rerun;

    @Option(
            names = "--package",
            paramLabel = "<folder>",
            description =
                    "package folder that was issued, where notebooks that run again find their"
                            + " data")
    private @Nullable Path source;

    @Option(
            names = "--tolerance",
            paramLabel = "<relative>",
            defaultValue = "1e-9",
            description =
                    "largest relative change of a quantity that counts as the same when notebooks"
                            + " run again (default: ${DEFAULT-VALUE})")
    private double tolerance;

    @Option(
            names = "--local-repository",
            paramLabel = "<folder>",
            description = "local Maven repository in which notebooks find their libraries")
    private @Nullable Path localRepository;

    @Option(
            names = "--cell-time",
            paramLabel = "<time>",
            defaultValue = "5min",
            converter = IssueCommand.TimeConverter.class,
            description =
                    "longest time that one cell may run when notebooks run again (default:"
                            + " ${DEFAULT-VALUE})")
    private Duration cellTime = Duration.ZERO;

    private final Function<Duration, KernelLauncher> kernels;

    /**
     * Makes the verb.
     *
     * @param kernels gives what starts kernels, for the longest time that a cell may run
     */
    AuditCommand(Function<Duration, KernelLauncher> kernels) {
        this.kernels = kernels;
    }

    @Override
    public Integer call() throws Problem {
        if (spec == null) {
            throw new IllegalStateException("called without a command line");
        }
        if (!(tolerance >= 0)) {
            throw new ParameterException(
                    spec.commandLine(), "the tolerance is " + tolerance + "; allowed is 0 or more");
        }
        AuditReport report =
                new Audit(Version.ofProgram(), time, redraw, KeyFiles.read(signers)).audit(issue);
        if (rerun) {
            report = rerun(report, quiet ? null : spec.commandLine().getOut());
        }
        ReportFile.write(html, AuditPage.of(report));
        ReportFile.write(json, AuditJson.of(report, verbose));
        PrintWriter out = spec.commandLine().getOut();
        out.print(quiet ? report.verdict().inWords() + "\n" : AuditText.of(report, verbose));
        out.flush();
        return switch (report.verdict()) {
            case REPRODUCED -> ExitCode.DONE;
            case DIFFERS -> ExitCode.DIFFERS;
            case CANNOT_TELL -> ExitCode.NOT_DONE;
        };
    }

    private AuditReport rerun(AuditReport report, @Nullable PrintWriter out) throws Problem {
        Progress progress =
                out == null
                        ? Progress.SILENT
                        : new ConsoleProgress(out, Ansi.AUTO.enabled(), verbose);
        PackageIssue issuer =
                new PackageIssue(
                        kernels.apply(cellTime),
                        List.of(),
                        Version.ofAll(),
                        localRepository,
                        progress);
        return new RerunAudit(issuer, tolerance).audit(issue, source, report);
    }
}
