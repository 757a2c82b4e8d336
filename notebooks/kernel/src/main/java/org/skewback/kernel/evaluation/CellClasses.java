package org.skewback.kernel.evaluation;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The classes of cells that the worker holds, under their names there. */
final class CellClasses {

    private final Set<String> used = new HashSet<>();
    private final Map<String, byte[]> bytecodes = new HashMap<>();

    /** Names that were ever given; the worker never forgets a class. */
    Set<String> used() {
        return used;
    }

    /** Says that the worker has a class, new or with a new body. */
    void put(String name, byte[] bytecode) {
        used.add(name);
        bytecodes.put(name, bytecode);
    }

    /** The bytecode of a class as JShell gave it, or null if it is of no more use. */
    byte @Nullable [] bytecode(String name) {
        return bytecodes.get(name);
    }

    /** Forgets the bytecode of all classes but some. */
    void keep(Collection<String> names) {
        bytecodes.keySet().retainAll(Set.copyOf(names));
    }
}
