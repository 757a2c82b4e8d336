package org.skewback.kernel.evaluation;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Enumeration;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.jspecify.annotations.Nullable;

/**
 * Finds what the authors of the notebook's libraries wrote about a class or method: in the source jar
 * that lies beside the jar, as build tools place it. JShell itself looks into the platform's sources
 * only.
 */
final class SourceDocs {

    // As JShell writes a signature: "Quantity Quantity.plus(Quantity other)", "pkg.Name<T>".
    private static final Pattern MEMBER =
            Pattern.compile("^(?:.*\\s)?([\\w$.]+?)(?:<.*?>)?\\.(\\w+)\\((.*)\\).*$");
    private static final Pattern CONSTRUCTOR = Pattern.compile("^([\\w$]+)(?:<.*?>)?\\((.*)\\).*$");
    private static final Pattern FIELD = Pattern.compile("^([\\w$.]+?)(?:<.*?>)?\\.(\\w+):.*$");
    private static final Pattern TYPE = Pattern.compile("^([\\w$.]+)(?:<.*>)?$");

    private SourceDocs() {}

    /** A member of a class, or the class itself where the name is null. */
    private record Wanted(String type, @Nullable String member, int parameters) {}

    /**
     * Finds the words.
     *
     * @param signature a signature as JShell writes it
     * @param jars jars of the notebook's class path
     * @return the comment as written, empty where none is found
     */
    static Optional<String> find(String signature, Collection<Path> jars) {
        Optional<Wanted> wanted = wanted(signature.strip());
        if (wanted.isEmpty()) {
            return Optional.empty();
        }
        for (Path jar : jars) {
            String name = String.valueOf(jar.getFileName());
            Path sources = jar.resolveSibling(name.replaceFirst("\\.jar$", "-sources.jar"));
            if (!sources.equals(jar) && Files.isRegularFile(sources)) {
                Optional<String> found = in(sources, wanted.get());
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Wanted> wanted(String signature) {
        Matcher member = MEMBER.matcher(signature);
        if (member.matches()) {
            return Optional.of(
                    new Wanted(member.group(1), member.group(2), count(member.group(3))));
        }
        Matcher field = FIELD.matcher(signature);
        if (field.matches()) {
            return Optional.of(new Wanted(field.group(1), field.group(2), -1));
        }
        Matcher constructor = CONSTRUCTOR.matcher(signature);
        if (constructor.matches()) {
            return Optional.of(
                    new Wanted(constructor.group(1), "<init>", count(constructor.group(2))));
        }
        Matcher type = TYPE.matcher(signature);
        return type.matches() ? Optional.of(new Wanted(type.group(1), null, -1)) : Optional.empty();
    }

    /** Parameters of a list, whose types may have type arguments. */
    private static int count(String parameters) {
        if (parameters.isBlank()) {
            return 0;
        }
        int count = 1;
        int depth = 0;
        for (int i = 0; i < parameters.length(); i++) {
            switch (parameters.charAt(i)) {
                case '<' -> depth++;
                case '>' -> depth--;
                case ',' -> count += depth == 0 ? 1 : 0;
                default -> {
                    // Part of a type or a name.
                }
            }
        }
        return count;
    }

    private static Optional<String> in(Path sources, Wanted wanted) {
        String simple = wanted.type.substring(wanted.type.lastIndexOf('.') + 1);
        String file = wanted.type.replace('.', '/') + ".java";
        try (ZipFile zip = new ZipFile(sources.toFile())) {
            for (Enumeration<? extends ZipEntry> e = zip.entries(); e.hasMoreElements(); ) {
                ZipEntry entry = e.nextElement();
                if (entry.getName().equals(file) || entry.getName().endsWith("/" + file)) {
                    try (InputStream in = zip.getInputStream(entry)) {
                        String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
                        return comment(text, simple, wanted);
                    }
                }
            }
        } catch (IOException e) {
            // A source jar that cannot be read tells as much as one that is not there.
        }
        return Optional.empty();
    }

    private static Optional<String> comment(String source, String type, Wanted wanted)
            throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        JavaFileObject file =
                new SimpleJavaFileObject(
                        URI.create("memory:///Source.java"), JavaFileObject.Kind.SOURCE) {
                    @Override
                    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                        return source;
                    }
                };
        JavacTask task =
                (JavacTask)
                        compiler.getTask(
                                null,
                                null,
                                diagnostic -> {},
                                List.of("-proc:none"),
                                null,
                                List.of(file));
        DocTrees docs = DocTrees.instance(task);
        List<String> found = new ArrayList<>();
        for (CompilationUnitTree unit : task.parse()) {
            new TreePathScanner<@Nullable Void, String>() {
                @Override
                public @Nullable Void visitClass(ClassTree tree, String outer) {
                    String name = tree.getSimpleName().toString();
                    if (wanted.member == null && name.equals(type)) {
                        add();
                    }
                    return super.visitClass(tree, name);
                }

                @Override
                public @Nullable Void visitMethod(MethodTree tree, String outer) {
                    if (outer.equals(type)
                            && tree.getName().contentEquals(String.valueOf(wanted.member))
                            && tree.getParameters().size() == wanted.parameters) {
                        add();
                    }
                    return null;
                }

                @Override
                public @Nullable Void visitVariable(VariableTree tree, String outer) {
                    if (outer.equals(type)
                            && wanted.parameters < 0
                            && tree.getName().contentEquals(String.valueOf(wanted.member))) {
                        add();
                    }
                    return null;
                }

                private void add() {
                    String comment = docs.getDocComment(getCurrentPath());
                    if (comment != null) {
                        found.add(comment);
                    }
                }
            }.scan(unit, "");
        }
        return found.stream().findFirst();
    }
}
