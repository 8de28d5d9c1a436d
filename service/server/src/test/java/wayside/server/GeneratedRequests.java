package wayside.server;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Requests of many kinds, the same ones every time: each chemistry and bus, given and open systems, frost and polar night. */
final class GeneratedRequests {
    private static final String[] CHEMISTRIES = {"lfp", "nmc", "agm", "gel", "flooded"};
    private static final int[] BUSES = {12, 24, 48};

    private final Random random;

    private GeneratedRequests(long seed) {
        this.random = new Random(seed);
    }

    /** One request and the operation that it is for. */
    record Generated(String path, String body) {}

    static List<Generated> of(int count) {
        List<Generated> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            GeneratedRequests requests = new GeneratedRequests(i);
            all.add(
                    switch (i % 5) {
                        case 0, 1 -> requests.recommendation(i % 15 == 1);
                        case 2 -> requests.endurance();
                        case 3 -> requests.rechargeTime();
                        default -> requests.energyBudget();
                    });
        }
        return all;
    }

    private Generated recommendation(boolean byChance) {
        String target = byChance
                ? text("{\"chanceOfRunningFlat\": %.2f}", between(0.02, 0.2))
                : text("{\"autonomyDays\": %.1f}", between(0.5, 4));
        return new Generated(
                "/v1/recommendation",
                text(
                        "{\"loads\": %s, \"trip\": %s, \"system\": %s, \"target\": %s%s}",
                        loads(), trip(), wishes(), target, byChance ? ", \"runs\": 200" : ""));
    }

    private Generated endurance() {
        return new Generated(
                "/v1/endurance",
                text("{\"system\": %s, \"loads\": %s, \"trip\": %s, \"runs\": 100}", built(), loads(), trip()));
    }

    private Generated rechargeTime() {
        return new Generated(
                "/v1/recharge-time",
                text(
                        "{\"system\": %s, \"fromStateOfCharge\": %.2f, \"ambientC\": %.1f}",
                        built(), between(0, 0.8), between(5, 35)));
    }

    private Generated energyBudget() {
        return new Generated(
                "/v1/energy-budget",
                text("{\"loads\": %s, \"busVoltageV\": %d, \"ambientC\": %.1f}", loads(), bus(), between(-5, 40)));
    }

    private String loads() {
        List<String> loads = new ArrayList<>();
        int count = 1 + random.nextInt(6);
        for (int i = 0; i < count; i++) {
            loads.add(load("load " + i));
        }
        return loads.toString();
    }

    private String load(String name) {
        String power = random.nextInt(4) == 0
                ? text("\"currentA\": %.2f, \"voltageV\": 12", between(0.1, 8))
                : text("\"powerW\": %.1f", between(2, 300));
        String hours = random.nextBoolean()
                ? text("\"hoursPerDay\": %.1f", between(0.2, 10))
                : "\"windows\": [{\"from\": \"20:30\", \"to\": \"02:15\"}]";
        String more =
                switch (random.nextInt(5)) {
                    case 0 -> ", \"supply\": \"ac\", \"surgeFactor\": 2.5";
                    case 1 -> ", \"quantity\": 3, \"dutyCycle\": 0.4, \"tier\": \"comfort\"";
                    case 2 ->
                        ", \"ambientDuty\": [{\"ambientC\": 15, \"dutyCycle\": 0.2}, {\"ambientC\": 35, \"dutyCycle\": 0.6}]";
                    default -> "";
                };
        return text("{\"name\": \"%s\", %s, %s%s}", name, power, hours, more);
    }

    private String trip() {
        List<String> stays = new ArrayList<>();
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            String weather = random.nextInt(3) == 0
                    ? text(
                            ", \"sky\": {\"clearnessIndex\": %.2f}, \"ambient\": {\"meanC\": %.1f}",
                            between(0.25, 0.65), between(-15, 35))
                    : "";
            stays.add(text(
                    "{\"place\": {\"latitude\": %.1f, \"longitude\": %.1f}, \"month\": %d, \"nights\": %d,"
                            + " \"drivingHoursPerDay\": %d, \"hookupHoursPerDay\": %d%s}",
                    between(-60, 75),
                    between(-170, 170),
                    1 + random.nextInt(12),
                    1 + random.nextInt(6),
                    random.nextInt(4),
                    random.nextInt(3) == 0 ? 8 : 0,
                    weather));
        }
        return "{\"stays\": " + stays + "}";
    }

    private String wishes() {
        List<String> wishes = new ArrayList<>();
        wishes.add(text("\"chemistry\": \"%s\"", CHEMISTRIES[random.nextInt(CHEMISTRIES.length)]));
        wishes.add("\"busVoltageV\": " + bus());
        if (random.nextInt(3) == 0) {
            wishes.add(text("\"nominalEnergyWh\": %.0f", between(500, 12000)));
        }
        if (random.nextInt(3) == 0) {
            wishes.add(text("\"solarPowerW\": %.0f", between(0, 1500)));
        }
        if (random.nextInt(3) == 0) {
            wishes.add(text("\"panel\": {\"tiltDegrees\": %.0f}", between(1, 60)));
        }
        if (random.nextInt(4) == 0) {
            wishes.add("\"rules\": \"nec\"");
        }
        return "{" + String.join(", ", wishes) + "}";
    }

    private String built() {
        return text(
                "{\"busVoltageV\": %d, \"chemistry\": \"%s\", \"nominalEnergyWh\": %.0f, \"solarPowerW\": %.0f,"
                        + " \"alternatorChargerA\": %.0f, \"shoreChargerW\": %.0f}",
                bus(),
                CHEMISTRIES[random.nextInt(CHEMISTRIES.length)],
                between(500, 12000),
                between(50, 1000),
                between(5, 60),
                between(100, 1200));
    }

    private int bus() {
        return BUSES[random.nextInt(BUSES.length)];
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
