package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;

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
    void areAllInThePrintedTable() {
        for (Setting setting : Setting.values()) {
            assertThat(Setting.table()).contains(setting.variable());
        }
    }
}
