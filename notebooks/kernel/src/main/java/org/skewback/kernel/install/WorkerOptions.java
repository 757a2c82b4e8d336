package org.skewback.kernel.install;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * How the user wants the VM that runs the cells.
 *
 * @param heap most memory that it may keep objects in, as {@code -Xmx} takes it, such as {@code 4g};
 *     null leaves it to Java, which takes a quarter of the machine's memory
 * @param options further options of Java, each without a space
 */
public record WorkerOptions(@Nullable String heap, List<String> options) {

    /** Nothing but what the kernel takes by itself. */
    public static final WorkerOptions NONE = new WorkerOptions(null, List.of());

    private static final Pattern HEAP = Pattern.compile("[1-9][0-9]*[kKmMgGtT]?");

    /**
     * Checks the form of the options; only Java knows whether they mean something.
     *
     * @param heap most memory that it may keep objects in, or null
     * @param options further options of Java, each without a space
     * @throws IllegalArgumentException if the heap is not a size or an option does not begin with a
     *     dash or has a space
     */
    public WorkerOptions {
        if (heap != null && !HEAP.matcher(heap).matches()) {
            throw new IllegalArgumentException(
                    "heap is \"" + heap + "\"; it must be a size such as 800m or 4g");
        }
        for (String option : options) {
            if (!option.startsWith("-") || option.chars().anyMatch(Character::isWhitespace)) {
                throw new IllegalArgumentException(
                        "\""
                                + option
                                + "\" is no option of Java: one begins with a dash and has no"
                                + " space, such as -Xss4m");
            }
        }
        options = List.copyOf(options);
    }

    /** All of them, as the command line of Java takes them. */
    List<String> words() {
        List<String> words = new ArrayList<>();
        if (heap != null) {
            words.add("-Xmx" + heap);
        }
        words.addAll(options);
        return words;
    }
}
