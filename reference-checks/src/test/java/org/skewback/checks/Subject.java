package org.skewback.checks;

import java.util.Map;

/**
 * The checks of one package of the library. Whoever adds a topic adds a class that implements this,
 * a line in {@code META-INF/services}, and a table {@code TOPIC.csv} beside it. A large topic may be told
 * in several such classes, each with a table of its own.
 */
interface Subject {

    /** The package exercised, without its prefix, such as {@code form}. */
    String topic();

    /** Name of the table, without its ending. */
    default String table() {
        return topic();
    }

    /** The routines exercised, by the names that the table uses. */
    Map<String, Checked> routines();
}
