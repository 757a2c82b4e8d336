package org.skewback.kernel;

/** A channel that carries signed messages. */
enum Channel {
    SHELL,
    CONTROL,
    STDIN,
    IOPUB
}
