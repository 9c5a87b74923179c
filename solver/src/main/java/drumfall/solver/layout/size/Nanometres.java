// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.size;

/** Whole nanometres, the lengths of this package. */
public final class Nanometres {
    /** The longest length that a layout works with: one metre, nm; squared distances of such lengths fit a long. */
    public static final long LONGEST = 1_000_000_000L;

    /** Nanometres in a micrometre. */
    public static final long PER_MICROMETRE = 1_000;

    private static final double PER_METRE = 1e9;

    private Nanometres() {}

    /**
     * The nearest whole number of nanometres.
     *
     * @param metres a length, m, from -1 to 1
     * @throws IllegalArgumentException if the length is not within a metre
     */
    public static long of(double metres) {
        if (!(Math.abs(metres) <= 1)) {
            throw new IllegalArgumentException(
                    "The length (%s m) must be within 1 m. Maybe it was given in millimetres.".formatted(metres));
        }
        return Math.round(metres * PER_METRE);
    }

    /**
     * A length in metres.
     *
     * @param nanometres nm
     */
    public static double toMetres(long nanometres) {
        return nanometres / PER_METRE;
    }

    static void positive(String subject, long length) {
        within(subject, length, 1);
    }

    static void notNegative(String subject, long length) {
        within(subject, length, 0);
    }

    private static void within(String subject, long length, long least) {
        if (length < least || length > LONGEST) {
            throw new IllegalArgumentException(
                    "The %s (%d nm) must be from %d nm to %d nm. Maybe the unit is not nanometres."
                            .formatted(subject, length, least, LONGEST));
        }
    }
}
