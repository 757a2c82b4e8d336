package org.skewback.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.skewback.quantity.InterpolationTable.Axis;

/**
 * A random formula that is the same whatever the values: built twice with other inputs, it is the
 * graph at two points. It holds every operation, sharing, both branches, and ways to have no result.
 */
final class RandomFormula {

    private static final InterpolationTable TABLE =
            new InterpolationTable(
                    "k_t",
                    "",
                    Axis.linear("", -40, -1, 0, 0.5, 40),
                    Axis.logarithmic("", 1, 3, 2, 5, 8),
                    Source.assumption("random numbers"));

    private final List<Quantity> pool = new ArrayList<>();
    private final boolean routines;

    private RandomFormula(List<Quantity> inputs, boolean routines) {
        this.routines = routines;
        pool.addAll(inputs);
        pool.add(Quantity.of(2));
        pool.add(Quantity.of(-0.0));
        pool.add(Quantity.of(1));
    }

    /** Every node that was built, so that nothing fails unseen. */
    static List<Quantity> build(
            long seed, int operations, List<Quantity> inputs, boolean routines) {
        Random random = new Random(seed);
        RandomFormula formula = new RandomFormula(inputs, routines);
        for (int i = 0; i < operations; i++) {
            formula.pool.add(formula.grow(random, 2));
        }
        return formula.pool;
    }

    private Quantity grow(Random random, int deep) {
        Quantity x = any(random);
        Quantity y = any(random);
        if (routines && random.nextInt(8) == 0) {
            Out out = Routines.call(new Turn(), new In(x, List.of(y, any(random)), 3));
            return random.nextBoolean() ? out.first() : out.others().get(1).plus(out.first());
        }
        return switch (random.nextInt(30)) {
            case 0, 1 -> x.plus(y);
            case 2, 3 -> x.minus(y);
            case 4, 5 -> x.times(y);
            case 6 -> x.over(y);
            case 7 -> x.over(y.abs().plus(0.5));
            case 8 -> x.negated();
            case 9 -> x.power(random.nextInt(13) - 3);
            case 10 -> x.abs().root();
            case 11 -> x.cubeRoot();
            case 12 -> x.abs().plus(0.1).power(2, 3);
            case 13 -> x.tanh().exp();
            case 14 -> x.abs().plus(0.1).ln();
            case 15 -> x.abs().plus(0.1).log10();
            case 16 -> x.sin().plus(x.cos());
            case 17 -> x.sin().asin().plus(x.cos().acos());
            case 18 -> x.atan().tan();
            case 19 -> x.tanh().sinh().plus(x.tanh().cosh());
            case 20 -> x.asinh();
            case 21 -> x.abs().plus(1).acosh();
            case 22 -> Quantity.min(x, y);
            case 23 -> Quantity.max(x, y);
            case 24 -> Quantity.sum(List.of(x, y, any(random)));
            case 25 -> x.named("a", "", "").times(y);
            case 26 -> x.sin().times(9).interpolated(TABLE);
            case 27 -> x.over(8).exp();
            default -> choice(random, x, y, deep);
        };
    }

    private Quantity choice(Random random, Quantity x, Quantity y, int deep) {
        long then = random.nextLong();
        long otherwise = random.nextLong();
        Condition condition =
                switch (random.nextInt(4)) {
                    case 0 -> x.atLeast(y);
                    case 1 -> x.atMost(y);
                    case 2 -> x.moreThan(y);
                    default -> x.lessThan(y);
                };
        List<Quantity> seen = List.copyOf(pool);
        return Quantity.choose(
                condition, () -> branch(then, seen, deep), () -> branch(otherwise, seen, deep));
    }

    /** Tried later, a branch must not see what was built since. */
    private Quantity branch(long seed, List<Quantity> seen, int deep) {
        RandomFormula inner = new RandomFormula(seen, routines);
        Random random = new Random(seed);
        return deep == 0 ? inner.any(random) : inner.grow(random, deep - 1);
    }

    record In(Quantity x, List<Quantity> more, int times) {}

    record Out(Quantity first, List<Quantity> others) {}

    /** A routine that now and then does not converge. */
    static final class Turn implements Routine<In, Out> {
        @Override
        public String name() {
            return "test.turn";
        }

        @Override
        public int edition() {
            return 1;
        }

        @Override
        public Out run(In input, Stop stop) {
            double x = input.x().si();
            double y = input.more().get(0).si() + 2 * input.more().get(1).si();
            if (x > 2 && y > 2) {
                throw new ArithmeticException("it does not converge");
            }
            return new Out(
                    Quantity.of(x * y * input.times()),
                    List.of(Quantity.of(x - y), Quantity.of(x + y)));
        }
    }

    private Quantity any(Random random) {
        return pool.get(random.nextInt(pool.size()));
    }
}
