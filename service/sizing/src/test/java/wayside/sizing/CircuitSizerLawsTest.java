package wayside.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import wayside.sizing.brief.CircuitRun;
import wayside.sizing.trace.Answer;
import wayside.sizing.trace.Derivation;
import wayside.sizing.trace.Derived;
import wayside.sizing.wiring.Gauge;
import wayside.sizing.wiring.GovernedBy;
import wayside.sizing.wiring.SizedCircuit;
import wayside.sizing.wiring.SizedConductor;

/** Laws that hold for every circuit, whatever the tables say. */
class CircuitSizerLawsTest {
    @Property
    void aLongerRunNeverGetsAThinnerConductor(
            @ForAll("runs") CircuitRun run, @ForAll @DoubleRange(min = 1, max = 5) double factor) {
        CircuitRun longer = CircuitRuns.with(run, CircuitRuns.currentA(run), run.lengthM() * factor);
        assertThat(thickness(longer)).isGreaterThanOrEqualTo(thickness(run));
        assertThat(metricThickness(longer)).isGreaterThanOrEqualTo(metricThickness(run));
    }

    @Property
    void moreCurrentNeverGetsAThinnerConductorOrASmallerFuse(
            @ForAll("runs") CircuitRun run, @ForAll @DoubleRange(min = 1, max = 3) double factor) {
        CircuitRun stronger = CircuitRuns.with(run, CircuitRuns.currentA(run) * factor, run.lengthM());
        assertThat(thickness(stronger)).isGreaterThanOrEqualTo(thickness(run));
        assertThat(metricThickness(stronger)).isGreaterThanOrEqualTo(metricThickness(run));
        assertThat(fuseA(stronger)).isGreaterThanOrEqualTo(fuseA(run));
    }

    @Property
    void aThickerBundleNeverGetsAThinnerConductor(
            @ForAll("runs") CircuitRun run, @ForAll @IntRange(min = 0, max = 40) int more) {
        CircuitRun bundled = CircuitRuns.bundled(run, run.bundledConductors().getAsInt() + more);
        assertThat(thickness(bundled)).isGreaterThanOrEqualTo(thickness(run));
    }

    @Property
    void theFuseCarriesTheLoadAndNeverExceedsTheConductor(@ForAll("runs") CircuitRun run) {
        find(run).ifPresent(wired -> {
            double fuseA = wired.fuse().ratingA().value();
            assertThat(fuseA)
                    .isGreaterThanOrEqualTo(wired.duty().designCurrentA().value())
                    .isLessThanOrEqualTo(wired.conductor().ampacityA().value())
                    .isLessThanOrEqualTo(wired.conductor().permittedFuseA().value());
            wired.metric().ifPresent(metric -> assertThat(fuseA)
                    .isLessThanOrEqualTo(metric.ampacityA().value()));
        });
    }

    @Property
    void theFuseStandsTheVoltageAndBreaksTheShortCircuit(@ForAll("runs") CircuitRun run) {
        find(run).ifPresent(wired -> {
            assertThat(wired.fuse().link().ratedVoltageV().value())
                    .isGreaterThanOrEqualTo(wired.duty().highestVoltageV().value());
            assertThat(wired.fuse().link().breakingA().value())
                    .isGreaterThanOrEqualTo(wired.duty().interruptA().value());
        });
    }

    @Property
    void theVoltageDropIsAlwaysWithinTheLimit(@ForAll("runs") CircuitRun run) {
        Optional<SizedCircuit.Wired> found = find(run);
        Statistics.collect(found.isPresent() ? "wired" : "not feasible");
        found.ifPresent(wired -> {
            double limit = wired.duty().voltageDropLimitPercent().value();
            assertThat(wired.conductor().voltageDropPercent().value()).isBetween(0.0, limit);
            wired.metric()
                    .ifPresent(metric ->
                            assertThat(metric.voltageDropPercent().value()).isBetween(0.0, limit));
        });
    }

    @Property
    void theDropIsWhatTheResistanceAndTheRoundTripMakeOfIt(@ForAll("runs") CircuitRun run) {
        find(run).ifPresent(wired -> {
            SizedConductor conductor = wired.conductor();
            double ohm = conductor.resistanceOhmPerKm().value()
                    / 1000
                    * 2
                    * run.lengthM()
                    / conductor.parallelCount().value();
            assertThat(conductor.voltageDropV().value())
                    .isCloseTo(CircuitRuns.currentA(run) * ohm, within(1e-9 * (1 + ohm * 400)));
        });
    }

    @Property
    void theLeastSizeGovernsOnlyTheLeastSize(@ForAll("runs") CircuitRun run) {
        find(run).ifPresent(wired -> {
            Gauge thinnest = wired.duty().rules().thinnest();
            assertThat(wired.conductor().size().ratedAs().isAtLeast(thinnest)).isTrue();
            if (wired.governedBy() == GovernedBy.MINIMUM_SIZE) {
                assertThat(wired.conductor().size().ratedAs()).isEqualTo(thinnest);
            }
        });
    }

    @Property
    void theSameCircuitGetsTheSameAnswer(@ForAll("runs") CircuitRun run) {
        Answer<List<SizedCircuit>> first = CircuitSizer.size(List.of(run));
        Answer<List<SizedCircuit>> second = CircuitSizer.size(List.of(run));
        List<Derived> figures = TracedValues.of(first.result());
        assertThat(Derivation.of(figures).steps())
                .isEqualTo(Derivation.of(TracedValues.of(second.result())).steps());
        assertThat(first.cautions()).isEqualTo(second.cautions()).isNotEmpty();
        assertThat(figures).isNotEmpty().allSatisfy(figure -> assertThat(figure.value())
                .isFinite());
    }

    @Provide
    Arbitrary<CircuitRun> runs() {
        return Arbitraries.lazy(CircuitRuns::any);
    }

    private static Optional<SizedCircuit.Wired> find(CircuitRun run) {
        SizedCircuit circuit = CircuitSizer.of(run);
        return circuit instanceof SizedCircuit.Wired wired ? Optional.of(wired) : Optional.empty();
    }

    /** Copper of the conductors each way, by the places in the order of sizes; above all of them when none will do. */
    private static double thickness(CircuitRun run) {
        return find(run)
                .map(wired -> 1000 * wired.conductor().parallelCount().value()
                        + wired.conductor().size().ratedAs().rank())
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static double metricThickness(CircuitRun run) {
        return find(run)
                .flatMap(SizedCircuit.Wired::metric)
                .map(metric ->
                        1000 * metric.parallelCount().value() + metric.areaMm2().value())
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static double fuseA(CircuitRun run) {
        return find(run).map(wired -> wired.fuse().ratingA().value()).orElse(Double.POSITIVE_INFINITY);
    }
}
