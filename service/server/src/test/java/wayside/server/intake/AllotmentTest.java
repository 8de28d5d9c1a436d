package wayside.server.intake;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What clients share. */
class AllotmentTest {
    @Test
    void oneClientGetsHalfAndTheNextHalfOfTheRest() {
        Allotment places = new Allotment(8);
        assertThat(taken(places, "rude")).isEqualTo(4);
        assertThat(taken(places, "other")).isEqualTo(2);
        assertThat(taken(places, "third")).isEqualTo(1);
        assertThat(places.isHeldBy("rude")).isTrue();
        assertThat(places.isHeldBy("other")).isFalse();
    }

    @Test
    void whatIsGivenBackIsThereAgain() {
        Allotment places = new Allotment(2);
        assertThat(places.take("a", 1)).isTrue();
        assertThat(places.take("a", 1)).isFalse();
        places.giveBack("a", 1);
        assertThat(places.take("a", 1)).isTrue();
        assertThat(places.used()).isEqualTo(1);
    }

    private static int taken(Allotment places, String client) {
        int taken = 0;
        while (places.take(client, 1)) {
            taken++;
        }
        return taken;
    }
}
