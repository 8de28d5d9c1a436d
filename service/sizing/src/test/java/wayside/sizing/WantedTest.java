package wayside.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import wayside.sizing.brief.Wanted;

/** Work whose answer nobody wants any more ends. */
class WantedTest {
    @Test
    void endsWhenItIsNoLongerWantedAndNotBefore() {
        AtomicInteger asked = new AtomicInteger();
        assertThatThrownBy(() -> Wanted.whileWanted(() -> asked.incrementAndGet() < 3, () -> {
                    for (int i = 0; i < 10; i++) {
                        Wanted.here().check();
                    }
                    return "done";
                }))
                .isInstanceOf(Wanted.NoLongerWanted.class);
        assertThat(asked).hasValue(3);
    }

    @Test
    void whoAsksForNothingInParticularWantsTheAnswer() {
        Wanted.here().check();
        assertThat(Wanted.whileWanted(() -> true, () -> "done")).isEqualTo("done");
    }
}
