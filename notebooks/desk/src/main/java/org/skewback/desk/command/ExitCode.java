package org.skewback.desk.command;

/** What the program tells the system when it ends. */
final class ExitCode {

    /** Done; when issuing, every check passed. */
    static final int DONE = 0;

    /** Issued, but a check failed, or something is stale. */
    static final int CHECKS_OPEN = 1;

    /** Audited or compared, and something differs. */
    static final int DIFFERS = 1;

    /** The kernel runs, but something about it is to be mended. */
    static final int TO_MEND = 1;

    /** Not done; when auditing, it cannot be told. */
    static final int NOT_DONE = 2;

    /** The command line is not understood. */
    static final int USAGE = 64;

    private ExitCode() {}
}
