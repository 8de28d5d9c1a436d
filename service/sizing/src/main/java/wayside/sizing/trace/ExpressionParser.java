package wayside.sizing.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads the text of an expression: terms of products of powers, a space being a product. */
final class ExpressionParser {
    private final String text;
    private final List<String> symbols = new ArrayList<>();
    private int at;

    ExpressionParser(String text) {
        this.text = text;
    }

    /** Each symbol once, in the order in which they occur: a symbol's place here is its slot. */
    List<String> symbols() {
        return List.copyOf(symbols);
    }

    ExpressionNode parse() {
        int equals = text.indexOf('=');
        if (equals < 1 || !text.substring(0, equals).strip().matches("[A-Za-z][A-Za-z0-9_]*")) {
            throw fault("begins with a symbol and =");
        }
        at = equals + 1;
        ExpressionNode node = sum();
        if (peek() != 0) {
            throw fault("ends");
        }
        return node;
    }

    private ExpressionNode sum() {
        ExpressionNode node = product();
        for (char next = peek(); next == '+' || next == '-'; next = peek()) {
            at++;
            node = new ExpressionNode.Binary(next, node, product());
        }
        return node;
    }

    private ExpressionNode product() {
        ExpressionNode node = signed();
        boolean divided = false;
        while (true) {
            char next = peek();
            if (next == '*' || next == '/') {
                at++;
                node = new ExpressionNode.Binary(next, node, signed());
                divided = next == '/';
            } else if (startsFactor(next)) {
                if (divided) {
                    throw fault("has parentheses where a product follows a division");
                }
                node = new ExpressionNode.Binary('*', node, power());
            } else {
                return node;
            }
        }
    }

    private ExpressionNode signed() {
        if (peek() == '-') {
            at++;
            return new ExpressionNode.Negative(signed());
        }
        return power();
    }

    private ExpressionNode power() {
        ExpressionNode base = atom();
        if (peek() == '^') {
            at++;
            return new ExpressionNode.Binary('^', base, signed());
        }
        return base;
    }

    private ExpressionNode atom() {
        char next = peek();
        if (next == '(') {
            at++;
            ExpressionNode inside = sum();
            close();
            return inside;
        }
        if (Character.isDigit(next)) {
            return new ExpressionNode.Literal(number());
        }
        if (Character.isLetter(next)) {
            return named(name());
        }
        throw fault("has a symbol, a number or a parenthesis here");
    }

    private ExpressionNode named(String name) {
        if (peek() == '(') {
            Optional<ExpressionFunction> function = function(name);
            if (function.isPresent()) {
                return call(function.get());
            }
        }
        return name.equals("pi") ? new ExpressionNode.Literal(Math.PI) : new ExpressionNode.Symbol(slot(name));
    }

    private ExpressionNode call(ExpressionFunction function) {
        at++;
        List<ExpressionNode> arguments = new ArrayList<>();
        int begin = at;
        arguments.add(sum());
        int end = at;
        while (peek() == ',') {
            at++;
            arguments.add(sum());
        }
        close();
        if (function.gathers() && arguments.size() == 1) {
            return new ExpressionNode.Along(function, arguments.get(0), slotsWithin(begin, end));
        }
        if (function.gathers() == (arguments.size() == 1)) {
            throw fault("gives " + function + " as many values as it takes");
        }
        return new ExpressionNode.Call(function, arguments);
    }

    private List<Integer> slotsWithin(int begin, int end) {
        ExpressionParser inside = new ExpressionParser("x = " + text.substring(begin, end));
        inside.parse();
        return inside.symbols().stream().map(symbols::indexOf).toList();
    }

    private static Optional<ExpressionFunction> function(String name) {
        return Arrays.stream(ExpressionFunction.values())
                .filter(f -> f.name().toLowerCase(Locale.ROOT).equals(name))
                .findFirst();
    }

    private int slot(String symbol) {
        if (!symbols.contains(symbol)) {
            symbols.add(symbol);
        }
        return symbols.indexOf(symbol);
    }

    private double number() {
        int begin = at;
        while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
            at++;
        }
        if (text.substring(at).matches("(?s)e-?\\d.*")) {
            at += 2;
            while (at < text.length() && Character.isDigit(text.charAt(at))) {
                at++;
            }
        }
        return Double.parseDouble(text.substring(begin, at));
    }

    private String name() {
        int begin = at;
        while (at < text.length() && (Character.isLetterOrDigit(text.charAt(at)) || text.charAt(at) == '_')) {
            at++;
        }
        return text.substring(begin, at);
    }

    private static boolean startsFactor(char next) {
        return next == '(' || Character.isLetterOrDigit(next);
    }

    private void close() {
        if (peek() != ')') {
            throw fault("closes its parentheses");
        }
        at++;
    }

    /** The next sign that is no space; 0 at the end. */
    private char peek() {
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
        return at < text.length() ? text.charAt(at) : 0;
    }

    private IllegalArgumentException fault(String what) {
        return new IllegalArgumentException("An expression " + what + ": " + text + " at " + at);
    }
}
