// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.answers;

import drumfall.solver.train.Train;
import java.util.Optional;

/**
 * One change of a clock and what it does to the least running weight.
 *
 * @param kind what is changed
 * @param number of the arbor changed, or of the mesh whose pinion gains a leaf, both from 0 at the drum
 * @param from the figure changed, as it is: diameter m, mass kg, leaves, or 0 plain supports
 * @param to the figure instead
 * @param train the train after the change, if its counts change
 * @param leastBefore least running weight as it is, kg
 * @param leastAfter least running weight after the change, kg; infinite if none drives the clock then
 */
public record Change(
        Kind kind, int number, double from, double to, Optional<Train> train, double leastBefore, double leastAfter) {
    /** Kinds of changes. */
    public enum Kind {
        /** Rolling bearings instead of both plain bores of one arbor; figures count bearings. */
        BEARING,
        /** A thinner rod for one arbor, its own weight and the radius of sliding with it. */
        THINNER_ARBOR,
        /** An escape wheel of half the mass; the share of the impulse that brings it to speed halves too. */
        LIGHTER_ESCAPE_WHEEL,
        /** One more leaf in one pinion, its wheel grown to the count that keeps the ratio nearest. */
        ONE_MORE_LEAF
    }

    /** What the change saves, kg; negative if it costs. */
    public double saved() {
        return leastBefore - leastAfter;
    }
}
