// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

/**
 * A change of one part's height by whole layers, and what it does.
 *
 * @param arbor name of the arbor
 * @param part name of the part
 * @param layers to put on each piece; negative to take off
 * @param height by which each piece grows, nm
 * @param before chance of missing the band before
 * @param after chance of missing the band after
 */
public record LayerChange(String arbor, String part, int layers, long height, double before, double after) {
    /** By how much the chance of missing the band falls. */
    public double gain() {
        return before - after;
    }
}
