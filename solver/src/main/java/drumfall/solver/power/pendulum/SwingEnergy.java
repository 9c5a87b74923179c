// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

/**
 * The energy of one swing and what a beat loses of it.
 *
 * @param weightMoment {@code m_tot g h_cm}, N m, positive
 * @param quality {@code Q}, at least 1
 * @param semiArc rad, at least 0, less than &pi;
 */
public record SwingEnergy(double weightMoment, double quality, double semiArc) {
    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if one is out of its range
     */
    public SwingEnergy {
        Bounds.moreThan("weightMoment", "a pendulum", weightMoment, 0, "N m");
        Bounds.atLeast("quality", "a pendulum", quality, 1, "");
        Bounds.atLeast("semiArc", "a pendulum", semiArc, 0, "rad");
        Bounds.lessThan("semiArc", "a pendulum", semiArc, Math.PI, "rad");
    }

    /** {@code E(A) = m_tot g h_cm (1 - cos A)}, J. */
    public double stored() {
        double half = Math.sin(semiArc / 2);
        return weightMoment * 2 * half * half;
    }

    /** What the pendulum's own damping takes in a beat, {@code π E / Q}, J. */
    public double lossPerBeat() {
        return Math.PI * stored() / quality;
    }

    /**
     * The power that keeps the arc against the pendulum's own damping, W.
     *
     * @param secondsPerBeat s, positive
     */
    public double power(double secondsPerBeat) {
        return lossPerBeat() / secondsPerBeat;
    }
}
