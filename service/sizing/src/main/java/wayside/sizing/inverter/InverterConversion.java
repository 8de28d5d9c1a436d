package wayside.sizing.inverter;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.brief.InverterSpec;
import wayside.sizing.demand.Demand;
import wayside.sizing.demand.LoadDemand;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** What is lost between battery and socket, on top of the idle power. */
public sealed interface InverterConversion {
    /** Lost while it delivers so much [W]. */
    Derived lossW(String label, Derived acPowerW);

    /** Lost over a day by the AC loads, each taken to run alone at its own power [Wh]. */
    Derived dailyLossWh(Demand demand);

    /** A flat efficiency when one is given, else the loss curve. */
    static InverterConversion of(InverterSpec spec, InverterRating rating) {
        if (spec.efficiency().isPresent()) {
            return new Flat(Derived.given(
                    "inverter: efficiency", spec.efficiency().getAsDouble(), Unit.SHARE, spec.at("efficiency")));
        }
        return new Curve(
                Curve.coefficient("inverter: loss proportional to output", Curve.TYPICAL_LINEAR, spec),
                Curve.coefficient("inverter: loss with the square of output", Curve.TYPICAL_SQUARE, spec),
                rating.continuousW());
    }

    /** The same share at every power. */
    record Flat(Derived efficiency) implements InverterConversion {
        private static final Expression POWER = Expression.definition("L = P / eta - P");
        private static final Expression ENERGY = Expression.definition("L = E / eta - E");

        @Override
        public Derived lossW(String label, Derived acPowerW) {
            return POWER.value(label, Unit.WATT, acPowerW.as("P"), efficiency.as("eta"));
        }

        @Override
        public Derived dailyLossWh(Demand demand) {
            return ENERGY.value(
                    demand.whose() + "inverter: energy of conversion",
                    Unit.WATT_HOUR,
                    demand.ac().dailyEnergyWh().as("E"),
                    efficiency.as("eta"));
        }
    }

    /**
     * {@code L = k1 P + k2 P^2 / P_r}: k1 [1] losses proportional to the output, k2 [1] losses that rise with its square,
     * P_r [W] the rating. Source of the form: H. Schmidt and D. U. Sauer, Wechselrichter-Wirkungsgrade, Sonnenenergie
     * 4/1996; the coefficients are the trade's.
     */
    record Curve(Derived linear, Derived square, Derived ratingW) implements InverterConversion {
        private static final double TYPICAL_LINEAR = 0.04;
        private static final double TYPICAL_SQUARE = 0.05;
        private static final Source MODEL = Source.paper(
                "Schmidt and Sauer, Wechselrichter-Wirkungsgrade, Sonnenenergie 4/1996", "three-parameter loss");
        private static final Expression POWER = Expression.of("L = P (k1 + k2 P / P_r)", MODEL);
        private static final Expression ENERGY = Expression.of("L = sum(E (k1 + k2 P / P_r))", MODEL);

        private static Derived coefficient(String label, double value, InverterSpec spec) {
            return Derived.byDefault(
                    label,
                    value,
                    Unit.COUNT,
                    spec.at("efficiency"),
                    "Typical of small sine-wave inverters",
                    Source.commonPractice());
        }

        @Override
        public Derived lossW(String label, Derived acPowerW) {
            return POWER.value(label, Unit.WATT, acPowerW.as("P"), linear.as("k1"), square.as("k2"), ratingW.as("P_r"));
        }

        @Override
        public Derived dailyLossWh(Demand demand) {
            List<Input> inputs = new ArrayList<>(List.of(linear.as("k1"), square.as("k2"), ratingW.as("P_r")));
            for (LoadDemand load : demand.loads()) {
                if (load.isBehindTheInverter()) {
                    inputs.add(load.dailyEnergyWh().as("E"));
                    inputs.add(load.runningPowerW().as("P"));
                }
            }
            return ENERGY.value(demand.whose() + "inverter: energy of conversion", Unit.WATT_HOUR, inputs);
        }
    }
}
