// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

/**
 * A range along the arbors.
 *
 * @param from rear end, nm before the back plate's inner face
 * @param to front end, nm before the back plate's inner face, not behind the rear end
 */
public record Span(long from, long to) {
    /**
     * Checks the order of the ends.
     *
     * @throws IllegalArgumentException if the front end lies behind the rear end
     */
    public Span {
        if (to < from) {
            throw new IllegalArgumentException(
                    "The front end (%d nm) must not lie behind the rear end (%d nm). Maybe the two were exchanged."
                            .formatted(to, from));
        }
    }

    /** The thickness, nm. */
    public long length() {
        return to - from;
    }

    /**
     * What lies between two ranges, nm; negative by as much as they overlap.
     *
     * @param other another range
     */
    public long gapTo(Span other) {
        return Math.max(from - other.to, other.from - to);
    }

    /**
     * The range between two that do not overlap.
     *
     * @param other another range
     */
    public Span between(Span other) {
        return new Span(Math.min(to, other.to), Math.max(from, other.from));
    }
}
