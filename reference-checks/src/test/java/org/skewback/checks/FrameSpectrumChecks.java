package org.skewback.checks;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.frame.Bar;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.DesignSpectrum;
import org.skewback.frame.DirectionRule;
import org.skewback.frame.En1998Spectrum;
import org.skewback.frame.EndConnection;
import org.skewback.frame.FrameModel;
import org.skewback.frame.FrameModelBuilder;
import org.skewback.frame.Material;
import org.skewback.frame.ModalAnalysis;
import org.skewback.frame.ModalRule;
import org.skewback.frame.Modes;
import org.skewback.frame.Motion;
import org.skewback.frame.NodalMass;
import org.skewback.frame.SpectrumAnalysis;
import org.skewback.frame.SpectrumResponse;
import org.skewback.frame.SpringLink;
import org.skewback.frame.Vector;
import org.skewback.quantity.Quantity;
import org.skewback.steel.Section;

/** Checks of response spectra and of the response to them. */
public final class FrameSpectrumChecks implements Subject {

    /** Makes the subject. */
    public FrameSpectrumChecks() {}

    @Override
    public String topic() {
        return "frame";
    }

    @Override
    public String table() {
        return "frame-spectrum";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("ModalRule: correlation", FrameSpectrumChecks::correlation);
        routines.put("En1998Spectrum: elastic", FrameSpectrumChecks::elastic);
        routines.put("En1998Spectrum: design", FrameSpectrumChecks::design);
        routines.put("En1998Spectrum: vertical", FrameSpectrumChecks::vertical);
        routines.put("DesignSpectrum: points", FrameSpectrumChecks::points);
        routines.put("SpectrumAnalysis: shear frame", FrameSpectrumChecks::shearFrame);
        routines.put("SpectrumAnalysis: mass on a post", FrameSpectrumChecks::post);
        routines.put("SpectrumAnalysis: two masses", FrameSpectrumChecks::twoMasses);
        routines.put("SpectrumAnalysis: directions", FrameSpectrumChecks::directions);
        return routines;
    }

    private static Quantity of(double value, String unit) {
        return Quantity.of(value, unit);
    }

    private static Map<String, Quantity> correlation(Inputs in) {
        List<Quantity> damping = in.quantities("damping");
        return Map.of(
                "ρ",
                of(
                        ModalRule.correlation(
                                1,
                                damping.get(0).si(),
                                in.si("frequency ratio"),
                                damping.get(1).si()),
                        ""));
    }

    private static En1998Spectrum.Type type(Inputs in) {
        return in.text("type").equals("1") ? En1998Spectrum.Type.ONE : En1998Spectrum.Type.TWO;
    }

    private static Map<String, Quantity> elastic(Inputs in) {
        En1998Spectrum spectrum =
                En1998Spectrum.elastic(
                        type(in),
                        En1998Spectrum.Ground.valueOf(in.text("ground")),
                        in.si("a_g"),
                        in.si("damping"));
        double period = in.si("period");
        double acceleration = spectrum.acceleration(period);
        return Map.of(
                "S_e", of(acceleration, "m/s²"),
                "S_e T²/4π²", of(acceleration * period * period / (4 * Math.PI * Math.PI), "m"),
                "d_g", of(spectrum.groundDisplacement(), "m"));
    }

    private static Map<String, Quantity> design(Inputs in) {
        En1998Spectrum spectrum =
                En1998Spectrum.design(
                        type(in),
                        En1998Spectrum.Ground.valueOf(in.text("ground")),
                        in.si("a_g"),
                        in.si("q"),
                        in.si("β"));
        return Map.of("S_d", of(spectrum.acceleration(in.si("period")), "m/s²"));
    }

    private static Map<String, Quantity> vertical(Inputs in) {
        En1998Spectrum spectrum = En1998Spectrum.verticalElastic(in.si("a_vg"), in.si("damping"));
        return Map.of("S_ve", of(spectrum.acceleration(in.si("period")), "m/s²"));
    }

    private static double[] numbers(Inputs in, String name) {
        return in.quantities(name).stream().mapToDouble(Quantity::si).toArray();
    }

    private static Map<String, Quantity> points(Inputs in) {
        DesignSpectrum spectrum =
                DesignSpectrum.ofPoints(numbers(in, "periods"), numbers(in, "accelerations"));
        return Map.of("S_a", of(spectrum.acceleration(in.si("period")), "m/s²"));
    }

    private static ModalRule rule(String words) {
        return switch (words) {
            case "complete quadratic" -> ModalRule.COMPLETE_QUADRATIC;
            case "sum of squares" -> ModalRule.SUM_OF_SQUARES;
            case "sum of sizes" -> ModalRule.SUM_OF_SIZES;
            default -> throw new IllegalArgumentException("rule is \"" + words + "\".");
        };
    }

    private static Map<String, Quantity> post(Inputs in) {
        Material material = new Material("m", in.si("young modulus"), 8e10, 0, 0);
        Section section = Section.slender("s", 0.1, 1e-4, in.si("second moment"), 1e-4);
        FrameModel model =
                FrameModel.builder()
                        .inPlane()
                        .node("A", 0, 0, 0)
                        .node("B", 0, 0, in.si("height"))
                        .add(BeamColumn.of("post", "A", "B", material, section))
                        .fix("A")
                        .build();
        ModalAnalysis analysis =
                ModalAnalysis.of(model).divided(4).with(NodalMass.of("B", in.si("mass")));
        double acceleration = in.si("spectral acceleration");
        SpectrumResponse response =
                SpectrumAnalysis.of(analysis.modes(1))
                        .under(
                                Map.of(
                                        Motion.ALONG_X,
                                        DesignSpectrum.ofPoints(
                                                new double[] {0, 10},
                                                new double[] {acceleration, acceleration})));
        double half = in.si("height") / 2;
        double tip = response.movement("B").translation().x();
        return Map.of(
                "movement of the middle over that of the end",
                        Quantity.of(response.movement("post", half).translation().x() / tip),
                "rotation at the end times height over movement",
                        Quantity.of(response.movement("B").rotation().y() * in.si("height") / tip),
                "shear force", Quantity.of(response.forces("post", half).shearZ(), "N"),
                "moment of the reaction", Quantity.of(response.reaction("A").moment().y(), "N·m"),
                "force of the reaction", Quantity.of(response.reaction("A").force().x(), "N"),
                "sum of reactions", Quantity.of(response.baseForce().x(), "N"),
                "moment in the middle by the mode",
                        Quantity.of(
                                Math.abs(
                                        response.modalForces(0, Motion.ALONG_X, "post", half)
                                                .momentY()),
                                "N·m"));
    }

    /** Five storeys above each other that only shear. */
    private static Map<String, Quantity> shearFrame(Inputs in) {
        int storeys = 5;
        double height = in.si("storey height");
        EndConnection shear = new EndConnection(in.si("storey stiffness"), 0, 0, 0, 0, 0);
        FrameModelBuilder builder = FrameModel.builder().node("0", 0, 0, 0).fix("0");
        NodalMass[] masses = new NodalMass[storeys];
        for (int i = 1; i <= storeys; i++) {
            builder.node("" + i, 0, 0, height * i)
                    .hold(
                            "" + i,
                            Motion.ALONG_Y,
                            Motion.ALONG_Z,
                            Motion.ABOUT_X,
                            Motion.ABOUT_Y,
                            Motion.ABOUT_Z)
                    .add(SpringLink.of("storey " + i, "" + (i - 1), "" + i, shear));
            masses[i - 1] = NodalMass.of("" + i, in.si("floor mass"));
        }
        int count = in.has("modes") ? (int) in.si("modes") : storeys;
        Modes modes = ModalAnalysis.of(builder.build()).with(masses).modes(count);
        SpectrumAnalysis analysis = SpectrumAnalysis.of(modes);
        if (in.has("rule")) {
            analysis = analysis.combinedBy(rule(in.text("rule")));
        }
        if (in.has("missing mass")) {
            in.text("missing mass");
            analysis = analysis.withMissingMass();
        }
        SpectrumResponse response =
                analysis.under(
                        Map.of(
                                Motion.ALONG_X,
                                En1998Spectrum.elastic(
                                        En1998Spectrum.Type.ONE,
                                        En1998Spectrum.Ground.B,
                                        in.si("a_g"),
                                        0.05)));
        Map<String, Quantity> results = new TreeMap<>();
        for (int k = 0; k < count; k++) {
            results.put(
                    "modal base force " + (k + 1),
                    of(response.modalBaseForces(Motion.ALONG_X)[k], "N"));
            results.put(
                    "effective height " + (k + 1),
                    of(modes.effectiveHeight(k, Motion.ALONG_X, Vector.ZERO), "m"));
        }
        results.put("base force", of(response.reaction("0").force().x(), "N"));
        results.put("roof displacement", of(response.movement("5").translation().x(), "m"));
        results.put("force in storey 4", of(response.forces("storey 4", 0).axial(), "N"));
        results.put("missing mass", of(response.missingMass(Motion.ALONG_X), "kg"));
        return results;
    }

    /** Two masses on springs beside each other; each mode moves one of them. */
    private static Map<String, Quantity> twoMasses(Inputs in) {
        double peak = in.si("modal peaks");
        double ratio = in.si("frequency ratio");
        // A bar so soft that it only measures how far the masses move apart.
        double soft = 1e-9;
        FrameModel model =
                FrameModel.builder()
                        .node("1", 0, 0, 0)
                        .node("2", 1, 0, 0)
                        .node("F", 0, 1, 0)
                        .node("G", 1, 1, 0)
                        .fix("F")
                        .fix("G")
                        .spring("1", Motion.ALONG_X, 1)
                        .spring("2", Motion.ALONG_X, ratio * ratio)
                        .hold("1", Motion.ALONG_Y, Motion.ALONG_Z)
                        .hold("2", Motion.ALONG_Y, Motion.ALONG_Z)
                        .add(
                                Bar.of(
                                        "gauge",
                                        "1",
                                        "2",
                                        new Material("m", 1, 1, 0, 0),
                                        Section.slender("s", soft, 1, 1, 1)))
                        .build();
        Modes modes =
                ModalAnalysis.of(model).with(NodalMass.of("1", 1), NodalMass.of("2", 1)).modes(2);
        SpectrumAnalysis analysis =
                SpectrumAnalysis.of(modes)
                        .damped(in.si("damping"))
                        .combinedBy(rule(in.text("rule")));
        // Equal forces, then equal movements.
        SpectrumResponse forces = analysis.under(Map.of(Motion.ALONG_X, period -> peak));
        SpectrumResponse movements =
                analysis.under(
                        Map.of(
                                Motion.ALONG_X,
                                period -> peak * 4 * Math.PI * Math.PI / (period * period)));
        return Map.of(
                "sum", of(forces.baseForce().x(), "N"),
                "difference", of(movements.forces("gauge", 0.5).axial() / soft, "N"));
    }

    private static Map<String, Quantity> directions(Inputs in) {
        double[] stiffness = numbers(in, "stiffness");
        double[] acceleration = numbers(in, "spectral acceleration");
        double[] d = numbers(in, "direction");
        Vector direction = new Vector(d[0], d[1], d[2]).unit();
        Material material = new Material("m", 1, 1, 0, 0);
        // A bar along the direction, so soft that it only measures: its force is that of its
        // stretch.
        double soft = 1e-9;
        FrameModel model =
                FrameModel.builder()
                        .node("M", 0, 0, 0)
                        .node("F", -direction.x(), -direction.y(), -direction.z())
                        .pin("F")
                        .spring("M", Motion.ALONG_X, stiffness[0])
                        .spring("M", Motion.ALONG_Y, stiffness[1])
                        .spring("M", Motion.ALONG_Z, stiffness[2])
                        .add(
                                Bar.of(
                                        "gauge",
                                        "F",
                                        "M",
                                        material,
                                        Section.slender("s", soft, 1, 1, 1)))
                        .build();
        Modes modes = ModalAnalysis.of(model).with(NodalMass.of("M", in.si("mass"))).modes(3);
        DirectionRule rule =
                in.text("rule").equals("30 %")
                        ? DirectionRule.THIRTY_PERCENT
                        : DirectionRule.SUM_OF_SQUARES;
        Map<Motion, DesignSpectrum> spectra = new TreeMap<>();
        Motion[] axes = {Motion.ALONG_X, Motion.ALONG_Y, Motion.ALONG_Z};
        for (int k = 0; k < 3; k++) {
            // Scaled so that the gauge shows the force of the spring along its axis.
            double a = acceleration[k] * stiffness[k] / stiffness[0];
            spectra.put(axes[k], period -> a);
        }
        SpectrumResponse response = SpectrumAnalysis.of(modes).directionsBy(rule).under(spectra);
        return Map.of(
                "thrust along the direction",
                of(response.forces("gauge", 0.5).axial() / soft * stiffness[0], "N"));
    }
}
