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
    /** What the card says when no answer comes, and of each fault in its own words, took two and a half thousand; the battery in the frost the last four hundred. */
    private static final int LARGEST_GZIPPED = 30_100;

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
