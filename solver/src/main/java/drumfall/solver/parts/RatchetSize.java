// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

/**
 * What is chosen of a ratchet and its click; the rest follows from the drum's arbor, see {@link RatchetForm}.
 *
 * @param teeth number of teeth, at least 3
 * @param toothDepth depth of the teeth, m, positive
 * @param thickness of ratchet and click, m, positive
 * @param pin diameter of the pins that hold the ratchet, and of the click's pivot, m, positive
 */
public record RatchetSize(int teeth, double toothDepth, double thickness, double pin) {
    /** A size for printed clocks that hang on a wall; common practice, no source. */
    public static final RatchetSize CUSTOMARY = new RatchetSize(18, 0.0025, 0.005, 0.003);
}
