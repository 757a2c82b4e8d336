package org.skewback.frame;

import java.util.Locale;

/** Results as text to read: units in every heading, the signs beside every table. */
public final class FrameReport {

    private static final String AXES = "x along the bridge, y across, z up";

    /** A residual above this shows in the digits that people read. */
    private static final double SUSPICIOUS = 1e-6;

    private FrameReport() {}

    /**
     * Tells the movements of all nodes.
     *
     * @param solution the solution
     * @return a table in mm and mrad
     */
    public static String movements(FrameSolution solution) {
        StringBuilder out = new StringBuilder();
        out.append("Movements under ").append(solution.name()).append("; ").append(AXES);
        out.append("; rotations right-handed\n");
        line(out, "node", "u_x mm", "u_y mm", "u_z mm", "θ_x mrad", "θ_y mrad", "θ_z mrad");
        for (Node node : solution.model().nodes()) {
            Movement m = solution.movement(node.name());
            numbers(
                    out,
                    node.name(),
                    1e3,
                    m.translation().x(),
                    m.translation().y(),
                    m.translation().z(),
                    m.rotation().x(),
                    m.rotation().y(),
                    m.rotation().z());
        }
        return out.toString();
    }

    /**
     * Tells what the supports exert.
     *
     * @param solution the solution
     * @return a table in kN and kN·m
     */
    public static String reactions(FrameSolution solution) {
        StringBuilder out = new StringBuilder();
        out.append("Reactions on the structure under ").append(solution.name());
        out.append("; ").append(AXES).append("; moments right-handed\n");
        line(out, "node", "R_x kN", "R_y kN", "R_z kN", "M_x kN·m", "M_y kN·m", "M_z kN·m");
        for (Reaction r : solution.reactions()) {
            numbers(
                    out,
                    r.node(),
                    1e-3,
                    r.force().x(),
                    r.force().y(),
                    r.force().z(),
                    r.moment().x(),
                    r.moment().y(),
                    r.moment().z());
        }
        return out.toString();
    }

    /**
     * Tells the forces along members.
     *
     * @param solution the solution
     * @param stations number of stations along each member, at least 2
     * @return a table in m, kN and kN·m
     * @throws IllegalArgumentException if there are fewer than 2 stations
     */
    public static String forces(FrameSolution solution, int stations) {
        if (stations < 2) {
            throw Require.refused("number of stations", stations, "", "at least 2");
        }
        StringBuilder out = new StringBuilder();
        out.append("Forces in members under ").append(solution.name());
        out.append("; N tension +; M_y + tension at −z (below), M_z + tension at −y; V = dM/dx;");
        out.append(" T + right-handed outward\n");
        line(out, "member at m", "N kN", "V_y kN", "V_z kN", "T kN·m", "M_y kN·m", "M_z kN·m");
        for (Member member : solution.model().members()) {
            if (!solution.carries(member.name())) {
                continue;
            }
            MemberForces forces = solution.member(member.name());
            for (int i = 0; i < stations; i++) {
                double x = forces.length() * i / (stations - 1);
                double[] s = (i == 0 ? forces.start() : forces.at(x)).toArray();
                numbers(out, String.format(Locale.ROOT, "%s %.2f", member.name(), x), 1e-3, s);
            }
        }
        return out.toString();
    }

    /**
     * Tells what governs, how well the solution is in equilibrium, and what makes it suspicious.
     *
     * @param solution the solution
     * @return text of several lines
     */
    public static String summary(FrameSolution solution) {
        StringBuilder out = new StringBuilder("Summary of " + solution.name() + "\n");
        Equilibrium equilibrium = solution.equilibrium();
        Energy energy = solution.energy();
        out.append(
                String.format(
                        Locale.ROOT,
                        "residual of equilibrium at nodes %.1e of the largest nodal force; loads"
                                + " and reactions together %.1e kN, %.1e kN·m about the origin%n",
                        equilibrium.residual(),
                        equilibrium.force().length() / 1e3,
                        equilibrium.moment().length() / 1e3));
        out.append(
                String.format(
                        Locale.ROOT,
                        "strain energy %.6g kJ, work of the loads %.6g kJ%n",
                        energy.strain() / 1e3,
                        energy.work() / 1e3));
        for (ForceComponent component : ForceComponent.values()) {
            ForcePeak high = solution.largest(component);
            ForcePeak low = solution.smallest(component);
            out.append(
                    String.format(
                            Locale.ROOT,
                            "%s from %.1f (%s at %.2f m) to %.1f %s (%s at %.2f m)%n",
                            component.symbol(),
                            low.forces().get(component) / 1e3,
                            low.member(),
                            low.position(),
                            high.forces().get(component) / 1e3,
                            component.isMoment() ? "kN·m" : "kN",
                            high.member(),
                            high.position()));
        }
        if (!(equilibrium.residual() < SUSPICIOUS)) {
            out.append("Warning: members of very different stiffness leave few good digits.\n");
        }
        for (String warning : solution.warnings()) {
            out.append("Warning: ").append(warning).append('\n');
        }
        return out.toString().replace("\r\n", "\n");
    }

    private static void line(StringBuilder out, String first, String... rest) {
        out.append(String.format(Locale.ROOT, "%-20s", first));
        for (String one : rest) {
            out.append(String.format(Locale.ROOT, "%12s", one));
        }
        out.append('\n');
    }

    private static void numbers(StringBuilder out, String name, double factor, double... values) {
        String[] texts = new String[values.length];
        for (int i = 0; i < values.length; i++) {
            // Adding 0 keeps a rounded −0.000 from showing its sign.
            texts[i] =
                    String.format(
                            Locale.ROOT, "%.3f", Math.rint(values[i] * factor * 1e3) / 1e3 + 0.0);
        }
        line(out, name, texts);
    }
}
