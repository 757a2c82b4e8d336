package org.skewback.cable;

/**
 * The elastic catenary between two point loads, told by the forces at its start: how far it reaches, and
 * how that changes with them (Irvine 1981, equations 1.23 to 1.28; O'Brien and Francis 1964). Differences
 * of asinh and of square roots are formed without cancellation, so that taut and weightless cables come
 * out as well as slack ones. Without a horizontal force it is the limit: a straight line, or two beside
 * each other where the vertical force changes its sign.
 *
 * @param across level reach, m
 * @param drop how far the end lies below the start, m
 * @param acrossByLevel ∂across/∂H, m/N
 * @param acrossByVertical ∂across/∂V = ∂drop/∂H, m/N
 * @param dropByVertical ∂drop/∂V, m/N
 */
record Catenary(
        double across,
        double drop,
        double acrossByLevel,
        double acrossByVertical,
        double dropByVertical) {

    /**
     * Follows a cable.
     *
     * @param level horizontal component H of the tension, N, 0 or more
     * @param vertical vertical component V at the start, positive where the cable falls, N
     * @param length unstressed length, m
     * @param cable weight and stiffness
     */
    static Catenary of(double level, double vertical, double length, Cable cable) {
        if (level == 0) {
            return upright(vertical, length, cable);
        }
        double a = vertical / level;
        double b = a - cable.weightPerLength() * length / level;
        double rootA = Math.sqrt(1 + a * a);
        double rootB = Math.sqrt(1 + b * b);
        // Mean values over the cable of 1/√(1+t²), of t/√(1+t²), and of their derivatives.
        double bySum = (a + b) / (rootA + rootB);
        double meanCosine;
        double meanSlope;
        if (a * b > 0) {
            double ratio = (a + b) / (a * rootB + b * rootA);
            double q = ratio * (a - b);
            meanCosine = q == 0 ? ratio : ratio * asinh(q) / q;
            meanSlope = ratio / (rootA * rootB);
        } else if (a == b) {
            meanCosine = 1;
            meanSlope = 1;
        } else {
            double q = a * rootB - b * rootA;
            meanCosine = asinh(q) / (a - b);
            meanSlope = q / ((a - b) * rootA * rootB);
        }
        double stretch = length / cable.axialStiffness();
        double perForce = length / level;
        return new Catenary(
                level * stretch + length * meanCosine,
                (a + b) / 2 * level * stretch + length * bySum,
                stretch + perForce * Math.max(0, meanCosine - meanSlope),
                -perForce * (a + b) / (rootA * rootB * (rootA + rootB)),
                stretch + perForce * meanSlope);
    }

    /**
     * Follows a cable without horizontal force: the limits of the formulas above for H → 0. Where V
     * changes its sign, any H however small opens the fold, so that ∂across/∂H is infinite.
     */
    private static Catenary upright(double vertical, double length, Cable cable) {
        double end = vertical - cable.weightPerLength() * length;
        double larger = Math.max(Math.abs(vertical), Math.abs(end));
        double smaller = Math.min(Math.abs(vertical), Math.abs(end));
        boolean folds = vertical * end < 0;
        double growth = (larger - smaller) / smaller;
        double perForce =
                folds || smaller == 0
                        ? Double.POSITIVE_INFINITY
                        : length / smaller * (growth == 0 ? 1 : StrictMath.log1p(growth) / growth);
        double stretch = length / cable.axialStiffness();
        double sine = larger == 0 ? 0 : (vertical + end) / (larger + smaller);
        return new Catenary(
                0,
                (vertical + end) / 2 * stretch + length * sine,
                stretch + perForce,
                0,
                stretch + (folds ? 2 / cable.weightPerLength() : 0));
    }

    private static double asinh(double x) {
        double size = Math.abs(x);
        double value = StrictMath.log1p(size + size * size / (1 + Math.sqrt(1 + size * size)));
        return Math.copySign(value, x);
    }

    /** Two in a row. */
    Catenary plus(Catenary next) {
        return new Catenary(
                across + next.across,
                drop + next.drop,
                acrossByLevel + next.acrossByLevel,
                acrossByVertical + next.acrossByVertical,
                dropByVertical + next.dropByVertical);
    }
}
