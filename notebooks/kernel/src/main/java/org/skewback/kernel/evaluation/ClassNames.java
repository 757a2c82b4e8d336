package org.skewback.kernel.evaluation;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.commons.ClassRemapper;
import org.objectweb.asm.commons.Remapper;

/**
 * How the classes of one JShell are called in the worker. The first JShell's keep their names. One that
 * follows begins to count anew, so its classes get a mark, but for those that it has taken over: they go
 * on under the names that the worker knows.
 */
final class ClassNames {

    /** Begins the name of every class that JShell makes around code. */
    static final String WRAPPER = "REPL.$JShell$";

    private static final String MARK = "g";
    private static final Pattern MARKED = Pattern.compile("\\w+" + MARK + "[0-9]+");

    private final String mark;
    private final boolean first;
    private final Map<String, String> inWorker = new HashMap<>();
    private final Map<String, String> inShell = new HashMap<>();
    private final Map<String, Integer> linesAbove = new HashMap<>();

    /**
     * Begins without any class.
     *
     * @param generation number of the JShell, from 0
     */
    ClassNames(int generation) {
        mark = mark(generation);
        first = generation == 0;
    }

    /** What marks the names and snippets of a JShell; nothing for the first. */
    static String mark(int generation) {
        return generation == 0 ? "" : MARK + generation;
    }

    /** The class that JShell made around a class, or that class itself. */
    static String outer(String name) {
        int end = name.indexOf('$', WRAPPER.length());
        return end < 0 ? name : name.substring(0, end);
    }

    /**
     * Names classes that are new to the worker.
     *
     * @param names what JShell calls them
     * @param used names that the worker has seen, whether it needs them any more or not
     */
    void add(List<String> names, Set<String> used) {
        for (String name : names.stream().sorted(Comparator.comparing(String::length)).toList()) {
            if (!inWorker.containsKey(name)) {
                String outer = outer(name);
                String given =
                        name.equals(outer)
                                ? name + mark
                                : toWorker(outer) + name.substring(outer.length());
                while (!first && used.contains(given)) {
                    given += "$$" + mark;
                }
                take(name, given, 0);
            }
        }
    }

    /**
     * Takes a class over that the worker has.
     *
     * @param name what JShell calls it
     * @param known what the worker calls it
     * @param lines how many more lines stand above its code in the worker than in JShell
     */
    void take(String name, String known, int lines) {
        inWorker.put(name, known);
        inShell.put(known, name);
        if (lines != 0) {
            linesAbove.put(known, lines);
        }
    }

    /** Says that the worker has a class just as JShell has it now, line for line. */
    void current(String known) {
        linesAbove.remove(known);
    }

    /** What the worker calls a class. */
    String toWorker(String name) {
        return inWorker.getOrDefault(name, name);
    }

    /** Bytecode of a class as the worker is to have it. */
    byte[] toWorker(byte[] bytecode) {
        if (first) {
            return bytecode;
        }
        ClassWriter writer = new ClassWriter(0);
        new ClassReader(bytecode).accept(new ClassRemapper(writer, new Names(inWorker)), 0);
        return writer.toByteArray();
    }

    /** A frame of the worker as JShell knows it; one of a class that JShell has never seen is marked. */
    StackTraceElement toShell(StackTraceElement frame) {
        String name = frame.getClassName();
        if (first || !name.startsWith(WRAPPER)) {
            return frame;
        }
        String known = inShell.get(name);
        if (known != null) {
            int line = frame.getLineNumber();
            return new StackTraceElement(
                    known,
                    frame.getMethodName(),
                    frame.getFileName(),
                    line > 0 ? line - linesAbove.getOrDefault(name, 0) : line);
        }
        String outer = outer(name);
        Matcher marked = MARKED.matcher(outer.substring(WRAPPER.length()));
        String told = marked.matches() ? name : outer + MARK + 0 + name.substring(outer.length());
        return new StackTraceElement(
                told, frame.getMethodName(), frame.getFileName(), frame.getLineNumber());
    }

    /** Whether JShell knows a class of the worker. */
    boolean isKnown(String known) {
        return first || inShell.containsKey(known);
    }

    /** Renames classes by a table of names with dots. */
    static final class Names extends Remapper {

        private final Map<String, String> table;

        Names(Map<String, String> table) {
            super(Opcodes.ASM9);
            this.table = table;
        }

        @Override
        public String map(String internalName) {
            String name = table.get(internalName.replace('/', '.'));
            return name == null ? internalName : name.replace('.', '/');
        }

        // What the author called it stays, whatever the class around it is called.
        @Override
        public String mapInnerClassName(String name, String ownerName, String innerName) {
            return innerName;
        }
    }
}
