// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.ratio;

import java.util.Comparator;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A fraction beside the target it approximates.
 *
 * @param ratio the fraction
 * @param error the fraction less the target, exact; negative where it falls short
 */
public record Approximation(BigFraction ratio, BigFraction error) {
    /** Nearest first; of two equally near, one on either side of the target, the smaller ratio first. */
    static final Comparator<Approximation> NEAREST_FIRST = Comparator.<Approximation, BigFraction>comparing(
                    Approximation::distance)
            .thenComparing(Approximation::ratio);

    static Approximation of(BigFraction ratio, BigFraction target) {
        return new Approximation(ratio, ratio.subtract(target));
    }

    /** How far the fraction lies from the target, whichever way. */
    public BigFraction distance() {
        return error.abs();
    }

    boolean isNearerThan(Approximation other) {
        return distance().compareTo(other.distance()) < 0;
    }
}
