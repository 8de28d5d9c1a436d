package wayside.sizing.wiring;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Basis;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * The small-craft rules that the camper trade borrows: voltage-drop classes and formula of ABYC E-11, ampacities of
 * 33 CFR 183.425.
 *
 * <p>{@code CM = 10.75 I L / E}: CM [circular mil], I [A], L the round trip [ft], E the permitted drop [V], on SAE
 * minimum areas. Solved for the resistance of a gauge it is {@code R = 10.75 / CM} [Ohm/ft], which is what the drop is
 * reckoned with here, so the same gauge comes out. Differs from the source in: fuses stay within the ampacity; the
 * 150 % of 33 CFR 183.455(c)(1) is reported only.
 */
final class AbycE11Rules implements RuleSet {
    private static final Source SOURCE = new Source(
            Basis.STANDARD,
            "ABYC E-11 AC and DC Electrical Systems on Boats; ampacities of 33 CFR 183.425",
            Optional.empty());
    private static final String TABLE_5 = "cfr33-183/table-5";
    private static final AmpacityTable AMPACITY = new AmpacityTable(Stream.of(60, 75, 80, 90, 105, 125, 200)
            .map(c -> new AmpacityTable.Column(c, TABLE_5, "copper_" + c + "C_A"))
            .toArray(AmpacityTable.Column[]::new));
    private static final Gauge THINNEST = Gauge.of("16");
    private static final ReferenceTable AREAS = ReferenceTables.table("sae-j1127-j1128/minimum-area");
    private static final SteppedTable BUNDLING = new SteppedTable(
            from -> "bundling factor of abyc-e11, from " + from + " conductors",
            ReferenceTables.table("abyc-e11/bundling"),
            "conductors_to",
            "factor");
    private static final ReferenceTable ENGINE_SPACE = ReferenceTables.table("cfr33-183/engine-space");
    private static final ReferenceTable DROP_CLASSES = ReferenceTables.table("abyc-e11/voltage-drop-classes");

    private static final Expression AREA = Expression.definition("A = 0.0005067075 CM");
    private static final Expression RESISTANCE = Expression.of(
            "R = 10.75 / (0.3048 / 1000 * CM)",
            Source.standard("ABYC E-11 AC and DC Electrical Systems on Boats", "CM = 10.75 I L / E"));
    private static final Expression PERMITTED = Expression.of(
                    "F = k A", Source.standard("Code of Federal Regulations title 33 part 183", "183.455(c)(1)"))
            .with("k", 1.5, Unit.COUNT);

    /** No credit for a cool day: the cable sees the hot ones too. */
    private static final Expression NO_CREDIT = Expression.commonPractice("f = min(1, f_T)");

    private final List<Gauge> gauges =
            AREAS.rows().stream().map(row -> Gauge.of(row.key())).toList();
    private final Map<String, Derived> cmil = AREAS.rows().stream()
            .collect(Collectors.toMap(
                    ReferenceTable.Row::key,
                    row -> AREAS.cell(row.key() + " AWG: least area", row, "minimum_area_cmil", Unit.CIRCULAR_MIL),
                    (a, b) -> a,
                    HashMap::new));

    @Override
    public String code() {
        return "abyc-e11";
    }

    @Override
    public Source source() {
        return SOURCE;
    }

    @Override
    public List<Gauge> gauges() {
        return gauges;
    }

    /** 33 CFR 183.425: single conductors no thinner than 16 AWG. */
    @Override
    public Gauge thinnest() {
        return THINNEST;
    }

    @Override
    public Derived defaultInsulationC(String label, Optional<String> field) {
        return Derived.leftOpen(
                label,
                105,
                Unit.CELSIUS,
                field,
                "Boat cable and most automotive cable for campers is marked 105 C; read the print on yours",
                Source.commonPractice());
    }

    @Override
    public Derived defaultDropLimitPercent(String label, Optional<String> field) {
        return Derived.leftOpen(
                label,
                DROP_CLASSES.row("critical").number("limit_percent"),
                Unit.PERCENT,
                field,
                "The stricter class, of feeders and electronics; 10 % is the class of lights and other simple loads",
                DROP_CLASSES.source());
    }

    @Override
    public Derived areaMm2(Gauge gauge) {
        Derived area = leastArea(gauge);
        return AREA.value(gauge.title() + ": least area in mm2", Unit.SQUARE_MILLIMETRE, area.as("CM"));
    }

    @Override
    public Derating derating(ConductorLabels labels, Surroundings where) {
        Derived insulationC =
                AMPACITY.classOf(labels.ofCircuit("insulation class of its ampacity"), where.insulationC());
        return new Derating(
                AMPACITY.column(insulationC), ambientFactor(labels, insulationC, where), bundlingFactor(where));
    }

    @Override
    public Derived ampacityA(ConductorLabels labels, Gauge gauge, Derating derating) {
        return derating.ampacityA(labels, gauge).orElseThrow();
    }

    private static Derived bundlingFactor(Surroundings where) {
        return BUNDLING.find(where.bundledCount().value()).orElseThrow();
    }

    /** The printed factor of engine spaces where it was read, and where it is no hotter than the table means. */
    private static Derived ambientFactor(ConductorLabels labels, Derived insulationC, Surroundings where) {
        ReferenceTable.Row printed = ENGINE_SPACE.rows().get(0);
        if (where.engineSpace()
                && insulationC.value() == printed.number("insulation_C")
                && where.ambientC().value() <= printed.number("ambient_C")) {
            return ENGINE_SPACE.cell("engine space factor at 105 C insulation", printed, "factor", Unit.COUNT);
        }
        Derived factor = AmbientFactor.of(labels, insulationC, where.ambientC());
        return factor.value() <= 1
                ? factor
                : NO_CREDIT.value(factor.label() + ", no credit for cold", Unit.COUNT, factor.as("f_T"));
    }

    @Override
    public Derived resistanceOhmPerKm(ConductorLabels labels, Gauge gauge, Derived conductorC) {
        Derived area = leastArea(gauge);
        return RESISTANCE.value(gauge.title() + ": resistance by abyc-e11", Unit.OHM_PER_KM, area.as("CM"));
    }

    @Override
    public FuseRatings fuseRatings() {
        return FuseRatings.VEHICLE;
    }

    @Override
    public Derived fuseLimitA(ConductorLabels labels, Gauge gauge, Derived ampacityA) {
        return ampacityA;
    }

    @Override
    public Derived permittedFuseA(ConductorLabels labels, Gauge gauge, Derived ampacityA) {
        return PERMITTED.value(labels.of("largest fuse permitted"), Unit.AMPERE, ampacityA.as("A"));
    }

    private Derived leastArea(Gauge gauge) {
        Derived area = cmil.get(gauge.awg());
        if (area == null) {
            throw new IllegalArgumentException(code() + " has no area for " + gauge.title());
        }
        return area;
    }
}
