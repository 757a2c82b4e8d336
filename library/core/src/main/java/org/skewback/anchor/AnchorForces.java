package org.skewback.anchor;

import org.skewback.quantity.Quantity;

/** Forces of anchors by the rules of EN 1537 and EN 1997, on the slope, and after losses. */
public final class AnchorForces {

    private AnchorForces() {}

    /**
     * Gives the design resistance of the tendon, {@code R_d = P_tk/γ_a}.
     *
     * <p>Source: worked example to EN 1997-1 with γ_a = 1.1, and 1.35 in its other part; the national
     * annex decides.
     *
     * @param characteristic characteristic force, P_tk, more than 0
     * @param partialFactor partial factor of the anchor, γ_a, at least 1
     * @return the design resistance
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity designResistance(Quantity characteristic, Quantity partialFactor) {
        Require.positive("characteristic force", characteristic, "kN");
        Require.within("partial factor of the anchor", partialFactor, 1, 5, "");
        return characteristic.over(partialFactor);
    }

    /**
     * Gives the greatest force at lock-off by EN 1537:1999, 9.8: {@code 0.60 P_tk}.
     *
     * @param characteristic characteristic force, P_tk, more than 0
     * @return the force
     * @throws IllegalArgumentException if the force is not positive
     */
    public static Quantity greatestLockOff(Quantity characteristic) {
        Require.positive("characteristic force", characteristic, "kN");
        return characteristic.times(0.60);
    }

    /**
     * Gives the least proof load, {@code 1.25 P_0}, by EN 1537 (as in a worked example to it).
     *
     * @param lockOff lock-off force, P_0, more than 0
     * @return the force
     * @throws IllegalArgumentException if the force is not positive
     */
    public static Quantity leastProofLoad(Quantity lockOff) {
        Require.positive("lock-off force", lockOff, "kN");
        return lockOff.times(1.25);
    }

    /**
     * Gives the force that the jack must reach so that the wanted force stays after draw-in, {@code
     * P_0 + ΔP}.
     *
     * @param lockOff force wanted after lock-off, P_0, more than 0
     * @param drawInLoss force lost by draw-in, ΔP, at least 0
     * @return the jacking force, to be compared with the tendon's limit
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity jackingForce(Quantity lockOff, Quantity drawInLoss) {
        Require.positive("lock-off force", lockOff, "kN");
        Require.notNegative("force lost by draw-in", drawInLoss, "kN");
        return lockOff.plus(drawInLoss);
    }

    /**
     * Gives the force in the long run, {@code P_0 (1 − r − k)}, of relaxation and creep of the
     * ground.
     *
     * @param lockOff lock-off force, P_0, more than 0
     * @param relaxation part lost by relaxation, r, from 0 to 0.5
     * @param creep part lost by creep of rock and block, k, from 0 to 0.5
     * @return the force
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity longTerm(Quantity lockOff, Quantity relaxation, Quantity creep) {
        Require.positive("lock-off force", lockOff, "kN");
        Require.within("part lost by relaxation", relaxation, 0, 0.5, "");
        Require.within("part lost by creep", creep, 0, 0.5, "");
        return lockOff.times(Quantity.of(1).minus(relaxation).minus(creep));
    }

    /**
     * Gives the mean pressure of a grid of anchors on the slope, {@code p = T/(a b)}.
     *
     * @param force force of one anchor, T, at least 0
     * @param across spacing across, a, more than 0
     * @param along spacing up the slope, b, more than 0
     * @return the pressure
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity gridPressure(Quantity force, Quantity across, Quantity along) {
        Require.notNegative("anchor force", force, "kN");
        Require.positive("spacing across", across, "m");
        Require.positive("spacing up the slope", along, "m");
        return force.over(across.times(along));
    }

    /**
     * Gives the force on each of the anchors left when some fail, {@code T n/(n − k)}: what spare
     * anchors are for.
     *
     * @param force force of one anchor with all there, T, more than 0
     * @param installed number of anchors, n, at least 1
     * @param lost number of anchors lost, k, from 0 to less than n
     * @return the force on each one left
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity withLost(Quantity force, int installed, int lost) {
        Require.positive("anchor force", force, "kN");
        Require.atLeast("number of anchors", installed, 1);
        if (lost < 0 || lost >= installed) {
            throw new IllegalArgumentException(
                    "number of anchors lost is "
                            + lost
                            + "; allowed is 0 to "
                            + (installed - 1)
                            + ".");
        }
        return force.times(installed).over(installed - lost);
    }

    /**
     * Gives the creep rate between two times, {@code k_s = (s_b − s_a)/lg(t_b/t_a)}.
     *
     * @param first displacement at the first time, s_a
     * @param second displacement at the second time, s_b
     * @param from first time, t_a, more than 0
     * @param to second time, t_b, more than the first
     * @return the creep rate, a displacement per tenfold time
     * @throws IllegalArgumentException if the times do not ascend from above 0
     */
    public static Quantity creepRate(Quantity first, Quantity second, Quantity from, Quantity to) {
        Require.positive("first time", from, "min");
        Require.positive("time between", to.minus(from), "min");
        return second.minus(first).over(to.over(from).log10());
    }
}
