package org.skewback.quantity;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Random formulas over named givens, built so that no digit is lost to cancellation: every value is
 * positive and a difference keeps at least half of what it started from.
 */
final class RandomGraph {

    private static final String[] UNITS = {"m", "kN", "", "mm", "kN/m", "MPa"};
    private static final double LEAST = 1e-9;
    private static final double MOST = 1e9;

    private final Random random;
    private final Map<String, Quantity> givens = new LinkedHashMap<>();
    private final List<Quantity> pool = new ArrayList<>();

    RandomGraph(long seed) {
        random = new Random(seed);
        for (int i = 0; i < 4; i++) {
            String symbol = "x_" + (i + 1);
            double value = (1 + random.nextInt(9999)) / 1000.0;
            String unit = UNITS[random.nextInt(UNITS.length)];
            Quantity given =
                    Quantity.given(symbol, value, unit, "", Source.assumption("a random number"));
            givens.put(symbol, given);
            pool.add(given);
        }
    }

    Map<String, Quantity> givens() {
        return givens;
    }

    Quantity grow(int operations) {
        Quantity latest = pool.get(0);
        for (int i = 0; i < operations; i++) {
            Quantity grown = apply(random.nextInt(3) == 0 ? any() : latest);
            if (grown.si() > LEAST && grown.si() < MOST && isModest(grown)) {
                pool.add(grown);
                latest = grown;
            }
        }
        return latest;
    }

    private static boolean isModest(Quantity quantity) {
        return quantity.dimension().powers().stream().allMatch(p -> Math.abs(p.numerator()) <= 8);
    }

    private Quantity apply(Quantity x) {
        return switch (random.nextInt(12)) {
            case 0 -> x.times(any());
            case 1 -> x.over(any());
            case 2 -> x.times(2 + random.nextInt(7));
            case 3 -> x.over(2 + random.nextInt(7));
            case 4 -> x.plus(alike(x));
            case 5 -> difference(x, alike(x));
            case 6 -> x.squared();
            case 7 -> x.times(alike(x)).root();
            case 8 -> function(x.over(alike(x)));
            case 9 -> Quantity.sum(List.of(x, alike(x), x.times(3)));
            case 10 -> random.nextBoolean() ? Quantity.max(x, alike(x)) : x.negated().abs();
            default -> x.power(random.nextInt(5) - 2);
        };
    }

    private Quantity difference(Quantity a, Quantity b) {
        return a.si() > b.si() ? a.minus(b.over(2)) : b.minus(a.over(2));
    }

    /** Near zero ln(1 + x) has few digits left to agree in, however it is evaluated. */
    private Quantity function(Quantity ratio) {
        if (ratio.si() < 0.01 || ratio.si() > 100) {
            return ratio;
        }
        Quantity tame = ratio.tanh();
        return switch (random.nextInt(6)) {
            case 0 -> tame.exp();
            case 1 -> tame.plus(1).ln();
            case 2 -> tame.sin();
            case 3 -> tame.atan();
            case 4 -> tame.cosh();
            default -> tame.asinh();
        };
    }

    private Quantity any() {
        return pool.get(random.nextInt(pool.size()));
    }

    private Quantity alike(Quantity x) {
        List<Quantity> same =
                pool.stream().filter(q -> q.dimension().equals(x.dimension())).toList();
        return same.isEmpty() ? x.times(1.5) : same.get(random.nextInt(same.size()));
    }
}
