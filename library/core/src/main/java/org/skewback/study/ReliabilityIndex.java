package org.skewback.study;

import org.skewback.quantity.Quantity;

/**
 * The reliability index β from means and coefficients of variation alone, in closed form.
 *
 * <p>It is the distance of the mean from failure, in standard deviations; the probability of failure
 * is Φ(−β).
 */
public final class ReliabilityIndex {

    private ReliabilityIndex() {}

    /**
     * Gives the index of a normal factor of safety.
     *
     * <p>β = (F − 1)/(V F): J. M. Duncan, Factors of safety and reliability in geotechnical
     * engineering, Journal of Geotechnical and Geoenvironmental Engineering 126 (2000), 307–316.
     *
     * @param factor most likely factor of safety F, a plain number, more than 0
     * @param variation coefficient of variation V of it, a plain number, more than 0
     * @return β, a plain number
     * @throws IllegalArgumentException when one of the two is not positive
     */
    public static Quantity normal(Quantity factor, Quantity variation) {
        requirePositive("factor of safety", factor);
        requirePositive("coefficient of variation", variation);
        return factor.minus(1).over(variation.times(factor));
    }

    /**
     * Gives the index of a lognormal factor of safety.
     *
     * <p>β = ln(F/√(1 + V²))/√ln(1 + V²): Duncan (2000), as for {@link #normal}.
     *
     * @param factor most likely factor of safety F, a plain number, more than 0
     * @param variation coefficient of variation V of it, a plain number, more than 0
     * @return β, a plain number
     * @throws IllegalArgumentException when one of the two is not positive
     */
    public static Quantity lognormal(Quantity factor, Quantity variation) {
        requirePositive("factor of safety", factor);
        requirePositive("coefficient of variation", variation);
        Quantity spread = variation.squared().plus(1);
        return factor.over(spread.root()).ln().over(spread.ln().root());
    }

    /**
     * Gives the index of a normal resistance against a normal, independent load effect.
     *
     * <p>β = (m_R − m_S)/√(s_R² + s_S²): ISO 2394:2015, annex on reliability (from memory).
     *
     * @param resistance mean resistance m_R
     * @param itsDeviation standard deviation s_R, more than 0
     * @param effect mean load effect m_S, of the same dimension
     * @param effectDeviation standard deviation s_S, more than 0
     * @return β, a plain number
     * @throws IllegalArgumentException when a standard deviation is not positive
     */
    public static Quantity normalMargin(
            Quantity resistance, Quantity itsDeviation, Quantity effect, Quantity effectDeviation) {
        requirePositive("standard deviation of the resistance", itsDeviation);
        requirePositive("standard deviation of the load effect", effectDeviation);
        return resistance
                .minus(effect)
                .over(itsDeviation.squared().plus(effectDeviation.squared()).root());
    }

    /**
     * Gives the index of a lognormal resistance against a lognormal, independent load effect.
     *
     * <p>β = ln[(m_R/m_S) √((1 + V_S²)/(1 + V_R²))]/√ln[(1 + V_R²)(1 + V_S²)]: the normal case of ln
     * R − ln S.
     *
     * @param resistance mean resistance m_R, more than 0
     * @param itsVariation coefficient of variation V_R, a plain number, more than 0
     * @param effect mean load effect m_S, of the same dimension, more than 0
     * @param effectVariation coefficient of variation V_S, a plain number, more than 0
     * @return β, a plain number
     * @throws IllegalArgumentException when one of the four is not positive
     */
    public static Quantity lognormalMargin(
            Quantity resistance, Quantity itsVariation, Quantity effect, Quantity effectVariation) {
        requirePositive("resistance", resistance);
        requirePositive("coefficient of variation of the resistance", itsVariation);
        requirePositive("load effect", effect);
        requirePositive("coefficient of variation of the load effect", effectVariation);
        Quantity ofResistance = itsVariation.squared().plus(1);
        Quantity ofEffect = effectVariation.squared().plus(1);
        return resistance
                .over(effect)
                .times(ofEffect.over(ofResistance).root())
                .ln()
                .over(ofResistance.times(ofEffect).ln().root());
    }

    /**
     * Gives the probability of failure that belongs to an index.
     *
     * @param index β, not NaN
     * @return Φ(−β), from 0 to 1
     * @throws IllegalArgumentException when the index is NaN
     */
    public static double probability(double index) {
        if (Double.isNaN(index)) {
            throw Require.refused("reliability index", index, "a number");
        }
        return StandardNormal.below(-index);
    }

    /**
     * Gives the index that belongs to a probability of failure.
     *
     * @param probability probability of failure, more than 0 and less than 1
     * @return β = −Φ⁻¹(probability)
     * @throws IllegalArgumentException when the probability is outside
     */
    public static double ofProbability(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw Require.refused(
                    "probability of failure", probability, "more than 0 and less than 1");
        }
        return -StandardNormal.inverse(probability);
    }

    private static void requirePositive(String what, Quantity value) {
        if (!(value.si() > 0)) {
            throw Require.refused(what, value, "more than 0");
        }
    }
}
