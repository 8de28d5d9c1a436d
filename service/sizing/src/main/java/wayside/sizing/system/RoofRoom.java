package wayside.sizing.system;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.brief.Box;
import wayside.sizing.brief.ModuleSize;
import wayside.sizing.brief.Roof;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * How many panels a roof takes: by its area, each panel with a gap around it for brackets, air and cables; by its free
 * rectangles in rows, all of one rectangle the same way round.
 */
public record RoofRoom(Roof roof) {
    /** Between vents and rails a long van leaves about so much [m2]. Common practice, no source. */
    private static final double USUAL_M2 = 6;

    private static final double GAP_M = 0.03;
    private static final double MM_PER_M = 1000;
    private static final Expression BY_AREA = Expression.commonPractice(
                    "n = floor(A / ((l / 1000 + g) (w / 1000 + g)))")
            .with("g", GAP_M, Unit.METRE);
    private static final Expression IN_ROWS = Expression.commonPractice(
                    "n = max(floor((L + g) / (l / 1000 + g)) floor((W + g) / (w / 1000 + g)),"
                            + " floor((L + g) / (w / 1000 + g)) floor((W + g) / (l / 1000 + g)))")
            .with("g", GAP_M, Unit.METRE);
    private static final Expression ALL = Expression.definition("n = sum(n_one)");
    private static final Expression RECTANGLE = Expression.definition("A = L W");
    private static final Expression AREA = Expression.definition("A = sum(A_one)");

    static RoofRoom of(Site site) {
        return new RoofRoom(site.brief().system().roof());
    }

    /** Whether the request says how large it is. */
    boolean isMeasured() {
        return roof.areaM2().isPresent() || !roof.rectangles().isEmpty();
    }

    /** Free for panels [m2]. */
    public Derived areaM2() {
        if (roof.rectangles().isEmpty()) {
            return Derived.byDefault(
                            "roof: free for panels",
                            USUAL_M2,
                            Unit.SQUARE_METRE,
                            roof.at("areaM2"),
                            "Between vents and rails a long van leaves about so much; measure yours",
                            Source.commonPractice())
                    .unlessGiven(roof.areaM2());
        }
        List<Input> parts = new ArrayList<>();
        for (Roof.Rectangle rectangle : roof.rectangles()) {
            parts.add(RECTANGLE
                    .value(
                            "roof: free rectangle",
                            Unit.SQUARE_METRE,
                            length(rectangle).as("L"),
                            width(rectangle).as("W"))
                    .as("A_one"));
        }
        return AREA.value("roof: free for panels", Unit.SQUARE_METRE, parts);
    }

    /** Modules of a size that it takes. */
    int takes(ModuleSize module) {
        Box box = module.box();
        double length = box.lengthMm() / MM_PER_M + GAP_M;
        double width = box.widthMm() / MM_PER_M + GAP_M;
        if (roof.rectangles().isEmpty()) {
            return (int) (roof.areaM2().orElse(USUAL_M2) / (length * width));
        }
        return (int) roof.rectangles().stream()
                .mapToDouble(free -> Math.max(
                        inRows(free.lengthM(), length) * inRows(free.widthM(), width),
                        inRows(free.lengthM(), width) * inRows(free.widthM(), length)))
                .sum();
    }

    private static double inRows(double freeM, double eachM) {
        return Math.floor((freeM + GAP_M) / eachM);
    }

    /** The same, traced. */
    Derived takes(Derived lengthMm, Derived widthMm) {
        String label = "roof: modules of this size that it takes";
        if (roof.rectangles().isEmpty()) {
            return BY_AREA.value(label, Unit.COUNT, areaM2().as("A"), lengthMm.as("l"), widthMm.as("w"));
        }
        List<Input> parts = new ArrayList<>();
        for (Roof.Rectangle free : roof.rectangles()) {
            parts.add(IN_ROWS.value(
                            "roof: modules in a rectangle",
                            Unit.COUNT,
                            length(free).as("L"),
                            width(free).as("W"),
                            lengthMm.as("l"),
                            widthMm.as("w"))
                    .as("n_one"));
        }
        return ALL.value(label, Unit.COUNT, parts);
    }

    private static Derived length(Roof.Rectangle free) {
        return Derived.given("roof: length of a rectangle", free.lengthM(), Unit.METRE, free.at("lengthM"));
    }

    private static Derived width(Roof.Rectangle free) {
        return Derived.given("roof: width of a rectangle", free.widthM(), Unit.METRE, free.at("widthM"));
    }
}
