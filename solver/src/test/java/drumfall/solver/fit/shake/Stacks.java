// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

import java.util.List;
import java.util.Optional;

/** Stacks that several tests use. */
final class Stacks {
    static final long MIL = 25_400;

    private Stacks() {}

    static Contribution part(String name, Direction direction, long nominal, long error) {
        return part(name, direction, nominal, error, 1, ErrorShape.UNIFORM);
    }

    static Contribution part(String name, Direction direction, long nominal, long error, int count, ErrorShape shape) {
        return new Contribution(name, direction, nominal, error, error, count, 0, shape, Optional.empty());
    }

    static Contribution layered(String name, Direction direction, long nominal, long error, long layer) {
        LayerRange range = new LayerRange(layer, Math.max(layer, error), 10 * nominal);
        return new Contribution(name, direction, nominal, error, error, 1, 0, ErrorShape.UNIFORM, Optional.of(range));
    }

    /** One part of a stated half width for each error, the first one opening. */
    static ArborStack ofErrors(ErrorShape shape, long... halfWidths) {
        Contribution[] parts = new Contribution[halfWidths.length];
        for (int i = 0; i < parts.length; i++) {
            Direction direction = i == 0 ? Direction.OPENS : Direction.FILLS;
            parts[i] = part("part " + i, direction, 20_000_000, halfWidths[i], 1, shape);
        }
        return new ArborStack("arbor", List.of(parts));
    }

    static UniformSum exact(ArborStack stack) {
        return UniformSum.of(stack).orElseThrow();
    }
}
