// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.choice;

import drumfall.solver.teeth.form.WheelTop;
import java.util.List;

/**
 * What may be chosen of a cycloidal pair.
 *
 * @param wheelTops curves of the wheel's addendum to try
 * @param leafAddendum height of the leaves' tops above the pitch circle, modules
 * @param practical part of the theoretical wheel addendum in use
 * @param leafThickness leaf along the pitch circle, modules
 * @param toothThickness wheel tooth along the pitch circle, modules
 */
public record CycloidalFreedom(
        List<WheelTop> wheelTops, Range leafAddendum, Range practical, Range leafThickness, Range toothThickness) {
    /** Everything free around the customary proportions. */
    public static final CycloidalFreedom FREE = new CycloidalFreedom(
            List.of(WheelTop.EPICYCLOID),
            new Range(0.4, 1.05),
            new Range(0.4, 0.97),
            new Range(0.9, 1.4),
            new Range(1.4, 1.7));

    /** Copies the list. */
    public CycloidalFreedom {
        wheelTops = List.copyOf(wheelTops);
    }
}
