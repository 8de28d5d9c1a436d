import java.io.File;
import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.net.ServerSocket;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** What happens to the process and the machine around it; each has a service of its own. */
final class ProcessAttacks {
    private static final byte[] BUDGET =
            Wire.json("/v1/energy-budget", "{\"loads\":[{\"name\":\"fan\",\"powerW\":20,\"hoursPerDay\":5}]}");

    private ProcessAttacks() {}

    static List<Faults.Fault> all() {
        return List.of(
                Faults.Fault.ofProcess("process: killed, and started again", s -> killed()),
                Faults.Fault.ofProcess("process: stopped at work", s -> stopped()),
                Faults.Fault.ofProcess("process: port taken", s -> taken()),
                Faults.Fault.ofProcess("process: settings misspelt", s -> misspelt()),
                Faults.Fault.ofProcess("process: out of memory", s -> starved()),
                Faults.Fault.ofProcess("machine: no temporary folder", s -> answersIn("-Djava.io.tmpdir=/nonexistent", Redirect.DISCARD)),
                Faults.Fault.ofProcess("machine: nowhere to write", s -> answersIn("-Djava.io.tmpdir=/proc", Redirect.DISCARD)),
                Faults.Fault.ofProcess("machine: disk of the log full", s -> answersIn("-Dx=y", Redirect.to(new File("/dev/full")))));
    }

    private static String killed() throws Exception {
        Service first = Service.start();
        first.process.destroyForcibly().waitFor();
        try (Service again = Service.start()) {
            return answer(again.port);
        }
    }

    /** Says first that it takes no more, answers what is at work, and ends. */
    private static String stopped() throws Exception {
        try (Service service = Service.start(Map.of("WAYSIDE_STOP_DELAY_MS", "5000"), List.of(), Redirect.DISCARD)) {
            byte[] request = CostAttacks.endurance(2_000);
            int[] status = {0};
            Thread work = new Thread(() -> status[0] = Wire.once("127.0.6.1", service.port, request).status());
            work.start();
            Thread.sleep(200);
            service.process.destroy();
            Thread.sleep(500);
            int ready = Wire.once("127.0.6.1", service.port, Wire.get("/health/ready")).status();
            String late = answer(service.port);
            work.join();
            if (status[0] != 200 || ready != 503 || !service.process.waitFor(15, TimeUnit.SECONDS)) {
                throw new IllegalStateException("at work " + status[0] + ", ready " + ready);
            }
            return "not ready, but " + late + " and answered what was at work";
        }
    }

    private static String taken() throws Exception {
        try (ServerSocket other = new ServerSocket(0)) {
            return refusal(Map.of("WAYSIDE_PORT", Integer.toString(other.getLocalPort())), "is taken");
        }
    }

    private static String misspelt() throws Exception {
        return refusal(Map.of("WAYSIDE_PROT", "1"), "WAYSIDE_PROT is no setting");
    }

    private static String refusal(Map<String, String> settings, String words) throws Exception {
        Process process = Service.builder(Service.freePort(), settings, List.of(), Redirect.PIPE).start();
        List<String> lines = process.inputReader().lines().toList();
        int code = process.waitFor();
        if (code != 2 || lines.size() != 1 || !lines.get(0).contains(words)) {
            throw new IllegalStateException("code " + code + ": " + lines);
        }
        return "code 2 and one line";
    }

    /** A process that is out of memory ends, so that its supervisor starts another. */
    private static String starved() throws Exception {
        Process process = Service.builder(
                        Service.freePort(), Map.of(), List.of("-XX:MaxMetaspaceSize=12m"), Redirect.DISCARD).start();
        if (!process.waitFor(60, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IllegalStateException("it lived on without memory");
        }
        // As the virtual machine ends with -XX:+ExitOnOutOfMemoryError.
        if (process.exitValue() != 3) {
            throw new IllegalStateException("ended with code " + process.exitValue());
        }
        return "ended with code 3";
    }

    private static String answersIn(String option, Redirect log) throws Exception {
        try (Service service = Service.start(Map.of(), List.of(option), log)) {
            byte[] form = MemoryAttacks.form("no year");
            int status = Wire.once("127.0.6.2", service.port, form).status();
            if (status != 422) {
                throw new IllegalStateException("a form got " + status);
            }
            return answer(service.port);
        }
    }

    private static String answer(int port) throws IOException {
        for (int i = 0; i < 50; i++) {
            int status = Wire.once("127.0.6.3", port, BUDGET).status();
            if (status != 200) {
                throw new IllegalStateException("answered " + status);
            }
        }
        return "50 answered";
    }
}
