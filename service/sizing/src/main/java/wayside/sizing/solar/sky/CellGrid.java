package wayside.sizing.solar.sky;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Values on cells of 3 degrees of the Earth, as far as the file has the cell. It is read once into a few hundred kB of shorts: a
 * line holds latitude and longitude of the cell's centre, whole numbers, then decimals with a fixed number of places a column.
 */
final class CellGrid {
    static final double CELL_DEGREES = 3;
    static final int CORNERS = 4;

    private static final int SOUTHERNMOST = -90;
    private static final int WESTERNMOST = -180;
    private static final int ROWS = 61;
    private static final int COLUMNS = 120;
    private static final short NONE = Short.MIN_VALUE;

    private final int[] cellOf = new int[ROWS * COLUMNS];
    private final int columns;
    private final short[] values;
    private int count;

    private CellGrid(String file, int columns) {
        this.columns = columns;
        Arrays.fill(cellOf, -1);
        short[] read = new short[ROWS * COLUMNS * columns];
        try (InputStream stream = CellGrid.class.getResourceAsStream(file)) {
            if (stream == null) {
                throw new IllegalStateException("No resource " + file);
            }
            BufferedReader lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.US_ASCII));
            String line;
            while ((line = lines.readLine()) != null) {
                if (line.charAt(0) == '-' || Character.isDigit(line.charAt(0))) {
                    readCell(line, read);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot read " + file, e);
        }
        values = Arrays.copyOf(read, count * columns);
    }

    /**
     * Reads a table of this package's resources.
     *
     * @param name without its ending
     * @param columns after latitude and longitude
     */
    static CellGrid read(String name, int columns) {
        return new CellGrid("/wayside/sizing/solar/" + name + ".csv", columns);
    }

    private void readCell(String line, short[] read) {
        int firstComma = line.indexOf(',');
        int position = line.indexOf(',', firstComma + 1);
        int row = rowOf(Integer.parseInt(line, 0, firstComma, 10));
        int column = columnOf(Integer.parseInt(line, firstComma + 1, position, 10));
        for (int i = 0; i < columns; i++) {
            int comma = line.indexOf(',', position + 1);
            int end = comma < 0 ? line.length() : comma;
            read[count * columns + i] = digits(line, position + 1, end);
            position = end;
        }
        cellOf[row * COLUMNS + column] = count;
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

    private static int rowOf(double latitude) {
        return (int) Math.floor((latitude - SOUTHERNMOST) / CELL_DEGREES);
    }

    private static int columnOf(double longitude) {
        return (int) Math.floor((longitude - WESTERNMOST) / CELL_DEGREES);
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
        int row = rowOf(latitude) + (corner >> 1);
        int column = Math.floorMod(columnOf(longitude) + (corner & 1), COLUMNS);
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

    /**
     * A value of a cell, NaN where the file has none.
     *
     * @param unit what the column's last place counts: 10 for tenths
     */
    double value(int cell, int column, double unit) {
        short value = values[cell * columns + column];
        return value == NONE ? Double.NaN : value / unit;
    }
}
