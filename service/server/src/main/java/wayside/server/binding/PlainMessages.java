package wayside.server.binding;

import jakarta.validation.MessageInterpolator;
import java.util.Locale;

/** Messages as they stand in the annotations. */
final class PlainMessages implements MessageInterpolator {
    @Override
    public String interpolate(String template, Context context) {
        return template;
    }

    @Override
    public String interpolate(String template, Context context, Locale locale) {
        return template;
    }
}
