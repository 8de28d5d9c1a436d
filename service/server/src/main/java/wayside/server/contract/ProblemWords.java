package wayside.server.contract;

import io.swagger.v3.oas.models.media.Schema;
import java.util.Map;

/** What the contract says of a problem and of each fault in it; those records know nothing of the contract. */
final class ProblemWords {
    private static final Map<String, String> PROBLEM = Map.of(
            "type",
            "Address of a page that explains the kind of problem, relative to the service.",
            "title",
            "The kind of problem, the same each time.",
            "status",
            "As in the status line.",
            "detail",
            "What is wrong this time.",
            "errors",
            "Each bad field, when the fields are the problem; at most 100.",
            "moreErrors",
            "How many there are beyond those listed.",
            "line",
            "Of malformed JSON, from 1.",
            "column",
            "Of malformed JSON, from 1.",
            "requestId",
            "By which the request is found in the log: that of X-Request-Id, if you sent one.");
    private static final Map<String, String> FAULT = Map.of(
            "pointer",
            "JSON Pointer (RFC 6901) of the field.",
            "detail",
            "A sentence for people. For a name in another unit than the field's it says how to convert.",
            "received",
            "The value in JSON notation, shortened, or in words.",
            "accepted",
            "What would do.",
            "nearest",
            "For an unknown field or code: the known one that may be put in its place, its value with it. Never one of another"
                    + " unit.",
            "knownAt",
            "For an unknown field: JSON Pointer of the place where its name is known; 0 for any element of another list.");

    private ProblemWords() {}

    @SuppressWarnings("rawtypes")
    static void describe(Map<String, Schema> schemas) {
        schemas.forEach((name, schema) -> {
            if (name.equals("Problem")) {
                describe(schema, "A problem document of RFC 9457.", PROBLEM);
            } else if (name.equals("Fault")) {
                describe(schema, "One thing that is wrong with a request.", FAULT);
            }
        });
    }

    private static void describe(Schema<?> schema, String whole, Map<String, String> words) {
        schema.setDescription(whole);
        schema.getProperties().forEach((name, property) -> property.setDescription(words.get(name)));
    }
}
