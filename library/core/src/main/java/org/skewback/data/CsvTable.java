package org.skewback.data;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.skewback.quantity.Unit;

/**
 * A table read from CSV (RFC 4180, UTF-8): comment lines begin with {@code #}, the first record is
 * the header, and a heading may carry the unit of its column, as in {@code x [m],P [kN]}.
 *
 * <p>Numbers have a decimal point and no thousands separator, whatever the locale.
 */
public final class CsvTable {

    private static final Pattern HEADING =
            Pattern.compile("([^\\[\\]]*?)\\s*(?:\\[([^\\[\\]]*)])?");
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?");

    private final String name;
    private final List<Heading> headings;
    private final List<CsvParser.Row> rows;

    /**
     * The head of a column.
     *
     * @param name name of the column
     * @param unit unit of its values, empty for plain numbers and for text
     */
    public record Heading(String name, String unit) {}

    private CsvTable(String name, List<Heading> headings, List<CsvParser.Row> rows) {
        this.name = name;
        this.headings = headings;
        this.rows = rows;
    }

    /**
     * Reads a table from a file.
     *
     * @param file the file, UTF-8
     * @return the table
     * @throws TableException if the file is missing or can't be read, or is no such table
     */
    public static CsvTable read(Path file) {
        try {
            return parse(String.valueOf(file.getFileName()), Files.readString(file));
        } catch (NoSuchFileException e) {
            // The cause would only say the same again, at length, under a reader's cell.
            throw new TableException("There is no file " + file.toAbsolutePath().normalize() + ".");
        } catch (MalformedInputException e) {
            throw new TableException(file + " is not UTF-8 text.", e);
        } catch (IOException e) {
            throw new TableException(file + " can't be read: " + e.getMessage(), e);
        }
    }

    /**
     * Makes a table from text.
     *
     * @param name what to call the table in messages
     * @param text the CSV text
     * @return the table
     * @throws TableException if the text is no such table: no header, a column named twice, or a
     *     record with more or fewer fields than the header
     */
    public static CsvTable parse(String name, String text) {
        List<CsvParser.Row> rows = CsvParser.parse(name, text);
        if (rows.isEmpty()) {
            throw new TableException(name + " has no header.");
        }
        CsvParser.Row header = rows.get(0);
        List<Heading> headings = new ArrayList<>();
        for (String field : header.fields()) {
            Heading heading = heading(name, header.line(), field);
            if (headings.stream().anyMatch(other -> other.name().equals(heading.name()))) {
                throw new TableException(
                        at(name, header.line()) + "column " + heading.name() + " is named twice.");
            }
            headings.add(heading);
        }
        for (CsvParser.Row row : rows) {
            if (row.fields().size() != headings.size()) {
                throw new TableException(
                        at(name, row.line())
                                + row.fields().size()
                                + " fields, but the header has "
                                + headings.size()
                                + ".");
            }
        }
        return new CsvTable(name, List.copyOf(headings), List.copyOf(rows.subList(1, rows.size())));
    }

    private static Heading heading(String table, int line, String field) {
        Matcher matcher = HEADING.matcher(field.strip());
        if (!matcher.matches() || matcher.group(1).isEmpty()) {
            throw new TableException(
                    at(table, line)
                            + "heading \""
                            + field
                            + "\"; allowed is a name, or a name and a unit as in \"x [m]\".");
        }
        String unit = matcher.group(2);
        return new Heading(matcher.group(1), unit == null ? "" : unit.strip());
    }

    /**
     * Gives the name used in messages.
     *
     * @return name of the file or text
     */
    public String name() {
        return name;
    }

    /**
     * Lists the columns.
     *
     * @return the headings in the order of the file
     */
    public List<Heading> headings() {
        return headings;
    }

    /**
     * Counts the records below the header.
     *
     * @return number of records
     */
    public int size() {
        return rows.size();
    }

    /**
     * Gives the line of the file on which a record begins.
     *
     * @param record index of the record, from 0
     * @return line number, from 1
     * @throws IndexOutOfBoundsException if there is no such record
     */
    public int line(int record) {
        return rows.get(record).line();
    }

    /**
     * Gives a column as text.
     *
     * @param column name of the column
     * @return one text for each record
     * @throws TableException if there is no such column
     */
    public List<String> texts(String column) {
        int index = index(column);
        return rows.stream().map(row -> row.fields().get(index)).toList();
    }

    /**
     * Gives a column of numbers, converted to a unit.
     *
     * @param column name of the column
     * @param unit unit wanted, such as {@code kN}; empty for plain numbers
     * @return one finite number in that unit for each record
     * @throws TableException if there is no such column, its unit is not known or of another
     *     dimension, or a field is no finite number
     */
    public double[] numbers(String column, String unit) {
        int index = index(column);
        Unit wanted = Unit.of(unit);
        Unit given = unit(headings.get(index), unit);
        if (!given.dimension().equals(wanted.dimension())) {
            throw new TableException(
                    name
                            + ", column "
                            + column
                            + ": the unit is ["
                            + headings.get(index).unit()
                            + "]; allowed are units of the dimension of ["
                            + unit
                            + "].");
        }
        double[] numbers = new double[rows.size()];
        for (int i = 0; i < numbers.length; i++) {
            String field = rows.get(i).fields().get(index).strip();
            double number =
                    NUMBER.matcher(field).matches() ? Double.parseDouble(field) : Double.NaN;
            numbers[i] = given.equals(wanted) ? number : wanted.fromSi(given.toSi(number));
            if (!Double.isFinite(numbers[i])) {
                throw refused(i, column, field, "a finite number with a decimal point");
            }
        }
        return numbers;
    }

    /**
     * Gives a column of numbers that must grow from record to record, converted to a unit.
     *
     * @param column name of the column
     * @param unit unit wanted, such as {@code m}
     * @return one finite number in that unit for each record, each greater than the one before
     * @throws TableException if the column can't be read as numbers or does not ascend
     */
    public double[] ascending(String column, String unit) {
        double[] numbers = numbers(column, unit);
        for (int i = 1; i < numbers.length; i++) {
            if (!(numbers[i] > numbers[i - 1])) {
                List<String> texts = texts(column);
                throw refused(
                        i, column, texts.get(i), "more than the one before, " + texts.get(i - 1));
            }
        }
        return numbers;
    }

    /**
     * Makes the exception for a field, naming its place.
     *
     * @param record index of the record, from 0
     * @param column name of the column
     * @param field what is there
     * @param allowed what is allowed
     * @return the exception, to be thrown by the caller
     */
    public TableException refused(int record, String column, String field, String allowed) {
        return new TableException(
                at(name, line(record))
                        + "column "
                        + column
                        + " is \""
                        + field
                        + "\"; allowed is "
                        + allowed
                        + ".");
    }

    private Unit unit(Heading heading, String wanted) {
        try {
            return Unit.of(heading.unit());
        } catch (IllegalArgumentException e) {
            throw new TableException(
                    name
                            + ", column "
                            + heading.name()
                            + ": "
                            + e.getMessage()
                            + "; allowed are units of the dimension of ["
                            + wanted
                            + "].",
                    e);
        }
    }

    private int index(String column) {
        for (int i = 0; i < headings.size(); i++) {
            if (headings.get(i).name().equals(column)) {
                return i;
            }
        }
        throw new TableException(
                name
                        + " has no column "
                        + column
                        + "; it has "
                        + String.join(", ", headings.stream().map(Heading::name).toList())
                        + ".");
    }

    private static String at(String name, int line) {
        return name + ", line " + line + ": ";
    }
}
