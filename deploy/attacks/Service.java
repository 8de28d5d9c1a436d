import java.io.File;
import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** The real jar in a process of its own, with the heap that its start script gives it. */
final class Service implements AutoCloseable {
    private static final String JAR = System.getProperty("jar");

    final Process process;
    final int port;

    private Service(Process process, int port) {
        this.process = process;
        this.port = port;
    }

    static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }

    static Service start() throws Exception {
        return start(Map.of(), List.of(), ProcessBuilder.Redirect.DISCARD);
    }

    static Service start(Map<String, String> settings, List<String> options, ProcessBuilder.Redirect log) throws Exception {
        int port = freePort();
        Service service = new Service(builder(port, settings, options, log).start(), port);
        for (int i = 0; i < 300; i++) {
            if (Wire.once("127.0.0.1", port, Wire.get("/health/ready")).status() == 200) {
                return service;
            }
            if (!service.process.isAlive()) {
                throw new IllegalStateException("The service ended at its start, code " + service.process.exitValue());
            }
            Thread.sleep(100);
        }
        service.close();
        throw new IllegalStateException("The service did not start within 30 s");
    }

    static ProcessBuilder builder(
            int port, Map<String, String> settings, List<String> options, ProcessBuilder.Redirect log) {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(List.of(System.getProperty("options").split(" ")));
        command.addAll(options);
        command.addAll(List.of("-jar", JAR));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log);
        builder.environment().keySet().removeIf(name -> name.startsWith("WAYSIDE_"));
        builder.environment().put("WAYSIDE_PORT", Integer.toString(port));
        builder.environment().putAll(settings);
        builder.directory(new File("/"));
        return builder;
    }

    /** Processor time that it has taken [ms]. */
    long processorMs() {
        return process.info().totalCpuDuration().map(java.time.Duration::toMillis).orElse(0L);
    }

    /** Memory that it holds [MB]. */
    long residentMb() throws IOException {
        for (String line : Files.readAllLines(Path.of("/proc/" + process.pid() + "/status"))) {
            if (line.startsWith("VmRSS:")) {
                return Long.parseLong(line.replaceAll("[^0-9]", "")) / 1024;
            }
        }
        return 0;
    }

    @Override
    public void close() throws InterruptedException {
        process.destroy();
        if (!process.waitFor(15, TimeUnit.SECONDS)) {
            process.destroyForcibly().waitFor();
        }
    }
}
