package wayside.sizing.journey;

import java.util.OptionalDouble;
import wayside.sizing.brief.Stay;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Hours of a stay's day in which the engine runs or the vehicle is plugged in. */
public final class StayHours {
    private StayHours() {}

    public static Derived driving(Stay stay, int index) {
        String field = stay.at("drivingHoursPerDay");
        return hours(index, "driving hours per day", stay.drivingHoursPerDay(), field, "No driving was given");
    }

    public static Derived hookup(Stay stay, int index) {
        String field = stay.at("hookupHoursPerDay");
        return hours(index, "hours per day at a hookup", stay.hookupHoursPerDay(), field, "No hookup was given");
    }

    private static Derived hours(int index, String what, OptionalDouble given, String field, String reason) {
        String label = "stay " + (index + 1) + ": " + what;
        return Derived.byDefault(label, 0, Unit.HOUR, field, reason, Source.commonPractice())
                .unlessGiven(given);
    }
}
