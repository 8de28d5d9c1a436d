package wayside.sizing.system;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.solar.sky.SkyMonth;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.SizedCircuit;

/** What whoever builds a recommended system must know. */
final class SystemCautions {
    private static final double LARGE_CURRENT_AT_12_V_A = 200;
    private static final double COLD_END_OF_TABLE_C = -6.7;

    private final Site site;
    private final SizedSystem system;
    private final List<Caution> cautions = new ArrayList<>();

    private SystemCautions(SizedSystem system) {
        site = system.site();
        this.system = system;
    }

    static List<Caution> of(SizedSystem system) {
        return new SystemCautions(system).collect();
    }

    private List<Caution> collect() {
        ChemistryData data = system.battery().bank().data();
        if (data.chemistry().isLeadAcid()) {
            ventilation();
            coldLeadAcid(data);
        } else {
            coldCharging(data);
        }
        if (data.chemistry() == Chemistry.NMC) {
            add(Severity.DANGER, CautionCode.NMC_FIRE);
        }
        mains();
        alternator();
        voltage();
        add(Severity.NOTE, CautionCode.GROWTH);
        return all();
    }

    private List<Caution> all() {
        Set<Caution> all = new LinkedHashSet<>(system.energyBudget().cautions());
        all.addAll(cautions);
        system.array().ifPresent(array -> all.addAll(array.cautions()));
        all.addAll(SkyMonth.cautions(
                site.journey().stays().stream().map(stay -> stay.month().sky())));
        for (SizedCircuit circuit : system.circuits()) {
            all.addAll(circuit.cautions());
        }
        return List.copyOf(all);
    }

    private void coldCharging(ChemistryData data) {
        double coldest = site.journey().coldest().bank().coldestC();
        add(
                coldest < data.lowestChargeC().value() ? Severity.DANGER : Severity.WARNING,
                CautionCode.COLD_CHARGING,
                Parameter.number("coldest", coldest, Unit.CELSIUS));
    }

    private void ventilation() {
        Derived opening = system.ventilationCm2().orElseThrow();
        cautions.add(new Caution(
                Message.of(CautionCode.LEAD_ACID_VENTILATION, Parameter.number("opening", opening)),
                Severity.DANGER,
                opening.source()));
    }

    private void coldLeadAcid(ChemistryData data) {
        double coldest = site.journey().coldest().bank().coldestC();
        if (coldest < data.lowestChargeC().value() || coldest < COLD_END_OF_TABLE_C) {
            add(Severity.WARNING, CautionCode.LEAD_ACID_FROST);
        }
    }

    private void mains() {
        if (system.inverter().isPresent() || system.chargers().shore().isPresent()) {
            add(Severity.DANGER, CautionCode.MAINS);
        }
    }

    private void alternator() {
        if (system.chargers().alternator().isPresent()) {
            add(Severity.WARNING, CautionCode.ALTERNATOR_HEAT);
        }
    }

    private void voltage() {
        double current = system.circuits().stream()
                .mapToDouble(circuit -> circuit.duty().designCurrentA().value())
                .max()
                .orElse(0);
        if (site.busVoltageV().value() < 24 && current > LARGE_CURRENT_AT_12_V_A) {
            add(Severity.NOTE, CautionCode.CONSIDER_24_V, Parameter.number("current", current, Unit.AMPERE));
        }
    }

    private void add(Severity severity, CautionCode code, Parameter... parameters) {
        cautions.add(Caution.commonPractice(severity, code, parameters));
    }
}
