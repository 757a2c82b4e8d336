package org.skewback.slope;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The slices above a slip surface, seen so that the mass slides in the direction of s: s = x or s =
 * −x. One object is filled again and again by a search.
 *
 * <p>Slice i lies between boundaries i and i + 1, boundary 0 at the upper end. Its base falls at the
 * angle α in the direction of sliding. Upright loads {@code upright} (positive downward), level ones
 * {@code level} (positive in the direction of sliding) and the moment of both about the middle of
 * the base {@code moment} (positive when it turns the slice over in the direction of sliding).
 */
final class Slices {

    /** How far a surface may rise above the ground for rounding, over its chord. */
    private static final double TOUCHING = 1e-6;

    private final SectionModel model;
    private final int wanted;
    private int count;
    private double direction = 1;
    private double crack;
    private double deepest;
    private double chord;

    double[] place = {};
    double[] base = {};
    double[] width;
    double[] sine;
    double[] cosine;
    double[] length;
    double[] upright;
    double[] level;
    double[] moment;
    double[] held;
    double[] tangent;
    double[] uplift;
    double[] passive;
    double[] soilWeight;

    /** What came of filling. */
    enum Status {
        GOOD,
        ABOVE_GROUND,
        NO_CROSSING,
        OVERHANGS,
        BEYOND_SECTION
    }

    Slices(SectionModel model, int wanted) {
        this.model = model;
        this.wanted = wanted;
        allot(wanted + model.ground.size() + 64);
    }

    int count() {
        return count;
    }

    double direction() {
        return direction;
    }

    /** Depth of the tension crack at the upper end. */
    double crack() {
        return crack;
    }

    /** Greatest distance of the surface from the chord between its ends. */
    double deepest() {
        return deepest;
    }

    /** Length of the chord between the ends of the surface. */
    double chord() {
        return chord;
    }

    /** Fills the slices above a circle between two points of it, given by x. */
    Status fill(SlipCircle circle, double leftX, double rightX) {
        double left = leftX;
        double right = rightX;
        ProfileLine ground = model.ground;
        direction = sense(ground.y(left), ground.y(right));
        double wantedCrack = model.section.crackDepth();
        crack = 0;
        if (wantedCrack > 0) {
            double upper = direction > 0 ? left : right;
            double cut = crackPlace(circle, upper, direction > 0 ? right : left, wantedCrack);
            if (Double.isNaN(cut)) {
                return Status.NO_CROSSING;
            }
            if (direction > 0) {
                left = cut;
            } else {
                right = cut;
            }
            crack = wantedCrack;
        }
        // An end at the level of the centre or above would be cut by an overhanging arc.
        if (Math.abs(left - circle.x()) > circle.radius() * (1 + 1e-12)
                || Math.abs(right - circle.x()) > circle.radius() * (1 + 1e-12)) {
            return Status.OVERHANGS;
        }
        divide(left, right, null);
        for (int i = 0; i <= count; i++) {
            base[i] = circle.low(direction * place[i]);
        }
        if (crack == 0) {
            base[0] = ground.y(direction * place[0]);
        }
        base[count] = ground.y(direction * place[count]);
        return load();
    }

    /** Fills the slices above a polygon. */
    Status fill(SlipPolygon polygon) {
        ProfileLine line = polygon.line();
        ProfileLine ground = model.ground;
        if (line.left() < ground.left() || line.right() > ground.right()) {
            return Status.BEYOND_SECTION;
        }
        direction = sense(line.y(line.left()), line.y(line.right()));
        divide(line.left(), line.right(), line);
        for (int i = 0; i <= count; i++) {
            base[i] = line.y(direction * place[i]);
        }
        crack = ground.y(direction * place[0]) - base[0];
        if (crack < TOUCHING * (line.right() - line.left())) {
            crack = 0;
        }
        return load();
    }

    private static double sense(double left, double right) {
        return left >= right ? 1 : -1;
    }

    /** Where the arc is just as deep as the crack, going down from the upper end. */
    private double crackPlace(SlipCircle circle, double upper, double lower, double depth) {
        int steps = 64;
        double before = upper;
        for (int i = 1; i <= steps; i++) {
            double at = upper + (lower - upper) * i / steps;
            if (model.ground.y(at) - circle.low(at) >= depth) {
                double in = at;
                for (int k = 0; k < 60; k++) {
                    double middle = (before + in) / 2;
                    if (model.ground.y(middle) - circle.low(middle) >= depth) {
                        in = middle;
                    } else {
                        before = middle;
                    }
                }
                return in;
            }
            before = at;
        }
        return Double.NaN;
    }

    /** Lays boundaries at the ends and at every corner of ground and surface, and between. */
    private void divide(double left, double right, @Nullable ProfileLine surface) {
        double total = right - left;
        int boundary = 0;
        place[0] = left;
        double from = left;
        int nextGround = 0;
        int nextSurface = 0;
        while (from < right) {
            while (nextGround < model.ground.size() && model.ground.pointX(nextGround) <= from) {
                nextGround++;
            }
            double to = right;
            if (nextGround < model.ground.size()) {
                to = Math.min(to, model.ground.pointX(nextGround));
            }
            if (surface != null) {
                while (nextSurface < surface.size() && surface.pointX(nextSurface) <= from) {
                    nextSurface++;
                }
                if (nextSurface < surface.size()) {
                    to = Math.min(to, surface.pointX(nextSurface));
                }
            }
            int parts = (int) Math.max(1, Math.rint(wanted * (to - from) / total));
            grow(boundary + parts + 1);
            for (int i = 1; i <= parts; i++) {
                place[boundary + i] = i == parts ? to : from + (to - from) * i / parts;
            }
            boundary += parts;
            from = to;
        }
        count = boundary;
        if (direction < 0) {
            for (int i = 0, j = count; i <= j; i++, j--) {
                double swap = place[i];
                place[i] = -place[j];
                place[j] = -swap;
            }
        }
    }

    private void grow(int boundaries) {
        if (boundaries < place.length) {
            return;
        }
        allot(2 * boundaries);
    }

    /** Makes room for so many slices; boundaries found so far stay. */
    private void allot(int most) {
        place = Arrays.copyOf(place, most + 1);
        base = Arrays.copyOf(base, most + 1);
        width = new double[most];
        sine = new double[most];
        cosine = new double[most];
        length = new double[most];
        upright = new double[most];
        level = new double[most];
        moment = new double[most];
        held = new double[most];
        tangent = new double[most];
        uplift = new double[most];
        passive = new double[most];
        soilWeight = new double[most];
    }

    private Status load() {
        SlopeSection section = model.section;
        double lift = 1 - section.upward();
        double shaking = section.level();
        double deep = 0;
        double x0 = direction * place[0];
        double top0 = model.ground.y(x0);
        double column0 = model.column(x0, base[0], top0);
        double water0 = model.pressure(x0, base[0]);
        chord = Math.sqrt(square(place[count] - place[0]) + square(base[count] - base[0]));
        for (int i = 0; i < count; i++) {
            double x1 = direction * place[i + 1];
            double top1 = model.ground.y(x1);
            if (top1 - base[i + 1] < -TOUCHING * chord) {
                return Status.ABOVE_GROUND;
            }
            double column1 = model.column(x1, base[i + 1], top1);
            double water1 = model.pressure(x1, base[i + 1]);
            double b = place[i + 1] - place[i];
            double fall = base[i] - base[i + 1];
            double along = Math.sqrt(b * b + fall * fall);
            double soil = b * (column0 + column1) / 2;
            width[i] = b;
            length[i] = along;
            sine[i] = fall / along;
            cosine[i] = b / along;
            soilWeight[i] = soil;
            upright[i] = soil * lift;
            level[i] = shaking * soil;
            double high = (top0 - base[i] + top1 - base[i + 1]) / 2;
            moment[i] = level[i] * high / 2;
            passive[i] = 0;
            strength(i, direction * place[i], x1, soil / b, (water0 + water1) / 2);
            deep = Math.max(deep, below(i + 1));
            x0 = x1;
            top0 = top1;
            column0 = column1;
            water0 = water1;
        }
        deepest = deep;
        addCrackWater();
        addSurcharges();
        addForces();
        for (SectionAnchor anchor : section.anchors()) {
            addAnchor(anchor);
        }
        return Status.GOOD;
    }

    private static double square(double value) {
        return value * value;
    }

    /** Distance of a boundary's base below the chord between the ends. */
    private double below(int boundary) {
        double dx = place[count] - place[0];
        double dy = base[count] - base[0];
        return (dy * (place[boundary] - place[0]) - dx * (base[boundary] - base[0])) / chord;
    }

    private void strength(int i, double xa, double xb, double overburden, double water) {
        int layers = model.cohesion.length;
        if (layers == 1) {
            setStrength(i, 0, 1, overburden, water, true);
            return;
        }
        int first = model.layerAt(xa, base[i]);
        int last = model.layerAt(xb, base[i + 1]);
        if (first == last) {
            setStrength(i, first, 1, overburden, water, true);
            return;
        }
        // The base passes from layer to layer: each has the share of the length it takes.
        int low = Math.min(first, last);
        int high = Math.max(first, last);
        double done = 0;
        boolean fresh = true;
        for (int step = 0; step <= high - low; step++) {
            int layer = first < last ? low + step : high - step;
            double until = 1;
            if (step < high - low) {
                ProfileLine bottom = model.bottoms[first < last ? layer : layer - 1];
                double above = base[i] - bottom.y(xa);
                double then = base[i + 1] - bottom.y(xb);
                until = above == then ? done : above / (above - then);
                until = Math.max(done, Math.min(1, until));
            }
            setStrength(i, layer, until - done, overburden, water, fresh);
            fresh = false;
            done = until;
        }
    }

    private void setStrength(
            int i, int layer, double share, double overburden, double water, boolean fresh) {
        double ratio = model.poreRatio[layer];
        double pressure = ratio > 0 ? ratio * overburden : water;
        double along = share * length[i];
        double cohesive = model.cohesion[layer] * along;
        double friction = model.tangent[layer] * share;
        double lifting = pressure * along;
        held[i] = fresh ? cohesive : held[i] + cohesive;
        tangent[i] = fresh ? friction : tangent[i] + friction;
        uplift[i] = fresh ? lifting : uplift[i] + lifting;
    }

    private double middle(int i) {
        return (place[i] + place[i + 1]) / 2;
    }

    private double middleBase(int i) {
        return (base[i] + base[i + 1]) / 2;
    }

    private void addCrackWater() {
        double depth = Math.min(crack, model.section.crackWater());
        if (depth > 0) {
            double push = SlopeSection.WATER_WEIGHT * depth * depth / 2;
            level[0] += push;
            moment[0] += push * (base[0] + depth / 3 - middleBase(0));
        }
    }

    private void addSurcharges() {
        for (Surcharge surcharge : model.section.surcharges()) {
            double from = direction > 0 ? surcharge.from() : -surcharge.to();
            double to = direction > 0 ? surcharge.to() : -surcharge.from();
            for (int i = 0; i < count; i++) {
                double start = Math.max(from, place[i]);
                double end = Math.min(to, place[i + 1]);
                if (end > start) {
                    double load = surcharge.pressure() * (end - start);
                    upright[i] += load;
                    moment[i] += load * ((start + end) / 2 - middle(i));
                }
            }
        }
    }

    private void addForces() {
        for (SectionForce force : model.section.forces()) {
            double at = direction * force.x();
            for (int i = 0; i < count; i++) {
                if (at >= place[i]
                        && (at < place[i + 1] || (i == count - 1 && at == place[i + 1]))) {
                    double out = direction * force.horizontal();
                    upright[i] += force.downward();
                    level[i] += out;
                    moment[i] +=
                            out * (force.y() - middleBase(i)) + force.downward() * (at - middle(i));
                }
            }
        }
    }

    private void addAnchor(SectionAnchor anchor) {
        double head = direction * anchor.x();
        if (head < place[0] || head > place[count]) {
            return;
        }
        double rise = StrictMath.tan(anchor.plunge());
        // Going in from the head, the first base that the anchor's line passes through.
        for (int i = count - 1; i >= 0; i--) {
            if (place[i] > head) {
                continue;
            }
            double start = Math.min(head, place[i + 1]);
            double part = (start - place[i]) / width[i];
            double aboveStart =
                    anchor.y() - (head - start) * rise - (base[i] + (base[i + 1] - base[i]) * part);
            double aboveEnd = anchor.y() - (head - place[i]) * rise - base[i];
            if (aboveStart >= -TOUCHING * chord && aboveEnd <= 0) {
                double share = aboveStart <= 0 ? 0 : aboveStart / (aboveStart - aboveEnd);
                put(anchor, i, head, start - share * (start - place[i]));
                return;
            }
        }
    }

    private void put(SectionAnchor anchor, int i, double head, double crossing) {
        double cos = StrictMath.cos(anchor.plunge());
        double sin = StrictMath.sin(anchor.plunge());
        double force = anchor.force() * anchor.share((head - crossing) / cos);
        double square = sine[i] * cos + cosine[i] * sin;
        double along = cosine[i] * cos - sine[i] * sin;
        if (anchor.convention() == AnchorConvention.PASSIVE) {
            passive[i] += force * (square * tangent[i] + along);
            return;
        }
        double offset = crossing - middle(i);
        upright[i] += force * sin;
        level[i] -= force * cos;
        moment[i] += force * sin * offset + force * cos * offset * (sine[i] / cosine[i]);
    }

    /** Driving moment about a point, over all slices; the point by s and height. */
    double drivingMoment(double centre, double height) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum +=
                    upright[i] * (centre - middle(i))
                            + level[i] * (height - middleBase(i))
                            - moment[i];
        }
        return sum;
    }

    /** Distance of the middle of a base from a point. */
    double lever(int i, double centre, double height) {
        return Math.sqrt(square(middle(i) - centre) + square(middleBase(i) - height));
    }
}
