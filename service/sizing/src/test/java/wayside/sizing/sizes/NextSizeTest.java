package wayside.sizing.sizes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import wayside.sizing.brief.Box;
import wayside.sizing.brief.ShoreChargerSize;
import wayside.sizing.brief.SizeOrigin;

class NextSizeTest {
    private static final List<Pieces<ShoreChargerSize>> ALL = Pieces.of(
            List.of(charger(10), charger(18), charger(20), charger(50)),
            ShoreChargerSize::currentA,
            ShoreChargerSize::mostTogether);

    private static ShoreChargerSize charger(double amperes) {
        return new ShoreChargerSize(SizeOrigin.row("none", ""), 12, amperes, 3, 1, new Box(1, 1, 1));
    }

    private static String atLeast(double needed) {
        return NextSize.atLeast(needed, ALL).map(NextSizeTest::words).orElse("none");
    }

    private static String words(Pieces<ShoreChargerSize> pieces) {
        return pieces.count() + " x " + pieces.size().currentA();
    }

    @Test
    void isTheLeastThatWillDo() {
        assertThat(atLeast(7)).isEqualTo("1 x 10.0");
        assertThat(atLeast(20)).isEqualTo("1 x 20.0");
        assertThat(atLeast(21)).isEqualTo("3 x 10.0");
    }

    @Test
    void takesFewerPiecesWhereTheyAreATenthMoreAtMost() {
        assertThat(atLeast(17)).isEqualTo("1 x 18.0");
        assertThat(atLeast(46)).isEqualTo("1 x 50.0");
    }

    @Test
    void isNothingBeyondTheLadder() {
        assertThat(atLeast(150)).isEqualTo("3 x 50.0");
        assertThat(atLeast(150.1)).isEqualTo("none");
    }

    @Test
    void staysWithinALimit() {
        assertThat(NextSize.atMost(54.8, ALL).map(NextSizeTest::words)).hasValue("1 x 50.0");
        assertThat(NextSize.atMost(9, ALL)).isEmpty();
    }

    @Property
    void moreNeedNeverGivesLess(
            @ForAll @DoubleRange(min = 0.1, max = 150) double needed,
            @ForAll @DoubleRange(min = 0, max = 1) double part) {
        double less = NextSize.atLeast(needed * part, ALL).orElseThrow().total();
        double more = NextSize.atLeast(needed, ALL).orElseThrow().total();
        assertThat(more).isGreaterThanOrEqualTo(needed * (1 - 1e-9)).isGreaterThanOrEqualTo(less);
    }
}
