package wayside.sizing.trace;

import java.util.List;

/** A part of a parsed expression. */
sealed interface ExpressionNode {
    double value(Frame frame);

    /** Whether the symbol of this slot may hold a list here: everywhere that it occurs, something runs along it. */
    boolean runsAlong(int slot);

    /** The values of the symbols, and the list entry whose turn it is. */
    final class Frame {
        static final double[][] NO_LISTS = {};

        private final double[] scalars;
        private final int[] counts;
        private final double[][] lists;
        private final int index;

        /**
         * @param scalars by slot
         * @param counts by slot, how many values its symbol has
         * @param lists by slot; empty when no symbol has a list
         */
        Frame(double[] scalars, int[] counts, double[][] lists) {
            this(scalars, counts, lists, 0);
        }

        private Frame(double[] scalars, int[] counts, double[][] lists, int index) {
            this.scalars = scalars;
            this.counts = counts;
            this.lists = lists;
            this.index = index;
        }

        double of(int slot) {
            return lists.length == 0 || counts[slot] == 1 ? scalars[slot] : lists[slot][index];
        }

        int count(int slot) {
            return counts[slot];
        }

        Frame at(int entry) {
            return new Frame(scalars, counts, lists, entry);
        }
    }

    record Literal(double value) implements ExpressionNode {
        @Override
        public double value(Frame frame) {
            return value;
        }

        @Override
        public boolean runsAlong(int slot) {
            return true;
        }
    }

    record Symbol(int slot) implements ExpressionNode {
        @Override
        public double value(Frame frame) {
            return frame.of(slot);
        }

        @Override
        public boolean runsAlong(int other) {
            return slot != other;
        }
    }

    record Negative(ExpressionNode of) implements ExpressionNode {
        @Override
        public double value(Frame frame) {
            return -of.value(frame);
        }

        @Override
        public boolean runsAlong(int slot) {
            return of.runsAlong(slot);
        }
    }

    record Binary(char operator, ExpressionNode left, ExpressionNode right) implements ExpressionNode {
        @Override
        public double value(Frame frame) {
            double a = left.value(frame);
            double b = right.value(frame);
            return switch (operator) {
                case '+' -> a + b;
                case '-' -> a - b;
                case '*' -> a * b;
                case '/' -> a / b;
                default -> Math.pow(a, b);
            };
        }

        @Override
        public boolean runsAlong(int slot) {
            return left.runsAlong(slot) && right.runsAlong(slot);
        }
    }

    record Call(ExpressionFunction function, List<ExpressionNode> arguments) implements ExpressionNode {
        @Override
        public double value(Frame frame) {
            double first = arguments.get(0).value(frame);
            if (arguments.size() == 1) {
                return function.of(first);
            }
            double result = first;
            for (int i = 1; i < arguments.size(); i++) {
                result = function.of(result, arguments.get(i).value(frame));
            }
            return result;
        }

        @Override
        public boolean runsAlong(int slot) {
            return arguments.stream().allMatch(argument -> argument.runsAlong(slot));
        }
    }

    /** Runs along the lists in its body; those of one value stand for every entry. */
    record Along(ExpressionFunction function, ExpressionNode body, List<Integer> slots) implements ExpressionNode {
        @Override
        public double value(Frame frame) {
            int length = length(frame);
            if (length == 0) {
                return function.ofNothing();
            }
            double result = body.value(frame.at(0));
            for (int i = 1; i < length; i++) {
                result = function.of(result, body.value(frame.at(i)));
            }
            return result;
        }

        private int length(Frame frame) {
            int length = 1;
            for (int slot : slots) {
                int count = frame.count(slot);
                if (count != 1 && length != 1 && count != length) {
                    throw new IllegalStateException("Lists of " + length + " and " + count + " run along each other");
                }
                length = count == 1 ? length : count;
            }
            return length;
        }

        @Override
        public boolean runsAlong(int slot) {
            return true;
        }
    }
}
