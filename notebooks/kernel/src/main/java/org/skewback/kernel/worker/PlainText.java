package org.skewback.kernel.worker;

import java.lang.reflect.Array;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Writes a value as text that can be read: arrays by their elements, long ones shortened. */
final class PlainText {

    static final int MOST_ELEMENTS = 200;
    private static final int MOST_SORTED = 10_000;
    private static final int MOST_KEY = 200;

    private static final Pattern WRAPPER = Pattern.compile("REPL\\.\\$JShell\\$\\w+?\\$");

    private final StringBuilder text = new StringBuilder();
    private final IdentityHashMap<Object, Boolean> open = new IdentityHashMap<>();
    private final int most;

    private PlainText(int most) {
        this.most = most;
    }

    /**
     * Writes a value.
     *
     * @param value the value
     * @param most length in characters at which the text is cut
     * @return the text
     */
    static String of(@Nullable Object value, int most) {
        PlainText writer = new PlainText(most);
        writer.write(value);
        int length = writer.text.length();
        if (length > most) {
            writer.text.setLength(most);
            writer.text.append("… (").append(length).append(" characters)");
        }
        // A class of a cell shows by its own name, without the wrapper it was compiled in.
        return writer.text.indexOf("REPL.$JShell$") < 0
                ? writer.text.toString()
                : WRAPPER.matcher(writer.text).replaceAll("");
    }

    /** The name of a class, of a class of a cell the one that the cell gave it. */
    static String name(Class<?> type) {
        String name = WRAPPER.matcher(type.getName()).replaceAll("");
        return name.startsWith("$JShell$anonymous") ? "a class without a name" : name;
    }

    private void write(@Nullable Object value) {
        if (value == null) {
            text.append("null");
        } else if (value.getClass().isArray()) {
            nested(value, () -> array(value));
        } else if (value instanceof Collection<?> && isPlatform(value)) {
            nested(value, () -> collection((Collection<?>) value));
        } else if (value instanceof Map<?, ?> && isPlatform(value)) {
            nested(value, () -> map((Map<?, ?>) value));
        } else {
            text.append(value);
        }
    }

    // The notebook's own collections may have a toString that says more than their elements.
    private static boolean isPlatform(Object value) {
        return value.getClass().getName().startsWith("java.");
    }

    private void nested(Object value, Runnable content) {
        if (open.putIfAbsent(value, true) != null) {
            text.append("(this)");
            return;
        }
        content.run();
        open.remove(value);
    }

    private void array(Object array) {
        int length = Array.getLength(array);
        text.append('[');
        for (int i = 0; i < length && !full(i); i++) {
            text.append(i == 0 ? "" : ", ");
            write(Array.get(array, i));
        }
        close(length, "]");
    }

    private void collection(Collection<?> collection) {
        text.append('[');
        int i = 0;
        for (Iterator<?> it = inOrder(collection).iterator(); it.hasNext() && !full(i); i++) {
            text.append(i == 0 ? "" : ", ");
            write(it.next());
        }
        close(collection.size(), "]");
    }

    private void map(Map<?, ?> map) {
        text.append('{');
        int i = 0;
        for (Map.Entry<?, ?> entry : inOrder(map, MOST_ELEMENTS + 1)) {
            if (full(i)) {
                break;
            }
            text.append(i++ == 0 ? "" : ", ");
            write(entry.getKey());
            text.append('=');
            write(entry.getValue());
        }
        close(map.size(), "}");
    }

    // Sets and maps that the platform makes of constants come in another order in each VM, and a
    // notebook that is run again is to show the same.
    private static boolean isShuffled(Object value) {
        return value.getClass().getName().startsWith("java.util.ImmutableCollections$")
                && !(value instanceof List<?>);
    }

    private static Iterable<?> inOrder(Collection<?> collection) {
        if (!isShuffled(collection) || collection.size() > MOST_SORTED) {
            return collection;
        }
        return collection.stream().sorted(Comparator.comparing(e -> of(e, MOST_KEY))).toList();
    }

    /** The first entries of a map, in the order in which to show them. */
    static List<Map.Entry<?, ?>> inOrder(Map<?, ?> map, int most) {
        List<Map.Entry<?, ?>> entries = new ArrayList<>();
        boolean sorts = isShuffled(map) && map.size() <= MOST_SORTED;
        for (Map.Entry<?, ?> entry : map.entrySet()) {
            if (!sorts && entries.size() == most) {
                break;
            }
            entries.add(entry);
        }
        if (sorts) {
            entries.sort(Comparator.comparing(e -> of(e.getKey(), MOST_KEY)));
        }
        return entries.subList(0, Math.min(most, entries.size()));
    }

    private boolean full(int elements) {
        return elements >= MOST_ELEMENTS || text.length() > most;
    }

    private void close(int size, String bracket) {
        if (size > MOST_ELEMENTS) {
            text.append(", … (").append(size).append(" elements)");
        }
        text.append(bracket);
    }
}
