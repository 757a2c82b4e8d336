package org.skewback.slope;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A section laid out in plain arrays for the slices: layers, strengths, lines. */
final class SectionModel {

    final SlopeSection section;
    final ProfileLine ground;
    final @Nullable ProfileLine water;
    final ProfileLine[] bottoms;
    final double[] weight;
    final double[] saturated;
    final double[] cohesion;
    final double[] tangent;
    final double[] poreRatio;

    SectionModel(SlopeSection section) {
        this.section = section;
        ground = section.ground();
        water = section.waterTable();
        List<SlopeLayer> layers = section.layers();
        int count = layers.size();
        bottoms = new ProfileLine[count - 1];
        weight = new double[count];
        saturated = new double[count];
        cohesion = new double[count];
        tangent = new double[count];
        poreRatio = new double[count];
        for (int i = 0; i < count; i++) {
            if (i + 1 < count) {
                bottoms[i] = layers.get(i).bottom();
            }
            Soil soil = layers.get(i).soil();
            weight[i] = soil.unitWeight();
            saturated[i] = soil.saturatedUnitWeight();
            cohesion[i] = soil.cohesion();
            tangent[i] = StrictMath.tan(soil.friction());
            poreRatio[i] = soil.poreRatio();
        }
    }

    /** Layer at a point: the first whose bottom is not above it. */
    int layerAt(double x, double y) {
        int layer = 0;
        while (layer < bottoms.length && bottoms[layer].y(x) > y) {
            layer++;
        }
        return layer;
    }

    /** Weight per plan area of the column from a height up to the ground. */
    double column(double x, double base, double top) {
        if (bottoms.length == 0 && (water == null || weight[0] == saturated[0])) {
            return weight[0] * (top - base);
        }
        double table = water == null ? Double.NEGATIVE_INFINITY : water.y(x);
        double upper = top;
        double load = 0;
        for (int i = 0; i <= bottoms.length && upper > base; i++) {
            double lower =
                    i < bottoms.length ? Math.min(upper, Math.max(base, bottoms[i].y(x))) : base;
            double wet = Math.max(0, Math.min(upper, table) - lower);
            load += weight[i] * (upper - lower - wet) + saturated[i] * wet;
            upper = lower;
        }
        return load;
    }

    /** Water pressure at a point from the water table. */
    double pressure(double x, double y) {
        return water == null ? 0 : SlopeSection.WATER_WEIGHT * Math.max(0, water.y(x) - y);
    }
}
