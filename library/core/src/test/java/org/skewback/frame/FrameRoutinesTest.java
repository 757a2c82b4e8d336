package org.skewback.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.skewback.data.CsvTable;
import org.skewback.data.TableException;
import org.skewback.quantity.FlatGraph;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Reevaluation;
import org.skewback.quantity.Routines;

/** Proves that analyses of tables give what closed forms give, and enter the graph. */
class FrameRoutinesTest {

    private static final double E = 2e11;
    private static final double I = 1e-4;
    private static final double HEIGHT = 5;
    private static final double MASS = 4000;

    /** Circular frequency of a mass on a weightless cantilever. */
    private static final double OMEGA = Math.sqrt(3 * E * I / (HEIGHT * HEIGHT * HEIGHT) / MASS);

    private static final String NODES = "name,x [m],y [m],z [m]\nA,0,0,0\nB,0,0,5\n";
    private static final String MATERIALS =
            "name,young modulus [GPa],shear modulus [GPa]\nm,200,80\n";
    private static final String SECTIONS =
            "name,kind,area [m²],torsion constant [m⁴],second moment y [m⁴],second moment z"
                    + " [m⁴]\ns,given,0.1,1e-4,1e-4,1e-4\n";
    private static final String MEMBERS =
            "name,kind,start,end,material,section\npost,beam,A,B,m,s\n";
    private static final String CANTILEVER = "node,kind,x,y,z\nA,fixed,,,\n*,in plane,,,\n";
    private static final String COLUMN =
            "node,kind,x,y,z\nA,pinned,,,\nB,along,1,0,0\n*,in plane,,,\n";
    private static final String NO_LOADS = "case,kind,on\n";
    private static final String MASSES = "kind,on,mass [t]\nnode,B,=m\n";

    /** G pushes down with 100 kN, P with 1 kN; q across with 1 kN/m. */
    private static final String LOADS =
            """
            case,kind,on,force z [kN],intensity x [kN/m]
            G,node,B,-100,
            P,node,B,-1,
            q,line,post,,1
            """;

    private static final String FAR_STOP =
            """
            name,kind,start,end,opening [mm],stiffness [kN/mm],direction x
            far,stop,A,B,9999,1,1
            """;

    private static final List<Quantity> NOTHING = List.of();
    private static final List<Quantity> GIVEN = List.of(Quantity.of(4, "t"));

    @Test
    void modesOfAMassOnAPost() {
        ModesRoutine.Output output =
                Routines.call(
                        new ModesRoutine(),
                        new ModesRoutine.Input(
                                NODES,
                                MATERIALS,
                                SECTIONS,
                                MEMBERS,
                                CANTILEVER,
                                MASSES,
                                NO_LOADS,
                                "",
                                4,
                                1,
                                "m",
                                GIVEN));
        assertEquals(OMEGA / (2 * Math.PI), output.frequencies().get(0).in("Hz"), 1e-9 * OMEGA);
        assertEquals(MASS, output.massesX().get(0).in("kg"), 1e-6);
        assertEquals(0, output.massesZ().get(0).in("kg"), 1e-6);
        assertEquals(MASS, output.totalMass().in("kg"), 1e-9);
    }

    @Test
    void preloadSoftens() {
        double push = 1e5;
        ModesRoutine.Output output =
                new ModesRoutine()
                        .run(
                                new ModesRoutine.Input(
                                        NODES,
                                        MATERIALS,
                                        SECTIONS,
                                        MEMBERS,
                                        CANTILEVER,
                                        MASSES,
                                        LOADS,
                                        "G",
                                        8,
                                        1,
                                        "m",
                                        GIVEN),
                                () -> false);
        // Sway stiffness of a cantilever under N: N/(L (tan(kL)/(kL) − 1)).
        double kl = HEIGHT * Math.sqrt(push / (E * I));
        double stiffness = push / HEIGHT / (Math.tan(kl) / kl - 1);
        assertEquals(
                Math.sqrt(stiffness / MASS) / (2 * Math.PI),
                output.frequencies().get(0).in("Hz"),
                1e-6 * OMEGA);
    }

    private static SpectrumRoutine.Input spectrum(String rule) {
        return new SpectrumRoutine.Input(
                NODES,
                MATERIALS,
                SECTIONS,
                MEMBERS,
                CANTILEVER,
                MASSES,
                NO_LOADS,
                "",
                4,
                1,
                "period [s],acceleration [m/s²]\n0,1\n0.1,2.5\n9,2.5\n",
                "",
                "",
                Quantity.of(0.05),
                rule,
                "sum of squares",
                false,
                "M_y of post at 0; movement of B along x; reaction of A along x",
                "m",
                GIVEN);
    }

    @Test
    void spectrumOfAMassOnAPost() {
        SpectrumRoutine.Output output =
                Routines.call(new SpectrumRoutine(), spectrum("complete quadratic"));
        assertEquals(MASS * 2.5 * HEIGHT, output.responses().get(0).in("N·m"), 1e-3);
        assertEquals(2.5 / (OMEGA * OMEGA), output.responses().get(1).in("m"), 1e-10);
        assertEquals(MASS * 2.5, output.responses().get(2).in("N"), 1e-4);
        assertEquals(MASS * 2.5, output.baseForces().get(0).in("N"), 1e-4);
        assertEquals(1, output.massShares().get(0).si(), 1e-9);
        IllegalArgumentException e =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> new SpectrumRoutine().run(spectrum("by guess"), () -> false));
        assertTrue(e.getMessage().contains("rule for modes is \"by guess\""), e.getMessage());
        assertTrue(e.getMessage().contains("sum of sizes"), e.getMessage());
    }

    @Test
    void historyOfASuddenPush() {
        int half = 40;
        double step = Math.PI / OMEGA / half;
        StringBuilder ground = new StringBuilder("time [s],x [m/s²]\n");
        for (int n = 0; n <= 3 * half; n++) {
            ground.append(n * step).append(",1.5\n");
        }
        HistoryRoutine.Output output =
                Routines.call(
                        new HistoryRoutine(),
                        new HistoryRoutine.Input(
                                NODES,
                                MATERIALS,
                                SECTIONS,
                                MEMBERS,
                                CANTILEVER,
                                MASSES,
                                NO_LOADS,
                                "",
                                4,
                                1,
                                Quantity.of(0),
                                FAR_STOP,
                                ground.toString(),
                                "movement of B along x; M_y of post at 0",
                                "m",
                                GIVEN));
        // −(a/ω²)(1 − cos ωt)
        double swing = 2 * 1.5 / (OMEGA * OMEGA);
        assertEquals(-swing, output.smallest().get(0).in("m"), 1e-9);
        assertEquals(0, output.largest().get(0).in("m"), 1e-12);
        assertEquals(Math.PI / OMEGA, output.times().get(0).in("s"), 1e-9);
        double moment = MASS * 2 * 1.5 * HEIGHT;
        assertEquals(
                moment,
                Math.max(output.largest().get(1).in("N·m"), -output.smallest().get(1).in("N·m")),
                1e-6 * moment);
        assertTrue(output.imbalance().si() < 1e-9);
    }

    private static BucklingRoutine.Input buckling(String permanent) {
        return new BucklingRoutine.Input(
                NODES, MATERIALS, SECTIONS, MEMBERS, COLUMN, LOADS, permanent, "2 P", 1, 16, false,
                "", NOTHING);
    }

    @Test
    void bucklingOfAColumn() {
        double euler = Math.PI * Math.PI * E * I / (HEIGHT * HEIGHT);
        assertEquals(
                euler / 2000,
                Routines.call(new BucklingRoutine(), buckling("")).factors().get(0).si(),
                1e-5 * euler / 2000);
        assertEquals(
                (euler - 1e5) / 2000,
                Routines.call(new BucklingRoutine(), buckling("G")).factors().get(0).si(),
                1e-5 * euler / 2000);
    }

    @Test
    void secondOrderOfALoadedColumn() {
        double push = 2e6;
        SecondOrderRoutine.Output output =
                Routines.call(
                        new SecondOrderRoutine(),
                        new SecondOrderRoutine.Input(
                                NODES,
                                MATERIALS,
                                SECTIONS,
                                MEMBERS,
                                COLUMN,
                                LOADS,
                                "20 G + 3 q",
                                16,
                                "M_y of post at 2.5; movement of B along x",
                                "",
                                NOTHING));
        // Timoshenko and Gere, chapter 1: q/k² (sec(kL/2) − 1), k² = N/EI.
        double k = Math.sqrt(push / (E * I));
        double moment = 3000 / (k * k) * (1 / Math.cos(k * HEIGHT / 2) - 1);
        assertEquals(moment, Math.abs(output.responses().get(0).in("N·m")), 1e-7 * moment);
        assertEquals(0, output.responses().get(1).in("m"), 1e-12);
        assertTrue(output.residual().si() < 1e-9);
    }

    @Test
    void recordsAreWorkedOutAgain() {
        List<Quantity> results = new ArrayList<>();
        results.addAll(Routines.call(new SpectrumRoutine(), spectrum("sum of sizes")).responses());
        results.addAll(Routines.call(new BucklingRoutine(), buckling("G")).factors());
        Reevaluation again = Reevaluation.of(FlatGraph.lay(results).graph());
        assertTrue(again.isConsistent(), again.toString());
        assertEquals(0, again.all(Reevaluation.Outcome.CANNOT_TELL).size());
    }

    private static void refused(String expected, Runnable work) {
        TableException e = assertThrows(TableException.class, work::run);
        assertTrue(e.getMessage().startsWith(expected), e.getMessage());
    }

    @Test
    void errorsOfMotionNameTableLineAndColumn() {
        refused(
                "masses, line 3: column kind is \"nod\"",
                () ->
                        MotionTables.masses(
                                CsvTable.parse("masses", MASSES + "nod,B,1\n"),
                                Map.of("m", GIVEN.get(0))));
        refused(
                "masses, line 2: mass at node B is -1.0 kg",
                () ->
                        MotionTables.masses(
                                CsvTable.parse("masses", "kind,on,mass [kg]\nnode,B,-1\n"),
                                Map.of()));
        refused(
                "links, line 2: column direction x is \"0\"",
                () ->
                        MotionTables.links(
                                CsvTable.parse(
                                        "links",
                                        "name,kind,start,end,opening [m],stiffness [N/m],direction"
                                                + " x\ns,stop,A,B,0,1,0\n"),
                                Map.of()));
        refused(
                "links, line 2: column friction is \"\"",
                () ->
                        MotionTables.links(
                                CsvTable.parse("links", "name,kind,start,end\ns,sliding,A,B\n"),
                                Map.of()));
        refused(
                "ground, line 3: column time is \"0.3\"; allowed is equal steps",
                () ->
                        MotionTables.ground(
                                CsvTable.parse(
                                        "ground", "time [s],x [m/s²]\n0,1\n0.3,1\n0.4,1\n")));
        refused(
                "spectrum, line 3: column period is \"0\"",
                () ->
                        MotionTables.spectrum(
                                CsvTable.parse(
                                        "spectrum", "period [s],acceleration [m/s²]\n0,1\n0,1\n")));
    }
}
