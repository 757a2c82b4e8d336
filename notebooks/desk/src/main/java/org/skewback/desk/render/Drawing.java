package org.skewback.desk.render;

/** What of equations and pictures goes into the book that is printed. */
enum Drawing {
    /** All. */
    DONE,
    /** Words alone, once each picture has been found to be one that can be printed. */
    TRIED,
    /** Words alone. */
    LEFT_OUT
}
