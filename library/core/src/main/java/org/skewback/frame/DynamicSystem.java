package org.skewback.frame;

import java.util.List;
import org.skewback.numeric.SymmetricAssembler;
import org.skewback.numeric.SymmetricMatrix;

/**
 * Stiffness and mass of a divided model, and the inertia forces of a unit acceleration.
 *
 * @param divided the model
 * @param stiffness K
 * @param mass M
 * @param drag for x, y and z the forces on the unknowns, in the sense of the acceleration, when all of
 *     the structure is accelerated by 1 m/s²: M r with the masses at held motions in it
 * @param total mass of all, kg
 * @param extra mass carried along each member besides its own, kg/m
 * @param nodal masses at nodes
 */
@SuppressWarnings("ArrayRecordComponent") // stays in this package, never changed
record DynamicSystem(
        DividedSystem divided,
        SymmetricMatrix stiffness,
        SymmetricMatrix mass,
        double[][] drag,
        double total,
        double[] extra,
        List<NodalMass> nodal) {

    /** Mass of a piece, motions of its nodes, global axes. */
    double[][] massOf(int piece) {
        return SecondOrder.mass(
                divided.system().elements().get(piece),
                extra[divided.division().piece(piece).member()]);
    }

    static DynamicSystem of(
            DividedSystem divided,
            SymmetricMatrix stiffness,
            double[] extra,
            List<NodalMass> nodal) {
        FrameSystem system = divided.system();
        double[][] forces = new double[3][6 * divided.division().model().nodes().size()];
        double[] total = new double[1];
        SymmetricAssembler assembler = divided.assembler();
        divided.add(
                assembler,
                p -> {
                    Element piece = system.elements().get(p);
                    double[][] m =
                            SecondOrder.mass(piece, extra[divided.division().piece(p).member()]);
                    for (int axis = 0; axis < 3; axis++) {
                        double[] together = new double[12];
                        together[axis] = 1;
                        together[6 + axis] = 1;
                        double[] force = FrameSystem.times(m, together);
                        FrameSystem.add(piece, force, 1, forces[axis]);
                        total[0] += axis == 0 ? force[0] + force[6] : 0;
                    }
                    return m;
                });
        ModalAnalysis.addNodal(divided, nodal, assembler);
        for (NodalMass mass : nodal) {
            int node = divided.model().indexOfNode(mass.node());
            total[0] += mass.mass();
            for (int axis = 0; axis < 3; axis++) {
                forces[axis][6 * node + axis] += mass.mass();
            }
        }
        double[][] drag = new double[3][system.count()];
        for (int axis = 0; axis < 3; axis++) {
            system.holds().allToOwn(forces[axis]);
            for (int i = 0; i < forces[axis].length; i++) {
                if (system.unknown(i) >= 0) {
                    drag[axis][system.unknown(i)] = forces[axis][i];
                }
            }
        }
        return new DynamicSystem(
                divided, stiffness, assembler.matrix(), drag, total[0], extra, nodal);
    }
}
