package wayside.sizing.planted;

import java.io.File;
import java.time.Instant;
import java.util.Random;

/** What the core may not do, each once: {@code PurityTest} sees its rules fail here. */
final class Impure {
    private Impure() {}

    static final class Clock {
        Instant now() {
            return Instant.now();
        }
    }

    static final class Milliseconds {
        long now() {
            return System.currentTimeMillis();
        }
    }

    static final class Dice {
        double next() {
            return Math.random();
        }
    }

    static final class Generator {
        private final Random random = new Random();

        double next() {
            return random.nextDouble();
        }
    }

    @SuppressWarnings("SystemOut")
    static final class Console {
        void say() {
            System.out.println("heard");
        }
    }

    static final class OwnFile {
        boolean exists() {
            return new File("kept").exists();
        }
    }
}
