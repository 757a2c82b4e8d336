package org.skewback.kernel.evaluation;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import jdk.jshell.MethodSnippet;
import jdk.jshell.PersistentSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.VarSnippet;
import org.jspecify.annotations.Nullable;
import org.skewback.kernel.evaluation.Generation.Declared;

/**
 * Makes a JShell that knows what another has declared, and nothing of all that it has run and replaced:
 * JShell keeps every snippet, each with a text of all imports of its time, and reads all classes that it
 * ever made anew for each piece of code. The new one compiles what is declared and runs none of it. Its
 * classes must then be those that the worker has, so it goes on where the other was; if one differs, it is
 * given up.
 */
final class Renewal {

    /** What declares the same thing. */
    private record Key(Snippet.Kind kind, String name) {
        static Key of(Snippet snippet) {
            if (snippet instanceof MethodSnippet method) {
                return new Key(method.kind(), method.name() + "(" + method.parameterTypes() + ")");
            }
            return snippet instanceof PersistentSnippet named
                            && snippet.kind() != Snippet.Kind.IMPORT
                    ? new Key(snippet.kind(), named.name())
                    : new Key(snippet.kind(), snippet.source().strip());
        }
    }

    /**
     * A declaration of the former JShell and what the new one made of it.
     *
     * @param bare whether it is a variable of which only the type is known, not how it got its value
     */
    private record Taken(Snippet from, Snippet to, boolean bare) {}

    private static final Map<String, String> BOXES =
            Map.of(
                    "boolean",
                    "Boolean",
                    "byte",
                    "Byte",
                    "short",
                    "Short",
                    "char",
                    "Character",
                    "int",
                    "Integer",
                    "long",
                    "Long",
                    "float",
                    "Float",
                    "double",
                    "Double");

    private static final Pattern ANONYMOUS =
            Pattern.compile("\\$\\$JShell\\$anonymous\\$\\$([0-9]+)(.*)");
    private static final Pattern MARKS = Pattern.compile("(\\$\\$g[0-9]+)+$");

    private final Generation next;
    private final Map<Key, Taken> taken = new HashMap<>();

    /**
     * Begins with nothing declared.
     *
     * @param next a JShell whose control only rehearses
     */
    Renewal(Generation next) {
        this.next = next;
    }

    /** The new JShell. */
    Generation next() {
        return next;
    }

    /** How many declarations are still to be followed. */
    int missing(List<Declared> declared) {
        return (int) declared.stream().filter(one -> !isTaken(one)).count();
    }

    private boolean isTaken(Declared one) {
        Taken already = taken.get(Key.of(one.snippet()));
        return already != null && already.from == one.snippet();
    }

    /**
     * Declares what the former JShell has declared and drops what it has dropped.
     *
     * @param declared what it has declared
     * @param classPath its class path
     * @return whether all could be declared
     */
    boolean follow(List<Declared> declared, Collection<Path> classPath) {
        next.addToClassPath(classPath);
        Map<Key, Snippet> wanted = new LinkedHashMap<>();
        declared.forEach(one -> wanted.put(Key.of(one.snippet()), one.snippet()));
        for (Key key : Set.copyOf(taken.keySet())) {
            if (!wanted.containsKey(key)) {
                Taken gone = taken.remove(key);
                if (gone != null) {
                    next.shell().drop(gone.to);
                }
            }
        }
        List<Declared> open = declared.stream().filter(one -> !isTaken(one)).toList();
        while (!open.isEmpty()) {
            // What was declared anew after what uses it comes too late at first.
            List<Declared> left = new ArrayList<>();
            for (Declared one : open) {
                if (!isTaken(one) && !declare(one, wanted)) {
                    left.add(one);
                }
            }
            if (left.size() == open.size()) {
                // What does not compile any more was compiled when its cell ran, and has its value.
                return left.stream().allMatch(one -> declareBare(one.snippet(), one.place()));
            }
            open = left;
        }
        return true;
    }

    private boolean declare(Declared one, Map<Key, Snippet> wanted) {
        boolean accepted = false;
        for (SnippetEvent event : next.evaluate(one.snippet().source(), one.place())) {
            if (event.causeSnippet() != null) {
                continue;
            }
            if (!event.status().isActive()) {
                return false;
            }
            Key key = Key.of(event.snippet());
            Snippet from = wanted.get(key);
            // One text may declare several variables, of which some were declared anew since.
            if (from != null && from.source().equals(one.snippet().source())) {
                taken.put(key, new Taken(from, event.snippet(), false));
                accepted |= from == one.snippet();
            } else {
                taken.remove(key);
                next.shell().drop(event.snippet());
            }
        }
        return accepted;
    }

    /**
     * Declares a variable whose functions use what was declared anew since: they go on with what they
     * were made with. Its value is never asked for; it is one that no author would write, so JShell
     * gives the worker a new body when the variable is declared anew.
     */
    private boolean declareBare(Snippet from, CellErrors.Place place) {
        if (!(from instanceof VarSnippet variable)) {
            return false;
        }
        String type = variable.typeName();
        String source =
                "%s %s = java.util.Optional.<%s>empty().orElse(null);"
                        .formatted(type, variable.name(), BOXES.getOrDefault(type, type));
        for (SnippetEvent event : next.evaluate(source, place)) {
            if (event.causeSnippet() == null) {
                taken.put(Key.of(from), new Taken(from, event.snippet(), true));
                return event.status() == Snippet.Status.VALID;
            }
        }
        return false;
    }

    /**
     * Lets the new JShell take over, if it has made the very classes that the worker has.
     *
     * @param former the JShell that has spoken to the worker so far
     * @param classes the classes that the worker has
     * @return whether it has taken over
     */
    boolean takeOver(Generation former, CellClasses classes) {
        Map<String, Taken> owners = new HashMap<>();
        Map<String, String> known = known(former, classes, owners);
        if (known == null) {
            return false;
        }
        Map<String, Integer> linesAbove = new HashMap<>();
        for (Map.Entry<String, String> entry : known.entrySet()) {
            Taken owner = owners.get(ClassNames.outer(entry.getKey()));
            byte[] made = next.control().rehearsed(entry.getKey());
            byte[] loaded = classes.bytecode(entry.getValue());
            if (owner == null || made == null || loaded == null) {
                return false;
            }
            PlainClass ours = PlainClass.of(made, known);
            PlainClass theirs = PlainClass.of(loaded, Map.of());
            if (owner.bare ? !ours.hasSameFields(theirs) : !ours.isSame(theirs)) {
                return !owner.bare
                        && declareBare(owner.from, former.place(owner.from))
                        && takeOver(former, classes);
            }
            linesAbove.put(entry.getKey(), theirs.linesAbove(ours));
        }
        classes.keep(known.values());
        next.control().connect(classes, known, linesAbove);
        return true;
    }

    /** What the worker calls each class of the new JShell, or null where there is no telling. */
    private @Nullable Map<String, String> known(
            Generation former, CellClasses classes, Map<String, Taken> owners) {
        Map<String, String> known = new HashMap<>();
        Set<String> given = new HashSet<>();
        for (Taken one : taken.values()) {
            if (next.shell().status(one.to) != Snippet.Status.VALID
                    || former.shell().status(one.from) != Snippet.Status.VALID) {
                return null;
            }
            if (!Generation.hasClass(one.to)) {
                continue;
            }
            String made = next.wrappingClass(one.to);
            if (one.to instanceof VarSnippet to
                    && one.from instanceof VarSnippet from
                    && !to.typeName().equals(from.typeName())) {
                return null;
            }
            owners.put(made, one);
            String loaded = former.workerClass(one.from);
            if (known.containsKey(made)) {
                // Methods of one name may stand in one class.
                if (!loaded.equals(known.get(made))) {
                    return null;
                }
                continue;
            }
            Map<String, String> ours = members(made, next.control().rehearsed(made));
            Map<String, String> theirs = members(loaded, classes.bytecode(loaded));
            if (one.bare
                    ? !theirs.keySet().containsAll(ours.keySet())
                    : !ours.keySet().equals(theirs.keySet())) {
                return null;
            }
            for (Map.Entry<String, String> member : ours.entrySet()) {
                String name = theirs.getOrDefault(member.getKey(), "");
                known.put(member.getValue(), name);
                if (!given.add(name)) {
                    return null;
                }
            }
        }
        return known;
    }

    /** A class and what stands in it, by what tells them apart under any JShell. */
    private static Map<String, String> members(String outer, byte @Nullable [] bytecode) {
        Map<String, String> members = new TreeMap<>();
        if (bytecode == null) {
            return members;
        }
        List<String> names = PlainClass.withMembers(bytecode);
        List<Long> numbers =
                names.stream()
                        .map(name -> ANONYMOUS.matcher(name.substring(outer.length())))
                        .filter(Matcher::matches)
                        .map(matcher -> Long.valueOf(matcher.group(1)))
                        .distinct()
                        .sorted()
                        .toList();
        for (String name : names) {
            String rest = MARKS.matcher(name.substring(outer.length())).replaceFirst("");
            Matcher anonymous = ANONYMOUS.matcher(rest);
            // JShell numbers classes without a name through all that it runs.
            String member =
                    anonymous.matches()
                            ? "#"
                                    + numbers.indexOf(Long.valueOf(anonymous.group(1)))
                                    + anonymous.group(2)
                            : rest;
            members.put(member, name);
        }
        return members;
    }
}
