// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

/**
 * What can be expected of the quality factor {@code Q} before a pendulum is built and rung down.
 *
 * <p>Ranges for a first estimate only: two pendulums alike to the eye differ by a factor of two. A ring-down ({@link
 * RingDown}) replaces them.
 */
public enum PendulumKind {
    /** A printed clock's pendulum: light rod and bob, a few hundred grams at most; from memory. */
    PRINTED_LIGHT(200, 2000),
    /** A heavy bob on a short printed or wooden rod; from memory, with one experimenter's 850 within it. */
    PRINTED_HEAVY(800, 5000),
    /** A longcase pendulum of some kilograms on a spring; "a good clock pendulum around 10 000" (a model engineer's report). */
    HEAVY_ON_SPRING(5000, 15_000),
    /** A free pendulum of a pound on a knife edge in still air, 18 500 to 21 400 (the same report). */
    FREE_ON_KNIFE_EDGE(15_000, 22_000),
    /** In a tank at a few dozen millibar, about 110 000 (a magazine's account of a precision pendulum). */
    IN_PARTIAL_VACUUM(80_000, 150_000);

    private final double lowest;
    private final double highest;

    PendulumKind(double lowest, double highest) {
        this.lowest = lowest;
        this.highest = highest;
    }

    /** The least {@code Q} to expect. */
    public double lowest() {
        return lowest;
    }

    /** The greatest {@code Q} to expect. */
    public double highest() {
        return highest;
    }

    /** The middle of the range on a scale of ratios, {@code √(lowest · highest)}. */
    public double middle() {
        return Math.sqrt(lowest * highest);
    }
}
