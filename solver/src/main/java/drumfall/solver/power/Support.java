// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power;

/**
 * One of the two places that carry an arbor: friction torque {@code slope · |R| + drag}.
 *
 * @param slope friction torque for each newton of reaction, m, not negative
 * @param drag torque that is there without load, N m, not negative
 */
public record Support(double slope, double drag) {
    /**
     * A plain bore: {@code µ r}, {@code r} where sliding happens.
     *
     * @param friction coefficient
     * @param radius m
     */
    public static Support plain(double friction, double radius) {
        return new Support(friction * radius, 0);
    }

    /**
     * A rolling bearing: {@code ½ µ d}, and the drag of grease and seals (JTEKT/Koyo, <i>Ball and Roller Bearings</i>
     * catalogue, table 8-1).
     *
     * @param friction coefficient on the bore radius
     * @param bore m
     * @param drag N m
     */
    public static Support bearing(double friction, double bore, double drag) {
        return new Support(friction * bore / 2, drag);
    }
}
