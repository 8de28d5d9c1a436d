package wayside.sizing.solar;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Clearness, its day-to-day spread and temperature by month on land cells of 3 degrees. The file's head holds its recipe, its
 * citations and its errors. It is read once, when first asked for, into a few hundred kB of shorts.
 */
final class WorldClimatology {
    static final double CELL_DEGREES = 3;
    static final double LAPSE_K_PER_M = 0.005;

    private static final String FILE = "/wayside/sizing/solar/world-climatology.csv";
    private static final int SOUTHERNMOST = -57;
    private static final int WESTERNMOST = -180;
    private static final int ROWS = 44;
    private static final int COLUMNS = 120;
    private static final int VALUES = 36;
    private static final short NONE = Short.MIN_VALUE;

    private final int[] cellOf = new int[ROWS * COLUMNS];
    private final int[] elevationM;
    /** Per cell twelve clearnesses and twelve spreads in thousandths, twelve temperatures in tenths of a degree. */
    private final short[] values;

    private int count;

    /** Holds the table; the class is loaded on first use. */
    private static final class Holder {
        static final WorldClimatology TABLE = new WorldClimatology();
    }

    private WorldClimatology() {
        Arrays.fill(cellOf, -1);
        elevationM = new int[ROWS * COLUMNS];
        short[] read = new short[ROWS * COLUMNS * VALUES];
        try (InputStream stream = WorldClimatology.class.getResourceAsStream(FILE)) {
            if (stream == null) {
                throw new IllegalStateException("No resource " + FILE);
            }
            BufferedReader lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.US_ASCII));
            String line;
            while ((line = lines.readLine()) != null) {
                if (line.charAt(0) == '-' || Character.isDigit(line.charAt(0))) {
                    readCell(line, read);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot read " + FILE, e);
        }
        values = Arrays.copyOf(read, count * VALUES);
    }

    static WorldClimatology get() {
        return Holder.TABLE;
    }

    private void readCell(String line, short[] read) {
        int position = 0;
        int[] head = new int[3];
        for (int i = 0; i < head.length; i++) {
            int comma = line.indexOf(',', position);
            head[i] = Integer.parseInt(line, position, comma, 10);
            position = comma + 1;
        }
        for (int i = 0; i < VALUES; i++) {
            int comma = line.indexOf(',', position);
            int end = comma < 0 ? line.length() : comma;
            read[count * VALUES + i] = digits(line, position, end);
            position = end + 1;
        }
        int row = Math.toIntExact(Math.round((head[0] - SOUTHERNMOST) / CELL_DEGREES));
        int column = Math.toIntExact(Math.round((head[1] - WESTERNMOST) / CELL_DEGREES));
        cellOf[row * COLUMNS + column] = count;
        elevationM[count] = head[2];
        count++;
    }

    /** A decimal without its point: each column has a fixed number of places. */
    private static short digits(String line, int from, int to) {
        if (from == to) {
            return NONE;
        }
        boolean negative = line.charAt(from) == '-';
        int number = 0;
        for (int i = negative ? from + 1 : from; i < to; i++) {
            char c = line.charAt(i);
            if (c != '.') {
                number = 10 * number + (c - '0');
            }
        }
        return (short) (negative ? -number : number);
    }

    /** How many cells there are. */
    int cells() {
        return count;
    }

    /**
     * The cell whose centre is south and west of a place is corner 0; then east, north, north-east.
     *
     * @return index of the cell, or -1 when there is none
     */
    int corner(double latitude, double longitude, int corner) {
        int row = (int) Math.floor((latitude - SOUTHERNMOST) / CELL_DEGREES) + (corner >> 1);
        int column = Math.floorMod((int) Math.floor((longitude - WESTERNMOST) / CELL_DEGREES) + (corner & 1), COLUMNS);
        return row < 0 || row >= ROWS ? -1 : cellOf[row * COLUMNS + column];
    }

    /** Bilinear weight of a corner; never quite zero, so that a place on the very edge of a gap keeps a neighbour. */
    static double weight(double latitude, double longitude, int corner) {
        double north = fraction((latitude - SOUTHERNMOST) / CELL_DEGREES);
        double east = fraction((longitude - WESTERNMOST) / CELL_DEGREES);
        double w = ((corner >> 1) == 1 ? north : 1 - north) * ((corner & 1) == 1 ? east : 1 - east);
        return Math.max(w, 1e-9);
    }

    private static double fraction(double x) {
        return x - Math.floor(x);
    }

    /** Clearness of a cell, NaN in a month without sun. */
    double clearness(int cell, int month) {
        return scaled(values[cell * VALUES + month - 1], 1000);
    }

    /** Standard deviation of the daily clearness, NaN in a month without sun. */
    double spread(int cell, int month) {
        return scaled(values[cell * VALUES + 12 + month - 1], 1000);
    }

    /** Mean temperature as at sea level [C]. */
    double seaLevelC(int cell, int month) {
        return scaled(values[cell * VALUES + 24 + month - 1], 10) + LAPSE_K_PER_M * elevationM[cell];
    }

    int elevationM(int cell) {
        return elevationM[cell];
    }

    private static double scaled(short value, double unit) {
        return value == NONE ? Double.NaN : value / unit;
    }
}
