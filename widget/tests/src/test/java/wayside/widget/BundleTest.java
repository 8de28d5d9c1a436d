package wayside.widget;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Objects;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;

/** One small static file. */
class BundleTest {
    /** Words when no answer comes took two and a half thousand of it, reasons asked for, laws, sizes and the battery in frost two. */
    private static final int LARGEST_GZIPPED = 32_000;

    @Test
    void staysWithinItsSize() throws IOException {
        byte[] bundle;
        try (InputStream file = BundleTest.class.getResourceAsStream("/widget/wayside.js")) {
            bundle = Objects.requireNonNull(file).readAllBytes();
        }
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (OutputStream gzip = new GZIPOutputStream(packed)) {
            gzip.write(bundle);
        }

        assertThat(bundle.length).isGreaterThan(LARGEST_GZIPPED);
        assertThat(packed.size()).isLessThanOrEqualTo(LARGEST_GZIPPED);
    }
}
