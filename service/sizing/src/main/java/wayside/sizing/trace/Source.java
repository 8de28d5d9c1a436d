package wayside.sizing.trace;

import java.util.Optional;

/**
 * A document, or the plain statement that there is none.
 *
 * @param basis the kind of ground
 * @param title publisher, document and edition; a sentence for common practice
 * @param clause section, table or equation, when there is one
 */
public record Source(Basis basis, String title, Optional<String> clause) {
    private static final Source COMMON_PRACTICE =
            new Source(Basis.COMMON_PRACTICE, "Common practice, no source", Optional.empty());
    private static final Source DEFINITION = new Source(Basis.DEFINITION, "Definition", Optional.empty());
    private static final Source GIVEN = new Source(Basis.GIVEN, "The request", Optional.empty());

    public static Source standard(String title, String clause) {
        return new Source(Basis.STANDARD, title, Optional.of(clause));
    }

    public static Source handbook(String title, String clause) {
        return new Source(Basis.HANDBOOK, title, Optional.of(clause));
    }

    public static Source paper(String title, String clause) {
        return new Source(Basis.PAPER, title, Optional.of(clause));
    }

    public static Source dataset(String title, String clause) {
        return new Source(Basis.DATASET, title, Optional.of(clause));
    }

    public static Source commonPractice() {
        return COMMON_PRACTICE;
    }

    public static Source definition() {
        return DEFINITION;
    }

    public static Source given() {
        return GIVEN;
    }
}
