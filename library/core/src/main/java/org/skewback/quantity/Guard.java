package org.skewback.quantity;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A branch that was taken, and what is needed to have the other one.
 *
 * <p>The other branch is tried once, when somebody first asks for it: an author who divides by what
 * the condition keeps from zero must not pay for the branch that was not taken.
 */
final class Guard {

    private final Condition condition;
    private final boolean held;
    private @Nullable Supplier<Quantity> untried;
    private @Nullable Quantity other;
    private String absence = "";

    private Guard(
            Condition condition,
            boolean held,
            @Nullable Supplier<Quantity> untried,
            @Nullable Quantity other) {
        this.condition = condition;
        this.held = held;
        this.untried = untried;
        this.other = other;
    }

    static Guard untried(Condition condition, boolean held, Supplier<Quantity> other) {
        return new Guard(condition, held, other, null);
    }

    /** A guard read from a record, whose other branch is the one given or absent. */
    static Guard recorded(Condition condition, boolean held, @Nullable Quantity other) {
        Guard guard = new Guard(condition, held, null, other);
        guard.absence = other == null ? "the record does not hold it" : "";
        return guard;
    }

    /** What decided. */
    Condition condition() {
        return condition;
    }

    /** How it came out. */
    boolean held() {
        return held;
    }

    /**
     * Gives the value of the branch that was not taken.
     *
     * @param chosen the value of the branch that was
     * @return the other value, of the same dimension, or null where it cannot be had
     */
    synchronized @Nullable Quantity other(Quantity chosen) {
        Supplier<Quantity> supplier = untried;
        if (supplier != null) {
            untried = null;
            try {
                Quantity tried = supplier.get();
                if (tried.dimension().equals(chosen.dimension())) {
                    other = tried;
                } else {
                    absence =
                            "it is "
                                    + tried.dimension().inWords()
                                    + ", the branch taken is "
                                    + chosen.dimension().inWords();
                }
            } catch (RuntimeException | StackOverflowError e) {
                absence = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
            }
        }
        return other;
    }

    /** Why the other branch is absent; empty where it is not, or has not been tried. */
    synchronized String absence() {
        return absence;
    }
}
