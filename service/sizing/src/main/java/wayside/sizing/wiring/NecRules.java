package wayside.sizing.wiring;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Basis;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * The rules of the US national code: ampacities of 310.16 and, for 105 C and 125 C insulation, of 690.31; small
 * conductors by 240.4(D); resistance of chapter 9 Table 8, brought from 75 C to the temperature of the copper.
 *
 * <p>Differs from the source in: insulation of 80 C counts as 75 C, and 200 C as 125 C; the next larger fuse that
 * 240.4(B) would allow is not used.
 */
final class NecRules implements RuleSet {
    private static final Source SOURCE =
            new Source(Basis.STANDARD, "NFPA 70 National Electrical Code, 2023", Optional.empty());
    private static final String TABLE_310_16 = "nfpa70-2023/table-310-16";
    private static final String TABLE_690_31 = "nfpa70-2020/table-690-31-a-b";
    private static final AmpacityTable AMPACITY = new AmpacityTable(
            new AmpacityTable.Column(60, TABLE_310_16, "copper_60C_A"),
            new AmpacityTable.Column(75, TABLE_310_16, "copper_75C_A"),
            new AmpacityTable.Column(90, TABLE_310_16, "copper_90C_A"),
            new AmpacityTable.Column(105, TABLE_690_31, "copper_105C_A"),
            new AmpacityTable.Column(125, TABLE_690_31, "copper_125C_A"));
    private static final Gauge THINNEST = Gauge.of("12");
    private static final SteppedTable BUNDLING = new SteppedTable(
            from -> "bundling factor of nec, from " + from + " conductors",
            ReferenceTables.table("nfpa70-2023/table-310-15-c-1"),
            "conductors_to",
            "factor");
    private static final ReferenceTable SMALL = ReferenceTables.table("nfpa70-2023/section-240-4-d");
    private static final ReferenceTable TABLE_8 = ReferenceTables.table("nfpa70-2023/chapter-9-table-8");
    private static final Expression METRIC = Expression.definition("R_0 = r / 0.3048");
    private static final Expression WITHIN =
            Expression.of("F = min(A, F_D)", Source.standard("NFPA 70 National Electrical Code, 2023", "240.4(D)"));

    private final Map<String, Derived> at75C = TABLE_8.rows().stream()
            .collect(Collectors.toUnmodifiableMap(ReferenceTable.Row::key, NecRules::resistanceAt75C));

    @Override
    public String code() {
        return "nec";
    }

    @Override
    public Source source() {
        return SOURCE;
    }

    @Override
    public List<Gauge> gauges() {
        return Gauge.series();
    }

    /** Section 720.4, circuits below 50 V: no thinner than 12 AWG. */
    @Override
    public Gauge thinnest() {
        return THINNEST;
    }

    @Override
    public Derived defaultInsulationC(String label, Optional<String> field) {
        return Derived.leftOpen(
                label,
                75,
                Unit.CELSIUS,
                field,
                "Few terminals are marked for more than 75 C, whatever the cable stands",
                Source.commonPractice());
    }

    @Override
    public Derived defaultDropLimitPercent(String label, Optional<String> field) {
        return Derived.leftOpen(
                label,
                3,
                Unit.PERCENT,
                field,
                "The code recommends 3 % on a branch circuit, in an informational note",
                Source.standard("NFPA 70 National Electrical Code, 2023", "informational note on voltage drop"));
    }

    @Override
    public Derived areaMm2(Gauge gauge) {
        return gauge.roundAreaMm2();
    }

    @Override
    public Derating derating(ConductorLabels labels, Surroundings where) {
        Derived insulationC =
                AMPACITY.classOf(labels.ofCircuit("insulation class of its ampacity"), where.insulationC());
        return new Derating(
                AMPACITY.column(insulationC),
                AmbientFactor.of(labels, insulationC, where.ambientC()),
                BUNDLING.find(where.bundledCount().value()).orElseThrow());
    }

    @Override
    public Derived ampacityA(ConductorLabels labels, Gauge gauge, Derating derating) {
        return derating.ampacityA(labels, gauge).orElseGet(() -> noFigure(gauge));
    }

    private static Derived noFigure(Gauge gauge) {
        return Derived.convention(
                gauge.title() + ": ampacity where the table has none",
                0,
                Unit.AMPERE,
                "The table has no figure for it, so it may carry no current",
                Source.standard(SOURCE.title(), "Table 310.16"));
    }

    @Override
    public Derived resistanceOhmPerKm(ConductorLabels labels, Gauge gauge, Derived conductorC) {
        Derived known = Optional.ofNullable(at75C.get(gauge.awg())).orElseThrow();
        return CopperResistance.from75C(labels.of("resistance"), known, conductorC);
    }

    private static Derived resistanceAt75C(ReferenceTable.Row row) {
        Derived printed = TABLE_8.cell(
                row.key() + " AWG: printed resistance", row, "stranded_ohm_per_kft", Unit.OHM_PER_THOUSAND_FEET);
        return METRIC.value(row.key() + " AWG: resistance at 75 C", Unit.OHM_PER_KM, printed.as("r"));
    }

    @Override
    public FuseRatings fuseRatings() {
        return FuseRatings.STANDARD;
    }

    @Override
    public Derived fuseLimitA(ConductorLabels labels, Gauge gauge, Derived ampacityA) {
        return SMALL.findRow(gauge.awg())
                .map(row -> SMALL.cell(
                        gauge.title() + ": largest device on a small conductor",
                        row,
                        "maximum_overcurrent_A",
                        Unit.AMPERE))
                .map(limit -> WITHIN.value(
                        labels.of("largest fuse permitted"), Unit.AMPERE, ampacityA.as("A"), limit.as("F_D")))
                .orElse(ampacityA);
    }

    @Override
    public Derived permittedFuseA(ConductorLabels labels, Gauge gauge, Derived ampacityA) {
        return fuseLimitA(labels, gauge, ampacityA);
    }
}
