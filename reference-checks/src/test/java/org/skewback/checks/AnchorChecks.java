package org.skewback.checks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.anchor.AcceptanceTest;
import org.skewback.anchor.AnchorBlock;
import org.skewback.anchor.AnchorForces;
import org.skewback.anchor.AnchorResistance;
import org.skewback.anchor.BondLength;
import org.skewback.anchor.Monitoring;
import org.skewback.anchor.RockCone;
import org.skewback.anchor.StressingRecord;
import org.skewback.anchor.Tendon;
import org.skewback.quantity.Quantity;

/** Checks of {@code org.skewback.anchor}. */
public final class AnchorChecks implements Subject {

    /** Makes the subject. */
    public AnchorChecks() {}

    @Override
    public String topic() {
        return "anchor";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("Tendon", AnchorChecks::tendon);
        routines.put("Tendon.relaxation", AnchorChecks::relaxation);
        routines.put("BondLength", AnchorChecks::bond);
        routines.put("RockCone", AnchorChecks::cone);
        routines.put("AnchorForces", AnchorChecks::forces);
        routines.put("AnchorForces.creepRate", AnchorChecks::creep);
        routines.put("AnchorResistance", AnchorChecks::resistance);
        routines.put("AnchorBlock", AnchorChecks::block);
        routines.put("AcceptanceTest", AnchorChecks::acceptance);
        routines.put("Monitoring", AnchorChecks::monitoring);
        routines.put("Monitoring.Alarm", AnchorChecks::alarm);
        routines.put("StressingRecord.of", AnchorChecks::stressing);
        return routines;
    }

    private static Tendon tendonOf(Inputs in) {
        return new Tendon(
                (int) in.si("strands"),
                in.quantity("area"),
                in.has("strength") ? in.quantity("strength") : Quantity.of(1860, "MPa"),
                in.has("modulus") ? in.quantity("modulus") : Quantity.of(195, "GPa"));
    }

    private static Map<String, Quantity> tendon(Inputs in) {
        Tendon tendon = tendonOf(in);
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("strength", tendon.characteristicForce());
        if (in.has("part")) {
            results.put("limit", tendon.limit(in.quantity("part")));
        }
        if (in.has("yield")) {
            results.put("proof", tendon.greatestProofLoad(in.quantity("yield")));
        }
        if (in.has("to")) {
            results.put(
                    "elongation",
                    tendon.elongation(
                            in.quantity("from"), in.quantity("to"), in.quantity("length")));
        }
        if (in.has("draw-in")) {
            results.put("loss", tendon.lossByDrawIn(in.quantity("draw-in"), in.quantity("length")));
        }
        if (in.has("elastic")) {
            results.put(
                    "apparent length",
                    tendon.apparentFreeLength(in.quantity("elastic"), in.quantity("range")));
        }
        return results;
    }

    private static Map<String, Quantity> relaxation(Inputs in) {
        return Map.of(
                "loss",
                Tendon.relaxation(
                        in.quantity("ratio"), in.quantity("loss at 1000 h"), in.quantity("time")));
    }

    private static Map<String, Quantity> bond(Inputs in) {
        Quantity force = in.quantity("force");
        Quantity safety = in.quantity("safety");
        if (in.has("transfer")) {
            return Map.of("length", BondLength.byTransfer(force, safety, in.quantity("transfer")));
        }
        if (in.has("strands")) {
            return Map.of(
                    "length",
                    BondLength.tendon(
                            force,
                            safety,
                            (int) in.si("strands"),
                            in.quantity("diameter"),
                            in.quantity("bond")));
        }
        if (in.has("rock")) {
            BondLength.Rock rock = BondLength.Rock.valueOf(in.text("rock"));
            Quantity diameter = in.quantity("diameter");
            return Map.of(
                    "length", BondLength.rock(force, safety, diameter, rock.low()),
                    "shortest", BondLength.rock(force, safety, diameter, rock.high()));
        }
        Quantity bond =
                in.has("rock strength")
                        ? BondLength.byStrength(in.quantity("rock strength"))
                        : in.quantity("bond");
        Quantity length = BondLength.rock(force, safety, in.quantity("diameter"), bond);
        return Map.of(
                "length", length, "force", BondLength.force(length, in.quantity("diameter"), bond));
    }

    private static Map<String, Quantity> cone(Inputs in) {
        Quantity angle = in.quantity("half angle");
        Quantity weight = in.quantity("weight");
        return in.has("depth")
                ? Map.of("weight", RockCone.weight(in.quantity("depth"), angle, weight))
                : Map.of(
                        "depth",
                        RockCone.depth(in.quantity("force"), in.quantity("safety"), angle, weight));
    }

    private static Map<String, Quantity> forces(Inputs in) {
        Map<String, Quantity> results = new LinkedHashMap<>();
        if (in.has("characteristic")) {
            Quantity characteristic = in.quantity("characteristic");
            results.put("greatest lock-off", AnchorForces.greatestLockOff(characteristic));
            results.put(
                    "design",
                    AnchorForces.designResistance(
                            characteristic,
                            in.has("partial") ? in.quantity("partial") : Quantity.of(1.1)));
        }
        if (in.has("lock-off")) {
            Quantity lockOff = in.quantity("lock-off");
            results.put("least proof", AnchorForces.leastProofLoad(lockOff));
            if (in.has("loss")) {
                results.put("jack", AnchorForces.jackingForce(lockOff, in.quantity("loss")));
            }
            if (in.has("relaxation")) {
                results.put(
                        "long term",
                        AnchorForces.longTerm(
                                lockOff, in.quantity("relaxation"), in.quantity("creep")));
            }
            if (in.has("grid")) {
                results.put(
                        "grid pressure",
                        AnchorForces.gridPressure(
                                lockOff,
                                in.quantities("grid").get(0),
                                in.quantities("grid").get(1)));
            }
            if (in.has("lost")) {
                results.put(
                        "with lost",
                        AnchorForces.withLost(
                                lockOff, (int) in.si("installed"), (int) in.si("lost")));
            }
        }
        return results;
    }

    private static Map<String, Quantity> creep(Inputs in) {
        List<Quantity> at = in.quantities("displacements");
        List<Quantity> times = in.quantities("times");
        return Map.of(
                "rate", AnchorForces.creepRate(at.get(0), at.get(1), times.get(0), times.get(1)));
    }

    private static Map<String, Quantity> resistance(Inputs in) {
        List<AnchorResistance.Resistance> all = new ArrayList<>();
        for (Quantity force : in.quantities("resistances")) {
            all.add(new AnchorResistance.Resistance("way " + all.size(), force));
        }
        AnchorResistance resistance = new AnchorResistance(all);
        return Map.of(
                "least",
                resistance.least(),
                "governing",
                Quantity.of(Double.parseDouble(resistance.governing().substring("way ".length()))));
    }

    private static Map<String, Quantity> block(Inputs in) {
        Quantity force = in.quantity("force");
        Map<String, Quantity> results = new LinkedHashMap<>();
        if (in.has("hole")) {
            results.put(
                    "plate",
                    AnchorBlock.plateBearing(force, in.quantity("plate"), in.quantity("hole")));
        }
        if (in.has("width")) {
            Quantity width = in.quantity("width");
            Quantity pressure = AnchorBlock.rockBearing(force, width, width);
            results.put("rock", pressure);
            if (in.has("depth")) {
                Quantity plate = in.quantity("plate");
                results.put("bending", AnchorBlock.bending(pressure, width, plate));
                results.put(
                        "punching",
                        AnchorBlock.punching(force, pressure, plate, in.quantity("depth")));
            }
        }
        return results;
    }

    /** Readings by days after the first. */
    private static Map<String, Quantity> monitoring(Inputs in) {
        List<Quantity> days = in.quantities("dates");
        List<Quantity> values = in.quantities("readings");
        List<Monitoring.Reading> readings = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            readings.add(
                    new Monitoring.Reading(
                            LocalDate.of(2021, 1, 1).plusDays(Math.round(days.get(i).in("d"))),
                            values.get(i).si()));
        }
        Monitoring monitoring = new Monitoring("load cell", readings);
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("trend", Quantity.of(monitoring.trend(), "N"));
        if (in.has("level")) {
            // Days from the first reading; -1 where the trend never gets there.
            results.put(
                    "reaches after",
                    Quantity.of(
                            monitoring
                                    .reaches(in.si("level"))
                                    .map(
                                            day ->
                                                    day.toEpochDay()
                                                            - readings.get(0).date().toEpochDay())
                                    .orElse(-1L),
                            "d"));
        }
        return results;
    }

    /** A reading against levels: 0 green, 1 amber, 2 red. */
    private static Map<String, Quantity> alarm(Inputs in) {
        List<Quantity> levels = in.quantities("levels");
        Monitoring.Alarm alarm =
                new Monitoring.Alarm(
                        levels.get(0).si(),
                        levels.get(1).si(),
                        levels.get(2).si(),
                        levels.get(3).si());
        int level =
                switch (alarm.of(in.si("reading"))) {
                    case GREEN -> 0;
                    case AMBER -> 1;
                    case RED -> 2;
                };
        return Map.of("level", Quantity.of(level));
    }

    private static Map<String, Quantity> stressing(Inputs in) {
        StressingRecord record = StressingRecord.of(Tables.of(in, "load", "time", "displacement"));
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("alignment load", Quantity.of(record.alignmentLoad(), "N"));
        results.put("test load", Quantity.of(record.testLoad(), "N"));
        results.put("residual", Quantity.of(record.residual(), "m"));
        results.put("elastic", Quantity.of(record.elastic(), "m"));
        results.put("held", Quantity.of(record.heldDisplacement(in.si("at")), "m"));
        results.put("readings in hold", Quantity.of(record.hold().size()));
        return results;
    }

    /** A record of alignment, test load, a hold and going back; findings by number. */
    private static Map<String, Quantity> acceptance(Inputs in) {
        List<Quantity> loads = in.quantities("loads");
        List<Quantity> times = in.quantities("times");
        List<Quantity> at = in.quantities("displacements");
        List<StressingRecord.Reading> readings = new ArrayList<>();
        for (int i = 0; i < loads.size(); i++) {
            readings.add(
                    new StressingRecord.Reading(
                            loads.get(i).si(), times.get(i).si(), at.get(i).si()));
        }
        AcceptanceTest test =
                AcceptanceTest.of(
                        new StressingRecord(readings),
                        new AcceptanceTest.Anchor(
                                in.si("stiffness"),
                                in.si("free length"),
                                in.si("outside"),
                                in.si("bond length"),
                                in.si("proof load")),
                        AcceptanceTest.Rules.valueOf(in.text("rules")));
        Map<String, Quantity> results = new LinkedHashMap<>();
        for (int i = 0; i < test.findings().size(); i++) {
            AcceptanceTest.Finding finding = test.findings().get(i);
            results.put("value " + (i + 1), Quantity.of(finding.value(), finding.unit()));
            if (Double.isFinite(finding.least())) {
                results.put("least " + (i + 1), Quantity.of(finding.least(), finding.unit()));
            }
            if (Double.isFinite(finding.greatest())) {
                results.put("greatest " + (i + 1), Quantity.of(finding.greatest(), finding.unit()));
            }
        }
        results.put("accepted", Quantity.of(test.accepted() ? 1 : 0));
        return results;
    }
}
