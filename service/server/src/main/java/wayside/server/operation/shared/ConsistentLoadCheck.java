package wayside.server.operation.shared;

import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Holds the figures of a load against each other. A figure that is itself at fault is null here and is passed over. */
public final class ConsistentLoadCheck implements ConstraintValidator<ConsistentLoad, LoadInput> {
    private static final int MINUTES_PER_DAY = 1440;
    private static final Pattern TIME = Pattern.compile("([01][0-9]|2[0-3]):[0-5][0-9]|24:00");

    @Override
    public boolean isValid(LoadInput load, ConstraintValidatorContext context) {
        context.disableDefaultConstraintViolation();
        // Each check runs, so that all faults are told at once.
        boolean windows = windowsStandApart(load.windows(), context);
        boolean hours = !windows || hoursFitTheWindows(load, context);
        boolean surge = surgeCoversRunning(load, context);
        return dutyRises(load.ambientDuty(), context) && windows && hours && surge;
    }

    private static boolean windowsStandApart(
            @Nullable List<@Nullable WindowInput> windows, ConstraintValidatorContext context) {
        if (windows == null || !allReadable(windows)) {
            return true;
        }
        boolean[] taken = new boolean[MINUTES_PER_DAY];
        for (int i = 0; i < windows.size(); i++) {
            if (!take(windows.get(i), taken)) {
                context.buildConstraintViolationWithTemplate("windows that do not overlap")
                        .addPropertyNode("windows")
                        .addBeanNode()
                        .inIterable()
                        .atIndex(i)
                        .addConstraintViolation();
                return false;
            }
        }
        return true;
    }

    private static boolean take(@Nullable WindowInput window, boolean[] taken) {
        if (window == null) {
            return true;
        }
        int from = minute(window.from());
        int length = length(window);
        for (int i = 0; i < length; i++) {
            int minute = (from + i) % MINUTES_PER_DAY;
            if (taken[minute]) {
                return false;
            }
            taken[minute] = true;
        }
        return true;
    }

    private static boolean hoursFitTheWindows(LoadInput load, ConstraintValidatorContext context) {
        List<@Nullable WindowInput> windows = load.windows();
        if (windows == null || load.hoursPerDay() == null || !allReadable(windows)) {
            return true;
        }
        int minutes = 0;
        for (WindowInput window : windows) {
            minutes += window == null ? 0 : length(window);
        }
        if (load.hoursPerDay() * 60 <= minutes + 1e-6) {
            return true;
        }
        return blame("hoursPerDay", "at most the " + plain(minutes / 60.0) + " hours of its windows", context);
    }

    private static boolean surgeCoversRunning(LoadInput load, ConstraintValidatorContext context) {
        Double running = load.powerW() != null || load.currentA() == null || load.voltageV() == null
                ? load.powerW()
                : Double.valueOf(load.currentA() * load.voltageV());
        if (running == null || load.surgeW() == null || load.surgeW() >= running) {
            return true;
        }
        return blame("surgeW", "at least the running power of " + plain(running) + " W", context);
    }

    private static boolean dutyRises(
            @Nullable List<@Nullable DutyPointInput> points, ConstraintValidatorContext context) {
        double last = Double.NEGATIVE_INFINITY;
        for (int i = 0; points != null && i < points.size(); i++) {
            DutyPointInput point = points.get(i);
            Double ambient = point == null ? null : point.ambientC();
            if (ambient != null && ambient <= last) {
                context.buildConstraintViolationWithTemplate("above the temperature of the point before it")
                        .addPropertyNode("ambientDuty")
                        .addPropertyNode("ambientC")
                        .inIterable()
                        .atIndex(i)
                        .addConstraintViolation();
                return false;
            }
            last = ambient == null ? last : ambient;
        }
        return true;
    }

    private static boolean blame(String field, String accepted, ConstraintValidatorContext context) {
        context.buildConstraintViolationWithTemplate(accepted)
                .addPropertyNode(field)
                .addConstraintViolation();
        return false;
    }

    private static boolean allReadable(List<@Nullable WindowInput> windows) {
        return windows.stream().allMatch(window -> window != null && readable(window.from()) && readable(window.to()));
    }

    private static boolean readable(@Nullable String time) {
        return time != null && TIME.matcher(time).matches();
    }

    private static int length(WindowInput window) {
        int length = Math.floorMod(minute(window.to()) - minute(window.from()), MINUTES_PER_DAY);
        return length == 0 ? MINUTES_PER_DAY : length;
    }

    private static int minute(String time) {
        return 60 * Integer.parseInt(time.substring(0, 2)) + Integer.parseInt(time.substring(3));
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9
                ? Long.toString((long) value)
                : Double.toString(value);
    }
}
