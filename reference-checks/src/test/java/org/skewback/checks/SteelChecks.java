package org.skewback.checks;

import java.util.Map;
import java.util.TreeMap;
import org.skewback.quantity.Quantity;
import org.skewback.steel.Box;
import org.skewback.steel.ISection;
import org.skewback.steel.Rectangle;
import org.skewback.steel.Section;
import org.skewback.steel.Tube;

/** Checks of {@code org.skewback.steel}. */
public final class SteelChecks implements Subject {

    /** Makes the subject. */
    public SteelChecks() {}

    @Override
    public String topic() {
        return "steel";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("Rectangle", SteelChecks::rectangle);
        routines.put(
                "Box",
                in ->
                        properties(
                                new Box(
                                                in.si("width"),
                                                in.si("height"),
                                                in.si("web"),
                                                in.si("flange"))
                                        .section("s")));
        routines.put(
                "ISection",
                in ->
                        properties(
                                new ISection(
                                                in.si("width"),
                                                in.si("height"),
                                                in.si("web"),
                                                in.si("flange"))
                                        .section("s")));
        routines.put(
                "Tube", in -> properties(new Tube(in.si("diameter"), in.si("wall")).section("s")));
        return routines;
    }

    private static Map<String, Quantity> rectangle(Inputs in) {
        double width = in.si("width");
        double height = in.si("height");
        Map<String, Quantity> results =
                new TreeMap<>(properties(new Rectangle(width, height).section("s")));
        results.put(
                "torsion constant over a³b",
                results.get("torsion constant")
                        .over(Quantity.of(width * width * width * height, "m⁴")));
        return results;
    }

    private static Map<String, Quantity> properties(Section section) {
        return Map.of(
                "area",
                Quantity.of(section.area(), "m²"),
                "second moment y",
                Quantity.of(section.inertiaY(), "m⁴"),
                "second moment z",
                Quantity.of(section.inertiaZ(), "m⁴"),
                "torsion constant",
                Quantity.of(section.torsionConstant(), "m⁴"),
                "shear area over area",
                Quantity.of(section.shearAreaZ() / section.area(), ""));
    }
}
