package wayside.sizing.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A formula that is evaluated: {@code E = P h d}. What a reader sees is what was worked out.
 *
 * <p>Written with {@code + - * / ^}, parentheses, a space for a product, the functions {@code min max ceil floor abs sqrt
 * exp ln sin cos tan asin acos} (angles in radians) and {@code pi}. Several inputs under one symbol are a list;
 * {@code sum(...)}, {@code product(...)}, {@code min(x)} and {@code max(x)} run along it. Terms are worked out from left
 * to right, as Java does. A product after a division is refused: {@code a / b c} is read in two ways.
 */
public final class Expression implements Method {
    private final String text;
    private final Source source;
    private final ExpressionNode root;
    private final String[] symbols;
    private final List<Constant> constants;
    private final int[] slotsOfConstants;

    private Expression(String text, Source source, ExpressionNode root, String[] symbols, List<Constant> constants) {
        this.text = text;
        this.source = source;
        this.root = root;
        this.symbols = symbols;
        this.constants = List.copyOf(constants);
        this.slotsOfConstants = constants.stream()
                .mapToInt(constant -> slotAfter(-1, constant.symbol()))
                .toArray();
    }

    /**
     * Parses an expression once, for a static field.
     *
     * @param text a symbol, {@code =}, and what it is
     * @param source where it stands
     * @throws IllegalArgumentException when it is not one
     */
    public static Expression of(String text, Source source) {
        ExpressionParser parser = new ExpressionParser(text);
        ExpressionNode root = parser.parse();
        return new Expression(text, source, root, parser.symbols().toArray(String[]::new), List.of());
    }

    /** An expression that follows from the meaning of its symbols. */
    public static Expression definition(String text) {
        return of(text, Source.definition());
    }

    /** An expression of the trade that no document stands behind. */
    public static Expression commonPractice(String text) {
        return of(text, Source.commonPractice());
    }

    /** The same with a symbol that always has this value. */
    public Expression with(String symbol, double value, Unit unit) {
        if (!List.of(symbols).contains(symbol)) {
            throw new IllegalArgumentException("No symbol " + symbol + " in " + text);
        }
        List<Constant> more = new ArrayList<>(constants);
        more.add(new Constant(symbol, new Quantity(value, unit)));
        return new Expression(text, source, root, symbols, more);
    }

    /** Evaluates it. Every symbol must have its input, and every input its symbol. */
    public Derived value(String label, Unit unit, Input... inputs) {
        return new Computed(label, new Quantity(evaluate(inputs), unit), this, List.of(inputs));
    }

    /** Evaluates it with inputs of which some may share a symbol: a list. */
    public Derived value(String label, Unit unit, List<Input> inputs) {
        return value(label, unit, inputs.toArray(Input[]::new));
    }

    private double evaluate(Input[] inputs) {
        int[] counts = new int[symbols.length];
        double[] scalars = new double[counts.length];
        for (int i = 0; i < slotsOfConstants.length; i++) {
            scalars[slotsOfConstants[i]] = constants.get(i).quantity().value();
            counts[slotsOfConstants[i]]++;
        }
        int slot = -1;
        for (Input input : inputs) {
            slot = slotAfter(slot, input.symbol());
            scalars[slot] = input.value().value();
            counts[slot]++;
        }
        double[][] lists = isPlain(counts) ? ExpressionNode.Frame.NO_LISTS : lists(inputs, counts);
        return root.value(new ExpressionNode.Frame(scalars, counts, lists));
    }

    /** Each symbol has one value, as in most expressions. */
    private static boolean isPlain(int[] counts) {
        for (int count : counts) {
            if (count != 1) {
                return false;
            }
        }
        return true;
    }

    private double[][] lists(Input[] inputs, int[] counts) {
        double[][] lists = new double[counts.length][];
        for (int slot = 0; slot < counts.length; slot++) {
            if (counts[slot] != 1 && !root.runsAlong(slot)) {
                throw new IllegalStateException(
                        "Symbol " + symbols[slot] + " of " + text + " has " + counts[slot] + " values");
            }
            lists[slot] = new double[counts[slot]];
        }
        int[] filled = new int[counts.length];
        int slot = -1;
        for (Input input : inputs) {
            slot = slotAfter(slot, input.symbol());
            lists[slot][filled[slot]++] = input.value().value();
        }
        return lists;
    }

    /** Inputs mostly come in the order of the symbols, so it looks from the one before onward, and then from the first. */
    private int slotAfter(int before, String symbol) {
        int slot = before;
        for (int i = 0; i < symbols.length; i++) {
            slot = slot + 1 < symbols.length ? slot + 1 : 0;
            if (symbols[slot].equals(symbol)) {
                return slot;
            }
        }
        throw new IllegalStateException("No symbol " + symbol + " in " + text);
    }

    public String text() {
        return text;
    }

    public List<Constant> constants() {
        return constants;
    }

    @Override
    public Source source() {
        return source;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Expression that
                && text.equals(that.text)
                && source.equals(that.source)
                && constants.equals(that.constants);
    }

    @Override
    public int hashCode() {
        return Objects.hash(text, source, constants);
    }

    @Override
    public String toString() {
        return text;
    }
}
