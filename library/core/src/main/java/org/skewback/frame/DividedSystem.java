package org.skewback.frame;

import java.util.function.IntFunction;
import org.skewback.numeric.SymmetricAssembler;
import org.skewback.numeric.SymmetricMatrix;

/** A model divided into pieces, with its unknowns and the sums over its pieces. */
final class DividedSystem {

    private final FrameModel model;
    private final Division division;
    private final FrameSystem system;
    private final boolean[] present;

    DividedSystem(FrameSystem whole, boolean[] members, int parts) {
        model = whole.model();
        division = Division.of(model, whole.elements(), parts);
        system = new FrameSystem(division.model());
        present = division.present(members);
    }

    FrameModel model() {
        return model;
    }

    Division division() {
        return division;
    }

    FrameSystem system() {
        return system;
    }

    boolean isPresent(int piece) {
        return present[piece];
    }

    SymmetricMatrix stiffness() {
        return system.stiffness(present);
    }

    /** Sums a matrix of the pieces that are there, motions of their nodes, global axes. */
    SymmetricMatrix sum(IntFunction<double[][]> matrixOfPiece) {
        SymmetricAssembler assembler = assembler();
        add(assembler, matrixOfPiece);
        return assembler.matrix();
    }

    SymmetricAssembler assembler() {
        return new SymmetricAssembler(system.stiffnessPattern());
    }

    void add(SymmetricAssembler assembler, IntFunction<double[][]> matrixOfPiece) {
        for (int p = 0; p < present.length; p++) {
            if (present[p]) {
                Element piece = system.elements().get(p);
                assembler.add(
                        system.unknownsOf(piece),
                        system.holds().toOwn(matrixOfPiece.apply(p), piece.start(), piece.end()));
            }
        }
    }

    /** Movements of all nodes, six each, global axes, for values of the unknowns. */
    double[] movements(double[] x) {
        double[] u = new double[6 * division.model().nodes().size()];
        for (int i = 0; i < u.length; i++) {
            if (system.unknown(i) >= 0) {
                u[i] = x[system.unknown(i)];
            }
        }
        system.holds().toGlobal(u);
        return u;
    }

    /** Movement of a point of a piece, global axes, at a position on its member. */
    Movement movement(int piece, double position, double[] movements) {
        Element element = system.elements().get(piece);
        double[] twelve = new double[12];
        FrameSystem.gather(element, movements, twelve);
        double[] u =
                element.state(element.toLocal(twelve), ElementLoad.NONE)
                        .movement(
                                Math.min(
                                        position - division.piece(piece).from(), element.length()));
        return new Movement(element.globalVector(u, 0), element.globalVector(u, 3));
    }

    /** ½ uᵀ A u of a member, A given by piece. */
    double energy(int member, double[] u, IntFunction<double[][]> matrixOfPiece) {
        double sum = 0;
        double[] twelve = new double[12];
        for (int p = division.first(member); p < division.after(member); p++) {
            if (present[p]) {
                FrameSystem.gather(system.elements().get(p), u, twelve);
                double[] force = FrameSystem.times(matrixOfPiece.apply(p), twelve);
                for (int i = 0; i < 12; i++) {
                    sum += force[i] * twelve[i] / 2;
                }
            }
        }
        return sum;
    }
}
