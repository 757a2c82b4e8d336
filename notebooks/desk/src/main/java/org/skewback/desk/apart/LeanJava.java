package org.skewback.desk.apart;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.jupyter.KernelCommand;
import org.skewback.kernel.ParentWatch;

/**
 * This program once more, in a Java that takes half the memory and half the time for pages: by itself
 * Java keeps whatever memory the machine has rather than look what is still in use, and spends more
 * on its best code than a run of a minute gets back. What a jar says of itself cannot name options of
 * Java, so the program starts itself again with them.
 *
 * <p>Both processes end as one. When the first is told to end, it tells the second and waits until
 * that has ended its kernels; when the first is gone without a word, the second ends by itself.
 */
public final class LeanJava {

    private static final String FIRST = "skewback.first";

    private static final List<String> OPTIONS =
            List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xms64m");

    private static final Duration FAREWELL = Duration.ofSeconds(10);
    private static final int KILLED = 128 + 9;
    private static final int ENDED = 128 + 15;

    private LeanJava() {}

    /**
     * Tells whether the program should start again: not where this is the second process, and not
     * where the user has chosen how Java runs.
     *
     * @return whether {@link #run} is worth it
     */
    public static boolean isWanted() {
        return System.getProperty(FIRST) == null && isWanted(given());
    }

    /** Tells the same from the options with which Java was started, by hand or by environment. */
    static boolean isWanted(List<String> options) {
        // Properties are passed on; what else there is was chosen, or cannot be had twice, as the
        // port of a debugger.
        return options.stream().allMatch(option -> option.startsWith("-D"));
    }

    private static List<String> given() {
        return ManagementFactory.getRuntimeMXBean().getInputArguments();
    }

    /**
     * Starts a class of this program again, with this process's input and output, and waits for its
     * end.
     *
     * @param main name of the class; its main method calls {@link #endWithFirst} before all else
     * @param words what its main method is given
     * @return its exit code
     * @throws Problem when it cannot be started or was killed
     */
    public static int run(String main, List<String> words) throws Problem {
        KernelCommand self = KernelCommand.ofThisProgram();
        List<String> command = new ArrayList<>(List.of(self.java().toString()));
        command.addAll(OPTIONS);
        command.addAll(given());
        command.addAll(ClassArchive.AUDIT.options(self.classPath()));
        command.add("-D" + FIRST + "=" + ProcessHandle.current().pid());
        command.addAll(List.of("-cp", self.classPath(), main));
        command.addAll(words);
        Process second;
        try {
            second = new ProcessBuilder(command).inheritIO().start();
        } catch (IOException e) {
            throw Problem.of("cannot start Java again", e);
        }
        Thread end = new Thread(() -> end(second), "end-second");
        Runtime.getRuntime().addShutdownHook(end);
        try {
            int code = second.waitFor();
            if (code == KILLED) {
                throw new Problem(
                        "the process that does the work was killed from outside, as systems do when"
                                + " memory runs out");
            }
            return code;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            end(second);
            throw new Problem("the program was interrupted", e);
        }
    }

    private static void end(Process second) {
        second.destroy();
        try {
            if (!second.waitFor(FAREWELL.toMillis(), TimeUnit.MILLISECONDS)) {
                second.destroyForcibly();
            }
        } catch (InterruptedException e) {
            second.destroyForcibly();
        }
    }

    /** Lets this process, where it is the second one, end in good order once the first is gone. */
    public static void endWithFirst() {
        @Nullable String number = System.getProperty(FIRST);
        if (number != null) {
            Runnable end = () -> System.exit(ENDED);
            ProcessHandle.of(Long.parseLong(number))
                    .ifPresentOrElse(first -> ParentWatch.start(first, true, end), end);
        }
    }
}
