package wayside.sizing.brief;

/**
 * A part of the local day. A window whose end is not after its start passes midnight; equal ends are the whole day.
 *
 * @param fromMinute minutes after local midnight, 0 to 1439
 * @param toMinute minutes after local midnight, 0 to 1440
 */
public record Window(int fromMinute, int toMinute) {
    public static final int MINUTES_PER_DAY = 1440;

    /** Length [min], 1 to 1440. */
    public int minutes() {
        int length = Math.floorMod(toMinute - fromMinute, MINUTES_PER_DAY);
        return length == 0 ? MINUTES_PER_DAY : length;
    }

    /** Minutes of this window that fall into the hour of the day, 0 to 60. */
    public int minutesInHour(int hour) {
        int start = hour * 60;
        int end = fromMinute + minutes();
        return overlap(fromMinute, end, start) + overlap(fromMinute, end, start + MINUTES_PER_DAY);
    }

    private static int overlap(int from, int to, int hourStart) {
        return Math.max(0, Math.min(to, hourStart + 60) - Math.max(from, hourStart));
    }
}
