package org.skewback.desk.audit;

import java.util.Locale;

/** What an audit spends time on. */
public enum Stage {
    /** The manifest, each file's digest, and signatures. */
    FILES("files and signatures"),
    /** Records and notebooks, read to be worked out. */
    RECORDS("records read"),
    /** Routines of the library, called with what is recorded. */
    ROUTINES("routines called"),
    /** All that is worked out without a routine. */
    ARITHMETIC("arithmetic and verdicts"),
    /** Pages for the screen, made again and held against those of the issue. */
    SCREEN("pages held against the records"),
    /** The PDF, read beside the records and pages. */
    PDF("PDF read"),
    /** The PDF's text, held against the records once both are read. */
    PRINT("PDF held against the records"),
    /** The whole process that works numbers out, with what Java does to start and to compile. */
    NUMBERS_PROCESS("all of the process for numbers"),
    /** The whole process that looks at pages, with what Java does to start and to compile. */
    PAGES_PROCESS("all of the process for pages"),
    /** The process that was started by hand; its time holds the other two. */
    PROGRAM("the program, until its report");

    private final String words;

    Stage(String words) {
        this.words = words;
    }

    /**
     * Says it in words.
     *
     * @return such as {@code routines called}
     */
    public String inWords() {
        return words;
    }

    /** Name in JSON. */
    String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
