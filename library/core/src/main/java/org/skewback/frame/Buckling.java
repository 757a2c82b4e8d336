package org.skewback.frame;

import java.util.List;
import java.util.Locale;
import org.skewback.numeric.Eigenpairs;

/** The lowest buckling factors of a load, with their shapes. */
public final class Buckling {

    private final String load;
    private final String definition;
    private final List<BucklingMode> modes;
    private final double checkedTo;
    private final int countBelow;

    Buckling(String load, String definition, List<BucklingMode> modes, Eigenpairs pairs) {
        this.load = load;
        this.definition = definition;
        this.modes = List.copyOf(modes);
        checkedTo = pairs.checkedTo();
        countBelow = pairs.countBelow();
    }

    /**
     * Says how the load behaves while the structure buckles, without which a factor means nothing.
     *
     * @return the definition in words
     */
    public String loadDefinition() {
        return definition;
    }

    /**
     * Lists the modes.
     *
     * @return modes by increasing factor; none where the load only stiffens
     */
    public List<BucklingMode> modes() {
        return modes;
    }

    /**
     * Gives the mode that governs.
     *
     * @return the mode of the lowest factor
     * @throws IllegalStateException if the load cannot make the structure buckle
     */
    public BucklingMode governing() {
        if (modes.isEmpty()) {
            throw new IllegalStateException(
                    "load " + load + " cannot make the structure buckle: it only stiffens.");
        }
        return modes.get(0);
    }

    /**
     * Gives the factor up to which the count was checked.
     *
     * @return factor just above the last one
     */
    public double checkedTo() {
        return checkedTo;
    }

    /**
     * Counts the factors below {@link #checkedTo()} by the signs of the factorised matrix (Sturm).
     *
     * @return the count; larger than the number of modes when the last factor is repeated
     */
    public int countBelow() {
        return countBelow;
    }

    /**
     * Writes the modes as a table for reading.
     *
     * @return factor, main direction and governing member of each mode, and the load definition
     */
    @Override
    public String toString() {
        StringBuilder text =
                new StringBuilder("Buckling under " + load + ": " + definition + ".\n");
        for (int k = 0; k < modes.size(); k++) {
            BucklingMode mode = modes.get(k);
            BucklingMode.Share first = mode.shares().get(0);
            text.append(
                    String.format(
                            Locale.ROOT,
                            "mode %d: factor %.5g, %s, member %s with %.0f %% of the energy%n",
                            k + 1,
                            mode.factor(),
                            mode.shape().mainDirection(),
                            first.member(),
                            100 * first.share()));
        }
        return text.append(
                        String.format(
                                Locale.ROOT,
                                "Sturm count: %d factors below %.6g.",
                                countBelow,
                                checkedTo))
                .toString();
    }
}
