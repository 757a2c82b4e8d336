package org.skewback.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What a structure does under one load case or combination. */
public final class FrameSolution {

    private final String name;
    private final FrameSystem system;
    private final AppliedLoads loads;
    private final double[] movements;
    private final boolean[] present;
    private final List<String> warnings;

    FrameSolution(
            String name,
            FrameSystem system,
            AppliedLoads loads,
            double[] movements,
            boolean[] present,
            List<String> warnings) {
        this.name = name;
        this.system = system;
        this.loads = loads;
        this.movements = movements;
        this.present = present;
        this.warnings = warnings;
    }

    /**
     * Gives the name.
     *
     * @return name of the load case or combination
     */
    public String name() {
        return name;
    }

    /**
     * Gives the structure.
     *
     * @return the model analysed
     */
    public FrameModel model() {
        return system.model();
    }

    /**
     * Lists what should make the reader suspicious.
     *
     * @return warnings, empty where there are none
     */
    public List<String> warnings() {
        return warnings;
    }

    /**
     * Gives the movement of a node.
     *
     * @param node the node
     * @return displacement and rotation, global axes
     * @throws IllegalArgumentException if there is no such node
     */
    public Movement movement(String node) {
        int at = 6 * model().indexOfNode(node);
        return new Movement(Vector.of(movements, at), Vector.of(movements, at + 3));
    }

    /**
     * Gives the forces along a member.
     *
     * @param member the member
     * @return its forces and movements
     * @throws IllegalArgumentException if there is no such member, or it is out of action
     */
    public MemberForces member(String member) {
        int index = model().indexOfMember(member);
        if (!present[index]) {
            throw new IllegalArgumentException(
                    "member "
                            + member
                            + " is out of action in "
                            + name
                            + "; allowed are members that carry.");
        }
        return new MemberForces(state(index));
    }

    /**
     * Tells whether a member carries.
     *
     * @param member the member
     * @return whether it is there and in action
     * @throws IllegalArgumentException if there is no such member
     */
    public boolean carries(String member) {
        return present[model().indexOfMember(member)];
    }

    ElementState state(int index) {
        Element element = system.elements().get(index);
        double[] twelve = new double[12];
        FrameSystem.gather(element, movements, twelve);
        return element.state(element.toLocal(twelve), loads.member(index));
    }

    boolean isPresent(int member) {
        return present[member];
    }

    /**
     * Finds where a force is largest in the whole structure.
     *
     * @param component the force
     * @return member, position and all six forces there
     */
    public ForcePeak largest(ForceComponent component) {
        return peak(component, 1);
    }

    /**
     * Finds where a force is smallest in the whole structure.
     *
     * @param component the force
     * @return member, position and all six forces there
     */
    public ForcePeak smallest(ForceComponent component) {
        return peak(component, -1);
    }

    private ForcePeak peak(ForceComponent component, int sense) {
        ForcePeak best = null;
        for (int m = 0; m < present.length; m++) {
            if (!present[m]) {
                continue;
            }
            MemberForces forces = new MemberForces(state(m));
            MemberForces.Extreme here =
                    sense > 0 ? forces.largest(component) : forces.smallest(component);
            if (best == null
                    || sense * here.forces().get(component)
                            > sense * best.forces().get(component)) {
                best =
                        new ForcePeak(
                                system.elements().get(m).name(), here.position(), here.forces());
            }
        }
        if (best == null) {
            throw new IllegalArgumentException(
                    "no member carries in " + name + "; allowed is at least one.");
        }
        return best;
    }

    /** Forces that nodes exert on members less the loads on nodes: reactions, or what is left over. */
    private double[] unbalanced(double[] largest) {
        double[] forces = new double[movements.length];
        for (int e = 0; e < present.length; e++) {
            if (present[e]) {
                Element element = system.elements().get(e);
                double[] nodes = new double[12];
                FrameSystem.gather(element, movements, nodes);
                double[] ends = element.nodeForces(state(e), nodes);
                FrameSystem.add(element, ends, 1, forces);
                for (int i = 0; i < 12; i++) {
                    largest[i / 3 % 2] = Math.max(largest[i / 3 % 2], Math.abs(ends[i]));
                }
                // Where all moments vanish, they do so to the rounding of force times length.
                largest[1] = Math.max(largest[1], largest[0] * element.length());
            }
        }
        for (int i = 0; i < forces.length; i++) {
            forces[i] -= loads.nodal()[i];
            largest[i / 3 % 2] = Math.max(largest[i / 3 % 2], Math.abs(loads.nodal()[i]));
        }
        return forces;
    }

    /**
     * Gives what the supports of a node exert on the structure, rigid ones and springs together.
     *
     * @param node the node
     * @return the reaction
     * @throws IllegalArgumentException if there is no such node, or it has no support
     */
    public Reaction reaction(String node) {
        int index = model().indexOfNode(node);
        if (!system.holds().isSupported(index)) {
            throw new IllegalArgumentException(
                    "node " + node + " has no support; allowed are nodes with one.");
        }
        return reactionAt(index, unbalanced(new double[2]));
    }

    /**
     * Lists what all supports exert on the structure.
     *
     * @return one reaction for each node with a support, in the order of the nodes
     */
    public List<Reaction> reactions() {
        double[] forces = unbalanced(new double[2]);
        List<Reaction> reactions = new ArrayList<>();
        for (int i = 0; i < model().nodes().size(); i++) {
            if (system.holds().isSupported(i)) {
                reactions.add(reactionAt(i, forces));
            }
        }
        return List.copyOf(reactions);
    }

    private Reaction reactionAt(int node, double[] forces) {
        return new Reaction(
                model().nodes().get(node).name(),
                Vector.of(forces, 6 * node),
                Vector.of(forces, 6 * node + 3));
    }

    /**
     * Tells how well the solution is in equilibrium, node by node and as a whole. That of a second-order
     * analysis is taken where loads and nodes are after the movement; its moment keeps what changes of
     * length of members make of it, which that theory leaves out.
     *
     * @return what is left over
     */
    public Equilibrium equilibrium() {
        double[] largest = new double[2];
        double[] forces = unbalanced(largest);
        double[] left = forces.clone();
        for (Support spring : system.holds().springs()) {
            int node = model().indexOfNode(spring.node());
            double[] d = FrameSystem.direction(spring);
            double pull = -spring.stiffness() * stretch(spring);
            for (int k = 0; k < 6; k++) {
                left[6 * node + k] -= pull * d[k];
            }
        }
        system.holds().allToOwn(left);
        double residual = 0;
        double[] worst = new double[2];
        for (int i = 0; i < left.length; i++) {
            if (system.unknown(i) >= 0) {
                worst[i / 3 % 2] = Math.max(worst[i / 3 % 2], Math.abs(left[i]));
            }
        }
        for (int k = 0; k < 2; k++) {
            if (largest[k] > 0) {
                residual = Math.max(residual, worst[k] / largest[k]);
            }
        }
        Vector force = Vector.ZERO;
        Vector moment = Vector.ZERO;
        boolean deformed = system.isDeformed();
        for (int n = 0; n < model().nodes().size(); n++) {
            Vector place = model().nodes().get(n).place();
            place = deformed ? place.plus(Vector.of(movements, 6 * n)) : place;
            Vector applied = Vector.of(loads.nodal(), 6 * n);
            Vector couple = Vector.of(loads.nodal(), 6 * n + 3);
            if (system.holds().isSupported(n)) {
                applied = applied.plus(Vector.of(forces, 6 * n));
                couple = couple.plus(Vector.of(forces, 6 * n + 3));
            }
            force = force.plus(applied);
            moment = moment.plus(couple).plus(place.cross(applied));
        }
        for (int e = 0; e < present.length; e++) {
            if (present[e] && loads.isLoaded(e)) {
                Element element = system.elements().get(e);
                double[] sum = Element.resultant(loads.member(e));
                Vector local = element.globalVector(sum, 0);
                Vector place = element.startPlace(model());
                if (element.isDeformed()) {
                    moment = moment.plus(element.globalVector(state(e).momentOfMovement(), 0));
                }
                force = force.plus(local);
                moment = moment.plus(element.globalVector(sum, 3)).plus(place.cross(local));
            }
        }
        return new Equilibrium(residual, force, moment);
    }

    /** How far a spring support is stretched: movement of its node less that of the ground. */
    private double stretch(Support spring) {
        int at = 6 * model().indexOfNode(spring.node());
        double[] d = FrameSystem.direction(spring);
        double stretch = 0;
        for (int k = 0; k < 6; k++) {
            stretch += d[k] * (movements[at + k] - loads.ground()[at + k]);
        }
        return loads.takesPlaces() ? stretch - system.rest(spring) : stretch;
    }

    /**
     * Gives the energy balance.
     *
     * @return energy stored, and work done
     */
    public Energy energy() {
        double strain = 0;
        double work = 0;
        for (int e = 0; e < present.length; e++) {
            if (!present[e]) {
                continue;
            }
            ElementState state = state(e);
            if (system.elements().get(e) instanceof LinkElement link) {
                double[] twelve = new double[12];
                FrameSystem.gather(link, movements, twelve);
                double[] local = link.toLocal(twelve);
                strain += link.springEnergy(local, loads.member(e));
                work -= link.restWork(local, loads.member(e)) / 2;
            } else {
                double[] nodes = new double[12];
                FrameSystem.gather(system.elements().get(e), movements, nodes);
                strain += state.strainEnergy() + state.jointEnergy(endMovements(e));
                strain += system.elements().get(e).armEnergy(nodes);
            }
            work += (state.loadWork() - state.imposedWork()) / 2;
        }
        for (Support spring : system.holds().springs()) {
            double stretch = stretch(spring);
            strain += spring.stiffness() * stretch * stretch / 2;
        }
        double[] forces = unbalanced(new double[2]);
        for (int i = 0; i < movements.length; i++) {
            work += loads.nodal()[i] * movements[i] / 2;
            work += forces[i] * loads.ground()[i] / 2;
        }
        // Supports that took their nodes after these had moved hold them there.
        double[] rigid = forces;
        for (Support spring : system.holds().springs()) {
            double pull = -spring.stiffness() * stretch(spring);
            work += loads.takesPlaces() ? pull * system.rest(spring) / 2 : 0;
            int at = 6 * model().indexOfNode(spring.node());
            double[] d = FrameSystem.direction(spring);
            for (int k = 0; k < 6; k++) {
                rigid[at + k] -= pull * d[k];
            }
        }
        double[] places = system.places();
        for (int i = 0; i < places.length && loads.takesPlaces(); i++) {
            work += rigid[i] * places[i] / 2;
        }
        return new Energy(strain, work);
    }

    private double[] endMovements(int index) {
        Element element = system.elements().get(index);
        double[] twelve = new double[12];
        FrameSystem.gather(element, movements, twelve);
        return element.toLocal(twelve);
    }

    /** Another solution of the same structure. */
    FrameSolution with(String otherName, AppliedLoads otherLoads, double[] otherMovements) {
        return new FrameSolution(otherName, system, otherLoads, otherMovements, present, warnings);
    }

    boolean sameParts(FrameSolution other) {
        return Arrays.equals(present, other.present);
    }

    FrameSystem system() {
        return system;
    }

    AppliedLoads loads() {
        return loads;
    }

    double[] movements() {
        return movements;
    }
}
