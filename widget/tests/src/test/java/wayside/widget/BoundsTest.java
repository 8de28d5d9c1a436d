package wayside.widget;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the card says that a field takes is what the contract of the service says. */
class BoundsTest {
    private static final JsonObject BOUNDS = bounds();
    private static final JsonObject CONTRACT = contract();

    private static JsonObject bounds() {
        try (PlainServer sources = PlainServer.ofFolder(
                        Path.of("../src/main/js").toAbsolutePath().normalize());
                BrowserContext reader = Chromium.reader(800, 600)) {
            Page page = reader.newPage();
            page.navigate(sources.origin() + "/wayside.js");
            return JsonParser.parseString((String)
                            page.evaluate("async () => JSON.stringify((await import('/sheet/faultwords.js')).BOUNDS)"))
                    .getAsJsonObject();
        }
    }

    private static JsonObject contract() {
        try (BrowserContext reader = Chromium.reader(800, 600)) {
            return JsonParser.parseString(reader.request()
                            .get(Wayside.origin() + "/openapi.json")
                            .text())
                    .getAsJsonObject();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "quantity, Load, quantity, 1",
        "power, Load, powerW, 1",
        "voltageV, Load, voltageV, 1",
        "hoursPerDay, Load, hoursPerDay, 1",
        "dutyCyclePercent, Load, dutyCycle, 100",
        "surgeFactor, Load, surgeFactor, 1",
        "latitude, Place, latitude, 1",
        "longitude, Place, longitude, 1",
        "nights, Stay, nights, 1",
        "drivingHoursPerDay, Stay, drivingHoursPerDay, 1",
        "hookupHoursPerDay, Stay, hookupHoursPerDay, 1",
        "meanC, Ambient, meanC, 1",
        "autonomyDays, Target, autonomyDays, 1",
        "shadedPercent, Panel, shadedShare, 100",
        "nominalEnergyWh, SystemWishes, nominalEnergyWh, 1",
        "solarPowerW, SystemWishes, solarPowerW, 1",
        "alternatorChargerA, SystemWishes, alternatorChargerA, 1",
        "alternatorRatingA, Vehicle, alternatorRatingA, 1",
        "shoreChargerW, SystemWishes, shoreChargerW, 1",
        "hookupLimitA, Mains, hookupLimitA, 1",
        "standbyW, SystemWishes, standbyW, 1",
        "inverterHoursPerDay, Inverter, hoursPerDay, 1",
        "bankPricePerKWh, Target, bankPricePerWh, 1000",
        "arrayPricePerW, Target, arrayPricePerW, 1"
    })
    void agreeWithTheContract(String control, String schema, String field, double scale) {
        JsonArray told = BOUNDS.getAsJsonArray(control);
        JsonObject taken = CONTRACT.getAsJsonObject("components")
                .getAsJsonObject("schemas")
                .getAsJsonObject(schema)
                .getAsJsonObject("properties")
                .getAsJsonObject(field);

        assertThat(told.get(0).getAsDouble()).isEqualTo(taken.get("minimum").getAsDouble() * scale);
        assertThat(told.get(1).getAsDouble()).isEqualTo(taken.get("maximum").getAsDouble() * scale);
    }
}
