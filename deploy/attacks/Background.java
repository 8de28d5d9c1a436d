import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Lets attackers give way to the service and the customer: they would have machines of their own, and here they are a part
 * of the load only because they share two cores. A thread takes its niceness from the one that starts it (Linux).
 */
final class Background {
    private static final String NAME = "attackers";

    private Background() {}

    /** Runs an attack; what starts processes of its own is left as it is, for they would inherit it. */
    static String run(Faults.Fault fault, Service service) throws Exception {
        if (fault.own()) {
            return fault.attack().run(service);
        }
        FutureTask<String> attack = new FutureTask<>(() -> {
            giveWay();
            return fault.attack().run(service);
        });
        new Thread(attack, NAME).start();
        try {
            return attack.get();
        } catch (java.util.concurrent.ExecutionException e) {
            throw e.getCause() instanceof Exception cause ? cause : e;
        }
    }

    private static void giveWay() throws IOException, InterruptedException {
        for (String thread : threads()) {
            Process renice = new ProcessBuilder("renice", "-n", "10", "-p", thread)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            renice.waitFor(5, TimeUnit.SECONDS);
        }
    }

    /** Numbers of the system's threads of that name: one. */
    private static List<String> threads() throws IOException {
        try (Stream<Path> tasks = Files.list(Path.of("/proc/self/task"))) {
            return tasks.filter(task -> NAME.equals(name(task)))
                    .map(task -> task.getFileName().toString())
                    .toList();
        }
    }

    private static String name(Path task) {
        try {
            return Files.readString(task.resolve("comm")).strip();
        } catch (IOException e) {
            return "";
        }
    }
}
