package org.skewback.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.skewback.cable.Cable;
import org.skewback.cable.HangingCable;
import org.skewback.data.CsvTable;
import org.skewback.data.TableException;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routines;
import org.skewback.steel.Box;
import org.skewback.steel.ISection;
import org.skewback.steel.Rectangle;

/** Proves that models survive tables, that errors name their place, and that results enter the graph. */
class FrameTablesTest {

    private static final String NODES = "name,x [m],y [m],z [m]\nA,0,0,0\nB,8,0,0\n";
    private static final String MATERIALS =
            "name,young modulus [GPa],shear modulus [GPa]\nsteel,210,81\n";
    private static final String SECTIONS =
            "name,kind,width [mm],height [mm],web [mm],flange [mm]\nbox,box,400,600,20,25\n";
    private static final String MEMBERS =
            "name,kind,start,end,material,section\nbeam,beam,A,B,steel,box\n";
    private static final String SUPPORTS =
            "node,kind,x,y,z\nA,pinned,,,\nB,along,0,0,1\n*,in plane,,,\n";
    private static final String LOADS =
            """
            case,kind,on,intensity z [kN/m],force z [kN],at [m]
            G,line,beam,=g,,
            Q,point,beam,,-100,3
            """;

    private static FrameTables.Tables tables(Map<String, String> files) {
        return new FrameTables.Tables(
                CsvTable.parse("nodes", files.get("nodes")),
                CsvTable.parse("materials", files.get("materials")),
                CsvTable.parse("sections", files.get("sections")),
                CsvTable.parse("members", files.get("members")),
                CsvTable.parse("supports", files.get("supports")));
    }

    private static FrameTables.Tables tables(String sections, String members) {
        return tables(
                Map.of(
                        "nodes", NODES,
                        "materials", MATERIALS,
                        "sections", sections,
                        "members", members,
                        "supports", SUPPORTS));
    }

    private static FrameModel everything() {
        EndConnection joint =
                EndConnection.RIGID.released(Motion.ABOUT_Y).with(Motion.ABOUT_Z, 1e7);
        return Bridges.arch(4).toBuilder()
                .node("P", 3, 1.0 / 3, -2)
                .node("Q", 9, 2, 1)
                .add(
                        BeamColumn.of(
                                        "taper",
                                        "P",
                                        "Q",
                                        Bridges.STEEL,
                                        SectionProfile.tapered(
                                                new Rectangle(0.3, 0.9).section("big"),
                                                new Rectangle(0.3, 0.4).section("small")))
                                .oriented(new Orientation(new Vector(0, 1, 2), 0.3))
                                .offset(new Vector(0.1, 0, 0), new Vector(0, 0, -0.2))
                                .connected(joint, EndConnection.RIGID))
                .add(
                        Bar.of(
                                        "stay, long",
                                        "Q",
                                        "d0.2",
                                        Bridges.STEEL,
                                        new ISection(0.3, 0.5, 0.012, 0.02).section("I"))
                                .carrying(Bar.Carries.TENSION))
                .add(new CableMember("rope", "P", "Q", new Cable(6.7, 120, 3e7)))
                .add(SpringLink.of("bearing", "P", "r0.0", new EndConnection(1e6, 0, 2e9, 0, 0, 5)))
                .support(Support.along("Q", new Vector(1, 0, 1)))
                .spring("P", Motion.ABOUT_Y, 3e6)
                .build();
    }

    @Test
    void modelAndLoadsReadBackAsWritten() {
        FrameModel model = everything();
        FrameModel back = FrameTables.model(tables(FrameTables.write(model)));
        assertEquals(model.nodes(), back.nodes());
        assertEquals(model.members(), back.members());
        assertEquals(model.supports().size(), back.supports().size());
        for (int i = 0; i < model.supports().size(); i++) {
            assertEquals(model.supports().get(i).node(), back.supports().get(i).node());
            assertEquals(model.supports().get(i).stiffness(), back.supports().get(i).stiffness());
            assertEquals(
                    0,
                    model.supports()
                            .get(i)
                            .direction()
                            .minus(back.supports().get(i).direction())
                            .length(),
                    1e-15);
        }
        List<LoadCase> cases =
                List.of(
                        LoadCase.of(
                                "G",
                                SelfWeight.standard(),
                                new Warming("taper", 20, 1, -3),
                                new LackOfFit("taper", 1e-3),
                                new InitialForce("stay, long", 1e5)),
                        LoadCase.of(
                                "Q",
                                NodalLoad.force("Q", 1, 2, 3.25),
                                PointLoad.of("taper", 1.5, Vector.Z),
                                new LineLoad("taper", 1, 2, Vector.X, Vector.Y, LoadAxes.PROJECTED),
                                LineLoad.uniform("taper", Vector.Z, LoadAxes.LOCAL),
                                new LineMoment("taper", 0, 1, Vector.X, Vector.Y, LoadAxes.GLOBAL),
                                new SelfWeight(new Vector(1, 0, -9), List.of("taper", "rope")),
                                new CablePull(List.of("rope")),
                                CablePull.ofAll(),
                                new Tendon("taper", 1e6, 0.1, 0.2, 0.3, -0.4, 0.5, 0.6),
                                new Dislocation("taper", 2, ForceComponent.MOMENT_Y, 1e-3),
                                new Dislocation("taper", 3, ForceComponent.SHEAR_Z, 2e-3),
                                new GroundMovement("Q", Vector.Y, Vector.ZERO)));
        assertEquals(
                cases, FrameTables.loads(CsvTable.parse("loads", FrameTables.writeLoads(cases))));
    }

    @Test
    void cablesAreDrawnToAForce() {
        String members =
                "name,kind,start,end,weight per length [N/m],axial stiffness [MN],horizontal force"
                        + " [kN]\nrope,cable,A,B,100,30,20\n";
        CableMember rope =
                (CableMember) FrameTables.model(tables(SECTIONS, members)).member("rope");
        HangingCable hanging = HangingCable.between(rope.cable(), 8, 0);
        assertEquals(20e3, hanging.horizontalForce(), 1e-6);
        for (String bad : List.of("A,C,100,30,20", "A,B,100,30,", "A,B,100,30,-1", "A,B,,30,20")) {
            TableException e =
                    assertThrows(
                            TableException.class,
                            () ->
                                    FrameTables.model(
                                            tables(
                                                    SECTIONS,
                                                    members.replace("A,B,100,30,20", bad))));
            assertTrue(e.getMessage().startsWith("members, line 2: "), e.getMessage());
        }
    }

    @Test
    void errorsNameTableLineAndColumn() {
        record Bad(String sections, String members, String expected) {}
        List<Bad> all = new ArrayList<>();
        all.add(
                new Bad(
                        SECTIONS,
                        MEMBERS.replace("steel,box", "steel,bix"),
                        "members, line 2: column section is \"bix\""));
        all.add(
                new Bad(
                        SECTIONS.replace("400", "4OO"),
                        MEMBERS,
                        "sections, line 2: column width is \"4OO\""));
        all.add(
                new Bad(
                        SECTIONS.replace("400", "-400"),
                        MEMBERS,
                        "sections, line 2: width of the box is -0.4 m"));
        all.add(
                new Bad(
                        SECTIONS.replace("width [mm]", "width [kN]"),
                        MEMBERS,
                        "sections, column width: the unit is [kN]"));
        all.add(
                new Bad(
                        SECTIONS,
                        MEMBERS.replace("kind", "sort"),
                        "members has a column sort; allowed are name, kind"));
        for (Bad bad : all) {
            TableException e =
                    assertThrows(
                            TableException.class,
                            () -> FrameTables.model(tables(bad.sections(), bad.members())));
            assertTrue(e.getMessage().startsWith(bad.expected()), e.getMessage());
        }
    }

    @Test
    void resultsEnterTheGraphWithTheirInputs() {
        Quantity g = Quantity.of(-30, "kN/m");
        LinearRoutine.Output output =
                Routines.call(
                        new LinearRoutine(),
                        new LinearRoutine.Input(
                                NODES,
                                MATERIALS,
                                SECTIONS,
                                MEMBERS,
                                SUPPORTS,
                                LOADS,
                                "g",
                                List.of(g),
                                "1.5 G + Q",
                                "M_y of beam at 4.0; reaction of A along z; movement of B about"
                                        + " y"));
        assertEquals(1.5 * 30 * 64 / 8 + 100 * 3 / 2.0, output.responses().get(0).in("kN·m"), 1e-9);
        assertEquals(1.5 * 120 + 62.5, output.responses().get(1).in("kN"), 1e-9);
        double ei = 210e6 * new Box(0.4, 0.6, 0.02, 0.025).section("s").inertiaY();
        // −qL³/24 − Pa(L² − a²)/6L, and what shear adds is none of the rotation.
        assertEquals(
                -(45 * 512 / 24.0 + 100 * 3 * (64 - 9) / 48.0) / ei,
                output.responses().get(2).in("rad"),
                1e-12);
        assertTrue(output.residual().si() < 1e-12);
        IllegalArgumentException e =
                assertThrows(
                        IllegalArgumentException.class,
                        () ->
                                new LinearRoutine()
                                        .run(
                                                new LinearRoutine.Input(
                                                        NODES,
                                                        MATERIALS,
                                                        SECTIONS,
                                                        MEMBERS,
                                                        SUPPORTS,
                                                        LOADS,
                                                        "g",
                                                        List.of(g),
                                                        "G",
                                                        "stress of beam"),
                                                () -> false));
        assertTrue(e.getMessage().contains("stress of beam"));
    }

    @Test
    void reportsSayUnitsAndSigns() {
        FrameModel model = FrameTables.model(tables(SECTIONS, MEMBERS));
        FrameSolution solution =
                LinearAnalysis.of(model)
                        .solve(
                                FrameTables.loads(
                                                CsvTable.parse("loads", LOADS),
                                                Map.of("g", Quantity.of(-30, "kN/m")))
                                        .stream()
                                        .min(Comparator.comparing(LoadCase::name))
                                        .orElseThrow());
        String forces = FrameReport.forces(solution, 3);
        assertTrue(forces.contains("M_y + tension at −z"), forces);
        assertTrue(
                forces.lines().anyMatch(line -> line.matches("beam 4\\.00 .* 240\\.000 .*")),
                forces);
        assertTrue(
                FrameReport.reactions(solution)
                        .lines()
                        .anyMatch(line -> line.matches("A  .* 120\\.000 .*")));
        assertTrue(FrameReport.movements(solution).contains("u_z mm"));
        String summary = FrameReport.summary(solution);
        assertTrue(
                summary.contains("M_y from 0.0 (beam at 0.00 m) to 240.0 kN·m (beam at 4.00 m)"),
                summary);
        assertTrue(summary.contains("residual of equilibrium"), summary);
    }
}
