import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Attacks the service by name, each with a customer beside it who is the judge, and prints a table. */
final class Faults {
    /**
     * The least median that is held against a customer's [ms]. An answer passes four threads, and a core that two of them want
     * changes hands only every few ms: below this, twice the quiet median would judge the machine's scheduler.
     */
    private static final double LEAST_JUDGED_MS = 20;

    /** An attack: ends by itself, says what it met, and throws when the service did not hold. */
    interface Attack {
        String run(Service service) throws Exception;
    }

    /**
     * A fault that the service must bear.
     *
     * @param isLong only run when asked for
     * @param own whether it starts services of its own, and so has no customer beside it
     */
    record Fault(String name, boolean isLong, boolean own, Attack attack) {
        static Fault of(String name, Attack attack) {
            return new Fault(name, false, false, attack);
        }

        static Fault ofProcess(String name, Attack attack) {
            return new Fault(name, false, true, attack);
        }

        Fault onlyLong() {
            return new Fault(name, true, own, attack);
        }
    }

    private Service service;
    private double quietMs;
    private int failed;

    public static void main(String[] arguments) throws Exception {
        List<String> names = new ArrayList<>(List.of(arguments));
        boolean all = names.remove("--long");
        List<Fault> faults = new ArrayList<>();
        faults.addAll(MemoryAttacks.all());
        faults.addAll(SlowAttacks.all());
        faults.addAll(CostAttacks.all());
        faults.addAll(ProtocolAttacks.all());
        faults.addAll(JunkAttacks.all());
        faults.addAll(ProcessAttacks.all());
        new Faults().run(faults.stream()
                .filter(fault -> names.isEmpty() ? all || !fault.isLong() : Set.copyOf(names).contains(fault.name()))
                .toList());
    }

    private void run(List<Fault> faults) throws Exception {
        service = Service.start();
        try {
            Customer.warm(service.port);
            quietMs = quiet(2_000);
            System.out.printf(Locale.ROOT, "%-34s %6s %9s %9s %7s  %s%n", "fault", "asked", "median ms", "slowest", "s", "met");
            System.out.printf(Locale.ROOT, "%-34s %6s %9.1f%n", "(quiet)", "", quietMs);
            for (Fault fault : faults) {
                run(fault);
            }
            System.out.printf("%d faults, %d not borne; the service holds %d MB%n", faults.size(), failed, service.residentMb());
        } finally {
            service.close();
        }
        System.exit(failed == 0 && !faults.isEmpty() ? 0 : 1);
    }

    /**
     * Timings are noisy: a fault counts as not borne when the service lets go of it twice in a row, the second time against a
     * quiet customer of just before, for others may have begun to use the machine.
     */
    private void run(Fault fault) throws Exception {
        if (!isBorne(fault)) {
            Thread.sleep(1_000);
            if (!fault.own() && service.process.isAlive()) {
                quietMs = quiet(2_000);
            }
            failed += isBorne(fault) ? 0 : 1;
        }
    }

    private double quiet(long ms) throws InterruptedException {
        Customer customer = new Customer(service.port);
        Thread.sleep(ms);
        return customer.met().medianMs();
    }

    private boolean isBorne(Fault fault) throws Exception {
        if (!service.process.isAlive()) {
            service = Service.start();
            Customer.warm(service.port);
        }
        long begun = System.nanoTime();
        Customer customer = fault.own() ? null : new Customer(service.port);
        String met;
        boolean held = true;
        try {
            met = Background.run(fault, service);
        } catch (Exception e) {
            met = e.getMessage() == null ? e.toString() : e.getMessage();
            held = false;
        }
        Thread.sleep(customer == null ? 0 : Math.max(0, 800 - (System.nanoTime() - begun) / 1_000_000));
        double seconds = (System.nanoTime() - begun) / 1e9;
        Customer.Met beside = customer == null ? new Customer.Met(0, 0, "", 0, 0) : customer.met();
        if (beside.failed() > 0) {
            held = false;
            met += "; the customer was let down " + beside.failed() + " times, first by " + beside.firstFailure();
        }
        if (beside.medianMs() > Math.max(LEAST_JUDGED_MS, 2 * quietMs)) {
            held = false;
            met += "; the customer waited";
        }
        System.out.printf(
                Locale.ROOT,
                "%-34s %6d %9.1f %9.1f %7.1f  %s%s%n",
                fault.name(),
                beside.asked(),
                beside.medianMs(),
                beside.slowestMs(),
                seconds,
                held ? "" : "NOT BORNE: ",
                met);
        return held;
    }
}
