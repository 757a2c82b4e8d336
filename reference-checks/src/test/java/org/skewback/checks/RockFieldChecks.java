package org.skewback.checks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.data.CsvTable;
import org.skewback.quantity.Quantity;
import org.skewback.rock.BlastVibration;
import org.skewback.rock.CommonPractice;
import org.skewback.rock.GroundSurface;
import org.skewback.rock.Grout;
import org.skewback.rock.LugeonTest;
import org.skewback.rock.SectionLine;
import org.skewback.rock.SlopeMassRating;
import org.skewback.rock.SurveyTable;
import org.skewback.rock.VibrationLimit;

/** Checks of tables from the field and of the limits that rock is judged by. */
public final class RockFieldChecks implements Subject {

    /** Makes the subject. */
    public RockFieldChecks() {}

    @Override
    public String topic() {
        return "rock";
    }

    @Override
    public String table() {
        return "rock-field";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("SurveyTable.crossSections", RockFieldChecks::sections);
        routines.put("SurveyTable.surface", RockFieldChecks::surface);
        routines.put("SurveyTable.boreholes", RockFieldChecks::boreholes);
        routines.put("LugeonTest.of", RockFieldChecks::lugeon);
        routines.put("Grout.accepted", RockFieldChecks::accepted);
        routines.put("BlastVibration.shots", RockFieldChecks::shots);
        routines.put("VibrationLimit.check", RockFieldChecks::monitored);
        routines.put("SlopeMassRating.slopeClass", RockFieldChecks::slopeClass);
        routines.put("CommonPractice", RockFieldChecks::practice);
        return routines;
    }

    private static Quantity yes(boolean found) {
        return Quantity.of(found ? 1 : 0);
    }

    /** The last of the sections read, and its level at an offset. */
    private static Map<String, Quantity> sections(Inputs in) {
        List<SurveyTable.CrossSection> sections =
                SurveyTable.crossSections(Tables.of(in, "station", "offset", "level"));
        SurveyTable.CrossSection last = sections.get(sections.size() - 1);
        SectionLine ground = last.ground();
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("station", Quantity.of(last.station(), "m"));
        results.put("level", Quantity.of(ground.level(in.si("at")), "m"));
        results.put("left", Quantity.of(ground.left(), "m"));
        results.put("right", Quantity.of(ground.right(), "m"));
        results.put("first level", Quantity.of(ground.levels().get(0), "m"));
        results.put("first slope", Quantity.of(ground.slopes().get(0), "rad"));
        return results;
    }

    private static Map<String, Quantity> surface(Inputs in) {
        GroundSurface surface = SurveyTable.surface(Tables.of(in, "x", "y", "level"));
        List<Quantity> at = in.quantities("at");
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("level", Quantity.of(surface.level(at.get(0).si(), at.get(1).si()), "m"));
        results.put("plan area", Quantity.of(surface.planArea(), "m²"));
        results.put(
                "area of triangles",
                Quantity.of(
                        surface.triangles().stream()
                                .mapToDouble(GroundSurface.Triangle::planArea)
                                .sum(),
                        "m²"));
        if (in.has("longest")) {
            results.put(
                    "trimmed area",
                    Quantity.of(surface.trimmed(in.si("longest")).planArea(), "m²"));
        }
        return results;
    }

    /** Holes of one rock, named by number. */
    private static Map<String, Quantity> boreholes(Inputs in) {
        List<Quantity> names = in.quantities("hole");
        List<Quantity> from = in.quantities("from");
        List<Quantity> to = in.quantities("to");
        List<Quantity> quality = in.quantities("RQD");
        StringBuilder text = new StringBuilder("hole,from [m],to [m],rock,RQD [%]\n");
        for (int i = 0; i < names.size(); i++) {
            text.append((int) names.get(i).si())
                    .append(',')
                    .append(from.get(i).in("m"))
                    .append(',')
                    .append(to.get(i).in("m"))
                    .append(",gneiss,")
                    .append(quality.get(i).in("%"))
                    .append('\n');
        }
        Map<String, List<SurveyTable.Run>> holes =
                SurveyTable.boreholes(CsvTable.parse("boreholes", text.toString()));
        List<SurveyTable.Run> first = holes.values().iterator().next();
        SurveyTable.Run last = first.get(first.size() - 1);
        double sum = 0;
        for (SurveyTable.Run run : first) {
            sum += run.quality() * (run.to() - run.from());
        }
        return Map.of(
                "depth of the first", Quantity.of(last.to(), "m"),
                "mean RQD of the first", Quantity.of(sum / last.to()),
                "last begins", Quantity.of(last.from(), "m"),
                "holes", Quantity.of(holes.size()));
    }

    private static LugeonTest test(Inputs in) {
        return LugeonTest.of(Tables.of(in, "pressure", "flow"), in.si("length"));
    }

    private static Map<String, Quantity> lugeon(Inputs in) {
        LugeonTest test = test(in);
        return Map.of(
                "representative", Quantity.of(test.representative()),
                "length", Quantity.of(test.length(), "m"));
    }

    private static Map<String, Quantity> accepted(Inputs in) {
        return Map.of("accepted", yes(Grout.accepted(test(in), in.si("wanted"))));
    }

    private static Map<String, Quantity> shots(Inputs in) {
        List<BlastVibration.Shot> shots =
                BlastVibration.shots(Tables.of(in, "distance", "charge", "speed"));
        BlastVibration line = BlastVibration.fit(shots);
        return Map.of(
                "constant", Quantity.of(line.constant(), "m/s"),
                "exponent", Quantity.of(line.exponent()),
                "mean", Quantity.of(line.mean(in.si("at"), in.si("with")), "m/s"));
    }

    private static Map<String, Quantity> monitored(Inputs in) {
        List<VibrationLimit.Checked> checked =
                VibrationLimit.check(Tables.of(in, "speed", "frequency"), in.si("project"));
        Map<String, Quantity> results = new LinkedHashMap<>();
        for (int i = 0; i < checked.size(); i++) {
            results.put("speed " + (i + 1), Quantity.of(checked.get(i).speed(), "m/s"));
            results.put("limit " + (i + 1), Quantity.of(checked.get(i).limit(), "m/s"));
            results.put("kept " + (i + 1), yes(checked.get(i).kept()));
        }
        return results;
    }

    private static Map<String, Quantity> slopeClass(Inputs in) {
        return Map.of("class", Quantity.of(SlopeMassRating.slopeClass(in.si("rating"))));
    }

    private static Map<String, Quantity> practice(Inputs in) {
        CommonPractice found;
        if (in.has("natural side")) {
            found =
                    CommonPractice.foundingOnSide(
                            in.si("natural side"), in.text("cut").equals("yes"));
        } else if (in.has("GSI")) {
            boolean treated = in.text("treated").equals("yes");
            found = CommonPractice.weakRock(in.si("GSI"), treated, treated, treated);
        } else if (in.has("tendon")) {
            found = CommonPractice.pressedBlock(in.si("tendon"), in.si("pressing"));
        } else {
            found = CommonPractice.perimeterHoles(in.si("spacing"), in.si("diameter"));
        }
        return Map.of("usual", yes(found.usual()));
    }
}
