package wayside.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import wayside.sizing.brief.At;
import wayside.sizing.brief.BuiltSystem;
import wayside.sizing.brief.ChargingKind;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.RechargeBrief;
import wayside.sizing.recharge.Recharge;
import wayside.sizing.trace.Answer;
import wayside.sizing.trace.Shortfall;

/** A recharge through its door. */
class RechargeSizerTest {
    private static BuiltSystem system(Chemistry chemistry, double solarW, double alternatorA, double shoreW) {
        return Briefs.built(12, chemistry, 2000, solarW, PanelMount.OPEN, alternatorA, shoreW, OptionalDouble.empty());
    }

    // Common practice, no source: a pack of 2 kWh on 700 W of sun and 400 W of mains at once is full from empty in
    // about two and a half hours, not the 1.8 h of plain division.
    @Test
    void aPackOnSunAndMainsIsFullInAboutTwoAndAHalfHours() {
        Recharge recharge = RechargeSizer.size(RechargeBrief.of(system(Chemistry.LFP, 700, 0, 400)))
                .result();
        assertThat(recharge.hours().orElseThrow().value()).isCloseTo(2.5, within(0.25));
        assertThat(recharge.hours().orElseThrow().value())
                .isGreaterThan(recharge.plainDivisionHours().orElseThrow().value());
        assertThat(recharge.shares()).extracting(Recharge.Share::source).containsExactly("solar", "shore");
    }

    // Common practice, no source: LFP isn't charged below 0 C (32 F).
    @Test
    void aFrozenLithiumBatteryIsNotCharged() {
        Recharge recharge = RechargeSizer.size(
                        RechargeBrief.of(system(Chemistry.LFP, 700, 0, 400)).in(-1))
                .result();
        assertThat(recharge.shortfalls()).extracting(Shortfall::code).containsExactly("too-cold-to-charge");
        assertThat(recharge.hours()).isEmpty();
        assertThat(RechargeSizer.size(RechargeBrief.of(system(Chemistry.AGM, 0, 0, 400))
                                .in(-1))
                        .result()
                        .feasible())
                .isTrue();
    }

    @Test
    void onlyTheNamedSourcesRun() {
        RechargeBrief all = RechargeBrief.of(system(Chemistry.LFP, 700, 30, 400));
        RechargeBrief engine = new RechargeBrief(
                At.ROOT,
                all.system(),
                OptionalDouble.of(0.2),
                OptionalDouble.of(0.8),
                List.of(ChargingKind.ALTERNATOR),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        Recharge recharge = RechargeSizer.size(engine).result();
        assertThat(recharge.shares()).extracting(Recharge.Share::source).containsExactly("alternator");
        assertThat(recharge.powerW().value()).isCloseTo(30 * 13.6, within(1e-9));
    }

    @Test
    void withoutASourceItNeverEnds() {
        Answer<Recharge> answer = RechargeSizer.size(RechargeBrief.of(system(Chemistry.LFP, 0, 0, 0)));
        assertThat(answer.result().shortfalls()).extracting(Shortfall::code).containsExactly("no-power");
    }

    @Property
    void moreSunIsNeverSlower(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = 50, max = 2000) double solarW,
            @ForAll @DoubleRange(min = 0, max = 1000) double more) {
        double slow = RechargeSizer.size(RechargeBrief.of(system(chemistry, solarW, 0, 0)))
                .result()
                .hours()
                .orElseThrow()
                .value();
        double fast = RechargeSizer.size(RechargeBrief.of(system(chemistry, solarW + more, 0, 0)))
                .result()
                .hours()
                .orElseThrow()
                .value();
        assertThat(fast).isLessThanOrEqualTo(slow + 1e-9);
    }
}
