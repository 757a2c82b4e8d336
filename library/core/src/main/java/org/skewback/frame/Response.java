package org.skewback.frame;

import java.util.ArrayList;
import java.util.List;
import org.skewback.steel.Fibre;
import org.skewback.steel.Section;

/**
 * A single number wanted of a structure, for which influence lines are made: a force at a section, a
 * stress, a movement or a reaction.
 *
 * <p>Its influence line is the movement of the structure under one unit cause (E. Betti 1872; J. C.
 * Maxwell, <i>Phil. Mag.</i> 27 (1864) 294): the conjugate gap for a force, the conjugate force for a
 * movement, and a movement of the ground against the reaction.
 */
public sealed interface Response {

    /**
     * Makes the response of a force at a section.
     *
     * @param member the member
     * @param position distance from its start, m
     * @param component the force
     * @return the response, N or N·m
     */
    static Response force(String member, double position, ForceComponent component) {
        return new OfForce(member, position, component);
    }

    /**
     * Makes the response of the normal stress at a fibre.
     *
     * @param member the member
     * @param position distance from its start, m
     * @param section the section there
     * @param fibre the fibre
     * @return the response, Pa, positive in tension
     */
    static Response stress(String member, double position, Section section, Fibre fibre) {
        return new OfStress(member, position, section, fibre);
    }

    /**
     * Makes the response of a displacement of a node.
     *
     * @param node the node
     * @param direction direction along which, made a unit vector
     * @return the response, m
     */
    static Response displacement(String node, Vector direction) {
        return new OfMovement(node, direction.unit(), false);
    }

    /**
     * Makes the response of a rotation of a node.
     *
     * @param node the node
     * @param axis axis about which, made a unit vector
     * @return the response, rad
     */
    static Response rotation(String node, Vector axis) {
        return new OfMovement(node, axis.unit(), true);
    }

    /**
     * Makes the response of a force that the supports of a node exert.
     *
     * @param node the node
     * @param direction direction along which it counts, made a unit vector
     * @return the response, N
     */
    static Response reaction(String node, Vector direction) {
        return new OfReaction(node, direction.unit(), false);
    }

    /**
     * Makes the response of a moment that the supports of a node exert.
     *
     * @param node the node
     * @param axis axis about which it counts, made a unit vector
     * @return the response, N·m
     */
    static Response reactionMoment(String node, Vector axis) {
        return new OfReaction(node, axis.unit(), true);
    }

    /**
     * Gives the value in a solution.
     *
     * @param solution the solution
     * @return the value, SI
     */
    double in(FrameSolution solution);

    /**
     * Gives the unit cause whose movements are the influence.
     *
     * @return loads of one unit
     */
    List<Load> unitCause();

    /**
     * A force at a section.
     *
     * @param member the member
     * @param position distance from its start, m
     * @param component the force
     */
    record OfForce(String member, double position, ForceComponent component) implements Response {
        @Override
        public double in(FrameSolution solution) {
            return solution.member(member).at(position).get(component);
        }

        @Override
        public List<Load> unitCause() {
            return List.of(new Dislocation(member, position, component, 1));
        }
    }

    /**
     * A normal stress.
     *
     * @param member the member
     * @param position distance from its start, m
     * @param section the section there
     * @param fibre the fibre
     */
    record OfStress(String member, double position, Section section, Fibre fibre)
            implements Response {
        @Override
        public double in(FrameSolution solution) {
            return solution.member(member).at(position).stress(section, fibre);
        }

        @Override
        public List<Load> unitCause() {
            List<Load> gaps = new ArrayList<>();
            gaps.add(new Dislocation(member, position, ForceComponent.AXIAL, 1 / section.area()));
            if (fibre.z() != 0) {
                gaps.add(
                        new Dislocation(
                                member,
                                position,
                                ForceComponent.MOMENT_Y,
                                -fibre.z() / section.inertiaY()));
            }
            if (fibre.y() != 0) {
                gaps.add(
                        new Dislocation(
                                member,
                                position,
                                ForceComponent.MOMENT_Z,
                                -fibre.y() / section.inertiaZ()));
            }
            return List.copyOf(gaps);
        }
    }

    /**
     * A movement of a node.
     *
     * @param node the node
     * @param direction unit vector along which or about which
     * @param rotation whether it is a rotation
     */
    record OfMovement(String node, Vector direction, boolean rotation) implements Response {
        @Override
        public double in(FrameSolution solution) {
            Movement movement = solution.movement(node);
            return direction.dot(rotation ? movement.rotation() : movement.translation());
        }

        @Override
        public List<Load> unitCause() {
            return List.of(
                    rotation
                            ? new NodalLoad(node, Vector.ZERO, direction)
                            : new NodalLoad(node, direction, Vector.ZERO));
        }
    }

    /**
     * A reaction.
     *
     * @param node the node
     * @param direction unit vector along which or about which it counts
     * @param moment whether it is a moment
     */
    record OfReaction(String node, Vector direction, boolean moment) implements Response {
        @Override
        public double in(FrameSolution solution) {
            Reaction reaction = solution.reaction(node);
            return direction.dot(moment ? reaction.moment() : reaction.force());
        }

        @Override
        public List<Load> unitCause() {
            Vector against = direction.times(-1);
            return List.of(
                    moment
                            ? new GroundMovement(node, Vector.ZERO, against)
                            : new GroundMovement(node, against, Vector.ZERO));
        }
    }
}
