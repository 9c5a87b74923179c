// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

/** The unit that lengths of the sheet are shown in. */
public enum Lengths {
    /** Millimetres. */
    MILLIMETRES(1000, "mm", 0),
    /** Inches of 25.4 mm; two decimals more than of millimetres show no less. */
    INCHES(1000 / 25.4, "in", 2);

    private static final double NANOMETRES = 1e9;

    private final double count;
    private final String unit;
    private final int more;

    Lengths(double count, String unit, int more) {
        this.count = count;
        this.unit = unit;
        this.more = more;
    }

    /** A length of metres with so many decimals of a millimetre. */
    String of(double metres, int decimals) {
        return Words.number(metres * count, decimals + more) + " " + unit;
    }

    /** A length of a room or a wall: metres, or inches. */
    String ofRoom(double metres) {
        return this == INCHES ? of(metres, 0) : Words.number(metres, 2) + " m";
    }

    /** A length of nanometres to the hundredth of a millimetre. */
    String ofNanometres(long nanometres) {
        return ofNanometres((double) nanometres);
    }

    /** A length between whole nanometres to the hundredth of a millimetre. */
    String ofNanometres(double nanometres) {
        return Words.number(nanometres / (NANOMETRES / count), 2 + more) + " " + unit;
    }
}
