package org.skewback.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.skewback.steel.Fibre;

/** Proves influence by one adjoint solution equal to loads put on one by one, and trains likewise. */
class InfluenceTest {

    private final FrameModel model = Bridges.arch(8);
    private final LinearAnalysis analysis = LinearAnalysis.of(model);
    private final Lane lane = Lane.along("left", model, Bridges.deck(8), new Vector(0, 0.7, 0.5));

    @Test
    void adjointEqualsDirectForEveryKindOfResponse() {
        List<Response> responses =
                List.of(
                        Response.force("rib0.3", 4.0, ForceComponent.AXIAL),
                        Response.force("rib0.3", 0, ForceComponent.MOMENT_Y),
                        Response.force("deck0.4", 6.0, ForceComponent.MOMENT_Y),
                        Response.force("deck0.4", 6.0, ForceComponent.SHEAR_Z),
                        Response.force("deck0.2", 15, ForceComponent.TORQUE),
                        Response.force("column1.4", 2, ForceComponent.SHEAR_Y),
                        Response.force("brace3", 1, ForceComponent.MOMENT_Z),
                        Response.displacement("r0.4", new Vector(1, 1, -1)),
                        Response.rotation("d1.2", Vector.Y),
                        Response.reaction("r0.0", Vector.X),
                        Response.reactionMoment("r1.8", Vector.Y),
                        Response.stress("rib0.4", 1, Bridges.RIB, new Fibre("corner", 0.6, -0.7)));
        double[] stations = {0, 3.7, 15, 22, 51, 60, 61.2, 100, 120};
        for (Response response : responses) {
            InfluenceLine line = InfluenceLine.of(analysis, response, lane);
            double scale = Math.max(line.largest().value(), -line.smallest().value());
            for (double station : stations) {
                double direct =
                        response.in(
                                analysis.solve(
                                        new LoadCase(
                                                "P", lane.force(station, Vector.Z.times(-1)))));
                assertEquals(direct, line.value(station), 1e-10 * scale, response + " " + station);
            }
        }
    }

    @Test
    void areasAndPeaksOfASimpleBeam() {
        FrameModel beam =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 4, 0, 0)
                        .node("C", 10, 0, 0)
                        .add(BeamColumn.of("ab", "A", "B", Bridges.STEEL, Bridges.DECK))
                        .add(BeamColumn.of("cb", "C", "B", Bridges.STEEL, Bridges.DECK))
                        .pin("A")
                        .hold("C", Motion.ALONG_Z)
                        .inPlane()
                        .build();
        Lane over = Lane.along("L", beam, List.of("ab", "cb"), Vector.ZERO);
        LinearAnalysis statics = LinearAnalysis.of(beam);
        InfluenceLine moment =
                InfluenceLine.of(statics, Response.force("ab", 4, ForceComponent.MOMENT_Y), over);
        assertEquals(2.4, moment.largest().value(), 1e-12);
        assertEquals(4, moment.largest().station(), 1e-9);
        assertEquals(12, moment.positiveArea(), 1e-10);
        assertEquals(12, moment.area(0, 10), 1e-10);
        assertEquals(0, moment.negativeArea(), 1e-10);
        InfluenceLine shear =
                InfluenceLine.of(statics, Response.force("ab", 3, ForceComponent.SHEAR_Z), over);
        assertEquals(0.7, shear.largest().value(), 1e-10);
        assertEquals(-0.3, shear.smallest().value(), 1e-10);
        assertEquals(0.7 * 7 / 2, shear.positiveArea(), 1e-9);
        assertEquals(-0.3 * 3 / 2, shear.negativeArea(), 1e-9);
        // Two axles of 100 N, 2 m apart, on the triangle of the moment: 100 (2.4 + 1.6).
        Passage passage = Passage.of(moment, LoadTrain.of("T", 100, 0, 2), 0.37);
        assertEquals(100 * (2.4 + 2.4 * 4 / 6), passage.largest(), 1e-9);
    }

    @Test
    void trainEnvelopeEqualsSolutionsOneByOne() {
        LoadTrain train = LoadTrain.of("T", 250e3, 0, 1.6, 3.2, 9);
        MovingLoad moving = new MovingLoad(analysis, train, lane, 7.3);
        Envelope envelope = moving.envelope(3);
        double[] positions = moving.positions();
        for (String member : List.of("deck0.3", "rib0.2", "column0.4", "deck1.5")) {
            for (ForceComponent component : ForceComponent.values()) {
                for (int i = 0; i < 3; i++) {
                    double largest = 0;
                    double x = envelope.stations(member)[i];
                    for (double at : positions) {
                        List<Load> loads = new ArrayList<>();
                        for (LoadTrain.Axle axle : train.axles()) {
                            loads.addAll(
                                    lane.force(
                                            at - axle.behind(), new Vector(0, 0, -axle.force())));
                        }
                        MemberForces forces =
                                analysis.solve(new LoadCase("T", loads)).member(member);
                        largest = Math.max(largest, forces.at(x).get(component));
                        largest = Math.max(largest, forces.after(x).get(component));
                    }
                    Envelope.Governing governing = envelope.largest(member, i, component);
                    assertEquals(largest, governing.value(), 1e-4, member + " " + component);
                    assertEquals(governing.value(), governing.concurrent().get(component));
                }
            }
        }
    }

    @Test
    void aTrainTurnedRoundHasItsLastAxleFirst() {
        LoadTrain train =
                new LoadTrain(
                        "T",
                        List.of(
                                new LoadTrain.Axle(0, 10),
                                new LoadTrain.Axle(2, 30),
                                new LoadTrain.Axle(5, 70)));
        assertEquals(5, train.length());
        assertEquals(
                List.of(
                        new LoadTrain.Axle(0, 70),
                        new LoadTrain.Axle(3, 30),
                        new LoadTrain.Axle(5, 10)),
                train.reversed().axles());
    }

    /** A bent frame in space whose members end in rigid arms that lie along no axis. */
    private static FrameModel withArms() {
        Vector one = new Vector(0.3, 0.2, -0.4);
        Vector other = new Vector(-0.25, 0.35, 0.15);
        return FrameModel.builder()
                .node("A", 0, 0, 0)
                .node("B", 5, 1, 4)
                .node("C", 12, -1, 5)
                .node("D", 15, 2, 0)
                .add(
                        BeamColumn.of("ab", "A", "B", Bridges.STEEL, Bridges.COLUMN)
                                .offset(one, other))
                .add(
                        BeamColumn.of("bc", "B", "C", Bridges.STEEL, Bridges.DECK)
                                .offset(other.times(-1), one))
                .add(
                        BeamColumn.of("cd", "C", "D", Bridges.STEEL, Bridges.COLUMN)
                                .offset(other, one.times(-1)))
                .fix("A")
                .fix("D")
                .build();
    }

    @Test
    void armsTurnUnderATrainAsUnderLoadsPutOnOneByOne() {
        FrameModel bent = withArms();
        LinearAnalysis statics = LinearAnalysis.of(bent);
        Lane along = Lane.along("L", bent, List.of("bc"), new Vector(0, 0.3, 0.2));
        MovingLoad moving = new MovingLoad(statics, LoadTrain.of("T", 1e5, 0), along, 2);
        Envelope envelope = moving.envelope(2);
        for (String member : List.of("ab", "cd")) {
            for (ForceComponent component : ForceComponent.values()) {
                double largest = 0;
                double smallest = 0;
                for (double at : moving.positions()) {
                    double force =
                            statics.solve(
                                            new LoadCase(
                                                    "P", along.force(at, new Vector(0, 0, -1e5))))
                                    .member(member)
                                    .end()
                                    .get(component);
                    largest = Math.max(largest, force);
                    smallest = Math.min(smallest, force);
                }
                String words = member + " " + component;
                double size = 1e-9 * Math.max(largest, -smallest) + 1e-6;
                assertEquals(largest, envelope.largest(member, 1, component).value(), size, words);
                assertEquals(
                        smallest, envelope.smallest(member, 1, component).value(), size, words);
            }
        }
    }

    @Test
    void surfaceIsLinearBetweenItsLanes() {
        Lane right = Lane.along("right", model, Bridges.deck(8), new Vector(0, -0.7, 0.5));
        InfluenceSurface surface =
                InfluenceSurface.of(
                        analysis,
                        Response.force("rib0.3", 4.0, ForceComponent.AXIAL),
                        List.of(lane, right),
                        0.7,
                        -0.7);
        double a = surface.value(40, -0.7);
        double b = surface.value(40, 0.7);
        Response response = Response.force("rib0.3", 4.0, ForceComponent.AXIAL);
        assertEquals(InfluenceLine.of(analysis, response, right).value(40), a, 1e-12);
        assertEquals(InfluenceLine.of(analysis, response, lane).value(40), b, 1e-12);
        assertEquals(0.25 * a + 0.75 * b, surface.value(40, 0.35), 1e-12);
        assertTrue(
                assertThrows(IllegalArgumentException.class, () -> surface.value(40, 1))
                        .getMessage()
                        .contains("distance across is 1.0 m"));
    }
}
