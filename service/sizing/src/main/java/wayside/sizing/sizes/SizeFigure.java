package wayside.sizing.sizes;

import wayside.sizing.brief.PartSize;
import wayside.sizing.brief.SizeOrigin;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

/** A figure of a size with the row, or the field of the request, that it stands in. */
public final class SizeFigure {
    private SizeFigure() {}

    /**
     * @param field of the request's entry that states it
     */
    public static Derived of(PartSize size, String label, double value, Unit unit, String field) {
        SizeOrigin origin = size.origin();
        if (origin.given().isPresent()) {
            return Derived.given(
                    label, value, unit, origin.given().get().field(field).pointer());
        }
        return Derived.lookedUp(
                label,
                value,
                unit,
                origin.table(),
                origin.row(),
                ReferenceTables.table(origin.table()).source());
    }

    /** Of one piece [kg]. */
    public static Derived massKg(PartSize size, String label) {
        return of(size, label, size.massKg(), Unit.KILOGRAM, "massKg");
    }
}
