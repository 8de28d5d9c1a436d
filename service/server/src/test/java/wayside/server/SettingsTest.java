package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Settings from the environment. */
class SettingsTest {
    @Test
    void standAtTheirDefaultsInAnEmptyEnvironment() {
        Settings settings = Settings.from(Map.of());
        assertThat(settings.port()).isEqualTo(8080);
        assertThat(settings.allowedOrigins()).containsExactly("*");
        assertThat(settings.echo()).isFalse();
    }

    @Test
    void followTheEnvironment() {
        Settings settings = Settings.from(Map.of(
                "WAYSIDE_PORT", " 9000 ",
                "WAYSIDE_ALLOWED_ORIGINS", "https://a.example, https://b.example",
                "WAYSIDE_ECHO", "true"));
        assertThat(settings.port()).isEqualTo(9000);
        assertThat(settings.allowedOrigins()).containsExactly("https://a.example", "https://b.example");
        assertThat(settings.echo()).isTrue();
    }

    @Test
    void tellEveryFaultAtOnce() {
        assertThatThrownBy(() -> Settings.from(Map.of("WAYSIDE_PORT", "high", "WAYSIDE_ECHO", "perhaps")))
                .hasMessageContaining("WAYSIDE_PORT is 'high'; it takes a whole number from 0 to 65535")
                .hasMessageContaining("WAYSIDE_ECHO is 'perhaps'; it takes true or false");
    }

    @Test
    void refuseAMisspeltNameAndNothingOfOthers() {
        assertThatThrownBy(() -> Settings.from(Map.of("WAYSIDE_PROT", "1")))
                .hasMessageStartingWith("WAYSIDE_PROT is no setting; these are: WAYSIDE_HOST, WAYSIDE_PORT, ");
        // As Kubernetes documents for a service: {NAME}_SERVICE_HOST and the names of Docker's links.
        Settings.from(Map.of(
                "PATH", "/bin",
                "WAYSIDE_SERVICE_HOST", "10.0.0.11",
                "WAYSIDE_SERVICE_PORT_HTTP", "8080",
                "WAYSIDE_PORT_8080_TCP_ADDR", "10.0.0.11"));
    }

    // Source: RFC 6454 section 6.2, an origin is scheme, host and port, in small letters and without a path.
    @ParameterizedTest
    @ValueSource(strings = {"https://a.example/", "foo bar", "shop.example", "https://Shop.example"})
    void refuseAnOriginThatNoBrowserSends(String origin) {
        assertThatThrownBy(() -> Settings.from(Map.of("WAYSIDE_ALLOWED_ORIGINS", "https://b.example:8443, " + origin)))
                .hasMessage("WAYSIDE_ALLOWED_ORIGINS has '" + origin
                        + "'; it takes * or origins like https://shop.example, in small letters, without a path");
    }

    @Test
    void refuseBodiesThatTheHeapDoesNotBear() {
        long most = Math.min(64 << 20, Runtime.getRuntime().maxMemory() / 128);
        Settings.from(Map.of("WAYSIDE_MAX_BODY_BYTES", Long.toString(most)));
        assertThatThrownBy(() -> Settings.from(Map.of("WAYSIDE_MAX_BODY_BYTES", Long.toString(most + 1))))
                .hasMessageEndingWith("it takes a whole number from 1000 to " + most);
    }

    @Test
    void areAllInThePrintedTable() {
        for (Setting setting : Setting.values()) {
            assertThat(Setting.table()).contains(setting.variable());
        }
    }
}
