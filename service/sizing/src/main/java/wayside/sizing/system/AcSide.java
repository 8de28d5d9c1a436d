package wayside.sizing.system;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wayside.sizing.charging.HookupLimit;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.system.graph.AcCable;
import wayside.sizing.system.graph.AcCircuit;
import wayside.sizing.system.graph.Device;
import wayside.sizing.system.graph.DeviceKind;
import wayside.sizing.system.graph.NodeKind;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * The mains side of a vehicle. Neutral is bonded at a source that runs alone, the inverter, and never in the vehicle on shore power
 * (NFPA 70 551.54(C); on shore the bond is the site's). Everything else is common practice: it defers to the local code and to a
 * licensed electrician.
 *
 * @param voltageV 120 or 230 [V]
 * @param residualA at which the residual-current device opens [A]
 * @param inlet where the vehicle is plugged in
 * @param cables by their order from the source
 */
public record AcSide(Derived voltageV, Derived residualA, Optional<Inlet> inlet, List<AcCable> cables) {
    private static final ReferenceTable BREAKERS = ReferenceTables.table("practice/ac-circuits");
    private static final ReferenceTable INLETS = ReferenceTables.table("practice/hookup-inlets");
    private static final double EUROPE_V = 230;
    private static final Expression CURRENT = Expression.definition("I = P / V");
    private static final Expression LEAST_OF = Expression.definition("I = min(I_loads, I_source)");
    private static final NamedOperation NEXT = NamedOperation.of(
            NamedOperation.Kind.NEXT_SIZE,
            "of the table's rows for V, the smallest whose rating is at least I",
            BREAKERS.source());

    /**
     * Where the vehicle is plugged in.
     *
     * @param ratingA of the inlet [A]
     * @param leadMm2 of the lead to the site [mm2]
     * @param longestLeadM of it [m]
     */
    public record Inlet(Derived ratingA, Derived leadMm2, Derived longestLeadM) {}

    public AcSide {
        cables = List.copyOf(cables);
    }

    /** Empty where the vehicle has no mains. */
    static Optional<AcSide> find(Site site, Chargers chargers, Optional<InverterChoice> inverter) {
        boolean pluggedIn = chargers.shore().isPresent()
                || site.journey().highestDemandHookedUp().isPresent();
        if (!pluggedIn && inverter.isEmpty()) {
            return Optional.empty();
        }
        Derived volts = HookupLimit.voltageV(site.brief().system().mains());
        Optional<Derived> hookupA =
                pluggedIn ? Optional.of(HookupLimit.limitA(site.brief().system().mains())) : Optional.empty();
        return Optional.of(new AcSide(
                volts,
                residual(volts),
                hookupA.map(limit -> inlet(volts, limit)),
                cables(volts, hookupA, site, chargers, inverter)));
    }

    public boolean isEurope() {
        return isEurope(voltageV);
    }

    private static boolean isEurope(Derived volts) {
        return volts.value() >= EUROPE_V;
    }

    private static Derived residual(Derived volts) {
        return isEurope(volts)
                ? Derived.convention(
                        "residual-current device: opens at",
                        0.03,
                        Unit.AMPERE,
                        "30 mA protects people where IEC rules hold",
                        Source.standard("IEC 60364-7-721, as quoted", "additional protection"))
                : Derived.convention(
                        "ground-fault circuit interrupter: opens at",
                        0.006,
                        Unit.AMPERE,
                        "A class A device opens at 4 to 6 mA, from memory",
                        Source.commonPractice());
    }

    private static Inlet inlet(Derived volts, Derived limitA) {
        ReferenceTable.Row row = row(INLETS, volts, "rating_A", limitA.value()).orElseGet(() -> largest(volts));
        return new Inlet(
                NEXT.value("inlet: rating", row.number("rating_A"), Unit.AMPERE, limitA.as("I"), volts.as("V")),
                INLETS.cell("hookup lead: conductor", row, "lead_mm2", Unit.SQUARE_MILLIMETRE),
                INLETS.cell("hookup lead: longest", row, "longest_lead_m", Unit.METRE));
    }

    private static ReferenceTable.Row largest(Derived volts) {
        return INLETS.rows().stream()
                .filter(row -> row.number("voltage_V") == volts.value())
                .max(Comparator.comparingDouble(row -> row.number("rating_A")))
                .orElseThrow();
    }

    private static Optional<ReferenceTable.Row> row(
            ReferenceTable table, Derived volts, String column, double amperes) {
        return table.rows().stream()
                .filter(row -> row.number("voltage_V") == volts.value())
                .filter(row -> row.number(column) >= amperes)
                .findFirst();
    }

    private static List<AcCable> cables(
            Derived volts, Optional<Derived> hookupA, Site site, Chargers chargers, Optional<InverterChoice> inverter) {
        List<AcCable> cables = new ArrayList<>();
        hookupA.ifPresent(limit -> cables.add(new AcCable(
                NodeKind.HOOKUP,
                NodeKind.AC_PANEL,
                circuit("hookup to AC panel", volts, limit),
                List.of(
                        new Device(DeviceKind.INLET, NodeKind.HOOKUP),
                        new Device(DeviceKind.RESIDUAL_CURRENT_DEVICE, NodeKind.AC_PANEL),
                        new Device(DeviceKind.BREAKER, NodeKind.AC_PANEL)))));
        chargers.shore()
                .ifPresent(shore -> cables.add(branch(
                        NodeKind.AC_PANEL,
                        NodeKind.SHORE_CHARGER,
                        circuit(
                                "AC panel to shore charger",
                                volts,
                                ofPower("shore charger: mains current", shore.mainsPowerW(), volts)))));
        inverter.ifPresent(chosen -> cables.add(new AcCable(
                NodeKind.INVERTER,
                NodeKind.AC_PANEL,
                circuit(
                        "inverter to AC panel",
                        volts,
                        ofPower("inverter: output current", chosen.rating().continuousW(), volts)),
                List.of(
                        new Device(DeviceKind.BREAKER, NodeKind.INVERTER),
                        new Device(DeviceKind.RESIDUAL_CURRENT_DEVICE, NodeKind.INVERTER)))));
        loads(volts, hookupA, site, inverter).ifPresent(cables::add);
        return cables;
    }

    /** What AC loads draw together, as far as the stronger of their sources gives it. */
    private static Optional<AcCable> loads(
            Derived volts, Optional<Derived> hookupA, Site site, Optional<InverterChoice> inverter) {
        Optional<Derived> source = inverter.map(chosen ->
                        ofPower("inverter: output current", chosen.rating().continuousW(), volts))
                .filter(own ->
                        hookupA.map(limit -> own.value() >= limit.value()).orElse(true))
                .or(() -> hookupA);
        Derived wantedW = AcLoads.runningW(site);
        return source.filter(from -> wantedW.value() > 0)
                .map(from -> branch(
                        NodeKind.AC_PANEL,
                        NodeKind.AC_LOADS,
                        circuit(
                                "AC panel to AC loads",
                                volts,
                                LEAST_OF.value(
                                        "AC loads: current",
                                        Unit.AMPERE,
                                        ofPower("AC loads: current, all running", wantedW, volts)
                                                .as("I_loads"),
                                        from.as("I_source")))));
    }

    private static Derived ofPower(String label, Derived powerW, Derived volts) {
        return CURRENT.value(label, Unit.AMPERE, powerW.as("P"), volts.as("V"));
    }

    private static AcCable branch(NodeKind from, NodeKind to, AcCircuit circuit) {
        return new AcCable(from, to, circuit, List.of(new Device(DeviceKind.BREAKER, from)));
    }

    private static AcCircuit circuit(String name, Derived volts, Derived currentA) {
        Optional<ReferenceTable.Row> row = row(BREAKERS, volts, "breaker_A", currentA.value());
        return new AcCircuit(
                name,
                currentA,
                row.map(found -> NEXT.value(
                        name + ": breaker", found.number("breaker_A"), Unit.AMPERE, currentA.as("I"), volts.as("V"))),
                row.map(found -> BREAKERS.cell(name + ": conductor", found, "area_mm2", Unit.SQUARE_MILLIMETRE)));
    }
}
