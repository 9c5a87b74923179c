// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

/**
 * A pendulum of a thin uniform rod and a small bob at its end.
 *
 * @param bobMass kg, positive
 * @param rodMass kg, not negative
 * @param quality {@code Q}, the quality factor, at least 1
 * @param gravity m/s&sup2;, positive
 */
public record Pendulum(double bobMass, double rodMass, double quality, double gravity) {
    /** Standard gravity, m/s&sup2; (3rd CGPM, 1901). */
    public static final double STANDARD_GRAVITY = 9.80665;

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if one is out of its range
     */
    public Pendulum {
        Bounds.moreThan("bobMass", "a pendulum", bobMass, 0, "kg");
        Bounds.atLeast("rodMass", "a pendulum", rodMass, 0, "kg");
        Bounds.atLeast("quality", "a pendulum", quality, 1, "");
        Bounds.moreThan("gravity", "a pendulum", gravity, 0, "m/s²");
    }

    /**
     * Length of the simple pendulum of the same period, {@code L = g (T0 / 2π)²} with {@code T0 = T / C(A)} and {@code T}
     * two beats.
     *
     * @param secondsPerBeat s, positive
     * @param periodRatio {@code C(A)} of the arc at which that beat is kept, see {@link FiniteArc}
     * @return m
     */
    public double equivalentLength(double secondsPerBeat, double periodRatio) {
        double perRadian = secondsPerBeat / (Math.PI * periodRatio);
        return gravity * perRadian * perRadian;
    }

    /**
     * Distance of the bob from the suspension that gives an equivalent length:
     * {@code l = L (m_b + m_r / 2) / (m_b + m_r / 3)}, from {@code L = I / (m h)}.
     *
     * @param equivalentLength m
     * @return m
     */
    public double bobDistance(double equivalentLength) {
        return equivalentLength * (bobMass + rodMass / 2) / (bobMass + rodMass / 3);
    }

    /**
     * Mass times distance of its centre from the suspension, {@code m_tot h_cm}.
     *
     * @param equivalentLength m
     * @return kg m
     */
    public double massMoment(double equivalentLength) {
        return bobDistance(equivalentLength) * (bobMass + rodMass / 2);
    }

    /**
     * Energy of the swing, {@code E(A) = m_tot g h_cm (1 - cos A)}.
     *
     * @param weightMoment {@code m_tot g h_cm}, N m
     * @param semiArc rad
     * @return J
     */
    public double energy(double weightMoment, double semiArc) {
        double half = Math.sin(semiArc / 2);
        return weightMoment * 2 * half * half;
    }
}
