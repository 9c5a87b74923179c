// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

/**
 * A part that needs room.
 *
 * @param kind what it is
 * @param number its arbor; for a pillar 0 lower left, 1 lower right, 2 upper left, 3 upper right
 */
public record Part(PartKind kind, int number) {
    /** The part in words, for example {@code wheel (arbor 2)}. */
    @Override
    public String toString() {
        return kind + (kind == PartKind.PILLAR ? " (" : " (arbor ") + number + ")";
    }
}
