// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a quantity measures and where it must lie.
 *
 * @param dimension what it measures
 * @param low the lower end, if there is one
 * @param high the upper end, if there is one
 */
public record QuantityRange(Dimension dimension, Optional<Bound> low, Optional<Bound> high) {
    /** Bounds are asked for with every quantity read; there are as many as annotations write. */
    private static final Map<Written, Quantity> VALUES = new ConcurrentHashMap<>();

    private record Written(Dimension dimension, String text) {}

    static QuantityRange of(Measure measure) {
        return new QuantityRange(
                measure.value(), bound(measure.over(), measure.from()), bound(measure.under(), measure.to()));
    }

    private static Optional<Bound> bound(String open, String closed) {
        return open.isEmpty()
                ? Optional.of(new Bound(closed, true)).filter(bound -> !closed.isEmpty())
                : Optional.of(new Bound(open, false));
    }

    /**
     * The rule that a quantity breaks, in words, if it breaks one.
     *
     * @param quantity of this range's dimension
     * @throws IllegalArgumentException if the dimension is another
     */
    public Optional<String> brokenBy(Quantity quantity) {
        boolean tooLow = low.filter(bound -> outside(bound, quantity.compareTo(value(bound))))
                .isPresent();
        boolean tooHigh = high.filter(bound -> outside(bound, value(bound).compareTo(quantity)))
                .isPresent();
        return tooLow ? lowWords() : highWords().filter(words -> tooHigh);
    }

    private static boolean outside(Bound bound, int beyond) {
        return bound.included() ? beyond < 0 : beyond <= 0;
    }

    private Quantity value(Bound bound) {
        return VALUES.computeIfAbsent(
                new Written(dimension, bound.text()), written -> Quantity.parse(written.dimension, written.text));
    }

    private Optional<String> lowWords() {
        return low.map(bound -> (bound.included() ? "at least " : "more than ") + bound.text());
    }

    private Optional<String> highWords() {
        return high.map(bound -> (bound.included() ? "at most " : "less than ") + bound.text());
    }

    /** What may be written, for example "a length of more than 0 m and at most 50 m". */
    public String words() {
        String bounds =
                Stream.of(lowWords(), highWords()).flatMap(Optional::stream).collect(Collectors.joining(" and "));
        return bounds.isEmpty() ? dimension.noun() : dimension.noun() + " of " + bounds;
    }
}
