package wayside.server.operation.shared;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.RisingLadder;

/** The sizes that parts are to be had in. */
@Schema(
        name = "Sizes",
        description =
                "The sizes that parts are to be had in. A ladder that is given replaces the usual one of its kind as a"
                        + " whole.")
public record SizesInput(
        @Schema(description = "Batteries by rising capacity in each chemistry and voltage.")
        @Size(min = 1, max = 200)
        @RisingLadder(
                by = "capacityAh",
                within = {"chemistry", "voltageV"})
        @Nullable
        List<@Valid Battery> batteries,

        @Schema(description = "Modules by rising power.")
        @Size(min = 1, max = 200)
        @RisingLadder(
                by = "powerW",
                within = {})
        @Nullable
        List<@Valid Module> modules,

        @Schema(description = "Charge controllers by rising current in each voltage.")
        @Size(min = 1, max = 200)
        @RisingLadder(
                by = "currentA",
                within = {"highestArrayV"})
        @Nullable
        List<@Valid Controller> controllers,

        @Schema(description = "Chargers on the alternator by rising current for each pair of voltages.")
        @Size(min = 1, max = 200)
        @RisingLadder(
                by = "currentA",
                within = {"inputV", "outputV"})
        @Nullable
        List<@Valid AlternatorCharger> alternatorChargers,

        @Schema(description = "Shore chargers by rising current in each voltage.")
        @Size(min = 1, max = 200)
        @RisingLadder(
                by = "currentA",
                within = {"outputV"})
        @Nullable
        List<@Valid ShoreCharger> shoreChargers,

        @Schema(description = "Inverters by rising power.")
        @Size(min = 1, max = 200)
        @RisingLadder(
                by = "continuousW",
                within = {})
        @Nullable
        List<@Valid Inverter> inverters,

        @Schema(description = "Converters by rising current in each voltage.")
        @Size(min = 1, max = 200)
        @RisingLadder(
                by = "currentA",
                within = {"inputV"})
        @Nullable
        List<@Valid Converter> converters,

        @Schema(description = "Self-contained units by rising energy.")
        @Size(min = 1, max = 200)
        @RisingLadder(
                by = "energyWh",
                within = {})
        @Nullable
        List<@Valid Unit> units) {
    /** What every size has. */
    public interface Piece {
        Double massKg();

        Double lengthMm();

        Double widthMm();

        Double heightMm();
    }

    /** A battery that exists. */
    @Schema(name = "BatterySize", description = "A battery that exists.")
    public record Battery(
            ChemistryCode chemistry,

            @Schema(description = "Nominal [V]: 12.8 for four cells of LFP.")
            @DecimalMin("0.001")
            @DecimalMax("10000000")
            Double voltageV,

            @Schema(description = "Rated capacity [Ah].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double capacityAh,

            @Schema(description = "Most of them in one string; 1 when left open.") @Min(1) @Max(100) @Nullable
            Integer mostInSeries,

            @Schema(description = "Strings side by side; 4 when left open.") @Min(1) @Max(100) @Nullable
            Integer mostInParallel,

            @Schema(description = "Mass of one piece [kg].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double massKg,

            @Schema(description = "Length of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double lengthMm,

            @Schema(description = "Width of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double widthMm,

            @Schema(description = "Height of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double heightMm)
            implements Piece {}

    /** A solar module that exists, by its label. */
    @Schema(name = "ModuleSize", description = "A solar module that exists, by its label.")
    public record Module(
            @Schema(description = "Rated power [W].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double powerW,

            @Schema(description = "[V]") @DecimalMin("0.001") @DecimalMax("10000000")
            Double openCircuitV,

            @Schema(description = "Voltage at its best point [V].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double workingV,

            @Schema(description = "[A]") @DecimalMin("0.001") @DecimalMax("10000000")
            Double shortCircuitA,

            @Schema(description = "Current at its best point [A].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double workingA,

            @Schema(description = "[A]") @DecimalMin("0.001") @DecimalMax("10000000")
            Double largestSeriesFuseA,

            @Schema(description = "Mass of one piece [kg].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double massKg,

            @Schema(description = "Length of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double lengthMm,

            @Schema(description = "Width of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double widthMm,

            @Schema(description = "Height of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double heightMm)
            implements Piece {}

    /** A charge controller that exists. */
    @Schema(name = "ControllerSize", description = "A charge controller that exists.")
    public record Controller(
            @Schema(description = "Highest voltage of an array that it stands [V].")
            @DecimalMin("0.001")
            @DecimalMax("10000000")
            Double highestArrayV,

            @Schema(description = "Rated output [A].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double currentA,

            @Schema(description = "Nominal, that it charges [V]; 48 when left open.")
            @DecimalMin("0.001")
            @DecimalMax("10000000")
            @Nullable
            Double highestBusV,

            @Schema(description = "Mass of one piece [kg].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double massKg,

            @Schema(description = "Length of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double lengthMm,

            @Schema(description = "Width of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double widthMm,

            @Schema(description = "Height of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double heightMm)
            implements Piece {}

    /** A charger between alternator and bank that exists. */
    @Schema(name = "AlternatorChargerSize", description = "A charger between alternator and bank that exists.")
    public record AlternatorCharger(
            @Schema(description = "Nominal, of the vehicle [V]; 12 when left open.")
            @DecimalMin("0.001")
            @DecimalMax("10000000")
            @Nullable
            Double inputV,

            @Schema(description = "Nominal, of the bus [V].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double outputV,

            @Schema(description = "Rated output [A].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double currentA,

            @Schema(description = "Side by side; 1 when left open.") @Min(1) @Max(100) @Nullable
            Integer mostTogether,

            @Schema(description = "Mass of one piece [kg].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double massKg,

            @Schema(description = "Length of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double lengthMm,

            @Schema(description = "Width of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double widthMm,

            @Schema(description = "Height of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double heightMm)
            implements Piece {}

    /** A mains charger that exists. */
    @Schema(name = "ShoreChargerSize", description = "A mains charger that exists.")
    public record ShoreCharger(
            @Schema(description = "Nominal, of the bus [V].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double outputV,

            @Schema(description = "Rated output [A].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double currentA,

            @Schema(description = "Side by side; 1 when left open.") @Min(1) @Max(100) @Nullable
            Integer mostTogether,

            @Schema(description = "Mass of one piece [kg].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double massKg,

            @Schema(description = "Length of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double lengthMm,

            @Schema(description = "Width of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double widthMm,

            @Schema(description = "Height of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double heightMm)
            implements Piece {}

    /** An inverter that exists. */
    @Schema(name = "InverterSize", description = "An inverter that exists.")
    public record Inverter(
            @Schema(description = "Rated output [W].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double continuousW,

            @Schema(description = "Output for a few seconds [W].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double surgeW,

            @Schema(description = "Most of them that work as one; 1 when left open.") @Min(1) @Max(100) @Nullable
            Integer mostTogether,

            @Schema(description = "Mass of one piece [kg].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double massKg,

            @Schema(description = "Length of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double lengthMm,

            @Schema(description = "Width of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double widthMm,

            @Schema(description = "Height of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double heightMm)
            implements Piece {}

    /** A converter to 12 V that exists. */
    @Schema(name = "ConverterSize", description = "A converter to 12 V that exists.")
    public record Converter(
            @Schema(description = "Nominal [V].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double inputV,

            @Schema(description = "Rated output [A].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double currentA,

            @Schema(description = "Mass of one piece [kg].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double massKg,

            @Schema(description = "Length of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double lengthMm,

            @Schema(description = "Width of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double widthMm,

            @Schema(description = "Height of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double heightMm)
            implements Piece {}

    /** A self-contained unit that exists. */
    @Schema(name = "UnitSize", description = "A self-contained unit that exists.")
    public record Unit(
            @Schema(description = "Rated energy [Wh].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double energyWh,

            @Schema(description = "Continuous [W].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double inverterW,

            @Schema(description = "Output for a few seconds [W].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double surgeW,

            @Schema(description = "Largest array that it takes [W].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double solarW,

            @Schema(description = "Mass of one piece [kg].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double massKg,

            @Schema(description = "Length of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double lengthMm,

            @Schema(description = "Width of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double widthMm,

            @Schema(description = "Height of one piece [mm].") @DecimalMin("0.001") @DecimalMax("10000000")
            Double heightMm)
            implements Piece {}
}
