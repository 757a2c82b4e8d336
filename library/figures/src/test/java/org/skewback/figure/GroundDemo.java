package org.skewback.figure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.skewback.anchor.AcceptanceTest;
import org.skewback.anchor.Monitoring;
import org.skewback.anchor.StressingRecord;
import org.skewback.rock.BlastVibration;
import org.skewback.sheet.Figure;
import org.skewback.slope.AnchorConvention;
import org.skewback.slope.Orientation;
import org.skewback.slope.ProfileLine;
import org.skewback.slope.SectionAnchor;
import org.skewback.slope.SectionForce;
import org.skewback.slope.SliceAnalysis;
import org.skewback.slope.SliceMethod;
import org.skewback.slope.SliceResult;
import org.skewback.slope.SlipCircle;
import org.skewback.slope.SlopeLayer;
import org.skewback.slope.SlopeSection;
import org.skewback.slope.Soil;
import org.skewback.slope.Surcharge;

/** A slope, joints and readings of the invented Ostrel Gorge crossing, which the tests draw. */
final class GroundDemo {

    static final SlipCircle CIRCLE = new SlipCircle(18, 46, 50);

    private GroundDemo() {}

    static SlopeSection section() {
        ProfileLine ground =
                ProfileLine.through(
                        new double[] {-60, 44},
                        new double[] {-20, 24},
                        new double[] {-14, 12},
                        new double[] {-11, 12},
                        new double[] {-6, 0},
                        new double[] {8, 0},
                        new double[] {40, -46},
                        new double[] {70, -76});
        ProfileLine weathered =
                ProfileLine.through(
                        new double[] {-60, 36},
                        new double[] {-20, 16},
                        new double[] {-6, -4},
                        new double[] {8, -6},
                        new double[] {40, -50},
                        new double[] {70, -80});
        SlopeSection section =
                SlopeSection.layered(
                                ground,
                                List.of(
                                        new SlopeLayer(
                                                Soil.of("weathered schist", 25e3, 60e3, 0.6),
                                                weathered),
                                        new SlopeLayer(
                                                Soil.of("schist", 26.5e3, 300e3, 0.65), ground)))
                        .withWaterTable(lowered(weathered))
                        .withSurcharge(new Surcharge(-50, -40, 120e3))
                        .withForce(new SectionForce(2, 0, -1.7e6, 1.2e6));
        for (double z : new double[] {3, 7, 15, 20}) {
            double x = z < 12 ? -6 - z * 5 / 12 : -14 - (z - 12) / 2;
            section =
                    section.withAnchor(
                            new SectionAnchor(
                                    x, z, 0.26, 450e3, 15 + z / 2, 7, AnchorConvention.ACTIVE));
        }
        return section;
    }

    private static ProfileLine lowered(ProfileLine line) {
        double[][] points = new double[line.size()][];
        for (int i = 0; i < points.length; i++) {
            points[i] = new double[] {line.pointX(i), line.pointY(i) - 3};
        }
        return ProfileLine.through(points);
    }

    static SlopeSectionFigure slope() {
        SliceResult result = SliceAnalysis.of(section(), circle(), 24).factor(SliceMethod.BISHOP);
        return SlopeSectionFigure.of("West slope with its anchors", section())
                .describedBy("Section through a benched cut with four anchors and a slip circle.")
                .naturalGround(
                        ProfileLine.through(
                                new double[] {-60, 44},
                                new double[] {-20, 24},
                                new double[] {3, 7},
                                new double[] {8, 0},
                                new double[] {70, -76}))
                .joints(33, 4)
                .slip("slip circle", circle(), result)
                .plane("plane of set J1", Point.at(-6, 0), Point.at(-30, 15.6), 29, 6);
    }

    static SlipCircle circle() {
        return CIRCLE;
    }

    static Stereonet net(Stereonet.Projection projection) {
        Orientation face = Orientation.ofDegrees(65, 270);
        Orientation a = Orientation.ofDegrees(58, 224);
        Orientation b = Orientation.ofDegrees(54, 318);
        double friction = StrictMath.toRadians(30);
        List<Orientation> joints = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            joints.add(
                    Orientation.ofDegrees(
                            58 + 3 * StrictMath.sin(i), 224 + 6 * StrictMath.cos(2 * i)));
        }
        return Stereonet.titled("Two joints and the face", projection)
                .describedBy("Two great circles meet in a line that comes out in the face.")
                .face("face 65/270", face)
                .plane("J4 58/224", a)
                .plane("J5 54/318", b)
                .poles("poles of J4", joints)
                .frictionCircle("friction 30°", friction)
                .slidingZone(face, friction)
                .line(
                        "line of intersection",
                        StrictMath.toRadians(275),
                        StrictMath.toRadians(45.2));
    }

    static StressingRecord stressing(double creep) {
        List<StressingRecord.Reading> readings = new ArrayList<>();
        double[] loads = {150, 450, 850, 450, 150, 450, 850, 1250, 1690};
        double[] times = {0, 1, 1, 1, 1, 1, 1, 1, 1};
        for (int i = 0; i < loads.length; i++) {
            double rest = i > 3 ? 2 : 0;
            readings.add(
                    new StressingRecord.Reading(
                            1000 * loads[i],
                            60 * times[i],
                            ((loads[i] - 150) * 22 / 263.25 + rest) / 1000));
        }
        double top = 1540 * 22 / 263.25 + 5;
        for (double minutes : new double[] {2, 5, 10, 20, 60}) {
            readings.add(
                    new StressingRecord.Reading(
                            1.69e6,
                            60 * minutes,
                            (top + creep * StrictMath.log10(minutes)) / 1000));
        }
        readings.add(new StressingRecord.Reading(150e3, 60, 5e-3));
        return new StressingRecord(readings);
    }

    static AcceptanceTest.Anchor anchor() {
        return new AcceptanceTest.Anchor(263.25e6, 22, 1, 7, 1.6875e6);
    }

    static Figure stressingChart() {
        return GroundCharts.stressing("Stressing of anchor W-14", stressing(0.5), anchor());
    }

    static Figure creepChart() {
        return GroundCharts.creep(
                "Creep at the proof load",
                List.of("W-14", "W-22"),
                List.of(stressing(0.5), stressing(1.6)));
    }

    static Figure monitoringChart() {
        List<Monitoring.Reading> falling = new ArrayList<>();
        List<Monitoring.Reading> rising = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            LocalDate day = LocalDate.of(2022, 10, 1).plusDays(91L * i);
            falling.add(new Monitoring.Reading(day, 1.35e6 - 2500 * i));
            rising.add(new Monitoring.Reading(day, 1.345e6 + 6000 * i));
        }
        return GroundCharts.monitoring(
                "Load cells",
                "anchor force",
                "kN",
                1000,
                List.of(new Monitoring("W05", falling), new Monitoring("W27", rising)),
                new Monitoring.Alarm(1.08e6, 1.2e6, 1.42e6, 1.507e6));
    }

    static List<BlastVibration.Shot> shots() {
        List<BlastVibration.Shot> shots = new ArrayList<>();
        for (int i = 0; i < 18; i++) {
            double scaled = 7 * StrictMath.pow(1.18, i);
            double speed = 0.62 * StrictMath.pow(scaled, -1.48);
            shots.add(
                    new BlastVibration.Shot(
                            scaled * 1.5, 2.25, speed * (1 + 0.3 * StrictMath.sin(2.0 * i))));
        }
        return shots;
    }

    static Figure vibrationChart() {
        return GroundCharts.vibration(
                "Vibration over scaled distance", shots(), BlastVibration.fit(shots()), 0.95);
    }
}
