package wayside.server.binding;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.validation.ConstraintViolation;
import jakarta.validation.ElementKind;
import jakarta.validation.Path;
import jakarta.validation.Validation;
import jakarta.validation.Validator;
import jakarta.validation.ValidatorFactory;
import jakarta.validation.constraints.Null;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import jakarta.validation.groups.Default;
import java.util.Comparator;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.hibernate.validator.HibernateValidator;
import org.hibernate.validator.HibernateValidatorConfiguration;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.OneOfNumbers;
import wayside.server.binding.rule.OnlyWith;
import wayside.server.binding.rule.ZeroOrFrom;
import wayside.server.problem.Fault;
import wayside.server.problem.FaultCode;
import wayside.server.problem.Faults;

/** Holds a request record against the annotations of its fields and classes. */
final class Rules {
    private final Validator validator;

    /**
     * Rules of annotations.
     *
     * @param checks makes known who checks the rules that name nobody
     */
    Rules(Consumer<HibernateValidatorConfiguration> checks) {
        // Our messages are plain text: nothing is put into them, and no expression in them is run.
        HibernateValidatorConfiguration configuration =
                Validation.byProvider(HibernateValidator.class).configure().messageInterpolator(new PlainMessages());
        checks.accept(configuration);
        try (ValidatorFactory factory = configuration.buildValidatorFactory()) {
            validator = factory.getValidator();
        }
    }

    /**
     * Adds what the rules find, except where the field already has a fault.
     *
     * @param group of the rules that hold for the way the request came
     */
    void check(Object request, Class<?> group, JsonNode tree, Faults faults) {
        // A value out of its range first, then what excludes each other: what leans on these is not said besides.
        validator.validate(request, Default.class, group).stream()
                .sorted(Comparator.comparingInt(Rules::order))
                .forEach(violation -> {
                    String pointer = pointer(violation.getPropertyPath());
                    if (!restsOnAFault(violation, pointer, faults)) {
                        faults.add(pointer, () -> fault(violation, pointer, tree));
                    }
                });
    }

    private static int order(ConstraintViolation<?> violation) {
        return !isOurs(violation) ? 0 : rule(violation) == OnlyWith.class ? 2 : 1;
    }

    private static Fault fault(ConstraintViolation<Object> violation, String pointer, JsonNode tree) {
        JsonNode value = tree.at(pointer);
        return isOurs(violation)
                ? FieldsFault.of(violation, pointer, beanPointer(violation, pointer), tree)
                : ofOneValue(violation, pointer, value);
    }

    private static Fault ofOneValue(ConstraintViolation<Object> violation, String pointer, JsonNode value) {
        FieldShape field = field(violation);
        boolean form = rule(violation) == Pattern.class;
        FaultCode code = form
                ? FaultCode.WRONG_FORM
                : rule(violation) == Size.class ? FaultCode.WRONG_LENGTH : FaultCode.OUT_OF_RANGE;
        Bounds bounds = field == null ? Bounds.NONE : field.bounds();
        return Fault.of(
                        pointer,
                        code,
                        form ? "This text is not in the form that is read here." : "This value is out of range.")
                .received(Received.text(value), Received.value(value))
                .accepted(field == null ? violation.getMessage() : field.accepted())
                .between(bounds.minimum(), bounds.maximum())
                .allowed(bounds.allowed())
                .done();
    }

    /** Whether the rule is about more than one value. */
    private static boolean isOurs(ConstraintViolation<?> violation) {
        Class<?> rule = rule(violation);
        return rule == Null.class
                || (rule.getPackageName().startsWith("wayside.")
                        && rule != OneOfNumbers.class
                        && rule != ZeroOrFrom.class);
    }

    private static Class<?> rule(ConstraintViolation<?> violation) {
        return violation.getConstraintDescriptor().getAnnotation().annotationType();
    }

    private static @Nullable FieldShape field(ConstraintViolation<Object> violation) {
        String name = "";
        for (Path.Node node : violation.getPropertyPath()) {
            name = node.getKind() == ElementKind.PROPERTY ? node.getName() : name;
        }
        return RecordShape.of(violation.getLeafBean().getClass()).fields().get(name);
    }

    /** A rule about several fields says nothing while one of them is itself at fault. */
    private static boolean restsOnAFault(ConstraintViolation<?> violation, String pointer, Faults faults) {
        Map<String, Object> rule = violation.getConstraintDescriptor().getAttributes();
        if (!isOurs(violation) || !(rule.get("value") instanceof String[] fields)) {
            return false;
        }
        String record = beanPointer(violation, pointer);
        if (rule(violation) == OnlyWith.class) {
            // Each of its fields is told by itself. One that fails for the want of a field is told of the whole record.
            return Stream.of(pointer, record, record + "/" + rule.get("beside")).anyMatch(faults::blames);
        }
        return Stream.of(fields).anyMatch(field -> faults.blames(record + "/" + field));
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
