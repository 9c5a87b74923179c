// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

import drumfall.solver.fit.FitException;
import drumfall.solver.fit.Nanometres;
import java.util.Optional;

/**
 * Equal pieces that make the end shake longer or shorter.
 *
 * @param name the part
 * @param direction whether it opens or fills the frame
 * @param nominal length of one piece, nm, 0 to 100 m
 * @param minus how much shorter a piece may be, nm, not negative, at most its length
 * @param plus how much longer a piece may be, nm, not negative
 * @param count pieces, 1 to 1000, their errors independent of one another
 * @param expansion coefficient of linear expansion, 1/K, 0 to 0.001
 * @param shape how the error of one piece is spread
 * @param range by how much its height may be changed; empty if not at all
 */
public record Contribution(
        String name,
        Direction direction,
        long nominal,
        long minus,
        long plus,
        int count,
        double expansion,
        ErrorShape shape,
        Optional<LayerRange> range) {
    private static final int MOST_PIECES = 1000;
    private static final double MOST_EXPANSION = 1e-3;

    /**
     * Checks the lengths.
     *
     * @throws FitException if one is out of range, the nominal height outside the range to change it in, or
     *     its least height below the minus tolerance
     */
    public Contribution {
        FitException.requireName("a part of a stack", name);
        String owner = "part (" + name + ")";
        FitException.requireLength("nominal length", owner, nominal, 0, Nanometres.LONGEST);
        FitException.requireLength("minus tolerance", owner, minus, 0, nominal);
        FitException.requireLength("plus tolerance", owner, plus, 0, Nanometres.LONGEST);
        FitException.requireCount("count", owner, count, 1, MOST_PIECES);
        FitException.requireNumber("expansion", owner, expansion, 0, MOST_EXPANSION, "1/K");
        range.ifPresent(heights -> requireWithin(heights, owner, nominal, minus));
    }

    private static void requireWithin(LayerRange range, String owner, long nominal, long minus) {
        FitException.requireLength("nominal length", owner, nominal, range.least(), range.most());
        FitException.requireLength("least height", owner, range.least(), Math.max(1, minus), nominal);
    }

    /** The same part with one layer or more put on, or taken off. */
    Contribution withLayers(int layers) {
        long height = nominal + (long) layers * range.orElseThrow().layer();
        return new Contribution(name, direction, height, minus, plus, count, expansion, shape, range);
    }

    /** What all pieces do to the nominal end shake, nm. */
    long reach() {
        return (long) direction.sign() * count * nominal;
    }

    /** What the pieces do to the end shake at its least, off nominal, nm, not positive. */
    long leastError() {
        return -(long) count * (direction == Direction.OPENS ? minus : plus);
    }

    /** What the pieces do to the end shake at its most, off nominal, nm, not negative. */
    long mostError() {
        return (long) count * (direction == Direction.OPENS ? plus : minus);
    }

    /** Half the width of one piece's tolerance, nm. */
    double halfWidth() {
        return (minus + plus) / 2.0;
    }

    /** Variance of all pieces together, nm². */
    double variance() {
        return count * halfWidth() * halfWidth() * shape.variance();
    }

    /** What a kelvin does to the end shake, nm/K. */
    double drift() {
        return reach() * expansion;
    }
}
