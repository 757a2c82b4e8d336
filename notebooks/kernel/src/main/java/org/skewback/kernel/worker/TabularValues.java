package org.skewback.kernel.worker;

import java.lang.reflect.Array;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Shows values that have rows, of the platform or of a table library, as HTML tables. */
final class TabularValues {

    private static final int MOST_CELL = 400;
    private static final String TABLE = "tech.tablesaw.api.Table";
    private static final Set<String> NUMBERS =
            Set.of("DOUBLE", "FLOAT", "INTEGER", "LONG", "SHORT");

    private TabularValues() {}

    /**
     * Gives the table of a value.
     *
     * @return HTML, or null for a value that is no table
     * @throws ReflectiveOperationException if an accessor cannot be called or throws
     */
    static @Nullable String of(Object value) throws ReflectiveOperationException {
        if (value instanceof Record record) {
            return record(record);
        }
        if (value instanceof Map<?, ?> map && isPlatform(value)) {
            return map.isEmpty() ? null : map(map);
        }
        if (value instanceof Collection<?> collection && isPlatform(value)) {
            return records(collection);
        }
        if (value instanceof Object[] array) {
            return array.getClass().getComponentType().isArray()
                    ? grid(array)
                    : records(List.of(array));
        }
        return Renderer.is(value.getClass(), TABLE) ? table(value) : null;
    }

    private static boolean isPlatform(Object value) {
        return value.getClass().getName().startsWith("java.");
    }

    private static String text(@Nullable Object value) {
        return PlainText.of(value, MOST_CELL);
    }

    private static @Nullable String record(Record record) throws ReflectiveOperationException {
        RecordComponent[] components = record.getClass().getRecordComponents();
        if (components.length == 0) {
            return null;
        }
        List<List<String>> rows = new ArrayList<>();
        for (RecordComponent component : components) {
            rows.add(List.of(component.getName(), text(get(component, record))));
        }
        return HtmlTable.write(
                record.getClass().getSimpleName(),
                List.of(
                        new HtmlTable.Column("component", "", false),
                        new HtmlTable.Column("value", "", false)),
                rows,
                rows.size());
    }

    private static @Nullable Object get(RecordComponent component, Object record)
            throws ReflectiveOperationException {
        Method accessor = component.getAccessor();
        accessor.setAccessible(true);
        return accessor.invoke(record);
    }

    private static String map(Map<?, ?> map) {
        List<List<String>> rows = new ArrayList<>();
        for (Map.Entry<?, ?> entry : PlainText.inOrder(map, HtmlTable.MOST_ROWS)) {
            rows.add(List.of(text(entry.getKey()), text(entry.getValue())));
        }
        return HtmlTable.write(
                "",
                List.of(
                        new HtmlTable.Column("key", "", false),
                        new HtmlTable.Column(
                                "value",
                                "",
                                map.values().stream().allMatch(Number.class::isInstance))),
                rows,
                map.size());
    }

    /** Records of one kind, one in a row. */
    private static @Nullable String records(Collection<?> values)
            throws ReflectiveOperationException {
        Iterator<?> all = values.iterator();
        Object first = all.hasNext() ? all.next() : null;
        if (!(first instanceof Record) || first.getClass().getRecordComponents().length == 0) {
            return null;
        }
        for (Object value : values) {
            if (value == null || value.getClass() != first.getClass()) {
                return null;
            }
        }
        RecordComponent[] components = first.getClass().getRecordComponents();
        List<HtmlTable.Column> columns = new ArrayList<>();
        for (RecordComponent component : components) {
            Class<?> type = component.getType();
            boolean number =
                    Number.class.isAssignableFrom(type)
                            || (type.isPrimitive() && type != boolean.class && type != char.class);
            columns.add(new HtmlTable.Column(component.getName(), "", number));
        }
        List<List<String>> rows = new ArrayList<>();
        for (Object value : values) {
            if (rows.size() == HtmlTable.MOST_ROWS) {
                break;
            }
            List<String> row = new ArrayList<>();
            for (RecordComponent component : components) {
                row.add(text(get(component, value)));
            }
            rows.add(row);
        }
        return HtmlTable.write(first.getClass().getSimpleName(), columns, rows, values.size());
    }

    /** An array of arrays as rows and columns. */
    private static @Nullable String grid(Object[] rows) {
        int width = 0;
        for (Object row : rows) {
            if (row == null || !row.getClass().isArray()) {
                return null;
            }
            width = Math.max(width, Array.getLength(row));
        }
        if (width == 0) {
            return null;
        }
        boolean numbers = true;
        List<List<String>> texts = new ArrayList<>();
        int shown = Math.min(width, HtmlTable.MOST_COLUMNS);
        for (int i = 0; i < Math.min(rows.length, HtmlTable.MOST_ROWS); i++) {
            List<String> row = new ArrayList<>();
            row.add(String.valueOf(i));
            for (int j = 0; j < shown; j++) {
                Object cell = j < Array.getLength(rows[i]) ? Array.get(rows[i], j) : "";
                numbers &= cell instanceof Number || "".equals(cell);
                row.add(text(cell));
            }
            texts.add(row);
        }
        List<HtmlTable.Column> columns = new ArrayList<>();
        columns.add(new HtmlTable.Column("", "", true));
        for (int j = 0; j < shown; j++) {
            columns.add(new HtmlTable.Column(String.valueOf(j), "", numbers));
        }
        String caption =
                rows.length
                        + " × "
                        + width
                        + (shown < width ? ", the first " + shown + " columns" : "");
        return HtmlTable.write(caption, columns, texts, rows.length);
    }

    /** A table of Tablesaw, known by its name only. */
    private static String table(Object table) throws ReflectiveOperationException {
        List<?> columns = (List<?>) call(table, "columns");
        int count = ((Number) call(table, "rowCount")).intValue();
        List<HtmlTable.Column> headings = new ArrayList<>();
        List<List<String>> rows = new ArrayList<>();
        int shown = Math.min(count, HtmlTable.MOST_ROWS);
        for (int i = 0; i < shown; i++) {
            rows.add(new ArrayList<>());
        }
        for (Object column : columns) {
            String type = String.valueOf(call(call(column, "type"), "name"));
            headings.add(
                    new HtmlTable.Column(
                            String.valueOf(call(column, "name")),
                            type.toLowerCase(java.util.Locale.ROOT).replace('_', ' '),
                            NUMBERS.contains(type)));
            Method cell = method(column, "getString", int.class);
            for (int i = 0; i < shown; i++) {
                rows.get(i).add(String.valueOf(cell.invoke(column, i)));
            }
        }
        return HtmlTable.write(String.valueOf(call(table, "name")), headings, rows, count);
    }

    private static Object call(Object target, String name) throws ReflectiveOperationException {
        Object value = method(target, name).invoke(target);
        if (value == null) {
            throw new InvocationTargetException(new NullPointerException(name + " gave null"));
        }
        return value;
    }

    private static Method method(Object target, String name, Class<?>... parameters)
            throws ReflectiveOperationException {
        Method method = target.getClass().getMethod(name, parameters);
        method.setAccessible(true);
        return method;
    }
}
