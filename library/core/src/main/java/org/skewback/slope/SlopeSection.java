package org.skewback.slope;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A section through a slope: ground line, layers from top to bottom, water, and what acts on it.
 *
 * <p>A pool in front of the slope is not covered: the water table must not stand above the ground.
 */
public final class SlopeSection {

    /** Unit weight of water, N/m³. */
    public static final double WATER_WEIGHT = 9810;

    /** How far lines may cross for rounding, m. */
    private static final double TOUCHING = 1e-9;

    private final ProfileLine ground;
    private final List<SlopeLayer> layers;
    private final @Nullable ProfileLine water;
    private final double level;
    private final double upward;
    private final double crackDepth;
    private final double crackWater;
    private final List<Surcharge> surcharges;
    private final List<SectionForce> forces;
    private final List<SectionAnchor> anchors;

    private SlopeSection(Parts parts) {
        ground = parts.ground;
        layers = List.copyOf(parts.layers);
        water = parts.water;
        level = parts.level;
        upward = parts.upward;
        crackDepth = parts.crackDepth;
        crackWater = parts.crackWater;
        surcharges = List.copyOf(parts.surcharges);
        forces = List.copyOf(parts.forces);
        anchors = List.copyOf(parts.anchors);
    }

    /** What a section is made of, while it is put together. */
    private static final class Parts {
        private ProfileLine ground;
        private List<SlopeLayer> layers;
        private @Nullable ProfileLine water;
        private double level;
        private double upward;
        private double crackDepth;
        private double crackWater;
        private List<Surcharge> surcharges = List.of();
        private List<SectionForce> forces = List.of();
        private List<SectionAnchor> anchors = List.of();

        Parts(ProfileLine ground, List<SlopeLayer> layers) {
            this.ground = ground;
            this.layers = layers;
        }
    }

    /**
     * Takes a section of one kind of ground.
     *
     * @param ground the ground line
     * @param soil what is below it
     * @return the section
     */
    public static SlopeSection of(ProfileLine ground, Soil soil) {
        return layered(ground, List.of(new SlopeLayer(soil, ground)));
    }

    /**
     * Takes a section of layers.
     *
     * @param ground the ground line
     * @param layers layers from top to bottom, at least one; the last goes down without end. A
     *     layer's bottom may rise above the ground, where the layer is then missing
     * @return the section
     * @throws IllegalArgumentException if there is no layer, or the bottoms of two layers cross
     */
    public static SlopeSection layered(ProfileLine ground, List<SlopeLayer> layers) {
        Require.atLeast("number of layers", layers.size(), 1);
        for (int i = 0; i + 2 < layers.size(); i++) {
            requireBelow(
                    layers.get(i).bottom(),
                    layers.get(i + 1).bottom(),
                    "bottom of layer " + (i + 2) + ", " + layers.get(i + 1).soil().name(),
                    "bottom of layer " + (i + 1) + ", " + layers.get(i).soil().name());
        }
        return new SlopeSection(new Parts(ground, layers));
    }

    private static void requireBelow(
            ProfileLine upper, ProfileLine lower, String which, String other) {
        TreeSet<Double> places = new TreeSet<>();
        for (ProfileLine line : List.of(upper, lower)) {
            for (int i = 0; i < line.size(); i++) {
                places.add(line.pointX(i));
            }
        }
        for (double x : places) {
            if (lower.y(x) > upper.y(x) + TOUCHING) {
                throw new IllegalArgumentException(
                        which
                                + " is at "
                                + lower.y(x)
                                + " m where x is "
                                + x
                                + " m; allowed is at most the "
                                + other
                                + ", at "
                                + upper.y(x)
                                + " m.");
            }
        }
    }

    private SlopeSection with(UnaryOperator<Parts> change) {
        Parts parts = new Parts(ground, layers);
        parts.water = water;
        parts.level = level;
        parts.upward = upward;
        parts.crackDepth = crackDepth;
        parts.crackWater = crackWater;
        parts.surcharges = surcharges;
        parts.forces = forces;
        parts.anchors = anchors;
        return new SlopeSection(change.apply(parts));
    }

    /**
     * Puts in a water table: pore pressure is its height above a point times the unit weight of
     * water.
     *
     * @param line the water table (piezometric line)
     * @return the section with it
     * @throws IllegalArgumentException if it stands above the ground
     */
    public SlopeSection withWaterTable(ProfileLine line) {
        requireBelow(ground, line, "water table", "ground");
        return with(
                parts -> {
                    parts.water = line;
                    return parts;
                });
    }

    /**
     * Puts it under an earthquake by coefficients of the weight of the ground.
     *
     * @param levelCoefficient coefficient out of the slope, k_h, from 0 to 2
     * @param upwardCoefficient coefficient upward, k_v, from −1 to 1
     * @return the section under it
     * @throws IllegalArgumentException if a coefficient is outside
     */
    public SlopeSection withEarthquake(double levelCoefficient, double upwardCoefficient) {
        Require.within("level earthquake coefficient", levelCoefficient, 0, 2, "");
        Require.within("upward earthquake coefficient", upwardCoefficient, -1, 1, "");
        return with(
                parts -> {
                    parts.level = levelCoefficient;
                    parts.upward = upwardCoefficient;
                    return parts;
                });
    }

    /**
     * Puts in an upright tension crack at the upper end of every surface.
     *
     * @param depth depth of the crack, m, at least 0
     * @param waterDepth depth of water in it, m, from 0 to the depth of the crack
     * @return the section with it
     * @throws IllegalArgumentException if a depth is outside
     */
    public SlopeSection withTensionCrack(double depth, double waterDepth) {
        Require.notNegative("depth of the tension crack", depth, "m");
        Require.within("depth of water in the tension crack", waterDepth, 0, depth, "m");
        return with(
                parts -> {
                    parts.crackDepth = depth;
                    parts.crackWater = waterDepth;
                    return parts;
                });
    }

    /**
     * Adds a load on the ground.
     *
     * @param load the load
     * @return the section with it
     */
    public SlopeSection withSurcharge(Surcharge load) {
        return with(
                parts -> {
                    parts.surcharges = joined(parts.surcharges, load);
                    return parts;
                });
    }

    /**
     * Adds a force on the ground.
     *
     * @param force the force
     * @return the section with it
     */
    public SlopeSection withForce(SectionForce force) {
        return with(
                parts -> {
                    parts.forces = joined(parts.forces, force);
                    return parts;
                });
    }

    /**
     * Adds an anchor.
     *
     * @param anchor the anchor
     * @return the section with it
     */
    public SlopeSection withAnchor(SectionAnchor anchor) {
        return with(
                parts -> {
                    parts.anchors = joined(parts.anchors, anchor);
                    return parts;
                });
    }

    /**
     * Multiplies the force of all its anchors.
     *
     * @param factor factor, at least 0
     * @return the section with them
     * @throws IllegalArgumentException if the factor is negative
     */
    public SlopeSection withAnchorForceTimes(double factor) {
        Require.notNegative("factor on anchor forces", factor, "");
        return with(
                parts -> {
                    parts.anchors =
                            parts.anchors.stream()
                                    .map(anchor -> anchor.withForce(anchor.force() * factor))
                                    .toList();
                    return parts;
                });
    }

    /**
     * Divides the strength of all layers by partial factors and multiplies the surcharges by the
     * one on variable loads.
     *
     * @param factors the factors
     * @return the section with design values
     */
    public SlopeSection with(PartialFactors factors) {
        return with(
                parts -> {
                    parts.layers =
                            parts.layers.stream()
                                    .map(
                                            layer ->
                                                    new SlopeLayer(
                                                            layer.soil().with(factors),
                                                            layer.bottom()))
                                    .toList();
                    parts.surcharges =
                            parts.surcharges.stream()
                                    .map(
                                            load ->
                                                    new Surcharge(
                                                            load.from(),
                                                            load.to(),
                                                            load.pressure() * factors.onVariable()))
                                    .toList();
                    return parts;
                });
    }

    /**
     * Gives the section seen from behind, x turned into −x.
     *
     * @return the mirror image
     */
    public SlopeSection mirrored() {
        ProfileLine table = water;
        return with(
                parts -> {
                    parts.ground = ground.mirrored();
                    parts.layers =
                            layers.stream()
                                    .map(
                                            layer ->
                                                    new SlopeLayer(
                                                            layer.soil(),
                                                            layer.bottom().mirrored()))
                                    .toList();
                    parts.water = table == null ? null : table.mirrored();
                    parts.surcharges =
                            surcharges.stream()
                                    .map(s -> new Surcharge(-s.to(), -s.from(), s.pressure()))
                                    .toList();
                    parts.forces =
                            forces.stream()
                                    .map(
                                            f ->
                                                    new SectionForce(
                                                            -f.x(),
                                                            f.y(),
                                                            -f.horizontal(),
                                                            f.downward()))
                                    .toList();
                    parts.anchors =
                            anchors.stream()
                                    .map(
                                            a ->
                                                    new SectionAnchor(
                                                            -a.x(),
                                                            a.y(),
                                                            a.plunge(),
                                                            a.force(),
                                                            a.freeLength(),
                                                            a.bondLength(),
                                                            a.convention()))
                                    .toList();
                    return parts;
                });
    }

    private static <T> List<T> joined(List<T> list, T more) {
        List<T> longer = new ArrayList<>(list);
        longer.add(more);
        return List.copyOf(longer);
    }

    /**
     * Gives the ground line.
     *
     * @return the line
     */
    public ProfileLine ground() {
        return ground;
    }

    /**
     * Gives the layers.
     *
     * @return layers from top to bottom
     */
    public List<SlopeLayer> layers() {
        return layers;
    }

    /**
     * Gives the water table.
     *
     * @return the line, or null where there is none
     */
    public @Nullable ProfileLine waterTable() {
        return water;
    }

    /**
     * Gives the anchors.
     *
     * @return the anchors in the order in which they were added
     */
    public List<SectionAnchor> anchors() {
        return anchors;
    }

    /**
     * Gives the loads on the ground.
     *
     * @return the loads in the order in which they were added
     */
    public List<Surcharge> surcharges() {
        return surcharges;
    }

    /**
     * Gives the forces on the ground.
     *
     * @return the forces in the order in which they were added
     */
    public List<SectionForce> forces() {
        return forces;
    }

    double level() {
        return level;
    }

    double upward() {
        return upward;
    }

    double crackDepth() {
        return crackDepth;
    }

    double crackWater() {
        return crackWater;
    }
}
