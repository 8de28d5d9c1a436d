package wayside.server.mapping;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/** Writes a derivation past the generator, which is for whole answers what their speed hangs on. */
public final class StepListWriter extends StdSerializer<StepList> {
    private static final long serialVersionUID = 1L;

    public StepListWriter() {
        super(StepList.class);
    }

    @Override
    public void serialize(StepList list, JsonGenerator generator, SerializerProvider provider) throws IOException {
        if (generator.getOutputTarget() instanceof OutputStream stream) {
            // The generator keeps its place; what it holds back must go before the bytes that pass it by.
            generator.writeRawValue("[");
            generator.flush();
            DerivationJson.of(list.steps()).writeTo(stream);
            generator.writeRaw("]");
        } else {
            provider.defaultSerializeValue(List.copyOf(list), generator);
        }
    }
}
