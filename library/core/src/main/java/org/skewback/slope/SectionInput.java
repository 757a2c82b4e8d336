package org.skewback.slope;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.skewback.quantity.Quantity;

/**
 * A section of a slope in quantities, as the input of routines; {@link SlopeSection} says what each
 * part means.
 *
 * @param ground ground line: x and y of its points in turn
 * @param layers layers from top to bottom, five values each: unit weight, saturated unit weight,
 *     cohesion, friction angle, pore pressure ratio
 * @param bottoms bottoms of all layers but the last: x and y of their points in turn
 * @param bottomPoints number of points of each bottom
 * @param water water table: x and y of its points in turn; empty without
 * @param earthquake coefficients, level and upward
 * @param crack depth of the tension crack, and of the water in it
 * @param surcharges surcharges, three values each: left end, right end, pressure
 * @param forces forces, four values each: x, y, to the right, downward
 * @param anchors anchors, six values each: x and y of the head, plunge, force, free length, bond
 *     length
 * @param passiveAnchors whether the force of the anchors along the surface is added to the
 *     resistance
 * @param where a circle, x and y of its centre and the radius; or a window, least and greatest x of
 *     the left end and of the right end
 * @param method name of a {@link SliceMethod}
 * @param slices number of slices, about
 * @param wanted wanted factor of safety, where anchors are to give it; empty elsewhere
 */
public record SectionInput(
        List<Quantity> ground,
        List<Quantity> layers,
        List<Quantity> bottoms,
        List<Quantity> bottomPoints,
        List<Quantity> water,
        List<Quantity> earthquake,
        List<Quantity> crack,
        List<Quantity> surcharges,
        List<Quantity> forces,
        List<Quantity> anchors,
        boolean passiveAnchors,
        List<Quantity> where,
        String method,
        int slices,
        List<Quantity> wanted) {

    private static final int OF_LAYER = 5;
    private static final int OF_ANCHOR = 6;

    /**
     * Copies the lists.
     *
     * @param ground ground line
     * @param layers layers, five values each
     * @param bottoms bottoms of the layers
     * @param bottomPoints number of points of each bottom
     * @param water water table
     * @param earthquake coefficients, level and upward
     * @param crack depth of the tension crack, and of the water in it
     * @param surcharges surcharges, three values each
     * @param forces forces, four values each
     * @param anchors anchors, six values each
     * @param passiveAnchors convention of the anchors
     * @param where circle or window
     * @param method name of the method
     * @param slices number of slices, about
     * @param wanted wanted factor of safety, or empty
     */
    public SectionInput {
        ground = List.copyOf(ground);
        layers = List.copyOf(layers);
        bottoms = List.copyOf(bottoms);
        bottomPoints = List.copyOf(bottomPoints);
        water = List.copyOf(water);
        earthquake = List.copyOf(earthquake);
        crack = List.copyOf(crack);
        surcharges = List.copyOf(surcharges);
        forces = List.copyOf(forces);
        anchors = List.copyOf(anchors);
        where = List.copyOf(where);
        wanted = List.copyOf(wanted);
    }

    /**
     * Begins with a ground line, nothing below it yet.
     *
     * @param points x and y of the points of the ground line in turn
     * @return the input, to which layers must be added
     */
    public static SectionInput ground(List<Quantity> points) {
        return new Parts(points).made();
    }

    /**
     * Adds the lowest layer.
     *
     * @param unitWeight unit weight, above and below water
     * @param cohesion cohesion
     * @param friction friction angle
     * @param poreRatio pore pressure ratio r_u
     * @return the input with it
     */
    public SectionInput layer(
            Quantity unitWeight, Quantity cohesion, Quantity friction, Quantity poreRatio) {
        return layer(unitWeight, unitWeight, cohesion, friction, poreRatio, List.of());
    }

    /**
     * Adds a layer.
     *
     * @param unitWeight unit weight
     * @param saturated unit weight below the water table
     * @param cohesion cohesion
     * @param friction friction angle
     * @param poreRatio pore pressure ratio r_u
     * @param bottom x and y of the points of its bottom in turn; empty for the lowest layer
     * @return the input with it
     */
    public SectionInput layer(
            Quantity unitWeight,
            Quantity saturated,
            Quantity cohesion,
            Quantity friction,
            Quantity poreRatio,
            List<Quantity> bottom) {
        return with(
                parts -> {
                    parts.layers =
                            joined(
                                    layers,
                                    List.of(unitWeight, saturated, cohesion, friction, poreRatio));
                    if (!bottom.isEmpty()) {
                        parts.bottoms = joined(bottoms, bottom);
                        parts.bottomPoints =
                                joined(bottomPoints, List.of(Quantity.of(bottom.size() / 2.0)));
                    }
                });
    }

    /**
     * Puts in a water table.
     *
     * @param points x and y of its points in turn
     * @return the input with it
     */
    public SectionInput water(List<Quantity> points) {
        return with(parts -> parts.water = points);
    }

    /**
     * Puts in an earthquake.
     *
     * @param level level coefficient out of the slope
     * @param upward coefficient upward
     * @return the input with it
     */
    public SectionInput earthquake(Quantity level, Quantity upward) {
        return with(parts -> parts.earthquake = List.of(level, upward));
    }

    /**
     * Puts in a tension crack.
     *
     * @param depth its depth
     * @param waterDepth depth of water in it
     * @return the input with it
     */
    public SectionInput crack(Quantity depth, Quantity waterDepth) {
        return with(parts -> parts.crack = List.of(depth, waterDepth));
    }

    /**
     * Adds a surcharge.
     *
     * @param from left end
     * @param to right end
     * @param pressure load per plan area
     * @return the input with it
     */
    public SectionInput surcharge(Quantity from, Quantity to, Quantity pressure) {
        return with(parts -> parts.surcharges = joined(surcharges, List.of(from, to, pressure)));
    }

    /**
     * Adds a force per metre run.
     *
     * @param x position
     * @param y height
     * @param toRight level component to the right
     * @param downward upright component downward
     * @return the input with it
     */
    public SectionInput force(Quantity x, Quantity y, Quantity toRight, Quantity downward) {
        return with(parts -> parts.forces = joined(forces, List.of(x, y, toRight, downward)));
    }

    /**
     * Adds an anchor.
     *
     * @param x position of the head
     * @param y height of the head
     * @param plunge plunge into the slope
     * @param force force per metre run
     * @param freeLength free length
     * @param bondLength bond length
     * @return the input with it
     */
    public SectionInput anchor(
            Quantity x,
            Quantity y,
            Quantity plunge,
            Quantity force,
            Quantity freeLength,
            Quantity bondLength) {
        List<Quantity> added = List.of(x, y, plunge, force, freeLength, bondLength);
        return with(parts -> parts.anchors = joined(anchors, added));
    }

    /**
     * Counts the anchors' force along the surface with the resistance, as {@link
     * AnchorConvention#PASSIVE} does; without this it is taken off what drives.
     *
     * @return the input with passive anchors
     */
    public SectionInput passive() {
        return with(parts -> parts.passiveAnchors = true);
    }

    /**
     * Says where and how to calculate.
     *
     * @param circleOrWindow a circle, x and y of its centre and the radius; or a window, least and
     *     greatest x of the left end and of the right end
     * @param by the method
     * @param count number of slices, about
     * @return the input with it
     */
    public SectionInput at(List<Quantity> circleOrWindow, SliceMethod by, int count) {
        return with(
                parts -> {
                    parts.where = circleOrWindow;
                    parts.method = by.name();
                    parts.slices = count;
                });
    }

    /**
     * Says what factor of safety the anchors are to give.
     *
     * @param factor wanted factor of safety, greater than 0
     * @return the input with it
     */
    public SectionInput wanted(Quantity factor) {
        return with(parts -> parts.wanted = List.of(factor));
    }

    private SectionInput with(Consumer<Parts> change) {
        Parts parts = new Parts(ground);
        parts.layers = layers;
        parts.bottoms = bottoms;
        parts.bottomPoints = bottomPoints;
        parts.water = water;
        parts.earthquake = earthquake;
        parts.crack = crack;
        parts.surcharges = surcharges;
        parts.forces = forces;
        parts.anchors = anchors;
        parts.passiveAnchors = passiveAnchors;
        parts.where = where;
        parts.method = method;
        parts.slices = slices;
        parts.wanted = wanted;
        change.accept(parts);
        return parts.made();
    }

    /** What an input is put together from; as it stands, a ground line with nothing below it. */
    private static final class Parts {

        private final List<Quantity> ground;
        private List<Quantity> layers = List.of();
        private List<Quantity> bottoms = List.of();
        private List<Quantity> bottomPoints = List.of();
        private List<Quantity> water = List.of();
        private List<Quantity> earthquake = List.of(Quantity.of(0), Quantity.of(0));
        private List<Quantity> crack = List.of(Quantity.of(0, "m"), Quantity.of(0, "m"));
        private List<Quantity> surcharges = List.of();
        private List<Quantity> forces = List.of();
        private List<Quantity> anchors = List.of();
        private boolean passiveAnchors;
        private List<Quantity> where = List.of();
        private String method = SliceMethod.BISHOP.name();
        private int slices = 50;
        private List<Quantity> wanted = List.of();

        private Parts(List<Quantity> ground) {
            this.ground = ground;
        }

        private SectionInput made() {
            return new SectionInput(
                    ground,
                    layers,
                    bottoms,
                    bottomPoints,
                    water,
                    earthquake,
                    crack,
                    surcharges,
                    forces,
                    anchors,
                    passiveAnchors,
                    where,
                    method,
                    slices,
                    wanted);
        }
    }

    private static List<Quantity> joined(List<Quantity> first, List<Quantity> second) {
        List<Quantity> all = new ArrayList<>(first);
        all.addAll(second);
        return List.copyOf(all);
    }

    /** The section in plain numbers. */
    SlopeSection section() {
        if (layers.isEmpty() || layers.size() % OF_LAYER != 0) {
            throw new IllegalArgumentException(
                    "number of values of layers is "
                            + layers.size()
                            + "; allowed are five for each of at least one layer.");
        }
        ProfileLine top = line("ground line", ground);
        List<SlopeLayer> made = new ArrayList<>();
        int point = 0;
        int count = layers.size() / OF_LAYER;
        if (bottomPoints.size() != count - 1) {
            throw new IllegalArgumentException(
                    "number of bottoms is "
                            + bottomPoints.size()
                            + "; allowed is one for each layer but the last, "
                            + (count - 1)
                            + ".");
        }
        for (int i = 0; i < count; i++) {
            List<Quantity> v = layers.subList(OF_LAYER * i, OF_LAYER * (i + 1));
            ProfileLine bottom = top;
            if (i < count - 1) {
                int next = point + 2 * (int) bottomPoints.get(i).in("");
                if (next > bottoms.size()) {
                    throw new IllegalArgumentException(
                            "bottom of layer " + (i + 1) + " has too few points.");
                }
                bottom = line("bottom of layer " + (i + 1), bottoms.subList(point, next));
                point = next;
            }
            made.add(
                    new SlopeLayer(
                            new Soil(
                                    "layer " + (i + 1),
                                    v.get(0).in("N/m³"),
                                    v.get(1).in("N/m³"),
                                    v.get(2).in("Pa"),
                                    v.get(3).in("rad"),
                                    v.get(4).in("")),
                            bottom));
        }
        SlopeSection section =
                SlopeSection.layered(top, made)
                        .withEarthquake(earthquake.get(0).in(""), earthquake.get(1).in(""))
                        .withTensionCrack(crack.get(0).in("m"), crack.get(1).in("m"));
        if (!water.isEmpty()) {
            section = section.withWaterTable(line("water table", water));
        }
        return loaded(section);
    }

    private SlopeSection loaded(SlopeSection bare) {
        SlopeSection section = bare;
        for (int i = 0; i + 2 < surcharges.size(); i += 3) {
            section =
                    section.withSurcharge(
                            new Surcharge(
                                    surcharges.get(i).in("m"),
                                    surcharges.get(i + 1).in("m"),
                                    surcharges.get(i + 2).in("Pa")));
        }
        for (int i = 0; i + 3 < forces.size(); i += 4) {
            section =
                    section.withForce(
                            new SectionForce(
                                    forces.get(i).in("m"),
                                    forces.get(i + 1).in("m"),
                                    forces.get(i + 2).in("N/m"),
                                    forces.get(i + 3).in("N/m")));
        }
        AnchorConvention convention =
                passiveAnchors ? AnchorConvention.PASSIVE : AnchorConvention.ACTIVE;
        for (int i = 0; i + OF_ANCHOR <= anchors.size(); i += OF_ANCHOR) {
            section =
                    section.withAnchor(
                            new SectionAnchor(
                                    anchors.get(i).in("m"),
                                    anchors.get(i + 1).in("m"),
                                    anchors.get(i + 2).in("rad"),
                                    anchors.get(i + 3).in("N/m"),
                                    anchors.get(i + 4).in("m"),
                                    anchors.get(i + 5).in("m"),
                                    convention));
        }
        return section;
    }

    private static ProfileLine line(String what, List<Quantity> coordinates) {
        if (coordinates.size() % 2 != 0) {
            throw new IllegalArgumentException(
                    "number of coordinates of the "
                            + what
                            + " is "
                            + coordinates.size()
                            + "; allowed is an x and a y for each point.");
        }
        double[][] points = new double[coordinates.size() / 2][];
        for (int i = 0; i < points.length; i++) {
            points[i] =
                    new double[] {
                        coordinates.get(2 * i).in("m"), coordinates.get(2 * i + 1).in("m")
                    };
        }
        return ProfileLine.through(points);
    }

    /** The method by its name. */
    SliceMethod by() {
        for (SliceMethod known : SliceMethod.values()) {
            if (known.name().equals(method)) {
                return known;
            }
        }
        throw new IllegalArgumentException(
                "method is \"" + method + "\"; allowed are " + List.of(SliceMethod.values()) + ".");
    }

    /** The wanted factor of safety; refused unless there is one. */
    double wantedFactor() {
        if (wanted.size() != 1) {
            throw new IllegalArgumentException(
                    "number of wanted factors of safety is " + wanted.size() + "; allowed is one.");
        }
        return wanted.get(0).in("");
    }

    /** The circle that says where; refused unless it has three values. */
    SlipCircle circle() {
        double[] circle = place(3);
        return new SlipCircle(circle[0], circle[1], circle[2]);
    }

    /** The window that says where, with the wanted number of slices; refused unless it has four values. */
    SearchWindow window() {
        double[] ends = place(4);
        return SearchWindow.of(ends[0], ends[1], ends[2], ends[3]).sliced(slices);
    }

    /** The numbers that say where, in metres; refused unless there are as many as wanted. */
    private double[] place(int wanted) {
        if (where.size() != wanted) {
            throw new IllegalArgumentException(
                    "number of values that say where is "
                            + where.size()
                            + "; allowed is "
                            + wanted
                            + ".");
        }
        return where.stream().mapToDouble(value -> value.in("m")).toArray();
    }
}
