package wayside.server.words;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Quantity;

/** The words of a message with holes for its parameters, parsed once. */
final class Sentence {
    /** A part in brackets, else a hole, else plain words. */
    private static final Pattern PART = Pattern.compile("\\[([^\\]]*)\\]|\\{(\\w+)(?::(\\w+))?\\}|[^\\[{]+");

    private final String pattern;
    private final List<Part> parts = new ArrayList<>();

    private Sentence(String pattern) {
        this.pattern = pattern;
        Matcher found = PART.matcher(pattern);
        int end = 0;
        while (found.find() && found.start() == end) {
            end = found.end();
            parts.add(part(found));
        }
        if (end < pattern.length()) {
            throw new IllegalArgumentException("Not to be read from " + pattern.substring(end));
        }
    }

    static Sentence of(String pattern) {
        return new Sentence(pattern);
    }

    private static Part part(Matcher found) {
        if (found.group(1) != null) {
            return new Part.Bracket(of(found.group(1)));
        }
        return found.group(2) != null
                ? new Part.Hole(found.group(2), Optional.ofNullable(found.group(3)))
                : new Part.Words(found.group());
    }

    /** As it is written, holes and brackets with it. */
    String pattern() {
        return pattern;
    }

    /** Names of the parameters that every message must have for it. */
    Set<String> needed() {
        Set<String> names = new LinkedHashSet<>();
        for (Part part : parts) {
            if (part instanceof Part.Hole hole) {
                names.add(hole.name());
            }
        }
        return names;
    }

    /** Names of the parameters that stand in brackets. */
    Set<String> optional() {
        Set<String> names = new LinkedHashSet<>();
        for (Part part : parts) {
            if (part instanceof Part.Bracket bracket) {
                names.addAll(bracket.inside().needed());
            }
        }
        return names;
    }

    String with(Message message) {
        StringBuilder text = new StringBuilder();
        for (Part part : parts) {
            if (part instanceof Part.Words words) {
                text.append(words.text());
            } else if (part instanceof Part.Hole hole) {
                text.append(filled(hole, message.find(hole.name()).orElseThrow()));
            } else if (part instanceof Part.Bracket bracket && bracket.inside().isFilledBy(message)) {
                text.append(bracket.inside().with(message));
            }
        }
        return text.toString();
    }

    private boolean isFilledBy(Message message) {
        return needed().stream().allMatch(name -> message.find(name).isPresent());
    }

    private static String filled(Part.Hole hole, Parameter parameter) {
        if (parameter instanceof Parameter.Figure number) {
            return figure(hole, number.quantity());
        }
        if (parameter instanceof Parameter.Figures numbers) {
            return listed(numbers.quantities().stream()
                    .map(quantity -> figure(hole, quantity))
                    .toList());
        }
        return parameter instanceof Parameter.Text text
                ? text.text()
                : English.text(((Parameter.Inner) parameter).message());
    }

    private static String figure(Part.Hole hole, Quantity quantity) {
        return hole.style().map(style -> PlainFigure.of(quantity, style)).orElseGet(() -> PlainFigure.of(quantity));
    }

    private static String listed(List<String> names) {
        int last = names.size() - 1;
        return last < 1
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    private sealed interface Part {
        record Words(String text) implements Part {}

        record Hole(String name, Optional<String> style) implements Part {}

        record Bracket(Sentence inside) implements Part {}
    }
}
