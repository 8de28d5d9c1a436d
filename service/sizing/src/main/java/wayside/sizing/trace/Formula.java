package wayside.sizing.trace;

/** A formula as a reader sees it. */
public record Formula(String text, Source source) implements Method {
    /** A formula that follows from the meaning of its symbols. */
    public static Formula definition(String text) {
        return new Formula(text, Source.definition());
    }

    /** A formula of the trade that no document stands behind. */
    public static Formula commonPractice(String text) {
        return new Formula(text, Source.commonPractice());
    }
}
