package wayside.sizing.storage;

import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.brief.Compartment;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * Where a bank stands, how warm it is there and how slowly it follows the air.
 *
 * @param placement as asked
 * @param lagHours how slowly it follows the air [h]
 * @param heating of a bank with a heater
 */
public record BankPlace(BankPlacement placement, Derived lagHours, Optional<BankHeating> heating) {
    private static final double CABIN_K = 15;
    private static final double UNDERFLOOR_K = 5;
    /** A living space is heated to [C], and no further. Common practice, no source. */
    private static final double HEATED_TO_C = 20;

    private static final Expression BANK_C = Expression.definition("T = Tm + dT");
    private static final Expression INDOORS_K =
            Expression.commonPractice("dT = min(dT0, max(0, T_in - Tm))").with("T_in", HEATED_TO_C, Unit.CELSIUS);

    public static BankPlace of(BankPlacement placement) {
        Derived lag = BankLag.hours(placement);
        return new BankPlace(placement, lag, BankHeating.of(placement, lag));
    }

    /**
     * How much warmer than the outside air it is there. A cabin is heated in the cold and not in summer.
     *
     * @param whose opens the label of what differs from stay to stay
     * @param airC mean of the air [C]
     * @return [K]
     */
    public Derived warmerK(String whose, Derived airC) {
        String label = "bank warmer than the air by";
        Derived most = Derived.byDefault(
                        label, usualK(), Unit.KELVIN, placement.at("warmerByK"), reason(), Source.commonPractice())
                .unlessGiven(placement.warmerByK());
        return compartment() == Compartment.OUTSIDE
                ? most
                : INDOORS_K.value(whose + label, Unit.KELVIN, most.as("dT0"), airC.as("Tm"));
    }

    private double usualK() {
        return switch (compartment()) {
            case CABIN -> CABIN_K;
            case UNDERFLOOR -> UNDERFLOOR_K;
            case OUTSIDE -> 0;
        };
    }

    private String reason() {
        return switch (compartment()) {
            case CABIN -> "A living space that people heat while it is cold, to 20 degrees and no further";
            case UNDERFLOOR -> "Some of the heat of the living space above gets to it";
            case OUTSIDE ->
                "An unheated compartment; in a heated cabin it is warmer, gives more and may be charged in frost";
        };
    }

    /** In which part of the vehicle it stands. */
    public Compartment compartment() {
        return placement.where().orElse(Compartment.OUTSIDE);
    }

    /**
     * Mean temperature of the bank without a heater.
     *
     * @param whose opens its label
     * @param airC mean of the air [C]
     * @param warmerK how much warmer than the air it is there [K]
     * @return [C]
     */
    public static Derived meanC(String whose, Derived airC, Derived warmerK) {
        return BANK_C.value(whose + "mean temperature of the bank", Unit.CELSIUS, airC.as("Tm"), warmerK.as("dT"));
    }

    /** Defaults of it that are no numbers. */
    public List<Assumption> choices() {
        return placement.where().isPresent()
                ? List.of()
                : List.of(Assumption.choice(
                        placement.at("where"),
                        "place of the battery",
                        Compartment.OUTSIDE.code(),
                        "As cold as the air: the hardest place, until you say otherwise",
                        Source.commonPractice()));
    }
}
