package wayside.sizing.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Source;

/** What whoever pulls the cable must know. */
final class CircuitCautions {
    private static final ReferenceTable PLACEMENT = ReferenceTables.table("cfr33-183/fuse-placement");
    private static final double ARC_VOLTAGE_V = 32;
    private static final double EXTRA_LOW_V = 60;
    private static final double PARALLEL_BATTERIES_AH = 500;

    private CircuitCautions() {}

    /** What holds for every circuit. */
    static List<Caution> always() {
        return List.of(
                new Caution(
                        "fuse-at-source",
                        Severity.DANGER,
                        String.format(
                                Locale.ROOT,
                                "A cable without a fuse at its source can set the vehicle on fire. Put the fuse within"
                                        + " %s mm of the battery or busbar, measured along the cable; %s mm if the cable"
                                        + " runs in a sheath or enclosure all the way. A cable between two batteries"
                                        + " is fed from both ends and needs one at each.",
                                PLACEMENT.row("open").text("distance_mm"),
                                PLACEMENT
                                        .row("in a sheath or enclosure throughout")
                                        .text("distance_mm")),
                        PLACEMENT.source()),
                new Caution(
                        "local-code",
                        Severity.WARNING,
                        "These figures follow the tables of the rule set named beside each circuit. Your local code and"
                                + " a licensed electrician have the last word; mains work is theirs alone.",
                        Source.commonPractice()),
                new Caution(
                        "area-not-diameter",
                        Severity.NOTE,
                        "Conductor sizes are areas in mm2 or AWG. Cable sold by its outer diameter in mm is much"
                                + " thinner: a \"6 mm\" cable of that kind has about 4.6 mm2.",
                        Source.commonPractice()));
    }

    static List<Caution> wired(CircuitDuty duty, SizedConductor conductor, SizedFuse fuse) {
        List<Caution> cautions = new ArrayList<>(always());
        addFeed(cautions, duty);
        addFault(cautions, duty, fuse);
        addConductor(cautions, duty, conductor);
        WarmDrop.findCaution(duty, conductor).ifPresent(cautions::add);
        if (duty.highestVoltageV().value() > ARC_VOLTAGE_V) {
            cautions.add(new Caution(
                    "direct-current-arc",
                    Severity.DANGER,
                    "Direct current of this voltage keeps an arc alive when a contact opens. Use fuses, switches and"
                            + " breakers rated for it in direct current, never parts rated 32 V.",
                    fuse.link().ratedVoltageV().source()));
        }
        if (duty.highestVoltageV().value() > EXTRA_LOW_V) {
            cautions.add(new Caution(
                    "above-60-v",
                    Severity.DANGER,
                    String.format(
                            Locale.ROOT,
                            "%s reaches %.0f V. Above 60 V direct current is dangerous to touch and stricter rules hold:"
                                    + " cover every live part and have it checked.",
                            duty.name(),
                            duty.highestVoltageV().value()),
                    Source.commonPractice()));
        }
        return cautions;
    }

    private static void addFault(List<Caution> cautions, CircuitDuty duty, SizedFuse fuse) {
        if (duty.interruptA().value() > fuse.link().breakingA().value()) {
            cautions.add(new Caution(
                    "confirm-fault-current",
                    Severity.DANGER,
                    String.format(
                            Locale.ROOT,
                            "%s: a short may draw about %,.0f A, more than the sturdiest fuse of the tables breaks (%,.0f"
                                    + " A). That is an estimate: ask the battery's maker for the short-circuit current, or"
                                    + " give each battery a fuse of its own.",
                            duty.name(),
                            duty.interruptA().value(),
                            fuse.link().breakingA().value()),
                    Source.commonPractice()));
        }
    }

    private static void addFeed(List<Caution> cautions, CircuitDuty duty) {
        if (duty.feed() instanceof Feed.Branch) {
            cautions.add(new Caution(
                    "interrupt-rating",
                    Severity.WARNING,
                    "The fuses of branches are chosen to sit behind a main fuse. A fuse straight at a battery must break"
                            + " the battery's whole short-circuit current, 20 kA on a lithium bank: name the bank of"
                            + " such a circuit.",
                    ReferenceTables.table("abyc-e11/large-banks").source()));
        }
        if (duty.feed() instanceof Feed.Bank bank && bank.capacityAh().value() > PARALLEL_BATTERIES_AH) {
            cautions.add(new Caution(
                    "fuse-per-battery",
                    Severity.DANGER,
                    "Where a bank above 500 Ah is made of batteries in parallel, each needs a fuse of its own besides"
                            + " the main fuse: a fault in one is fed by all the others.",
                    Source.standard("ABYC E-11, July 2025, as quoted", "11.10.1.4.1")));
        }
    }

    private static void addConductor(List<Caution> cautions, CircuitDuty duty, SizedConductor conductor) {
        if (conductor.parallelCount().value() > 1) {
            cautions.add(new Caution(
                    "parallel-conductors",
                    Severity.WARNING,
                    String.format(
                            Locale.ROOT,
                            "%s: conductors in parallel must be of one length, size and make and end in the same lugs,"
                                    + " or one of them carries most of the current.",
                            duty.name()),
                    Source.standard("NFPA 70 National Electrical Code", "310.10, conductors in parallel")));
        }
        if (duty.surroundings().engineSpace()) {
            cautions.add(new Caution(
                    "engine-space",
                    Severity.WARNING,
                    duty.name()
                            + ": keep the cable clear of exhaust and moving parts, in a sleeve for heat and oil; near"
                            + " the exhaust it is hotter than the 50 C reckoned with.",
                    Source.commonPractice()));
        }
    }
}
