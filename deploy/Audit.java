import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Recomputes answers of the service: every step whose way is an expression, from the values of the steps that it uses, down to
 * what was given and the tables. It shares no code with the service. Usage: deploy/audit ANSWER.json ...
 */
final class Audit {
    private static final double TOLERANCE = 1e-12;

    private int read;
    private int recomputed;
    private int operations;
    private final List<String> faults = new ArrayList<>();

    public static void main(String[] files) throws IOException {
        Audit all = new Audit();
        for (String file : files) {
            Audit one = new Audit();
            one.answer(new ObjectMapper().readTree(Path.of(file).toFile()));
            one.print(Path.of(file).getFileName().toString());
            all.add(one);
        }
        all.print("all");
        if (files.length == 0 || all.read + all.recomputed == 0 || !all.faults.isEmpty()) {
            System.exit(1);
        }
    }

    private void answer(JsonNode answer) {
        JsonNode derivation = answer.path("derivation");
        Map<String, Double> values = new HashMap<>();
        for (JsonNode step : derivation.path("steps")) {
            step(step, values);
            values.put(step.path("id").asText(), step.path("value").asDouble());
            if (!derivation.path("sources").has(step.path("source").asInt(-1))) {
                faults.add(step.path("id").asText() + " names no source");
            }
        }
        derivation.path("figures").fields().forEachRemaining(figure -> {
            double placed = answer.at(figure.getKey()).asDouble(Double.NaN);
            Double worked = values.get(figure.getValue().asText());
            if (worked == null || !same(placed, worked)) {
                faults.add(figure.getKey() + " is " + placed + ", its step gives " + worked);
            }
        });
    }

    private void step(JsonNode step, Map<String, Double> values) {
        String id = step.path("id").asText();
        if (values.containsKey(id)) {
            faults.add(id + " stands twice");
        }
        if (!step.path("kind").asText().equals("computed")) {
            read++;
            return;
        }
        Map<String, List<Double>> symbols = symbols(step, values);
        if (step.has("operation")) {
            operations++;
            if (!step.has("note")) {
                faults.add(id + " does not say how its operation is done");
            }
            return;
        }
        try {
            double value = new Formula(step.path("expression").asText(), symbols).value();
            if (!same(value, step.path("value").asDouble())) {
                faults.add(id + " says " + step.path("value").asDouble() + ", " + step.path("expression").asText()
                        + " gives " + value);
            }
            recomputed++;
        } catch (IllegalArgumentException e) {
            faults.add(id + " cannot be recomputed: " + e.getMessage());
        }
    }

    private Map<String, List<Double>> symbols(JsonNode step, Map<String, Double> values) {
        Map<String, List<Double>> symbols = new HashMap<>();
        for (JsonNode constant : step.path("constants")) {
            symbols.put(
                    constant.path("symbol").asText(),
                    new ArrayList<>(List.of(constant.path("value").asDouble())));
        }
        for (JsonNode input : step.path("inputs")) {
            Double value = values.get(input.path("step").asText());
            if (value == null) {
                faults.add(step.path("id").asText() + " uses " + input.path("step").asText() + " before it stands");
                value = Double.NaN;
            }
            symbols.computeIfAbsent(input.path("symbol").asText(), key -> new ArrayList<>())
                    .add(value);
        }
        return symbols;
    }

    private static boolean same(double a, double b) {
        return a == b || Math.abs(a - b) <= TOLERANCE * Math.max(Math.abs(a), Math.abs(b));
    }

    private void add(Audit other) {
        read += other.read;
        recomputed += other.recomputed;
        operations += other.operations;
        faults.addAll(other.faults);
    }

    private void print(String name) {
        System.out.printf(
                "%-40s %6d read, %6d recomputed, %4d named operations, %d faults%n",
                name, read, recomputed, operations, faults.size());
        faults.stream().limit(10).forEach(fault -> System.out.println("    " + fault));
    }

    /** Works a formula out while reading it. Within sum, product, min or max of one argument it is read once for each entry. */
    private static final class Formula {
        private final String text;
        private final Map<String, List<Double>> symbols;
        private int at;
        private int entry;
        private int length;

        Formula(String text, Map<String, List<Double>> symbols) {
            this.text = text;
            this.symbols = symbols;
        }

        double value() {
            at = text.indexOf('=') + 1;
            if (at == 0) {
                throw new IllegalArgumentException("no formula: " + text);
            }
            double value = terms();
            if (next() != 0) {
                throw new IllegalArgumentException("unread at " + at + ": " + text);
            }
            return value;
        }

        private double terms() {
            double value = factors();
            while (next() == '+' || next() == '-') {
                value = text.charAt(at++) == '+' ? value + factors() : value - factors();
            }
            return value;
        }

        private double factors() {
            double value = factor();
            while (true) {
                char sign = next();
                if (sign == '*' || sign == '/') {
                    at++;
                    double other = factor();
                    value = sign == '*' ? value * other : value / other;
                } else if (sign == '(' || Character.isLetterOrDigit(sign)) {
                    value *= power();
                } else {
                    return value;
                }
            }
        }

        private double factor() {
            if (next() == '-') {
                at++;
                return -factor();
            }
            return power();
        }

        private double power() {
            double base = atom();
            if (next() == '^') {
                at++;
                return Math.pow(base, factor());
            }
            return base;
        }

        private double atom() {
            char sign = next();
            int begin = at;
            if (sign == '(') {
                at++;
                double inside = terms();
                expect(')');
                return inside;
            }
            if (Character.isDigit(sign)) {
                while (at < text.length() && "0123456789.".indexOf(text.charAt(at)) >= 0) {
                    at++;
                }
                if (text.startsWith("e-", at)) {
                    at += 2;
                    while (at < text.length() && Character.isDigit(text.charAt(at))) {
                        at++;
                    }
                }
                return Double.parseDouble(text.substring(begin, at));
            }
            while (at < text.length() && (Character.isLetterOrDigit(text.charAt(at)) || text.charAt(at) == '_')) {
                at++;
            }
            return named(text.substring(begin, at));
        }

        private double named(String name) {
            if (name.isEmpty()) {
                throw new IllegalArgumentException("nothing to read at " + at + ": " + text);
            }
            if (next() == '(' && !symbols.containsKey(name) && !name.equals("pi")) {
                return function(name);
            }
            if (name.equals("pi")) {
                return Math.PI;
            }
            List<Double> values = symbols.get(name);
            if (values == null || values.isEmpty()) {
                length = 0;
                return Double.NaN;
            }
            length = values.size() > 1 ? values.size() : length;
            return values.size() > 1 ? values.get(entry) : values.get(0);
        }

        private double function(String name) {
            at++;
            int begin = at;
            boolean gathers = List.of("sum", "product", "min", "max").contains(name);
            int outerEntry = entry;
            int outerLength = length;
            entry = 0;
            length = 1;
            double first = terms();
            int count = length;
            if (gathers && next() == ')') {
                double gathered = first;
                for (entry = 1; entry < count; entry++) {
                    at = begin;
                    gathered = two(name, gathered, terms());
                }
                expect(')');
                entry = outerEntry;
                length = outerLength;
                if (count == 0) {
                    return name.equals("sum") ? 0 : name.equals("product") ? 1 : Double.NaN;
                }
                return gathered;
            }
            entry = outerEntry;
            length = outerLength;
            double value = outerEntry == 0 ? first : again(begin);
            if (!gathers) {
                expect(')');
                return one(name, value);
            }
            while (next() == ',') {
                at++;
                value = two(name, value, terms());
            }
            expect(')');
            return value;
        }

        /** The first argument once more, for the entry whose turn it is. */
        private double again(int begin) {
            at = begin;
            return terms();
        }

        private static double two(String name, double a, double b) {
            return switch (name) {
                case "sum" -> a + b;
                case "product" -> a * b;
                case "min" -> Math.min(a, b);
                default -> Math.max(a, b);
            };
        }

        private static double one(String name, double x) {
            return switch (name) {
                case "ceil" -> Math.ceil(x);
                case "floor" -> Math.floor(x);
                case "abs" -> Math.abs(x);
                case "sqrt" -> Math.sqrt(x);
                case "exp" -> Math.exp(x);
                case "ln" -> Math.log(x);
                case "sin" -> Math.sin(x);
                case "cos" -> Math.cos(x);
                case "tan" -> Math.tan(x);
                case "asin" -> Math.asin(x);
                case "acos" -> Math.acos(x);
                default -> throw new IllegalArgumentException("no function " + name);
            };
        }

        private void expect(char sign) {
            if (next() != sign) {
                throw new IllegalArgumentException("no " + sign + " at " + at + ": " + text);
            }
            at++;
        }

        private char next() {
            while (at < text.length() && text.charAt(at) == ' ') {
                at++;
            }
            return at < text.length() ? text.charAt(at) : 0;
        }
    }
}
