package org.skewback.desk.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.compare.Comparison;
import org.skewback.desk.compare.ComparisonReport;
import org.skewback.desk.compare.IssueComparison;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb {@code compare}. */
@Command(
        name = "compare",
        description = {
            "Says what changed from one issue to another: givens, results, checks, sources and"
                    + " software, and which given moved which check.",
            "",
            "Both are compared by their records; nothing runs.",
            ""
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:nothing changed",
            "1:something changed",
            "2:cannot be compared, for example because one is no issue",
            "64:the command line is not understood"
        })
final class CompareCommand implements Callable<Integer> {

    @Spec private @Nullable CommandSpec spec;

    @Parameters(
            index = "0",
            paramLabel = "<earlier-issue>",
            description = "an issued folder, or its PDF")
    private Path before = Path.of("");

    @Parameters(
            index = "1",
            paramLabel = "<later-issue>",
            description = "an issued folder, or its PDF")
    private Path now = Path.of("");

    @Option(
            names = "--past",
            paramLabel = "<utilisation>",
            defaultValue = "0.95",
            description = "count the checks that went past this (default: ${DEFAULT-VALUE})")
    private double past;

    @Option(
            names = "--html",
            paramLabel = "<file>",
            description = "also write the report as a page")
    private @Nullable Path html;

    @Option(names = "--json", paramLabel = "<file>", description = "also write the report as JSON")
    private @Nullable Path json;

    @Option(names = "--quiet", description = "show the one sentence only")
    private boolean quiet;

    @Option(names = "--verbose", description = "show every change, however many there are")
    private boolean verbose;

    /** Makes the verb. */
    CompareCommand() {}

    @Override
    public Integer call() throws Problem {
        if (spec == null) {
            throw new IllegalStateException("called without a command line");
        }
        Comparison comparison = IssueComparison.of(before, now, past);
        ReportFile.write(html, ComparisonReport.page(comparison));
        ReportFile.write(json, ComparisonReport.json(comparison));
        PrintWriter out = spec.commandLine().getOut();
        out.print(
                quiet ? comparison.sentence() + "\n" : ComparisonReport.text(comparison, verbose));
        out.flush();
        return comparison.isSame() ? ExitCode.DONE : ExitCode.DIFFERS;
    }
}
