package org.skewback.checks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.cable.Cable;
import org.skewback.cable.CableLoad;
import org.skewback.cable.CablePoint;
import org.skewback.cable.FlatCable;
import org.skewback.cable.HangingCable;
import org.skewback.quantity.Quantity;

/** Checks of {@code org.skewback.cable}. */
public final class CableChecks implements Subject {

    /** Makes the subject. */
    public CableChecks() {}

    @Override
    public String topic() {
        return "cable";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("HangingCable: between", CableChecks::between);
        routines.put("HangingCable: of a horizontal force", CableChecks::ofForce);
        routines.put("HangingCable: upright", CableChecks::upright);
        routines.put("HangingCable: point load", CableChecks::pointLoad);
        routines.put("FlatCable: changed", CableChecks::changed);
        routines.put("FlatCable: Irvine's frequency", CableChecks::irvine);
        routines.put("FlatCable: Ernst's modulus", CableChecks::ernst);
        return routines;
    }

    private static Quantity of(double value, String unit) {
        return Quantity.of(value, unit);
    }

    private static Map<String, Quantity> results(HangingCable hanging) {
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("horizontal force", of(hanging.horizontalForce(), "N"));
        results.put("vertical force at the start", of(hanging.startVertical(), "N"));
        results.put("vertical force at the end", of(hanging.endVertical(), "N"));
        results.put("largest tension", of(hanging.largestTension(), "N"));
        results.put("sag", of(hanging.sag(), "m"));
        CablePoint middle = hanging.at(hanging.cable().unstressedLength() / 2);
        results.put("tension in the middle", of(middle.tension(), "N"));
        results.put("unstressed length", of(hanging.cable().unstressedLength(), "m"));
        double[][] k = hanging.stiffness();
        results.put("stiffness along x", of(k[0][0], "N/m"));
        results.put("stiffness x to z", of(k[0][1], "N/m"));
        results.put("stiffness along z", of(k[1][1], "N/m"));
        return results;
    }

    private static Map<String, Quantity> between(Inputs in) {
        Cable cable =
                new Cable(in.si("unstressed length"), in.si("weight"), in.si("axial stiffness"));
        if (in.has("warmed by")) {
            cable = cable.warmed(in.si("warmed by"), in.si("expansion"));
        }
        return results(
                in.has("load")
                        ? HangingCable.between(
                                cable,
                                List.of(new CableLoad(in.si("load at"), in.si("load"))),
                                in.si("span"),
                                in.si("rise"))
                        : HangingCable.between(cable, in.si("span"), in.si("rise")));
    }

    private static Map<String, Quantity> ofForce(Inputs in) {
        return results(
                HangingCable.ofHorizontalForce(
                        in.si("weight"),
                        in.si("axial stiffness"),
                        in.si("span"),
                        in.si("rise"),
                        in.si("horizontal force")));
    }

    private static Map<String, Quantity> upright(Inputs in) {
        return results(
                HangingCable.upright(
                        in.si("weight"),
                        in.si("axial stiffness"),
                        in.si("rise"),
                        in.si("tension at the lower end")));
    }

    /** A cable found from its sag, then loaded at a point of it. */
    private static Map<String, Quantity> pointLoad(Inputs in) {
        double span = in.si("span");
        double weight = in.si("weight");
        double stiffness = in.si("area") * in.si("young modulus");
        double sag = in.si("sag");
        double low = weight * span * span / (16 * sag);
        double high = 4 * low;
        for (int i = 0; i < 100; i++) {
            double middle = (low + high) / 2;
            if (HangingCable.ofHorizontalForce(weight, stiffness, span, 0, middle).sag() > sag) {
                low = middle;
            } else {
                high = middle;
            }
        }
        HangingCable before =
                HangingCable.ofHorizontalForce(weight, stiffness, span, 0, (low + high) / 2);
        double length = before.cable().unstressedLength();
        double from = 0;
        double to = length;
        for (int i = 0; i < 100; i++) {
            double middle = (from + to) / 2;
            if (before.at(middle).x() < in.si("load at")) {
                from = middle;
            } else {
                to = middle;
            }
        }
        double place = (from + to) / 2;
        HangingCable after =
                HangingCable.between(
                        before.cable(), List.of(new CableLoad(place, in.si("load"))), span, 0);
        CablePoint first = before.at(place);
        CablePoint then = after.at(place);
        return Map.of(
                "unstressed length to the load", of(place, "m"),
                "unstressed length beyond", of(length - place, "m"),
                "horizontal force before", of(before.horizontalForce(), "N"),
                "horizontal force", of(after.horizontalForce(), "N"),
                "level movement", of(then.x() - first.x(), "m"),
                "movement upward", of(then.z() - first.z(), "m"));
    }

    private static Map<String, Quantity> changed(Inputs in) {
        FlatCable before =
                new FlatCable(
                        in.si("span"),
                        in.si("weight"),
                        in.si("axial stiffness"),
                        in.si("horizontal force"));
        FlatCable after =
                before.changed(in.si("new weight"), in.si("expansion") * in.si("warming"));
        return Map.of(
                "horizontal force", of(after.horizontalForce(), "N"), "sag", of(after.sag(), "m"));
    }

    private static Map<String, Quantity> irvine(Inputs in) {
        if (in.has("span")) {
            FlatCable cable =
                    new FlatCable(
                            in.si("span"),
                            in.si("weight"),
                            in.si("axial stiffness"),
                            in.si("horizontal force"));
            return Map.of("Irvine number", of(cable.irvineNumber(), ""));
        }
        double root = FlatCable.firstSymmetricFrequency(in.si("Irvine number"));
        return Map.of("frequency over π", of(root / Math.PI, ""));
    }

    private static Map<String, Quantity> ernst(Inputs in) {
        return Map.of(
                "modulus",
                of(
                        FlatCable.ernstModulus(
                                in.si("young modulus"),
                                in.si("weight"),
                                in.si("level length"),
                                in.si("stress")),
                        "Pa"));
    }
}
