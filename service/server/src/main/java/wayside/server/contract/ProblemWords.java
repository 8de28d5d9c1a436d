package wayside.server.contract;

import io.swagger.v3.oas.models.media.Schema;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import wayside.server.problem.FaultCode;

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
            "Line of malformed JSON, from 1.",
            "column",
            "Column of malformed JSON, from 1.",
            "requestId",
            "Name by which the request is found in the log: that of X-Request-Id, if you sent one.");
    private static final Map<String, String> FAULT = Map.ofEntries(
            Map.entry("pointer", "JSON Pointer (RFC 6901) of the field."),
            Map.entry("code", "What is wrong, for a program. More codes may come."),
            Map.entry("value", "The value itself, if it is a number, a short text, true or false."),
            Map.entry("minimum", "Least value that is taken; of a list or text, its least length."),
            Map.entry("maximum", "Largest value that is taken; of a list or text, its largest length."),
            Map.entry(
                    "allowed",
                    "The values of which one is taken; for an unknown field the names known there; for a record that lacks a field, the"
                            + " names of which one must be given."),
            Map.entry("conflictsWith", "JSON Pointers of the fields that it does not go with."),
            Map.entry("needs", "JSON Pointers of the fields that it means nothing without."),
            Map.entry(
                    "meant",
                    "For an unknown field: the known one that is probably meant, but takes another value: one in other units."),
            Map.entry(
                    "factor", "Number by which the value is multiplied to be in the unit of the field that is meant."),
            Map.entry("offset", "What is added after that: of use for temperatures."),
            Map.entry(
                    "detail",
                    "A sentence for people. For a name in another unit than the field's it says how to convert."),
            Map.entry("received", "The value in JSON notation, shortened, or in words."),
            Map.entry("accepted", "What would do."),
            Map.entry(
                    "nearest",
                    "For an unknown field or code: the known one that may be put in its place, its value with it. Never one of another"
                            + " unit."),
            Map.entry(
                    "knownAt",
                    "For an unknown field: JSON Pointer of the place where its name is known; 0 for any element of another list."));

    private ProblemWords() {}

    @SuppressWarnings("rawtypes")
    static void describe(Map<String, Schema> schemas) {
        schemas.forEach((name, schema) -> {
            if (name.equals("Problem")) {
                describe(schema, "A problem document of RFC 9457.", PROBLEM);
            } else if (name.equals("Fault")) {
                describe(schema, "One thing that is wrong with a request.", FAULT);
                codes(Objects.requireNonNull((Schema<?>) schema.getProperties().get("code")));
            }
        });
    }

    /** As an open list: a client must bear a code that it does not know. */
    private static void codes(Schema<?> code) {
        code.setEnum(null);
        code.addExtension(
                "x-extensible-enum",
                Arrays.stream(FaultCode.values()).map(FaultCode::code).toList());
        code.addExtension(
                "x-codes",
                Arrays.stream(FaultCode.values())
                        .collect(Collectors.toMap(
                                FaultCode::code, FaultCode::words, (one, other) -> one, LinkedHashMap::new)));
    }

    private static void describe(Schema<?> schema, String whole, Map<String, String> words) {
        schema.setDescription(whole);
        schema.getProperties().forEach((name, property) -> property.setDescription(words.get(name)));
    }
}
