package wayside.server.mapping;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import java.util.List;

/** Writes a derivation past the generator, straight into the text that the generator writes to. */
public final class StepListWriter extends StdSerializer<StepList> {
    private static final long serialVersionUID = 1L;

    public StepListWriter() {
        super(StepList.class);
    }

    @Override
    public void serialize(StepList list, JsonGenerator generator, SerializerProvider provider) throws IOException {
        if (generator.getOutputTarget() instanceof JsonText json) {
            // The generator keeps its place; what it holds back must go before the bytes that pass it by.
            generator.writeRawValue("[");
            generator.flush();
            new DerivationJson(json).write(list.steps());
            generator.writeRaw("]");
        } else {
            provider.defaultSerializeValue(List.copyOf(list), generator);
        }
    }
}
