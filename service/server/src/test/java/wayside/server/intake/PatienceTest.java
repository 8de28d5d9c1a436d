package wayside.server.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** How long work is wanted, and when it gives way. */
class PatienceTest {
    private static final Client SOMEBODY = new Client("somebody", null);

    @Test
    void longWorkRestsWhileShortWorkIsAtHand() {
        AtomicInteger shortWork = new AtomicInteger(3);
        Patience patience = SOMEBODY.patience(60_000, () -> shortWork.getAndDecrement() > 0);
        while (shortWork.get() > 0) {
            assertThat(patience.getAsBoolean()).isTrue();
        }
        assertThat(patience.getAsBoolean()).isTrue();
    }

    @Test
    void endlessShortWorkDoesNotHoldItForEver() {
        Patience patience = SOMEBODY.patience(60_000, () -> true);
        for (int i = 0; i < 20; i++) {
            assertThat(patience.getAsBoolean()).isTrue();
        }
    }

    @Test
    void endsAtItsDeadline() {
        assertThat(SOMEBODY.patience(-1, () -> false).getAsBoolean()).isFalse();
    }
}
