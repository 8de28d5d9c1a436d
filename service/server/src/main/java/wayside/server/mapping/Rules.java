package wayside.server.mapping;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.validation.ConstraintViolation;
import jakarta.validation.ElementKind;
import jakarta.validation.Path;
import jakarta.validation.Validation;
import jakarta.validation.Validator;
import jakarta.validation.ValidatorFactory;
import java.util.Arrays;
import wayside.server.api.rule.OneOfNumbers;
import wayside.server.api.rule.ZeroOrFrom;
import wayside.server.problem.Fault;
import wayside.server.problem.Faults;

/** Holds a request record against the annotations of its fields and classes. */
final class Rules {
    private final Validator validator;

    Rules() {
        // Our messages are plain text: nothing is put into them, and no expression in them is run.
        try (ValidatorFactory factory = Validation.byDefaultProvider()
                .configure()
                .messageInterpolator(new PlainMessages())
                .buildValidatorFactory()) {
            validator = factory.getValidator();
        }
    }

    /** Adds what the rules find, except where the field already has a fault. */
    void check(Object request, JsonNode tree, Faults faults) {
        for (ConstraintViolation<Object> violation : validator.validate(request)) {
            String pointer = pointer(violation.getPropertyPath());
            if (!restsOnAFault(violation, pointer, faults)) {
                faults.add(pointer, () -> fault(violation, pointer, tree.at(pointer)));
            }
        }
    }

    private static Fault fault(ConstraintViolation<Object> violation, String pointer, JsonNode value) {
        if (!isOurs(violation)) {
            return new Fault(pointer, "This value is out of range.", Received.text(value), accepted(violation), null);
        }
        String received = value.isMissingNode()
                ? "nothing"
                : namesFields(violation) && value.isObject() ? "neither" : Received.text(value);
        return new Fault(pointer, "This does not go with what else is given.", received, violation.getMessage(), null);
    }

    /** Whether the rule is about more than one value. */
    private static boolean isOurs(ConstraintViolation<?> violation) {
        Class<?> rule = violation.getConstraintDescriptor().getAnnotation().annotationType();
        return rule.getPackageName().startsWith("wayside.") && rule != OneOfNumbers.class && rule != ZeroOrFrom.class;
    }

    private static boolean namesFields(ConstraintViolation<?> violation) {
        return violation.getConstraintDescriptor().getAttributes().get("value") instanceof String[];
    }

    private static String accepted(ConstraintViolation<Object> violation) {
        String name = "";
        for (Path.Node node : violation.getPropertyPath()) {
            name = node.getKind() == ElementKind.PROPERTY ? node.getName() : name;
        }
        FieldShape field =
                RecordShape.of(violation.getLeafBean().getClass()).fields().get(name);
        return field == null ? violation.getMessage() : field.accepted();
    }

    /** A rule about several fields says nothing while one of them is itself at fault. */
    private static boolean restsOnAFault(ConstraintViolation<?> violation, String pointer, Faults faults) {
        if (!isOurs(violation)
                || !(violation.getConstraintDescriptor().getAttributes().get("value") instanceof String[] fields)) {
            return false;
        }
        String record = beanPointer(violation, pointer);
        return Arrays.stream(fields).anyMatch(field -> faults.blames(record + "/" + field));
    }

    private static String beanPointer(ConstraintViolation<?> violation, String pointer) {
        Path.Node last = null;
        for (Path.Node node : violation.getPropertyPath()) {
            last = node;
        }
        return last != null && last.getKind() == ElementKind.PROPERTY
                ? pointer.substring(0, pointer.lastIndexOf('/'))
                : pointer;
    }

    private static String pointer(Path path) {
        StringBuilder pointer = new StringBuilder();
        for (Path.Node node : path) {
            if (node.getIndex() != null) {
                pointer.append('/').append(node.getIndex());
            }
            if (node.getKind() == ElementKind.PROPERTY && node.getName() != null) {
                pointer.append('/').append(node.getName());
            }
        }
        return pointer.toString();
    }
}
