package org.skewback.frame;

import org.skewback.data.CsvTable;

/** What inputs of routines of a frame that moves have besides: its masses, and what is on it by then. */
interface MovingInput extends FrameInput {

    String masses();

    String loads();

    String preload();

    int pieces();

    /**
     * Gives the analysis of the structure as it moves.
     *
     * @return the analysis
     */
    default ModalAnalysis moving() {
        FrameModel model = model();
        ModalAnalysis analysis = ModalAnalysis.of(model).divided(pieces());
        if (!masses().isBlank()) {
            MotionTables.Masses all =
                    MotionTables.masses(CsvTable.parse("masses", masses()), byName());
            analysis =
                    analysis.with(all.nodal().toArray(new NodalMass[0]))
                            .with(all.lines().toArray(new LineMass[0]));
        }
        return preload().isBlank()
                ? analysis
                : analysis.under(
                        Superposition.of(
                                LinearAnalysis.of(model).solve(cases(loads())),
                                FrameInput.combination(preload())));
    }
}
