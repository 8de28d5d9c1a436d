package wayside.sizing.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Derived;

/** What became of a circuit: a conductor and a fuse, or the reason why none of the tables' sizes will do. */
public sealed interface SizedCircuit {
    CircuitDuty duty();

    /** Every traced value of the result, in reading order. */
    List<Derived> figures();

    List<Caution> cautions();

    /**
     * @param conductor of the gauge series
     * @param metric the metric size that does the same; empty when the largest is not enough
     * @param fuse at the source
     * @param governedBy what decided the conductor's size
     */
    record Wired(
            CircuitDuty duty,
            SizedConductor conductor,
            Optional<SizedConductor> metric,
            SizedFuse fuse,
            GovernedBy governedBy,
            List<Caution> cautions)
            implements SizedCircuit {
        public Wired {
            cautions = List.copyOf(cautions);
        }

        @Override
        public List<Derived> figures() {
            List<Derived> figures = new ArrayList<>(SizedCircuit.asked(duty));
            figures.add(fuse.ratingA());
            figures.addAll(List.of(fuse.link().ratedVoltageV(), fuse.link().breakingA()));
            addConductor(figures, conductor);
            figures.add(conductor.permittedFuseA());
            metric.ifPresent(size -> addConductor(figures, size));
            return figures;
        }

        private static void addConductor(List<Derived> figures, SizedConductor conductor) {
            figures.addAll(List.of(
                    conductor.areaMm2(),
                    conductor.ampacityA(),
                    conductor.fuseLimitA(),
                    conductor.resistanceOhmPerKm(),
                    conductor.voltageDropV(),
                    conductor.voltageDropPercent()));
        }
    }

    /** No conductor or no fuse of the tables will do. */
    record NotFeasible(CircuitDuty duty, CircuitShortfall shortfall, List<Caution> cautions) implements SizedCircuit {
        public NotFeasible {
            cautions = List.copyOf(cautions);
        }

        @Override
        public List<Derived> figures() {
            List<Derived> figures = new ArrayList<>(SizedCircuit.asked(duty));
            figures.addAll(List.of(shortfall.needed(), shortfall.available()));
            return figures;
        }
    }

    /** What the tables were entered with stands here too: a looked-up factor has no inputs that would lead to it. */
    private static List<Derived> asked(CircuitDuty duty) {
        List<Derived> asked = new ArrayList<>(List.of(
                duty.designCurrentA(),
                duty.roundTripM(),
                duty.voltageV(),
                duty.highestVoltageV(),
                duty.voltageDropLimitPercent(),
                duty.surroundings().insulationC(),
                duty.surroundings().ambientC(),
                duty.surroundings().bundledCount(),
                duty.interruptA()));
        duty.details().count().ifPresent(asked::add);
        return asked;
    }
}
