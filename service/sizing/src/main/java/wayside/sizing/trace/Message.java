package wayside.sizing.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Something to tell a person, as a code and what its sentence is filled with. The words are made where the language is
 * known.
 *
 * @param parameters those of the code, each of its kind and unit
 */
public record Message(MessageCode code, List<Parameter> parameters) {
    public Message {
        parameters = List.copyOf(parameters);
        for (Parameter parameter : parameters) {
            Optional<Slot> slot = code.findSlot(parameter.name());
            if (slot.isEmpty() || !slot.get().takes(parameter)) {
                throw new IllegalArgumentException(code.code() + " has no " + parameter);
            }
        }
        for (Slot slot : code.slots()) {
            if (slot.needed() && find(parameters, slot.name()).isEmpty()) {
                throw new IllegalArgumentException(code.code() + " lacks " + slot.name());
            }
        }
    }

    public static Message of(MessageCode code, Parameter... parameters) {
        return new Message(code, List.of(parameters));
    }

    /** The same with one more parameter. */
    public Message with(Parameter parameter) {
        List<Parameter> more = new ArrayList<>(parameters);
        more.add(parameter);
        return new Message(code, more);
    }

    public Optional<Parameter> find(String name) {
        return find(parameters, name);
    }

    private static Optional<Parameter> find(List<Parameter> parameters, String name) {
        for (Parameter one : parameters) {
            if (one.name().equals(name)) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }
}
