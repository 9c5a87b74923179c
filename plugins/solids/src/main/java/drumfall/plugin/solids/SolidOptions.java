// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import java.util.Locale;

/**
 * How finely solids are written.
 *
 * @param chordError greatest distance of a chord from an arc, mm, from 0.0005 to 1
 */
record SolidOptions(double chordError) {
    /** A twentieth of a usual extrusion's width: finer than any printer shows. */
    static final SolidOptions FINE = new SolidOptions(0.01);

    static final double LEAST = 0.0005;
    static final double MOST = 1;

    /**
     * Checks the chord error.
     *
     * @throws IllegalArgumentException if it is out of its range
     */
    SolidOptions {
        if (!(chordError >= LEAST && chordError <= MOST)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "The chordError (%s mm) of solids must be from %s to %s mm. Maybe take %s mm.",
                    chordError,
                    LEAST,
                    MOST,
                    chordError > MOST ? MOST : LEAST));
        }
    }
}
