// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

/**
 * A number as shown, and its unit apart, so that the unit can be drawn lighter.
 *
 * @param number digits, or a word where there is no number
 * @param unit symbol of the unit, empty for counts
 */
record Figure(String number, String unit) {
    /** Stands where there is no such figure. */
    static final Figure NONE = new Figure("–", "");

    /**
     * A formatted quantity taken apart.
     *
     * @param formatted for example {@code 1.25 m}
     */
    static Figure of(String formatted) {
        int space = formatted.indexOf(' ');
        return space < 0
                ? new Figure(formatted, "")
                : new Figure(formatted.substring(0, space), formatted.substring(space + 1));
    }

    static Figure count(int count) {
        return new Figure(Integer.toString(count), "");
    }

    String text() {
        return unit.isEmpty() ? number : number + " " + unit;
    }
}
