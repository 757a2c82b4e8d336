package org.skewback.kernel.worker;

import java.io.File;
import java.lang.instrument.ClassDefinition;
import java.lang.instrument.Instrumentation;
import java.lang.instrument.UnmodifiableClassException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Holds the classes of the cells and the class path of the notebook. */
final class CellLoader extends URLClassLoader {

    private final Map<String, byte[]> waiting = new ConcurrentHashMap<>();
    private final Map<String, Class<?>> defined = new ConcurrentHashMap<>();

    CellLoader() {
        super("cells", new URL[0], CellLoader.class.getClassLoader());
    }

    /** Takes the bytecode of a class not yet seen. */
    void declare(String name, byte[] bytecode) {
        waiting.put(name, bytecode);
    }

    /**
     * Gives classes new bodies and keeps the values of their static fields.
     *
     * @throws UnmodifiableClassException if a class cannot be changed
     * @throws ClassNotFoundException if a class is unknown
     * @throws UnsupportedOperationException if more than bodies would change
     */
    void redefine(Instrumentation instrumentation, Map<String, byte[]> bytecodes)
            throws UnmodifiableClassException, ClassNotFoundException {
        List<ClassDefinition> definitions = new ArrayList<>();
        for (Map.Entry<String, byte[]> entry : bytecodes.entrySet()) {
            Class<?> known = defined.get(entry.getKey());
            if (known == null) {
                declare(entry.getKey(), entry.getValue());
            } else {
                definitions.add(new ClassDefinition(known, entry.getValue()));
            }
        }
        if (!definitions.isEmpty()) {
            instrumentation.redefineClasses(definitions.toArray(new ClassDefinition[0]));
        }
    }

    /**
     * Adds a jar or folder of classes.
     *
     * @throws MalformedURLException if the path is not one
     */
    void addPath(String path) throws MalformedURLException {
        addURL(new File(path).toURI().toURL());
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
        byte[] bytecode = waiting.remove(name);
        if (bytecode == null) {
            return super.findClass(name);
        }
        Class<?> type = defineClass(name, bytecode, 0, bytecode.length);
        defined.put(name, type);
        return type;
    }
}
