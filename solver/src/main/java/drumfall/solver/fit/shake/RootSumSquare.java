// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

import java.util.List;

/**
 * A stack's tolerances added as a root of squares.
 *
 * @param mean nm
 * @param halfWidth {@code √Σ T²} over all pieces, nm, with {@code T} half of a piece's tolerance
 * @param deviation standard deviation of the end shake that follows from the shapes of the errors, nm
 */
public record RootSumSquare(double mean, double halfWidth, double deviation) {
    static RootSumSquare of(double mean, List<Contribution> parts) {
        double squares = parts.stream()
                .mapToDouble(part -> part.count() * part.halfWidth() * part.halfWidth())
                .sum();
        double variance = parts.stream().mapToDouble(Contribution::variance).sum();
        return new RootSumSquare(mean, Math.sqrt(squares), Math.sqrt(variance));
    }

    /** Lower end of the band, nm. */
    public double least() {
        return mean - halfWidth;
    }

    /** Upper end of the band, nm. */
    public double most() {
        return mean + halfWidth;
    }

    /**
     * Share of movements within the band if their end shake were normal with this deviation; 1 if nothing varies.
     *
     * <p>The often quoted 99.7&nbsp;% holds only for tolerances of three standard deviations: uniform errors give
     * {@code P(|Z| < √3)}, 91.7&nbsp;%.
     */
    public double coverage() {
        return deviation == 0 ? 1 : Normal.within(halfWidth / deviation);
    }
}
