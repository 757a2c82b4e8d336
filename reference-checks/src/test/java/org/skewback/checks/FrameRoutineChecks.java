package org.skewback.checks;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.frame.BucklingRoutine;
import org.skewback.frame.HistoryRoutine;
import org.skewback.frame.LinearRoutine;
import org.skewback.frame.ModesRoutine;
import org.skewback.frame.SecondOrderRoutine;
import org.skewback.frame.SpectrumRoutine;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routines;

/** Checks of the routines by which a sheet analyses tables: a post that carries masses, a column. */
public final class FrameRoutineChecks implements Subject {

    private static final String MATERIALS =
            "name,young modulus [GPa],shear modulus [GPa]\nm,200,80\n";
    private static final String SECTIONS =
            """
            name,kind,area [m²],torsion constant [m⁴],second moment y [m⁴],second moment z [m⁴]
            s,given,0.1,1e-4,1e-4,1e-4
            """;
    private static final String FIXED = "node,kind,x,y,z\nA,fixed,,,\n*,in plane,,,\n";
    private static final String PINNED =
            "node,kind,x,y,z\nA,pinned,,,\nC,along,1,0,0\n*,in plane,,,\n";
    private static final String MASSES = "kind,on,mass [t]\nnode,B,=m1\nnode,C,=m2\n";
    private static final String NO_LOADS = "case,kind,on\n";
    private static final String NO_STOP =
            """
            name,kind,start,end,opening [mm],stiffness [kN/mm],direction x
            far,stop,A,C,9999,1,1
            """;

    /** Makes the subject. */
    public FrameRoutineChecks() {}

    @Override
    public String topic() {
        return "frame";
    }

    @Override
    public String table() {
        return "frame-routines";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("LinearRoutine: cantilever", FrameRoutineChecks::linear);
        routines.put("ModesRoutine: two masses on a post", FrameRoutineChecks::modes);
        routines.put("SpectrumRoutine: two masses on a post", FrameRoutineChecks::spectrum);
        routines.put("HistoryRoutine: sudden push of a post", FrameRoutineChecks::history);
        routines.put("BucklingRoutine: column", FrameRoutineChecks::buckling);
        routines.put("SecondOrderRoutine: column with a line load", FrameRoutineChecks::bent);
        return routines;
    }

    private static String nodes(Inputs in) {
        return "name,x [m],y [m],z [m]\nA,0,0,0\nB,0,0,"
                + in.si("lower height")
                + "\nC,0,0,"
                + in.si("height")
                + "\n";
    }

    private static String members() {
        return "name,kind,start,end,material,section\nfoot,beam,A,B,m,s\nhead,beam,B,C,m,s\n";
    }

    private static List<Quantity> masses(Inputs in) {
        return List.of(
                Quantity.of(in.si("lower mass"), "kg"), Quantity.of(in.si("upper mass"), "kg"));
    }

    private static Map<String, Quantity> linear(Inputs in) {
        LinearRoutine.Output output =
                Routines.call(
                        new LinearRoutine(),
                        new LinearRoutine.Input(
                                nodes(in),
                                MATERIALS,
                                SECTIONS,
                                members(),
                                FIXED,
                                "case,kind,on,force x [N]\nP,node,C," + in.si("force") + "\n",
                                "",
                                List.of(),
                                in.text("combination"),
                                "M_y of foot at 0; movement of C along x; reaction of A along x"));
        return Map.of(
                "moment", output.responses().get(0).abs(),
                "movement", output.responses().get(1),
                "reaction", output.responses().get(2));
    }

    private static Map<String, Quantity> modes(Inputs in) {
        ModesRoutine.Output output =
                Routines.call(
                        new ModesRoutine(),
                        new ModesRoutine.Input(
                                nodes(in),
                                MATERIALS,
                                SECTIONS,
                                members(),
                                FIXED,
                                MASSES,
                                NO_LOADS,
                                "",
                                4,
                                2,
                                "m1; m2",
                                masses(in)));
        return Map.of(
                "first frequency", output.frequencies().get(0),
                "second frequency", output.frequencies().get(1),
                "first effective mass", output.massesX().get(0),
                "second effective mass", output.massesX().get(1),
                "total mass", output.totalMass());
    }

    private static Map<String, Quantity> spectrum(Inputs in) {
        SpectrumRoutine.Output output =
                Routines.call(
                        new SpectrumRoutine(),
                        new SpectrumRoutine.Input(
                                nodes(in),
                                MATERIALS,
                                SECTIONS,
                                members(),
                                FIXED,
                                MASSES,
                                NO_LOADS,
                                "",
                                4,
                                2,
                                "period [s],acceleration [m/s²]\n0,"
                                        + in.si("acceleration")
                                        + "\n9,"
                                        + in.si("acceleration")
                                        + "\n",
                                "",
                                "",
                                in.quantity("damping ratio"),
                                "complete quadratic",
                                "sum of squares",
                                false,
                                "M_y of foot at 0; movement of C along x",
                                "m1; m2",
                                masses(in)));
        return Map.of(
                "moment", output.responses().get(0),
                "movement", output.responses().get(1),
                "base force", output.baseForces().get(0),
                "mass share", output.massShares().get(0));
    }

    private static Map<String, Quantity> history(Inputs in) {
        StringBuilder ground = new StringBuilder("time [s],x [m/s²]\n");
        for (int n = 0; n <= (int) in.si("steps"); n++) {
            ground.append(n * in.si("step")).append(',').append(in.si("push")).append('\n');
        }
        HistoryRoutine.Output output =
                Routines.call(
                        new HistoryRoutine(),
                        new HistoryRoutine.Input(
                                nodes(in),
                                MATERIALS,
                                SECTIONS,
                                members(),
                                FIXED,
                                "kind,on,mass [t]\nnode,C,=m2\n",
                                NO_LOADS,
                                "",
                                4,
                                1,
                                in.quantity("damping ratio"),
                                NO_STOP,
                                ground.toString(),
                                "movement of C along x; M_y of foot at 0",
                                "m2",
                                List.of(Quantity.of(in.si("upper mass"), "kg"))));
        Quantity high = output.largest().get(0);
        Quantity low = output.smallest().get(0);
        return Map.of(
                "movement", high.plus(low),
                "moment",
                        Quantity.max(output.largest().get(1).abs(), output.smallest().get(1).abs()),
                "time", output.times().get(0));
    }

    private static Map<String, Quantity> buckling(Inputs in) {
        BucklingRoutine.Output output =
                Routines.call(
                        new BucklingRoutine(),
                        new BucklingRoutine.Input(
                                nodes(in),
                                MATERIALS,
                                SECTIONS,
                                members(),
                                PINNED,
                                "case,kind,on,force z [N]\nG,node,C,"
                                        + -in.si("permanent")
                                        + "\nP,node,C,"
                                        + -in.si("force")
                                        + "\n",
                                "G",
                                "2 P",
                                1,
                                16,
                                false,
                                "",
                                List.of()));
        return Map.of("factor", output.factors().get(0));
    }

    private static Map<String, Quantity> bent(Inputs in) {
        SecondOrderRoutine.Output output =
                Routines.call(
                        new SecondOrderRoutine(),
                        new SecondOrderRoutine.Input(
                                nodes(in),
                                MATERIALS,
                                SECTIONS,
                                members(),
                                PINNED,
                                "case,kind,on,force z [N],intensity x [N/m]\nG,node,C,"
                                        + -in.si("force")
                                        + ",\nq,line,foot,,"
                                        + in.si("load")
                                        + "\nq,line,head,,"
                                        + in.si("load")
                                        + "\n",
                                "20 G + 3 q",
                                16,
                                "M_y of head at 0; movement of B along x",
                                "",
                                List.of()));
        return Map.of(
                "moment", output.responses().get(0).abs(),
                "movement", output.responses().get(1));
    }
}
