package wayside.server.answer;

import com.fasterxml.jackson.core.io.NumberOutput;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A list of an answer as a table (RFC 4180): a head, then a line for each entry. A column is a field, or a field of an object in
 * the entry, as {@code fuse.ratingA}; lists in an entry have no column. Numbers are as in JSON, what is absent is empty.
 *
 * @param list name of the list in the answer
 * @param entry class of its entries
 * @param entries of an answer; null when it has no such list
 * @param when in words, when an answer has the list
 */
public record CsvTable<A extends Record>(
        String list,
        Class<? extends Record> entry,
        Function<A, @Nullable List<? extends Record>> entries,
        String when) {
    public static final String TYPE = "text/csv";

    private static final String END = "\r\n";

    /** One column: its name, and how its value is got out of an entry. */
    private record Column(String name, Function<Object, @Nullable Object> value) {}

    /** The table of an answer; null when it has no such list. */
    public byte @Nullable [] of(A answer) {
        List<? extends Record> found = entries.apply(answer);
        if (found == null) {
            return null;
        }
        List<Column> columns = columns(entry, "", one -> one);
        StringBuilder text = new StringBuilder(line(columns, Column::name));
        found.forEach(one -> text.append(line(columns, column -> column.value().apply(one))));
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** Names of the columns, in order. */
    public List<String> columns() {
        return columns(entry, "", one -> one).stream().map(Column::name).toList();
    }

    private static List<Column> columns(Class<?> record, String before, Function<Object, @Nullable Object> of) {
        List<Column> columns = new ArrayList<>();
        for (RecordComponent component : record.getRecordComponents()) {
            Function<Object, @Nullable Object> value = whole -> field(component, of.apply(whole));
            Class<?> type = component.getType();
            if (type.isRecord()) {
                columns.addAll(columns(type, before + component.getName() + '.', value));
            } else if (Number.class.isAssignableFrom(type) || type == String.class || type == Boolean.class) {
                columns.add(new Column(before + component.getName(), value));
            }
        }
        return columns;
    }

    private static @Nullable Object field(RecordComponent component, @Nullable Object record) {
        try {
            return record == null ? null : component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("A record of the contract must be readable", e);
        }
    }

    private static String line(List<Column> columns, Function<Column, @Nullable Object> cell) {
        return columns.stream().map(cell).map(CsvTable::text).collect(Collectors.joining(",", "", END));
    }

    private static String text(@Nullable Object value) {
        if (value == null) {
            return "";
        }
        if (value instanceof Double number) {
            return NumberOutput.toString(number, true);
        }
        String text = value.toString();
        boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
