// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import drumfall.solver.rating.Rating;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What easing one figure of a brief without trains does, everything else kept.
 *
 * @param easing the figure and the way
 * @param verdict what is known
 * @param typed what the brief says
 * @param value with {@link Verdict#NEAREST} the nearest value with a train, the value one step tighter having none; with
 *     {@link Verdict#NONE} the furthest value tried; with {@link Verdict#UNKNOWN} the furthest value known to have none
 * @param enough with {@link Verdict#UNKNOWN} a value known to have a train, if any is; the nearest lies between
 * @param standing with {@link Verdict#NONE} the index of a clash that stands whatever the figure, if that is the proof
 * @param train a train that meets the brief with the nearest value
 */
public record Nearest(
        Easing easing,
        Verdict verdict,
        String typed,
        String value,
        Optional<String> enough,
        OptionalInt standing,
        Optional<Rating> train) {
    /** What is known. */
    public enum Verdict {
        /** The value is the nearest on whole steps that has a train. */
        NEAREST,
        /** No value up to the furthest tried has a train, or another clash stands anyway. */
        NONE,
        /** The time was over, or the search for a value given up. */
        UNKNOWN
    }
}
