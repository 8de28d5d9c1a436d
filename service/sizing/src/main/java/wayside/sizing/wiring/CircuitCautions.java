package wayside.sizing.wiring;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** What whoever pulls the cable must know. */
final class CircuitCautions {
    private static final ReferenceTable PLACEMENT = ReferenceTables.table("cfr33-183/fuse-placement");
    private static final double ARC_VOLTAGE_V = 32;
    private static final double EXTRA_LOW_V = 60;
    private static final double PARALLEL_BATTERIES_AH = 500;
    private static final List<Caution> ALWAYS = List.of(
            new Caution(
                    Message.of(
                            CautionCode.FUSE_AT_SOURCE,
                            distance("distance", "open"),
                            distance("sheathedDistance", "in a sheath or enclosure throughout")),
                    Severity.DANGER,
                    PLACEMENT.source()),
            Caution.commonPractice(Severity.WARNING, CautionCode.LOCAL_CODE),
            Caution.commonPractice(Severity.NOTE, CautionCode.AREA_NOT_DIAMETER));

    private CircuitCautions() {}

    /** What holds for every circuit. */
    static List<Caution> always() {
        return ALWAYS;
    }

    private static Parameter distance(String name, String row) {
        return Parameter.number(name, PLACEMENT.row(row).number("distance_mm"), Unit.MILLIMETRE);
    }

    static List<Caution> wired(CircuitDuty duty, SizedConductor conductor, SizedFuse fuse) {
        List<Caution> cautions = new ArrayList<>(always());
        addFeed(cautions, duty);
        addFault(cautions, duty, fuse);
        addConductor(cautions, duty, conductor);
        WarmDrop.findCaution(duty, conductor).ifPresent(cautions::add);
        if (duty.highestVoltageV().value() > ARC_VOLTAGE_V) {
            cautions.add(new Caution(
                    Message.of(CautionCode.DIRECT_CURRENT_ARC, Parameter.number("limit", ARC_VOLTAGE_V, Unit.VOLT)),
                    Severity.DANGER,
                    fuse.link().ratedVoltageV().source()));
        }
        if (duty.highestVoltageV().value() > EXTRA_LOW_V) {
            cautions.add(Caution.commonPractice(
                    Severity.DANGER,
                    CautionCode.ABOVE_60_V,
                    Parameter.text("circuit", duty.name()),
                    Parameter.number("voltage", duty.highestVoltageV())));
        }
        return cautions;
    }

    private static void addFault(List<Caution> cautions, CircuitDuty duty, SizedFuse fuse) {
        if (duty.interruptA().value() > fuse.link().breakingA().value()) {
            cautions.add(Caution.commonPractice(
                    Severity.DANGER,
                    CautionCode.CONFIRM_FAULT_CURRENT,
                    Parameter.text("circuit", duty.name()),
                    Parameter.number("shortCircuit", duty.interruptA()),
                    Parameter.number("breaking", fuse.link().breakingA())));
        }
    }

    private static void addFeed(List<Caution> cautions, CircuitDuty duty) {
        if (duty.feed() instanceof Feed.Branch) {
            cautions.add(new Caution(
                    Message.of(CautionCode.INTERRUPT_RATING),
                    Severity.WARNING,
                    ReferenceTables.table("abyc-e11/large-banks").source()));
        }
        if (duty.feed() instanceof Feed.Bank bank && bank.capacityAh().value() > PARALLEL_BATTERIES_AH) {
            cautions.add(new Caution(
                    Message.of(
                            CautionCode.FUSE_PER_BATTERY,
                            Parameter.number("limit", PARALLEL_BATTERIES_AH, Unit.AMPERE_HOUR)),
                    Severity.DANGER,
                    Source.standard("ABYC E-11, July 2025, as quoted", "11.10.1.4.1")));
        }
    }

    private static void addConductor(List<Caution> cautions, CircuitDuty duty, SizedConductor conductor) {
        if (conductor.parallelCount().value() > 1) {
            cautions.add(new Caution(
                    Message.of(CautionCode.PARALLEL_CONDUCTORS, Parameter.text("circuit", duty.name())),
                    Severity.WARNING,
                    Source.standard("NFPA 70 National Electrical Code", "310.10, conductors in parallel")));
        }
        if (duty.surroundings().engineSpace()) {
            cautions.add(Caution.commonPractice(
                    Severity.WARNING,
                    CautionCode.ENGINE_SPACE,
                    Parameter.text("circuit", duty.name()),
                    Parameter.number("ambient", duty.surroundings().ambientC())));
        }
    }
}
