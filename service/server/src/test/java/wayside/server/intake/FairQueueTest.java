package wayside.server.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Who waits for whom. */
class FairQueueTest {
    private static final int ROOM = 8;

    private final FairQueue queue = new FairQueue("test", 1, ROOM, 60_000, 1, (name, nanos) -> {});
    private final List<String> order = Collections.synchronizedList(new ArrayList<>());

    @AfterEach
    void close() {
        queue.close();
    }

    @Test
    void whoAsksForLittleDoesNotWaitForWhoAskedForMuch() throws InterruptedException {
        offer("rude", 500);
        offer("rude", 500);
        offer("polite", 1);
        assertThat(worked(3)).containsExactly("polite", "rude", "rude");
    }

    @Test
    void equalsTakeTurns() throws InterruptedException {
        offer("a", 10);
        offer("a", 10);
        offer("a", 10);
        offer("b", 10);
        assertThat(worked(4)).containsExactly("a", "b", "a", "a");
    }

    @Test
    void aClientWithHalfOfTheRoomIsToldThatItIsItself() {
        for (int i = 0; i < ROOM / 2; i++) {
            assertThat(offer("rude", 1)).isNull();
        }
        Refusal refusal = Objects.requireNonNull(offer("rude", 1));
        assertThat(refusal.problem().status()).isEqualTo(429);
        assertThat(refusal.headers()).containsEntry("Retry-After", "1");
        assertThat(offer("polite", 1)).isNull();
    }

    @Test
    void aClientWhoseWorkFillsThePlacesIsToldThatItIsItself() throws InterruptedException {
        FairQueue slow = new FairQueue("test", 1, 100, 1_000, 1, (name, nanos) -> {});
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch end = new CountDownLatch(1);
        slow.offer("rude", 9_000, "tests", () -> {
            begun.countDown();
            await(end);
        });
        slow.start();
        begun.await();
        assertThat(Objects.requireNonNull(slow.offer("rude", 9_000, "tests", () -> {}))
                        .problem()
                        .status())
                .isEqualTo(429);
        assertThat(Objects.requireNonNull(slow.offer("polite", 9_000, "tests", () -> {}))
                        .problem()
                        .status())
                .isEqualTo(503);
        end.countDown();
        slow.close();
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Test
    void whatWouldWaitTooLongIsRefusedAndTheWaitFollowsTheQueue() {
        FairQueue slow = new FairQueue("test", 1, 100, 1_000, 1, (name, nanos) -> {});
        assertThat(slow.offer("a", 4_000, "tests", () -> {})).isNull();
        Refusal refusal = Objects.requireNonNull(slow.offer("b", 4_500, "tests", () -> {}));
        assertThat(refusal.problem().status()).isEqualTo(503);
        assertThat(refusal.headers()).containsEntry("Retry-After", "4");
    }

    private @Nullable Refusal offer(String client, double price) {
        return queue.offer(client, price, "tests", () -> order.add(client));
    }

    private List<String> worked(int works) throws InterruptedException {
        CountDownLatch last = new CountDownLatch(1);
        queue.offer("last", 1e6, "tests", last::countDown);
        queue.start();
        last.await();
        assertThat(order).hasSize(works);
        return order;
    }
}
