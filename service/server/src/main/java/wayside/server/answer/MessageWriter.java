package wayside.server.answer;

import java.util.Map;
import java.util.TreeMap;
import wayside.server.words.English;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Quantity;

/** What a message says, as code and parameters and in words. */
public final class MessageWriter {
    private MessageWriter() {}

    public static MessageView write(Message message) {
        return new MessageView(message.code().code(), English.text(message), parameters(message));
    }

    /** In the order of their names. */
    private static Map<String, MessageParameterView> parameters(Message message) {
        Map<String, MessageParameterView> parameters = new TreeMap<>();
        message.parameters().forEach(parameter -> parameters.put(parameter.name(), parameter(parameter)));
        return parameters;
    }

    private static MessageParameterView parameter(Parameter parameter) {
        if (parameter instanceof Parameter.Figure number) {
            Quantity quantity = number.quantity();
            return new MessageParameterView(
                    quantity.value(), null, quantity.unit().symbol(), null, null);
        }
        if (parameter instanceof Parameter.Figures numbers) {
            return new MessageParameterView(
                    null,
                    numbers.quantities().stream().map(Quantity::value).toList(),
                    numbers.quantities().get(0).unit().symbol(),
                    null,
                    null);
        }
        if (parameter instanceof Parameter.Text text) {
            return new MessageParameterView(null, null, null, text.text(), null);
        }
        return new MessageParameterView(null, null, null, null, write(((Parameter.Inner) parameter).message()));
    }
}
