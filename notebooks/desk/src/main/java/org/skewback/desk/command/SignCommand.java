package org.skewback.desk.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.audit.Audit;
import org.skewback.desk.audit.AuditReport;
import org.skewback.desk.audit.Verdict;
import org.skewback.desk.checking.Keys;
import org.skewback.desk.checking.Signatory;
import org.skewback.desk.checking.Signing;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb {@code sign}. */
@Command(
        name = "sign",
        description = {
            "Signs the manifest of an issue for a role.",
            "",
            "The issue is audited first and signed only where it is reproduced. The signature goes"
                    + " into the package folder, checking/signatures, so that the next issue brings"
                    + " it; it holds as long as records, notebooks and the checker's files are the"
                    + " same to the last byte.",
            ""
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:signed",
            "2:not signed, for example because the issue is not reproduced",
            "64:the command line is not understood"
        })
final class SignCommand implements Callable<Integer> {

    private static final Duration PATIENCE = Duration.ofMinutes(10);

    @Spec private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "<issue>", description = "an issued folder")
    private Path issue = Path.of("");

    @Option(
            names = "--package",
            required = true,
            paramLabel = "<folder>",
            description = "package folder from which it was issued")
    private Path folder = Path.of("");

    @Option(
            names = "--role",
            required = true,
            paramLabel = "<role>",
            description = "prepared, checked or approved")
    private String role = "";

    @Option(
            names = "--key",
            required = true,
            paramLabel = "<file>",
            description = "your private key; see skewback key")
    private Path key = Path.of("");

    @Option(
            names = "--date",
            required = true,
            paramLabel = "<day>",
            description = "day of signing, such as 2026-03-31")
    private LocalDate date = LocalDate.EPOCH;

    @Option(names = "--anew", description = "give up signatures over another issue")
    private boolean anew;

    /** Makes the verb. */
    SignCommand() {}

    @Override
    public Integer call() throws Problem {
        if (!Files.isDirectory(issue)) {
            throw new Problem("there is no issued folder " + issue);
        }
        KeyFiles.requireRole(role);
        AuditReport report = new Audit(Version.ofProgram(), PATIENCE, false, Map.of()).audit(issue);
        if (report.verdict() != Verdict.REPRODUCED) {
            throw new Problem(
                    issue
                            + " is not signed, since its audit says: "
                            + report.verdict().inWords()
                            + ". See skewback audit "
                            + issue);
        }
        Signatory signatory =
                Signing.sign(issue, folder, role, date, Keys.privateKey(KeyFiles.text(key)), anew);
        if (spec != null) {
            spec.commandLine()
                    .getOut()
                    .println(
                            "Signed as "
                                    + role
                                    + " by "
                                    + signatory.name()
                                    + ", key "
                                    + Keys.fingerprint(signatory.key()));
        }
        return ExitCode.DONE;
    }
}
