package org.skewback.desk.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.compare.ComparisonReports;
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
            "Both are compared by their records; nothing of a notebook runs.",
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
            names = "--time",
            paramLabel = "<time>",
            defaultValue = "10min",
            converter = IssueCommand.TimeConverter.class,
            description = "longest time the comparison may take (default: ${DEFAULT-VALUE})")
    private Duration time = Duration.ZERO;

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
        ComparisonReports reports = ComparisonReports.of(before, now, past, time);
        ReportFile.write(html, reports.page());
        ReportFile.write(json, reports.json());
        PrintWriter out = spec.commandLine().getOut();
        out.print(quiet ? reports.sentence() + "\n" : verbose ? reports.whole() : reports.text());
        out.flush();
        return reports.same() ? ExitCode.DONE : ExitCode.DIFFERS;
    }
}
