// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.bore;

import drumfall.solver.fit.FitException;
import drumfall.solver.fit.Nanometres;

/**
 * A twist drill as the maker asks for it.
 *
 * @param label the size in its trade's words, such as {@code 1.6 mm} or {@code 1/16 in}
 * @param diameter nm, positive, at most 100 mm
 */
public record Drill(String label, long diameter) {
    private static final long WIDEST = 100 * Nanometres.MILLIMETRE;

    /**
     * Checks label and diameter.
     *
     * @throws FitException if the label is blank or the diameter out of range
     */
    public Drill {
        FitException.requireName("a drill", label);
        FitException.requireLength("diameter", "drill (" + label + ")", diameter, 1, WIDEST);
    }

    static Drill metric(long diameter) {
        return new Drill(Nanometres.text(diameter), diameter);
    }

    static Drill sixtyFourths(int count) {
        int shared = Integer.lowestOneBit(count);
        int unit = Math.min(shared, 64);
        int below = 64 / unit;
        String size = below == 1 ? Integer.toString(count / unit) : count / unit + "/" + below;
        return new Drill(size + " in", count * Nanometres.SIXTY_FOURTH_INCH);
    }
}
