package wayside.sizing.journey;

import java.util.OptionalDouble;
import wayside.sizing.brief.Stay;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Hours of a stay's day in which the engine runs or the vehicle is plugged in. */
final class StayHours {
    private static final Expression MORE =
            Expression.definition("t = min(h, t0 + m)").with("h", Unit.HOURS_PER_DAY, Unit.HOUR);

    private StayHours() {}

    static Derived driving(Stay stay, int index) {
        String field = stay.at("drivingHoursPerDay");
        return hours(index, "driving hours per day", stay.drivingHoursPerDay(), field, "No driving was given");
    }

    static Derived hookup(Stay stay, int index) {
        String field = stay.at("hookupHoursPerDay");
        return hours(index, "hours per day at a hookup", stay.hookupHoursPerDay(), field, "No hookup was given");
    }

    private static Derived hours(int index, String what, OptionalDouble given, String field, String reason) {
        String label = "stay " + (index + 1) + ": " + what;
        return Derived.byDefault(label, 0, Unit.HOUR, field, reason, Source.commonPractice())
                .unlessGiven(given);
    }

    /** Some more of them, as far as the day has them. */
    static Derived more(Derived hours, double more) {
        Derived added = Derived.convention(
                "hours more than asked", more, Unit.HOUR, "A change that is tried", Source.definition());
        return MORE.value(hours.label(), Unit.HOUR, hours.as("t0"), added.as("m"));
    }
}
