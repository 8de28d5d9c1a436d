package wayside.server.binding;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.validation.ConstraintViolation;
import java.lang.annotation.Annotation;
import java.util.Arrays;
import java.util.List;
import org.hibernate.validator.engine.HibernateConstraintViolation;
import wayside.server.binding.rule.OnlyWith;
import wayside.server.binding.rule.UniqueNames;
import wayside.server.problem.Fault;
import wayside.server.problem.FaultCode;

/** What a rule between fields finds, as a fault of one of them. */
final class FieldsFault {
    private static final String AMONG_FIELDS = "This does not go with what else is given.";

    private FieldsFault() {}

    /**
     * The fault.
     *
     * @param pointer of the field that is blamed, or of the record
     * @param record pointer of the record that the rule is of
     */
    static Fault of(ConstraintViolation<Object> violation, String pointer, String record, JsonNode tree) {
        JsonNode value = tree.at(pointer);
        Annotation rule = violation.getConstraintDescriptor().getAnnotation();
        List<String> names = names(violation);
        List<String> given = names.stream()
                .filter(name -> !tree.at(record + "/" + name).isMissingNode())
                .toList();
        boolean neither = !names.isEmpty() && value.isObject();
        HibernateConstraintViolation<?> told = violation.unwrap(HibernateConstraintViolation.class);
        TooMuch excess = told.getDynamicPayload(TooMuch.class);
        if (excess != null) {
            return tooMuch(excess, pointer, value, violation.getMessage());
        }
        FaultCode code = code(rule, neither || value.isMissingNode());
        Fault.Draft fault = Fault.of(pointer, code, AMONG_FIELDS)
                .received(
                        value.isMissingNode() ? "nothing" : neither ? "neither" : Received.text(value),
                        Received.value(value))
                .accepted(violation.getMessage());
        return switch (code) {
            case MISSING -> fault.allowed(neither ? names : List.of()).done();
            case NEEDS ->
                fault.needs(List.of(record + "/" + ((OnlyWith) rule).beside())).done();
            default ->
                fault.conflictsWith(given.stream()
                                .map(name -> record + "/" + name)
                                .filter(other -> !other.equals(pointer))
                                .toList())
                        .done();
        };
    }

    private static Fault tooMuch(TooMuch excess, String pointer, JsonNode value, String accepted) {
        return Fault.of(pointer, FaultCode.OUT_OF_RANGE, excess.detail())
                .received(Received.text(value), Received.value(value))
                .accepted(accepted)
                .between(0.0, excess.most())
                .done();
    }

    private static FaultCode code(Annotation rule, boolean nothing) {
        if (nothing) {
            return FaultCode.MISSING;
        }
        if (rule instanceof UniqueNames) {
            return FaultCode.DUPLICATE_NAME;
        }
        return rule instanceof OnlyWith ? FaultCode.NEEDS : FaultCode.CONFLICT;
    }

    private static List<String> names(ConstraintViolation<Object> violation) {
        Object value = violation.getConstraintDescriptor().getAttributes().get("value");
        return value instanceof String[] fields ? Arrays.asList(fields) : List.of();
    }
}
