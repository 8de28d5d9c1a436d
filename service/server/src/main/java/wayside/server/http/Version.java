package wayside.server.http;

import org.jspecify.annotations.Nullable;

/** Which engine runs, as the manifest of its jar has it. */
final class Version {
    private Version() {}

    static String text() {
        @Nullable String built = Version.class.getPackage().getImplementationVersion();
        return built == null ? "unpacked" : built;
    }
}
