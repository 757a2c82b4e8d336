package org.skewback.sheet;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.skewback.quantity.FlatGraph;

/** JSON read into maps, lists, texts, numbers and truth values, with bounds on depth and size. */
final class Json {

    private static final int DEEPEST = 32;
    private static final int LONGEST_DOCUMENT = 256 << 20;

    /** Most elements of one list, so that what is no record cannot fill the memory first. */
    static final int MOST_ELEMENTS = FlatGraph.MOST_NODES;

    private static final int LONGEST_SHOWN = 200;
    private static final long MOST_TOKENS = 32L * MOST_ELEMENTS;

    private static final JsonFactory FACTORY =
            JsonFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .streamReadConstraints(
                            StreamReadConstraints.builder()
                                    .maxNestingDepth(DEEPEST)
                                    .maxStringLength(RecordWriter.LONGEST_TEXT)
                                    .maxTokenCount(MOST_TOKENS)
                                    .build())
                    .build();

    private final Map<String, Object> fields;
    private final String where;

    private Json(Map<String, Object> fields, String where) {
        this.fields = fields;
        this.where = where;
    }

    static Json object(String text, String where) {
        if (text.length() > LONGEST_DOCUMENT) {
            throw new IllegalArgumentException(
                    where + " has " + text.length() + " characters; allowed: " + LONGEST_DOCUMENT);
        }
        try (JsonParser parser = FACTORY.createParser(text)) {
            parser.nextToken();
            Object value = value(parser);
            if (parser.nextToken() != null) {
                throw new IllegalArgumentException(where + " goes on after its end");
            }
            return object(value, where);
        } catch (IOException e) {
            throw new IllegalArgumentException(where + " is no JSON: " + e.getMessage(), e);
        }
    }

    String text(String name) {
        if (fields.get(name) instanceof String text) {
            return text;
        }
        throw missing(name, "a text");
    }

    @Nullable String textOrNull(String name) {
        return fields.containsKey(name) ? text(name) : null;
    }

    double number(String name) {
        if (fields.get(name) instanceof Number number && Double.isFinite(number.doubleValue())) {
            return number.doubleValue();
        }
        throw missing(name, "a finite number");
    }

    int whole(String name) {
        double number = number(name);
        if (number == Math.rint(number) && Math.abs(number) < Integer.MAX_VALUE) {
            return (int) number;
        }
        throw missing(name, "a whole number");
    }

    boolean truth(String name) {
        if (fields.get(name) instanceof Boolean truth) {
            return truth;
        }
        throw missing(name, "true or false");
    }

    boolean has(String name) {
        return fields.containsKey(name);
    }

    Json object(String name) {
        if (fields.get(name) instanceof Map<?, ?>) {
            return object(fields.get(name), where + ", " + name);
        }
        throw missing(name, "an object");
    }

    List<Json> objects(String name) {
        List<Json> objects = new ArrayList<>();
        for (Object element : list(name)) {
            objects.add(object(element, where + ", " + name + " " + objects.size()));
        }
        return objects;
    }

    List<String> texts(String name) {
        List<String> texts = new ArrayList<>();
        for (Object element : list(name)) {
            if (!(element instanceof String text)) {
                throw missing(name, "a list of texts");
            }
            texts.add(text);
        }
        return texts;
    }

    List<Double> numbers(String name) {
        List<Double> numbers = new ArrayList<>();
        for (Object element : list(name)) {
            if (!(element instanceof Number number)) {
                throw missing(name, "a list of numbers");
            }
            numbers.add(number.doubleValue());
        }
        return numbers;
    }

    List<Integer> wholes(String name) {
        List<Integer> wholes = new ArrayList<>();
        for (Object element : list(name)) {
            if (!(element instanceof Number number) || number.doubleValue() != number.intValue()) {
                throw missing(name, "a list of whole numbers");
            }
            wholes.add(number.intValue());
        }
        return wholes;
    }

    Map<String, Object> fields() {
        return fields;
    }

    private List<?> list(String name) {
        if (fields.get(name) instanceof List<?> list) {
            return list;
        }
        throw missing(name, "a list");
    }

    private IllegalArgumentException missing(String name, String wanted) {
        return new IllegalArgumentException(where + ": \"" + name + "\" must be " + wanted);
    }

    @SuppressWarnings("unchecked") // value() makes no other maps
    private static Json object(@Nullable Object value, String where) {
        if (value instanceof Map<?, ?> map) {
            return new Json((Map<String, Object>) map, where);
        }
        throw new IllegalArgumentException(where + " must be a JSON object");
    }

    /** Takes down a place where two trees differ, and what stands there in each. */
    interface Difference {
        void at(String place, String first, String second);
    }

    /** Compares two trees; a number is what it is as a double. */
    static void compare(Json first, Json second, Difference difference) {
        compare("", first.fields, second.fields, difference);
    }

    private static void compare(
            String place, @Nullable Object first, @Nullable Object second, Difference difference) {
        if (first instanceof Map<?, ?> a && second instanceof Map<?, ?> b) {
            Set<Object> names = new LinkedHashSet<>(a.keySet());
            names.addAll(b.keySet());
            for (Object name : names) {
                String at = place.isEmpty() ? name.toString() : place + ", " + name;
                compare(at, a.get(name), b.get(name), difference);
            }
        } else if (first instanceof List<?> a && second instanceof List<?> b) {
            for (int i = 0; i < Math.max(a.size(), b.size()); i++) {
                compare(
                        place + " " + i,
                        i < a.size() ? a.get(i) : null,
                        i < b.size() ? b.get(i) : null,
                        difference);
            }
        } else if (!Objects.equals(first, second)) {
            difference.at(place, shown(first), shown(second));
        }
    }

    private static String shown(@Nullable Object value) {
        String text = value == null ? "" : value.toString();
        return text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN) + "…";
    }

    /** Depth is bounded by the parser, so recursion is. */
    private static Object value(JsonParser parser) throws IOException {
        JsonToken token = parser.currentToken();
        if (token == null) {
            throw new IOException("the text ends too early");
        }
        return switch (token) {
            case START_OBJECT -> {
                Map<String, Object> fields = new LinkedHashMap<>();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    String name = parser.currentName();
                    parser.nextToken();
                    fields.put(name, value(parser));
                }
                yield fields;
            }
            case START_ARRAY -> {
                List<Object> elements = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    if (elements.size() == MOST_ELEMENTS) {
                        throw new IOException(
                                "a list has more than " + MOST_ELEMENTS + " elements");
                    }
                    elements.add(value(parser));
                }
                yield elements;
            }
            case VALUE_STRING -> parser.getText();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
            case VALUE_TRUE -> true;
            case VALUE_FALSE -> false;
            default -> throw new IOException(token + " is not allowed here");
        };
    }
}
