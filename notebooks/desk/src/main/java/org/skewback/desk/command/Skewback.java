package org.skewback.desk.command;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.apart.ClassArchive;
import org.skewback.desk.apart.LeanJava;
import org.skewback.desk.jupyter.KernelCommand;
import org.skewback.desk.jupyter.KernelLauncher;
import org.skewback.desk.jupyter.KernelProcess;
import org.skewback.desk.render.HtmlPackage;
import org.skewback.desk.render.PackageRenderer;
import org.skewback.desk.render.PdfPackage;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExecutionException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program {@code skewback}. */
@Command(
        name = "skewback",
        description =
                "Issues calculation packages from notebooks, audits, compares and signs them.",
        versionProvider = Version.class,
        synopsisSubcommandLabel = "<verb>",
        commandListHeading = "%nVerbs:%n",
        footer = {"", "Each verb explains itself: skewback <verb> --help"})
public final class Skewback implements Runnable {

    @Spec private @Nullable CommandSpec spec;

    private Skewback() {}

    /**
     * Runs the program and ends this process.
     *
     * @param words the command line
     */
    public static void main(String[] words) {
        Charset charset = charset();
        PrintWriter out = writer(FileDescriptor.out, charset);
        PrintWriter err = writer(FileDescriptor.err, charset);
        LeanJava.endWithFirst();
        CommandLine line = commandLine(Skewback::renderers, Skewback::kernels, out, err);
        line.setExecutionStrategy(understood -> execute(understood, words));
        int code = line.execute(words);
        out.flush();
        err.flush();
        System.exit(code);
    }

    /** Issues in a Java that suits it, and does all else at once: it is soon done here, or elsewhere. */
    private static int execute(CommandLine.ParseResult understood, String[] words) {
        CommandLine.ParseResult verb = understood.subcommand();
        boolean issues =
                verb != null
                        && verb.commandSpec().userObject() instanceof IssueCommand
                        && !verb.isUsageHelpRequested()
                        && !verb.isVersionHelpRequested();
        if (!issues || !LeanJava.isWanted()) {
            return new CommandLine.RunLast().execute(understood);
        }
        try {
            return LeanJava.run(Skewback.class.getName(), List.of(words));
        } catch (Problem e) {
            throw new ExecutionException(verb.commandSpec().commandLine(), "cannot issue", e);
        }
    }

    /** Makes the readable forms of an issue. */
    private static List<PackageRenderer> renderers() {
        return List.of(new HtmlPackage(), new PdfPackage());
    }

    private static KernelLauncher kernels(Duration cellTime) {
        KernelCommand plain = KernelCommand.ofThisProgram();
        return KernelProcess.launcher(
                plain.with(ClassArchive.FRONT.options(plain.classPath())),
                KernelProcess.Limits.ofCell(cellTime));
    }

    /**
     * Gives the command line of the program.
     *
     * @param renderers gives what makes the readable forms of an issue, which takes some preparation
     * @param kernels gives what starts kernels, for the longest time that a cell may run
     * @param out where to print
     * @param err where to print what is wrong
     * @return the command line
     */
    static CommandLine commandLine(
            Supplier<List<PackageRenderer>> renderers,
            Function<Duration, KernelLauncher> kernels,
            PrintWriter out,
            PrintWriter err) {
        CommandLine line = new CommandLine(new Skewback());
        line.addSubcommand(new IssueCommand(renderers, kernels));
        line.addSubcommand(new AuditCommand(kernels));
        line.addSubcommand(new CompareCommand());
        line.addSubcommand(new SignCommand());
        line.addSubcommand(new KeyCommand());
        line.addSubcommand(new KernelVerb());
        line.setOut(out);
        line.setErr(err);
        help(line);
        line.setParameterExceptionHandler(Skewback::misunderstood);
        line.setExecutionExceptionHandler(Skewback::stopped);
        return line;
    }

    /** Lets every verb and every part of one explain itself. */
    private static void help(CommandLine line) {
        line.getCommandSpec().mixinStandardHelpOptions(true);
        line.getCommandSpec().exitCodeOnInvalidInput(ExitCode.USAGE);
        line.getCommandSpec().exitCodeOnExecutionException(ExitCode.NOT_DONE);
        line.getCommandSpec().versionProvider(new Version());
        line.getSubcommands().values().forEach(Skewback::help);
    }

    @Override
    public void run() {
        if (spec != null) {
            throw new ParameterException(
                    spec.commandLine(),
                    "Say what to do: issue, audit, compare, sign, key or kernel");
        }
    }

    private static int misunderstood(ParameterException fault, String[] words) {
        CommandLine line = fault.getCommandLine();
        PrintWriter err = line.getErr();
        err.println("skewback: " + words(fault));
        err.println("See " + line.getCommandSpec().qualifiedName() + " --help");
        err.flush();
        return ExitCode.USAGE;
    }

    private static String words(ParameterException fault) {
        if (fault instanceof UnmatchedArgumentException unmatched && !unmatched.isUnknownOption()) {
            List<String> meant = unmatched.getSuggestions();
            return "\""
                    + String.join(" ", unmatched.getUnmatched())
                    + "\" is not understood here"
                    + (meant.isEmpty() ? "" : "; did you mean " + String.join(" or ", meant) + "?");
        }
        return String.valueOf(fault.getMessage());
    }

    private static int stopped(Exception fault, CommandLine line, CommandLine.ParseResult words) {
        PrintWriter err = line.getErr();
        line.getOut().flush();
        if (fault instanceof Problem) {
            err.println("skewback: " + fault.getMessage());
        } else {
            err.println(
                    "skewback: something is wrong in the program itself, not in what you asked;"
                            + " please report the lines below");
            fault.printStackTrace(err);
        }
        err.flush();
        return ExitCode.NOT_DONE;
    }

    private static PrintWriter writer(FileDescriptor descriptor, Charset charset) {
        return new PrintWriter(new FileOutputStream(descriptor), true, charset);
    }

    /**
     * Gives the character set to print in: UTF-8, which every terminal but that of Windows takes
     * whatever the locale says.
     */
    private static Charset charset() {
        boolean windows =
                System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("windows");
        @Nullable String own =
                System.getProperty("stdout.encoding", System.getProperty("native.encoding"));
        return windows && own != null ? Charset.forName(own) : StandardCharsets.UTF_8;
    }
}
