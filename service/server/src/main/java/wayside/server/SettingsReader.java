package wayside.server;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Reads settings and collects every fault, so that a start fails once and not once for each. */
final class SettingsReader {
    private final Map<String, String> environment;
    private final List<String> faults = new ArrayList<>();

    SettingsReader(Map<String, String> environment) {
        this.environment = environment;
    }

    String text(Setting setting) {
        return environment.getOrDefault(setting.variable(), setting.standard()).strip();
    }

    int whole(Setting setting, int least, int most) {
        String text = text(setting);
        try {
            int value = Integer.parseInt(text);
            if (value >= least && value <= most) {
                return value;
            }
        } catch (NumberFormatException e) {
            // Told below, like a number out of range.
        }
        faults.add(setting.variable() + " is '" + text + "'; it takes a whole number from " + least + " to " + most);
        return least;
    }

    boolean yes(Setting setting) {
        String text = text(setting);
        if (!text.equals("true") && !text.equals("false")) {
            faults.add(setting.variable() + " is '" + text + "'; it takes true or false");
        }
        return text.equals("true");
    }

    List<String> list(Setting setting) {
        return Arrays.stream(text(setting).split(",", -1))
                .map(String::strip)
                .filter(item -> !item.isEmpty())
                .toList();
    }

    void refuseFaults() {
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(String.join(System.lineSeparator(), faults));
        }
    }
}
