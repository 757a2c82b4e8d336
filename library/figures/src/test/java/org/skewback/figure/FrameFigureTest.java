package org.skewback.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.figure.FigureTest.refused;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.BucklingAnalysis;
import org.skewback.frame.Combination;
import org.skewback.frame.Envelope;
import org.skewback.frame.ForceComponent;
import org.skewback.frame.FrameModel;
import org.skewback.frame.FrameModelBuilder;
import org.skewback.frame.FrameSolution;
import org.skewback.frame.InfluenceLine;
import org.skewback.frame.Lane;
import org.skewback.frame.LargeDisplacementAnalysis;
import org.skewback.frame.LargeState;
import org.skewback.frame.LineLoad;
import org.skewback.frame.LinearAnalysis;
import org.skewback.frame.LoadAxes;
import org.skewback.frame.LoadCase;
import org.skewback.frame.LoadTrain;
import org.skewback.frame.Material;
import org.skewback.frame.ModalAnalysis;
import org.skewback.frame.Motion;
import org.skewback.frame.MovingLoad;
import org.skewback.frame.NodalLoad;
import org.skewback.frame.Response;
import org.skewback.frame.Stage;
import org.skewback.frame.StageAnalysis;
import org.skewback.frame.StageResult;
import org.skewback.frame.Support;
import org.skewback.frame.Vector;
import org.skewback.quantity.Quantity;
import org.skewback.steel.Box;
import org.skewback.steel.Section;

/** Figures of frames: what is drawn can be measured, text stands apart, and too much is refused. */
class FrameFigureTest {

    private static final FrameModel BRIDGE = FrameDemo.bridge();
    private static final List<Picture> PICTURES = new ArrayList<>();
    private static final Section BOX = new Box(0.4, 0.8, 0.02, 0.02).section("box");

    @BeforeAll
    static void draw() {
        List<FrameSolution> solved =
                LinearAnalysis.of(BRIDGE)
                        .solve(List.of(FrameDemo.permanent(), FrameDemo.halfTrain()));
        PICTURES.addAll(
                List.of(
                        FrameDrawing.of("Bridge", BRIDGE)
                                .horizontalDimension("span", "r0.0", "r0.14")
                                .horizontalDimension("panel", "d0.0", "d0.1")
                                .verticalDimension("rise", "r0.14", "r0.7")
                                .picture(),
                        FrameDrawing.of("In space", BRIDGE).seen(FrameView.axonometric()).picture(),
                        FrameDrawing.of("Plan", BRIDGE).seen(FrameView.plan()).picture(),
                        FrameDrawing.of("Section", BRIDGE).seen(FrameView.section()).picture(),
                        FrameDrawing.of("Names", BRIDGE)
                                .only(FrameDemo.side(0))
                                .nodeNames()
                                .memberNames()
                                .picture(),
                        DeflectedShape.of("Deflected", solved.get(0), solved.get(1)).picture(),
                        DeflectedShape.of("Deflected in space", solved.get(1))
                                .seen(FrameView.axonometric())
                                .picture(),
                        ForceDiagram.of("Moments", ForceComponent.MOMENT_Y, solved.get(1))
                                .only(FrameDemo.side(0))
                                .picture(),
                        ForceDiagram.of("Thrust", ForceComponent.AXIAL, solved.get(0)).picture(),
                        ForceDiagram.of("Shear", ForceComponent.SHEAR_Z, solved.get(1))
                                .only(FrameDemo.side(0))
                                .picture(),
                        ForceDiagram.of("Torque", ForceComponent.TORQUE, solved.get(1))
                                .seen(FrameView.axonometric())
                                .picture(),
                        ForceDiagram.of("Across", ForceComponent.MOMENT_Z, solved.get(1))
                                .seen(FrameView.plan())
                                .picture(),
                        ForceDiagram.of(
                                        "Two cases",
                                        ForceComponent.MOMENT_Y,
                                        solved.get(0),
                                        solved.get(1))
                                .only(FrameDemo.side(0))
                                .picture(),
                        ForceDiagram.of(
                                        "Envelope",
                                        BRIDGE,
                                        ForceComponent.MOMENT_Y,
                                        envelope(solved))
                                .only(FrameDemo.side(0))
                                .picture(),
                        ShapeStrip.of("Modes", BRIDGE, ModalAnalysis.of(BRIDGE).divided(2).modes(4))
                                .picture(),
                        ShapeStrip.of(
                                        "Buckling",
                                        BRIDGE,
                                        BucklingAnalysis.of(BRIDGE)
                                                .divided(2)
                                                .factors(FrameDemo.permanent(), 2))
                                .picture(),
                        stages().picture()));
        movingLoads(LinearAnalysis.of(BRIDGE));
    }

    private static Envelope envelope(List<FrameSolution> solved) {
        String permanent = solved.get(0).name();
        return Envelope.of(
                solved,
                List.of(
                        new Combination("alone", Map.of(permanent, 1.0)),
                        new Combination(
                                "with train", Map.of(permanent, 1.0, solved.get(1).name(), 1.0))),
                9);
    }

    private static void movingLoads(LinearAnalysis analysis) {
        List<String> deck = new ArrayList<>();
        for (int i = 1; i <= FrameDemo.PANELS; i++) {
            deck.add("girder 0." + i);
        }
        Lane lane = Lane.along("the girder", BRIDGE, deck, Vector.ZERO);
        InfluenceLine line =
                InfluenceLine.of(
                        analysis, Response.force("rib 0.4", 0, ForceComponent.MOMENT_Y), lane);
        LoadTrain train = LoadTrain.of("four axles", 250e3, 0, 1.6, 3.2, 4.8);
        PICTURES.add(FrameCharts.influenceChart("Influence", "M_y", "kN·m", line).picture());
        PICTURES.add(FrameCharts.passageChart("Passage", "M_y", "kN·m", line, train).picture());
        Envelope moved = new MovingLoad(analysis, train, lane, 8).envelope(deck, 5);
        PICTURES.add(
                FrameCharts.envelopeChart("Moved", BRIDGE, deck, ForceComponent.MOMENT_Y, moved)
                        .picture());
    }

    private static StageStrip stages() {
        FrameModel model = FrameDemo.halves();
        List<Stage> stages = FrameDemo.raising();
        List<StageResult> results = StageAnalysis.of(model).run(stages);
        return StageStrip.of("Raising", model, stages, results)
                .number(
                        "top of the west tower, along",
                        result ->
                                Quantity.of(
                                        1000
                                                * result.solution()
                                                        .movement("top west")
                                                        .translation()
                                                        .x(),
                                        "mm"));
    }

    static Stream<Picture> pictures() {
        return PICTURES.stream();
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void textStandsApartOnAnA4Page(Picture picture) throws Exception {
        FigureTest.textStandsApart(picture);
        FigureTest.fitsThePage(picture);
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void nothingLeavesThePage(Picture picture) {
        double[] b = Geometry.bounds(picture.marks());
        assertTrue(b[0] >= 0 && b[1] >= 0, Arrays.toString(b));
        assertTrue(
                b[2] <= picture.width() + 1e-9 && b[3] <= picture.height() + 1e-9,
                Arrays.toString(b) + " on " + picture.width() + " by " + picture.height());
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void isWellFormedNamedAndSmall(Picture picture) throws Exception {
        String text = new DrawnFigure(picture).svg();
        Svg svg = new Svg(text);
        assertEquals(picture.title(), svg.all("title").get(0).getTextContent());
        assertTrue(svg.all("desc").get(0).getTextContent().length() > 20);
        assertTrue(text.length() < 120_000, "takes " + text.length() + " bytes");
    }

    @Test
    void drawingTwiceGivesTheSameBytes() {
        assertEquals(stages().figure().svg(), stages().figure().svg());
        FrameSolution solved = LinearAnalysis.of(BRIDGE).solve(FrameDemo.halfTrain());
        assertEquals(
                ForceDiagram.of("M", ForceComponent.MOMENT_Y, solved).figure().svg(),
                ForceDiagram.of("M", ForceComponent.MOMENT_Y, solved).figure().svg());
    }

    /** The largest moment of a beam under a line load is q L²/8 at midspan, with tension below. */
    @Test
    void momentOfABeamHangsBelowItsMiddle() throws Exception {
        FrameSolution solved = beamUnder(-20e3);
        Svg svg =
                new Svg(
                        ForceDiagram.of("M", ForceComponent.MOMENT_Y, solved)
                                .size(120, 100)
                                .figure()
                                .svg());
        List<double[]> outline = strokes(svg, "0.9", Ink.BLUE.hex()).get(0);
        double axis = outline.get(0)[1];
        double[] deepest = outline.stream().reduce((a, b) -> b[1] > a[1] ? b : a).orElseThrow();
        double left = outline.get(0)[0];
        double right = outline.get(outline.size() - 1)[0];
        assertEquals((left + right) / 2, deepest[0], 0.02);
        assertTrue(deepest[1] > axis + 10, "below the axis on the page");
        // 20 kN/m on 12 m: 360 kN·m; the bar beside the key says how long that is.
        assertTrue(svg.texts().contains("360\u00A0kN·m"));
        assertTrue(svg.texts().contains("My 200\u00A0kN·m"));
        double bar =
                strokes(svg, "0.7", Ink.BLACK.hex()).stream()
                        .filter(line -> line.size() == 2)
                        .filter(line -> line.get(0)[1] == line.get(1)[1])
                        .mapToDouble(line -> line.get(1)[0] - line.get(0)[0])
                        .max()
                        .orElseThrow();
        assertEquals(360.0 / 200 * bar, deepest[1] - axis, 0.05);
    }

    @Test
    void liftingTurnsTheDiagramOver() throws Exception {
        Svg svg =
                new Svg(
                        ForceDiagram.of("M", ForceComponent.MOMENT_Y, beamUnder(20e3))
                                .figure()
                                .svg());
        List<double[]> outline = strokes(svg, "0.9", Ink.BLUE.hex()).get(0);
        double axis = outline.get(0)[1];
        assertTrue(outline.stream().allMatch(point -> point[1] <= axis + 0.01));
        assertTrue(svg.texts().contains("\u2212360\u00A0kN·m"));
    }

    /** A post that is pushed to the right is stretched on its left side, most at its foot. */
    @Test
    void momentOfAPostStandsOnItsTensionSide() throws Exception {
        for (boolean upward : new boolean[] {true, false}) {
            FrameModelBuilder b = FrameModel.builder().node("foot", 0, 0, 0).node("top", 0, 0, 8);
            b.add(
                    BeamColumn.of(
                            "post",
                            upward ? "foot" : "top",
                            upward ? "top" : "foot",
                            Material.steel(),
                            BOX));
            FrameSolution solved =
                    LinearAnalysis.of(b.fix("foot").build())
                            .solve(
                                    LoadCase.of(
                                            "push",
                                            new NodalLoad(
                                                    "top", new Vector(50e3, 0, 0), Vector.ZERO)));
            Svg svg =
                    new Svg(
                            ForceDiagram.of("M", ForceComponent.MOMENT_Y, solved)
                                    .size(120, 120)
                                    .figure()
                                    .svg());
            List<double[]> post = strokes(svg, "1.2", Ink.BLACK.hex()).get(0);
            double axis = post.get(0)[0];
            double foot = Math.max(post.get(0)[1], post.get(1)[1]);
            List<double[]> outline = strokes(svg, "0.9", Ink.BLUE.hex()).get(0);
            double[] farthest =
                    outline.stream().reduce((p, q) -> q[0] < p[0] ? q : p).orElseThrow();
            assertTrue(outline.stream().allMatch(point -> point[0] <= axis + 0.01));
            assertTrue(farthest[0] < axis - 10);
            assertEquals(foot, farthest[1], 0.02);
        }
    }

    /** 5qL⁴/384EI and qL²/8GA_v for shear (Timoshenko 1921): the sag of a beam at midspan. */
    @Test
    void sagIsDrawnEnlargedAndTheTitleSaysHowMuch() throws Exception {
        DeflectedShape shape =
                DeflectedShape.of("Beam", beamUnder(-20e3)).enlarged(50).size(120, 100);
        Svg svg = new Svg(shape.figure().svg());
        assertEquals("Beam, displacements × 50", svg.all("title").get(0).getTextContent());
        List<double[]> curve = strokes(svg, "1.5", Ink.BLUE.hex()).get(0);
        Section girder = FrameDemo.GIRDER;
        double e = Material.steel().youngModulus();
        double g = Material.steel().shearModulus();
        double q = 20e3;
        double length = 12;
        double sag =
                5 * q * length * length * length * length / (384 * e * girder.inertiaY())
                        + q * length * length / (8 * g * girder.shearAreaZ());
        double scale = (curve.get(curve.size() - 1)[0] - curve.get(0)[0]) / length;
        double deepest = curve.stream().mapToDouble(point -> point[1]).max().orElseThrow();
        // Output is rounded to a hundredth of a point, twice.
        assertEquals(50 * sag * scale, deepest - curve.get(0)[1], 0.02);
    }

    /** A cantilever under an end moment EI/R is an arc of radius R: true to scale, no factor. */
    @Test
    void largeDisplacementsAreDrawnTrueToScale() throws Exception {
        double length = 10;
        double radius = length / (Math.PI / 2);
        FrameModel model =
                FrameModel.builder()
                        .inPlane()
                        .node("a", 0, 0, 0)
                        .node("b", length, 0, 0)
                        .add(BeamColumn.of("beam", "a", "b", Material.steel(), BOX))
                        .fix("a")
                        .build();
        double moment = Material.steel().youngModulus() * BOX.inertiaY() / radius;
        List<LargeState> states =
                LargeDisplacementAnalysis.of(model)
                        .divided(24)
                        .load(
                                LoadCase.of(
                                        "moment",
                                        new NodalLoad("b", Vector.ZERO, new Vector(0, -moment, 0))),
                                8);
        LargeState last = states.get(states.size() - 1);
        Svg svg = new Svg(DeflectedShape.of("Arc", states.get(3), last).figure().svg());
        assertEquals("Arc, displacements to scale", svg.all("title").get(0).getTextContent());
        double scale = 0;
        for (List<double[]> line : strokes(svg, "0.5", Ink.GREY.hex())) {
            // The undeformed axis is the longest of the thin grey lines.
            scale = Math.max(scale, Math.abs(line.get(line.size() - 1)[0] - line.get(0)[0]));
        }
        scale /= length;
        List<double[]> arc = strokes(svg, "1.25", Ink.RUST.hex()).get(0);
        double[] centre = {arc.get(0)[0], arc.get(0)[1] - radius * scale};
        assertTrue(arc.size() > 10);
        for (double[] point : arc) {
            double off = StrictMath.hypot(point[0] - centre[0], point[1] - centre[1]);
            // Pieces are straight but for small bending: (θ/24)²/24 of the radius, and rounding.
            assertEquals(radius * scale, off, 2e-4 * radius * scale + 0.06);
        }
    }

    @Test
    void signsFollowWhatIsHeld() {
        Support slope = Support.along("b", new Vector(1, 0, 1));
        assertEquals(EnumSet.of(FrameSign.CLAMP), signs(fixed(Motion.values())));
        assertEquals(
                EnumSet.of(FrameSign.PIN),
                signs(fixed(Motion.ALONG_X, Motion.ALONG_Y, Motion.ALONG_Z)));
        assertEquals(EnumSet.of(FrameSign.ROLLER), signs(fixed(Motion.ALONG_Z)));
        assertEquals(EnumSet.of(FrameSign.ROLLER), signs(List.of(slope)));
        assertEquals(EnumSet.of(FrameSign.GUIDE), signs(fixed(Motion.ALONG_Z, Motion.ABOUT_Y)));
        assertEquals(EnumSet.of(FrameSign.TURN), signs(fixed(Motion.ABOUT_Y)));
        assertEquals(EnumSet.noneOf(FrameSign.class), signs(fixed(Motion.ALONG_Y)));
        assertEquals(
                EnumSet.of(FrameSign.SPRING, FrameSign.TURN_SPRING),
                signs(
                        List.of(
                                new Support("b", false, Vector.Z, 1e6),
                                new Support("b", true, Vector.Y, 1e6))));
    }

    /** The foot of a roller's sign lies along the direction held, on the side of the ground. */
    @Test
    void inclinedRollerStandsSquareToItsTrack() {
        Board board = new Board(10);
        FramePage page = new FramePage(board, FrameView.elevation());
        new SupportSigns(page, 1, EnumSet.noneOf(FrameSign.class))
                .draw(
                        Vector.ZERO,
                        List.of(Support.along("b", new Vector(1, 0, 1))),
                        false,
                        new double[] {-1, 0});
        Mark.Stroke triangle =
                board.marks().stream()
                        .filter(Mark.Stroke.class::isInstance)
                        .map(Mark.Stroke.class::cast)
                        .filter(stroke -> stroke.lines().get(0).length == 6)
                        .findFirst()
                        .orElseThrow();
        double[] xy = triangle.lines().get(0);
        double footX = (xy[2] + xy[4]) / 2;
        double footY = (xy[3] + xy[5]) / 2;
        assertEquals(-footX, footY, 1e-9, "down and to the left at 45°");
        assertTrue(footX < -1);
    }

    private static List<Support> fixed(Motion... motions) {
        return Arrays.stream(motions).map(motion -> Support.of("b", motion)).toList();
    }

    private static Set<FrameSign> signs(List<Support> supports) {
        Set<FrameSign> used = EnumSet.noneOf(FrameSign.class);
        new SupportSigns(new FramePage(new Board(10), FrameView.elevation()), 1, used)
                .draw(Vector.ZERO, supports, false, new double[] {1, 0});
        return used;
    }

    @Test
    void stagesDrawWhatTheyAddHeavierAndWhatTheyTakeDashed() throws Exception {
        Svg svg = new Svg(stages().figure().svg());
        // Five of six stages install, three tension, one takes away; and one sample of each below.
        assertEquals(5 + 1, strokes(svg, "1.7", Ink.BLUE.hex()).size());
        assertEquals(2 + 1, paths(svg, "1.7", Ink.BLACK.hex()));
        assertEquals(1 + 1, paths(svg, "1.3", Ink.RUST.hex()));
        assertTrue(svg.texts().contains("5: closing"));
        assertTrue(svg.texts().contains("6 installed, 2 tensioned"));
    }

    @Test
    void twoRibsInElevationAreOneLine() throws Exception {
        int both = pathsOf(FrameDrawing.of("Both", BRIDGE));
        List<String> one = FrameDemo.side(0);
        one.addAll(
                BRIDGE.members().stream()
                        .map(member -> member.name())
                        .filter(name -> name.contains("diagonal"))
                        .toList());
        assertEquals(both, pathsOf(FrameDrawing.of("One", BRIDGE).only(one)));
    }

    /** Points of the heavy lines. */
    private static int pathsOf(FrameDrawing drawing) {
        return drawing.picture().marks().stream()
                .filter(Mark.Stroke.class::isInstance)
                .map(Mark.Stroke.class::cast)
                .filter(stroke -> stroke.pen().equals(MemberKind.BEAM.pen()))
                .filter(stroke -> stroke.lines().size() > 1)
                .flatMap(stroke -> stroke.lines().stream())
                .mapToInt(line -> line.length)
                .sum();
    }

    @Test
    void aHundredThousandMembersAreSimplifiedOrRefused() {
        int count = 100_000;
        FrameModelBuilder b = FrameModel.builder().inPlane();
        for (int i = 0; i <= count; i++) {
            double x = 0.01 * i;
            b.node("n" + i, x, 0, 50 * StrictMath.sin(x / 100));
            if (i > 0) {
                b.add(BeamColumn.of("m" + i, "n" + (i - 1), "n" + i, Material.steel(), BOX));
            }
        }
        FrameModel wave = b.fix("n0").build();
        String svg = FrameDrawing.of("Wave", wave).figure().svg();
        assertTrue(svg.length() < 20_000, svg.length() + " bytes");
        double[] extent = extentOf(FrameDrawing.of("Wave", wave).picture());
        assertTrue(extent[2] - extent[0] > 400, "the wave is there from end to end");
        refused(
                () -> FrameDrawing.of("Wave", wave).nodeNames().figure(),
                "names of nodes to write are 100001; allowed are at most 400");
        FrameModelBuilder lattice = FrameModel.builder();
        int side = 230;
        for (int i = 0; i < side; i++) {
            for (int k = 0; k < side; k++) {
                lattice.node(i + "," + k, i, 0, k);
                if (i > 0) {
                    lattice.add(
                            BeamColumn.of(
                                    "a" + i + "," + k,
                                    (i - 1) + "," + k,
                                    i + "," + k,
                                    Material.steel(),
                                    BOX));
                }
                if (k > 0) {
                    lattice.add(
                            BeamColumn.of(
                                    "b" + i + "," + k,
                                    i + "," + (k - 1),
                                    i + "," + k,
                                    Material.steel(),
                                    BOX));
                }
            }
        }
        FrameModel wall = lattice.build();
        refused(
                () -> FrameDrawing.of("Wall", wall).figure(),
                "more than 40000; draw fewer members, chosen by only");
    }

    private static double[] extentOf(Picture picture) {
        return Geometry.extent(
                picture.marks().stream()
                        .filter(Mark.Stroke.class::isInstance)
                        .map(Mark.Stroke.class::cast)
                        .filter(stroke -> stroke.pen().equals(MemberKind.BEAM.pen()))
                        .toList());
    }

    @Test
    void badInputIsNamed() {
        FrameSolution solved = beamUnder(-20e3);
        refused(() -> FrameDrawing.of(" ", BRIDGE), "title is blank");
        refused(() -> FrameDrawing.of("a", BRIDGE).only(List.of("no such")), "no such");
        refused(() -> FrameDrawing.of("a", BRIDGE).only(List.of()), "at least 1");
        refused(
                () -> FrameDrawing.of("a", BRIDGE).verticalDimension("", "r0.0", "r0.14").figure(),
                "is 0 m in the elevation");
        refused(
                () -> FrameDrawing.of("a", solved.model()).seen(FrameView.section()).figure(),
                "0.0 m from end to end in the cross-section");
        refused(() -> FrameView.axonometric(0, 95), "tilt of the view in ° is 95.0");
        refused(() -> new FrameView("askew", Vector.X, new Vector(1, 0, 1)), "at right angles");
        refused(() -> DeflectedShape.of("a", solved).enlarged(-1), "factor of displacements");
        refused(() -> DeflectedShape.of("a", new FrameSolution[0]), "solutions to draw are 0");
        refused(() -> DeflectedShape.of("a", beamUnder(0)).figure(), "largest displacement");
        refused(
                () -> ForceDiagram.of("a", ForceComponent.AXIAL, solved).figure(),
                "N of diagram \"a\" is 0");
        refused(
                () ->
                        ForceDiagram.of("a", ForceComponent.MOMENT_Y, solved)
                                .seen(FrameView.plan())
                                .figure(),
                "M_y of all members stands at right angles to the plan");
        refused(
                () -> ForceDiagram.of("a", ForceComponent.AXIAL, solved).ordinates(0),
                "force for a millimetre");
        FrameModel halves = FrameDemo.halves();
        List<Stage> stages = FrameDemo.raising();
        List<StageResult> results = StageAnalysis.of(halves).run(stages);
        refused(
                () -> StageStrip.of("a", halves, stages, results.subList(0, 2)),
                "results of 2 stages stand beside 6");
    }

    private static FrameSolution beamUnder(double newtonsPerMetre) {
        return LinearAnalysis.of(FrameDemo.beam())
                .solve(
                        LoadCase.of(
                                "line load",
                                LineLoad.uniform(
                                        "beam",
                                        new Vector(0, 0, newtonsPerMetre),
                                        LoadAxes.GLOBAL)));
    }

    private static List<List<double[]>> strokes(Svg svg, String width, String ink) {
        List<List<double[]>> lines =
                svg.all("path").stream()
                        .filter(path -> path.getAttribute("stroke-width").equals(width))
                        .filter(path -> path.getAttribute("stroke").equals(ink))
                        .map(path -> Svg.points(path.getAttribute("d")))
                        .toList();
        assertFalse(lines.isEmpty(), "no line " + width + " wide in " + ink);
        return lines;
    }

    private static int paths(Svg svg, String width, String ink) {
        return strokes(svg, width, ink).size();
    }
}
