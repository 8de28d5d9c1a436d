package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** In a generated client a description stands beside nothing but its own name: it says by itself what it is about. */
class DescriptionsTest {
    /** Such a beginning leans on the name, or on the field before. */
    private static final Pattern LEANS =
            Pattern.compile("(Of|By|In|On|At|To|Into|Out of|With|From|That|Below|Above|The same) .*");

    @Test
    void noDescriptionLeansOnWhatStandsBefore() {
        List<String> leaning = new ArrayList<>();
        for (Map.Entry<String, JsonNode> schema :
                ContractSchema.DOCUMENT.at("/components/schemas").properties()) {
            for (Map.Entry<String, JsonNode> field :
                    schema.getValue().path("properties").properties()) {
                String text = field.getValue().path("description").asText("");
                if (LEANS.matcher(text).matches()) {
                    leaning.add(schema.getKey() + "." + field.getKey() + ": " + text);
                }
            }
        }
        assertThat(leaning).isEmpty();
    }
}
