package wayside.sizing.system;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.solar.SkyMonth;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Source;
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
            add(
                    "nmc-fire",
                    Severity.DANGER,
                    "NMC cells burn more readily than LFP and their voltage swings far. Use them only as a closed unit with"
                            + " regulated outlets and its maker's protection.");
        }
        mains();
        alternator();
        voltage();
        add(
                "growth",
                Severity.NOTE,
                "Battery and array have a fifth in hand for loads to come; cables, fuses and inverter are sized for what is"
                        + " listed.");
        return all();
    }

    private List<Caution> all() {
        Set<Caution> all = new LinkedHashSet<>(system.energyBudget().cautions());
        all.addAll(cautions);
        system.array().ifPresent(array -> all.addAll(array.cautions()));
        all.addAll(
                SkyMonth.cautions(site.journey().stays().stream().map(stay -> stay.month().sky())));
        for (SizedCircuit circuit : system.circuits()) {
            all.addAll(circuit.cautions());
        }
        return List.copyOf(all);
    }

    private void coldCharging(ChemistryData data) {
        double coldest = site.journey().coldest().coldestBankC();
        boolean frost = coldest < data.lowestChargeC().value();
        String text = frost
                ? "On mornings of this trip the battery falls to about %.0f C. A lithium battery charged below 0 C (32 F) is damaged for"
                        + " good and can short inside later. Mount it in the heated cabin or take one with a heater, and"
                        + " make sure its electronics stop charging in frost. It may be discharged there, down to about"
                        + " -20 C (-4 F)."
                : "A lithium battery charged below 0 C (32 F) is damaged for good and can short inside later. Make sure its"
                        + " electronics stop charging in frost, also when the vehicle stands in winter. Coldest that it gets"
                        + " on this trip: about %.0f C.";
        cautions.add(new Caution(
                "cold-charging",
                frost ? Severity.DANGER : Severity.WARNING,
                String.format(Locale.ROOT, text, coldest),
                Source.commonPractice()));
    }

    private void ventilation() {
        cautions.add(new Caution(
                "lead-acid-ventilation",
                Severity.DANGER,
                String.format(
                        Locale.ROOT,
                        "A lead-acid battery gives off hydrogen while it charges: a spark can explode it. Vent its box to the"
                                + " outside, above and below, with openings of about %.0f cm2 each, sealed from the living"
                                + " space, and no switch or fuse inside. Your local code has the last word.",
                        Math.max(
                                1,
                                Math.ceil(system.ventilationCm2().orElseThrow().value()))),
                system.ventilationCm2().orElseThrow().source()));
    }

    private void coldLeadAcid(ChemistryData data) {
        double coldest = site.journey().coldest().coldestBankC();
        if (coldest < data.lowestChargeC().value() || coldest < COLD_END_OF_TABLE_C) {
            add(
                    "lead-acid-frost",
                    Severity.WARNING,
                    "Below about -7 C (20 F) the table of cold capacity ends, and a discharged lead-acid battery can freeze"
                            + " and burst. Keep it charged, and let the charging voltage follow its temperature.");
        }
    }

    private void mains() {
        if (system.inverter().isPresent() || system.chargers().shore().isPresent()) {
            add(
                    "mains",
                    Severity.DANGER,
                    "Mains voltage from inverter or hookup kills. A licensed electrician does this part: a residual-current"
                            + " device (GFCI), two-pole switching, and neutral bonded to earth at one place only, at the"
                            + " source in use.");
        }
    }

    private void alternator() {
        if (system.chargers().alternator().isPresent()) {
            add(
                    "alternator-heat",
                    Severity.WARNING,
                    "An empty lithium battery can hold an alternator at full output until it burns out, soonest at idle."
                            + " Use a charger that limits the current, never a bare relay, and one that suits an alternator"
                            + " with variable voltage if yours has one.");
        }
    }

    private void voltage() {
        double current = system.circuits().stream()
                .mapToDouble(circuit -> circuit.duty().designCurrentA().value())
                .max()
                .orElse(0);
        if (site.busVoltageV().value() < 24 && current > LARGE_CURRENT_AT_12_V_A) {
            cautions.add(new Caution(
                    "consider-24-v",
                    Severity.NOTE,
                    String.format(
                            Locale.ROOT,
                            "A circuit is designed for %.0f A. On a 24 V bus it would be half of that, with thinner cables"
                                    + " and smaller fuses; 12 V loads then need a converter.",
                            current),
                    Source.commonPractice()));
        }
    }

    private void add(String code, Severity severity, String text) {
        cautions.add(new Caution(code, severity, text, Source.commonPractice()));
    }
}
