package org.skewback.kernel.evaluation;

import java.io.IOException;

/** The worker VM has ended, with all variables of the notebook. */
final class WorkerGoneException extends IOException {

    private static final long serialVersionUID = 1L;

    WorkerGoneException(String message) {
        super(message);
    }
}
