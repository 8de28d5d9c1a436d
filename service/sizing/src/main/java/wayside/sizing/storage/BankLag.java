package wayside.sizing.storage;

import wayside.sizing.brief.BankBox;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * How slowly a bank follows the air round it: the time constant of a mass in a box, {@code tau = m c / (U A)}, m [kg], c [Wh/kgK],
 * U [W/m2K] of the box's wall with the air about it, A [m2]. Heat of its own charging isn't counted.
 *
 * <p>30 kg in a box of 0.8 m2 of 12 mm plywood lag by about 5.5 hours, with 20 mm of foam instead by 10; bare in still air by 2
 * to 3. The materials' figures are common practice, no source.
 */
public final class BankLag {
    private static final double LAG_HOURS = 8;

    /** r_s: still air at both faces and r_g an air gap [m2K/W]. */
    private static final Expression LEAKAGE = Expression.commonPractice("U = 1 / (2 r_s + r_g + d_w / k_w + d_f / k_f)")
            .with("r_s", 0.125, Unit.COUNT)
            .with("r_g", 0.18, Unit.COUNT)
            .with("k_w", 0.13, Unit.COUNT)
            .with("k_f", 0.035, Unit.COUNT);

    private static final Expression LAG =
            Expression.commonPractice("tau = m c / (U A)").with("c", 1.0 / 3.6, Unit.COUNT);

    private BankLag() {}

    /**
     * The lag of a bank where it stands.
     *
     * @return [h], 0 or more
     */
    public static Derived hours(BankPlacement placement) {
        String label = "lag of the bank behind the air";
        if (placement.lagHours().isEmpty() && placement.box().isPresent()) {
            return ofBox(label, placement.box().get());
        }
        return Derived.byDefault(
                        label,
                        LAG_HOURS,
                        Unit.HOUR,
                        placement.at("bankLagHours"),
                        "A bank of some 30 kg in a closed box: it sleeps through short frosts and stays cold into the day",
                        Source.commonPractice())
                .unlessGiven(placement.lagHours());
    }

    private static Derived ofBox(String label, BankBox box) {
        Derived mass = Derived.given("mass of the bank in its box", box.massKg(), Unit.KILOGRAM, box.at("massKg"));
        Derived area = Derived.given("area of the bank's box", box.areaM2(), Unit.SQUARE_METRE, box.at("areaM2"));
        Derived plywood = Derived.byDefault(
                        "plywood of the bank's box",
                        0.012,
                        Unit.METRE,
                        box.at("plywoodM"),
                        "The wood that boxes are made of",
                        Source.commonPractice())
                .unlessGiven(box.plywoodM());
        Derived foam = Derived.byDefault(
                        "foam round the bank's box",
                        0,
                        Unit.METRE,
                        box.at("foamM"),
                        "No foam was given",
                        Source.commonPractice())
                .unlessGiven(box.foamM());
        Derived leakage = LEAKAGE.value(
                "heat that a square metre of the box lets through for each degree",
                Unit.COUNT,
                plywood.as("d_w"),
                foam.as("d_f"));
        return LAG.value(label, Unit.HOUR, mass.as("m"), leakage.as("U"), area.as("A"));
    }
}
