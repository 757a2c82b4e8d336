package org.skewback.rock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.rock.Refused.refused;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.skewback.data.CsvTable;
import org.skewback.quantity.Quantity;

/** Surveys are read or refused by row; cuts and volumes obey their laws. */
class SurveyAndCutTest {

    private static final String SURVEY =
            """
            station [m],offset [m],level [m]
            0,0,760
            0,10,768
            0,25,781
            20,0,761
            20,12,770
            20,25,783
            """;

    private static final String HOLES =
            """
            hole,from [m],to [m],rock,RQD [%]
            B1,0,3.2,scree,0
            B1,3.2,14,schist,45
            B2,0,20,schist,60
            """;

    private static void refusedSurvey(String part, String good, String bad) {
        refused(
                part,
                () ->
                        SurveyTable.crossSections(
                                CsvTable.parse("survey", SURVEY.replace(good, bad))));
    }

    private static void refusedHoles(String part, String good, String bad) {
        refused(
                part,
                () -> SurveyTable.boreholes(CsvTable.parse("holes", HOLES.replace(good, bad))));
    }

    @Test
    void aGoodSurveyIsRead() {
        List<SurveyTable.CrossSection> sections =
                SurveyTable.crossSections(CsvTable.parse("survey", SURVEY));
        assertEquals(2, sections.size());
        assertEquals(764, sections.get(0).ground().level(5), 1e-12);
        assertEquals(
                List.of(3.2, 14.0),
                SurveyTable.boreholes(CsvTable.parse("holes", HOLES)).get("B1").stream()
                        .map(SurveyTable.Run::to)
                        .toList());
        assertEquals(StrictMath.atan(0.8), sections.get(0).ground().slopes().get(0), 1e-12);
    }

    @Test
    void aBadSurveyIsRefusedByRow() {
        refusedSurvey("survey, line 3: column offset", "0,10,768", "0,-1,768");
        refusedSurvey("ground line would cross itself", "0,25,781", "0,9,781");
        refusedSurvey("another point than the one in line 2", "0,10,768", "0,0,760");
        refusedSurvey("survey, line 3: column level", "0,10,768", "0,0.001,768");
        refusedSurvey("rows of a section stand together", "20,25,783", "0,30,783");
        refusedSurvey("at least two points", "20,12,770\n20,25,783\n", "");
        refusedSurvey("survey, line 4: column level is \"abc\"", "781", "abc");
    }

    @Test
    void aBadBoreholeIsRefusedByRow() {
        refusedHoles("there is a gap", "B1,3.2,14", "B1,3.6,14");
        refusedHoles("runs overlap", "B1,3.2,14", "B1,3,14");
        refusedHoles("holes, line 2: column to", "B1,0,3.2", "B1,0,0");
        refusedHoles("holes, line 3: column RQD", "schist,45", "schist,145");
        refusedHoles("holes, line 4: column from", "B2,0,20", "B2,1,20");
        refusedHoles("the name of a borehole", "B2,0", ",0");
        refusedHoles("column rock is \"\"; allowed is what the rock is called", "schist", "");
        refusedHoles("allowed is 0.0 m, the top of the hole: there is a gap", "B2,0,20", "B2,1,20");
        refusedHoles("allowed is more than where the run begins, 0.", "B1,0,3.2", "B1,0,0");
        refused(
                "holes holds no run of a borehole",
                () ->
                        SurveyTable.boreholes(
                                CsvTable.parse("holes", "hole,from [m],to [m],rock,RQD [%]\n")));
    }

    @Property
    void cutLessFillIsTheAreaBetweenTheLines(
            @ForAll @DoubleRange(min = -5, max = 5) double a,
            @ForAll @DoubleRange(min = -5, max = 5) double b,
            @ForAll @DoubleRange(min = -5, max = 5) double c) {
        SectionLine ground = SectionLine.of(List.of(0.0, 4.0, 10.0), List.of(a, b, c));
        SectionLine design = SectionLine.of(List.of(0.0, 10.0), List.of(0.0, 0.0));
        Earthwork.Areas areas = Earthwork.between(ground, design);
        assertEquals(2 * (a + b) + 3 * (b + c), areas.cut() - areas.fill(), 1e-9);
        assertTrue(areas.cut() >= 0 && areas.fill() >= 0);
        Earthwork.Areas turned = Earthwork.between(design, ground);
        assertEquals(areas.cut(), turned.fill(), 1e-9);
    }

    @Property
    void theEndAreaRuleIsNeverBelowThePrismoidalWhereACutTapers(
            @ForAll @DoubleRange(min = 0, max = 20) double first,
            @ForAll @DoubleRange(min = 0, max = 20) double second) {
        Quantity base = Quantity.of(10, "m");
        Quantity side = Quantity.of(0.25);
        Quantity length = Quantity.of(20, "m");
        Quantity a = Earthwork.trapezoid(base, Quantity.of(first, "m"), side);
        Quantity m = Earthwork.trapezoid(base, Quantity.of((first + second) / 2, "m"), side);
        Quantity b = Earthwork.trapezoid(base, Quantity.of(second, "m"), side);
        double difference =
                Earthwork.byEndAreas(a, b, length)
                        .minus(Earthwork.prismoidal(a, m, b, length))
                        .in("m³");
        double gap = second - first;
        assertEquals(20 * 0.25 * gap * gap / 6, difference, 1e-8);
    }

    @Property
    void aCutMeetsTheGroundAndItsMirrorImageToo(
            @ForAll @DoubleRange(min = 10, max = 50) double ground,
            @ForAll @DoubleRange(min = 1, max = 8) double depth) {
        double rise = StrictMath.tan(StrictMath.toRadians(ground));
        SectionLine right = SectionLine.of(List.of(-5.0, 300.0), List.of(-5 * rise, 300 * rise));
        SectionLine left = SectionLine.of(List.of(-300.0, 5.0), List.of(300 * rise, -5 * rise));
        BenchedCut rule = new BenchedCut(6, 1, StrictMath.toRadians(75), 0.02);
        SectionLine cut = rule.into(right, 0, -depth, true);
        SectionLine mirrored = rule.into(left, 0, -depth, false);
        assertEquals(right.level(cut.right()), cut.level(cut.right()), 1e-9);
        assertEquals(cut.right(), -mirrored.left(), 1e-9);
        assertEquals(
                Earthwork.between(right, cut).cut(), Earthwork.between(left, mirrored).cut(), 1e-8);
    }

    @Test
    void badCutsAreRefusedByName() {
        SectionLine ground = SectionLine.of(List.of(0.0, 20.0), List.of(0.0, 16.0));
        BenchedCut rule = new BenchedCut(4, 3, StrictMath.toRadians(45), 0);
        refused("level of the toe", () -> rule.into(ground, 5, 10, true));
        refused("surveyed ground", () -> rule.into(ground, 5, -3, true));
        refused("inclination of the face", () -> new BenchedCut(4, 3, 2, 0));
        refused(
                "no distances across in common",
                () ->
                        Earthwork.between(
                                ground, SectionLine.of(List.of(30.0, 40.0), List.of(0.0, 0.0))));
        refused(
                "station 2 is 0.0 m",
                () ->
                        Earthwork.cut(
                                List.of(
                                        new Earthwork.Station(0, ground, ground),
                                        new Earthwork.Station(0, ground, ground))));
    }
}
