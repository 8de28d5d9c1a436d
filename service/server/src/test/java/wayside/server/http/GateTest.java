package wayside.server.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import wayside.server.problem.ProblemException;

/** The limit of heavy calculations at once. */
class GateTest {
    @Test
    void turnsAwayWhatFindsNoPlaceAndSaysWhenToComeAgain() throws InterruptedException {
        AtomicInteger refusals = new AtomicInteger();
        Gate gate = new Gate(1, 0, refusals::incrementAndGet);
        CountDownLatch inside = new CountDownLatch(1);
        CountDownLatch leave = new CountDownLatch(1);
        Thread first = new Thread(() -> gate.through(() -> {
            inside.countDown();
            return await(leave);
        }));
        first.start();
        inside.await();
        assertThatThrownBy(() -> gate.through(() -> "in")).isInstanceOfSatisfying(ProblemException.class, refusal -> {
            assertThat(refusal.problem().status()).isEqualTo(503);
            assertThat(refusal.headers()).containsEntry("Retry-After", "2");
        });
        leave.countDown();
        first.join();
        assertThat(gate.<String>through(() -> "in")).isEqualTo("in");
        assertThat(refusals).hasValue(1);
    }

    @Test
    void freesThePlaceOfWorkThatFails() {
        Gate gate = new Gate(1, 0, () -> {});
        assertThatThrownBy(() -> gate.through(() -> {
                    throw new IllegalStateException("failed");
                }))
                .hasMessage("failed");
        assertThat(gate.<String>through(() -> "in")).isEqualTo("in");
    }

    private static boolean await(CountDownLatch latch) {
        try {
            latch.await();
            return true;
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
