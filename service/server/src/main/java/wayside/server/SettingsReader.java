package wayside.server;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Reads settings and collects every fault, so that a start fails once and not once for each. */
final class SettingsReader {
    private static final Pattern ORIGIN = Pattern.compile("\\*|[a-z][a-z0-9+.-]*://[^/\\sA-Z]+");
    private static final Pattern ADDRESS =
            Pattern.compile("[0-9]{1,3}(\\.[0-9]{1,3}){3}|[0-9a-f]{1,4}(:[0-9a-f]{1,4}){7}");
    /** What Kubernetes sets in every container beside a service whose name begins with wayside ("Service", environment variables). */
    private static final Pattern LINKED_SERVICE =
            Pattern.compile(".*_(SERVICE_(HOST|PORT)|PORT_[0-9]+_(TCP|UDP))(_.*)?");

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

    /** Notes what only two settings together show. */
    void fault(Setting setting, String what) {
        faults.add(setting.variable() + " is '" + text(setting) + "', " + what);
    }

    boolean yes(Setting setting) {
        String text = text(setting);
        if (!text.equals("true") && !text.equals("false")) {
            faults.add(setting.variable() + " is '" + text + "'; it takes true or false");
        }
        return text.equals("true");
    }

    /** One of a few words. */
    String word(Setting setting, String... words) {
        String text = text(setting);
        if (!List.of(words).contains(text)) {
            faults.add(setting.variable() + " is '" + text + "'; it takes " + String.join(" or ", words));
        }
        return text;
    }

    /** Origins as browsers send them (RFC 6454 section 6.2): any other text would never match. */
    List<String> origins(Setting setting) {
        List<String> origins = Arrays.stream(text(setting).split(",", -1))
                .map(String::strip)
                .filter(item -> !item.isEmpty())
                .toList();
        origins.stream()
                .filter(origin -> !ORIGIN.matcher(origin).matches())
                .forEach(origin -> faults.add(setting.variable() + " has '" + origin
                        + "'; it takes * or origins like https://shop.example, in small letters, without a path"));
        return origins;
    }

    List<String> addresses(Setting setting) {
        List<String> addresses = Arrays.stream(text(setting).split(",", -1))
                .map(String::strip)
                .filter(item -> !item.isEmpty())
                .toList();
        addresses.stream()
                .filter(address -> !ADDRESS.matcher(address).matches())
                .forEach(address -> faults.add(setting.variable() + " has '" + address
                        + "'; it takes addresses like 10.0.0.7 or fd00:0:0:0:0:0:0:7"));
        return addresses;
    }

    /** Refuses variables that look like settings and are none, which is how a misspelt one is found. */
    void refuseUnknown() {
        List<String> known =
                Arrays.stream(Setting.values()).map(Setting::variable).toList();
        environment.keySet().stream()
                .filter(name -> name.startsWith(Setting.PREFIX) && !known.contains(name))
                .filter(name -> !LINKED_SERVICE.matcher(name).matches())
                .sorted()
                .forEach(name -> faults.add(name + " is no setting; these are: " + String.join(", ", known)));
    }

    void refuseFaults() {
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(String.join(System.lineSeparator(), faults));
        }
    }
}
