import java.util.List;

/** Requests that are legal and dear. */
final class CostAttacks {
    private CostAttacks() {}

    static List<Faults.Fault> all() {
        return List.of(
                Faults.Fault.of("dear: 2 clients by chance", s -> dear(s, 2, 2)),
                Faults.Fault.of("dear: 20 clients by chance", s -> dear(s, 20, 1)),
                Faults.Fault.of("dear: 40 endurances", CostAttacks::endurances),
                Faults.Fault.of("dear: addresses made up", CostAttacks::forged),
                Faults.Fault.of("hang-ups: nobody waits any more", CostAttacks::hangUps),
                Faults.Fault.of("flood: large answers", CostAttacks::circuits),
                Faults.Fault.of("flood: cheap requests", CostAttacks::cheap));
    }

    /** 200 loads of ten windows, 60 stays, by chance: the dearest that the contract takes. */
    static String dearest() {
        StringBuilder text = new StringBuilder("{\"loads\":[");
        for (int i = 0; i < 200; i++) {
            text.append(i == 0 ? "" : ",").append("{\"name\":\"l" + i + "\",\"powerW\":5,\"windows\":[");
            for (int w = 0; w < 10; w++) {
                text.append(w == 0 ? "" : ",").append("{\"from\":\"%02d:00\",\"to\":\"%02d:30\"}".formatted(2 * w, 2 * w));
            }
            text.append("]}");
        }
        text.append("],\"trip\":{\"stays\":[");
        for (int i = 0; i < 60; i++) {
            text.append(i == 0 ? "" : ",")
                    .append("{\"place\":{\"latitude\":%d,\"longitude\":8},\"month\":%d,\"nights\":6}"
                            .formatted(20 + i % 40, 1 + i % 12));
        }
        return text.append("]},\"target\":{\"chanceOfRunningFlat\":0.03}}").toString();
    }

    private static String dear(Service service, int clients, int times) throws Exception {
        byte[] request = Wire.json("/v1/recommendation", dearest());
        return Crowd.only(
                Crowd.of(clients, i -> {
                    int status = 0;
                    for (int k = 0; k < times; k++) {
                        status = Wire.once("127.0.3.1", service.port, request).status();
                    }
                    return status;
                }),
                200,
                429,
                503);
    }

    static byte[] endurance(int runs) {
        return Wire.json(
                "/v1/endurance",
                "{\"system\":{\"busVoltageV\":12,\"chemistry\":\"lfp\",\"nominalEnergyWh\":2000,\"solarPowerW\":300},"
                        + "\"loads\":[{\"name\":\"a\",\"powerW\":40,\"hoursPerDay\":24}],\"runs\":" + runs + ",\"trip\":{\"stays\":"
                        + "[{\"place\":{\"latitude\":46,\"longitude\":8},\"month\":6,\"nights\":40}]}}");
    }

    private static String endurances(Service service) throws Exception {
        return Crowd.only(
                Crowd.of(40, i -> Wire.once("127.0.3.2", service.port, endurance(20_000)).status()), 200, 429, 503);
    }

    /** A field that anybody can write makes nobody another client. */
    private static String forged(Service service) throws Exception {
        String body = new String(endurance(20_000), java.nio.charset.StandardCharsets.UTF_8).split("\r\n\r\n")[1];
        var met = Crowd.of(40, i -> Wire.once(
                        "127.0.3.3",
                        service.port,
                        Wire.post(
                                "/v1/endurance",
                                "Content-Type: application/json\r\nX-Forwarded-For: 10.0.0." + i + "\r\n",
                                body.getBytes(java.nio.charset.StandardCharsets.UTF_8)))
                .status());
        if (!met.containsKey(429)) {
            throw new IllegalStateException("forty made-up addresses got forty shares: " + met);
        }
        return Crowd.only(met, 200, 429, 503);
    }

    /** The processor rests soon after everybody has hung up. */
    private static String hangUps(Service service) throws Exception {
        byte[] request = Wire.json("/v1/recommendation", dearest());
        for (int i = 0; i < 4; i++) {
            Wire wire = new Wire("127.0.3.4", service.port);
            wire.send(request);
            Thread.sleep(100);
            wire.close();
        }
        // A young process compiles for a second or two; four such calculations would go on for ten and more.
        long after = 0;
        for (int second = 1; second <= 5; second++) {
            long before = service.processorMs();
            Thread.sleep(1_000);
            after = service.processorMs() - before;
            if (second > 1 && after <= 500) {
                return after + " ms of the processor in second " + second + " after";
            }
        }
        throw new IllegalStateException("it still took " + after + " ms of the processor in the fifth second");
    }

    private static String circuits(Service service) throws Exception {
        byte[] request = Wire.json("/v1/circuits", SlowAttacks.circuits());
        return Crowd.only(
                Crowd.of(32, i -> Wire.once("127.0.3.5", service.port, request).status()), 200, 429, 503);
    }

    private static String cheap(Service service) throws Exception {
        byte[] request = Wire.json("/v1/energy-budget", "{\"loads\":[{\"name\":\"fan\",\"powerW\":20,\"hoursPerDay\":5}]}");
        return Crowd.only(
                Crowd.of(64, i -> {
                    int worst = 0;
                    try (Wire wire = new Wire("127.0.3.6", service.port)) {
                        for (int k = 0; k < 40; k++) {
                            worst = Math.max(worst, wire.ask(request).status());
                        }
                    }
                    return worst;
                }),
                200,
                429,
                503);
    }
}
