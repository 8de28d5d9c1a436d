package wayside.server.operation.shared;

import org.jspecify.annotations.Nullable;
import wayside.sizing.brief.At;
import wayside.sizing.brief.BankBox;
import wayside.sizing.brief.BankHeater;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.brief.Compartment;

/** Where a battery stands, as the brief wants it. */
public final class PlaceReader {
    private PlaceReader() {}

    public static BankPlacement read(At at, @Nullable BatteryPlaceInput place) {
        return place == null
                ? BankPlacement.open(at)
                : new BankPlacement(
                        at,
                        Given.map(place.where(), code -> Compartment.valueOf(code.name())),
                        Given.number(place.warmerByK()),
                        Given.number(place.lagHours()),
                        Given.map(at.field("box"), place.box(), PlaceReader::box),
                        Given.map(at.field("heater"), place.heater(), PlaceReader::heater));
    }

    private static BankBox box(At at, BankBoxInput box) {
        return new BankBox(at, box.massKg(), box.areaM2(), Given.number(box.plywoodM()), Given.number(box.foamM()));
    }

    private static BankHeater heater(At at, BatteryHeaterInput heater) {
        return new BankHeater(at, heater.powerW(), Given.number(heater.onBelowC()), Given.number(heater.offAboveC()));
    }
}
