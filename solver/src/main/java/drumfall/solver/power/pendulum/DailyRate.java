// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

/** What a change of the pendulum does to the clock's rate: seconds a day, positive for a gain. */
public final class DailyRate {
    /** Seconds of a mean solar day. */
    public static final double SECONDS_PER_DAY = 86_400;

    private DailyRate() {}

    /**
     * Gain when the equivalent length changes, {@code 86400 (√(L / L') - 1)}, exact.
     *
     * @param before m, positive
     * @param after m, positive
     */
    public static double ofLengths(double before, double after) {
        return SECONDS_PER_DAY * (Math.sqrt(before / after) - 1);
    }

    /**
     * Loss against an infinitely small arc, {@code 86400 (1 - 1/C)}: the circular error, as a slow clock's rate.
     *
     * <p>About {@code 5400 A²} (Beckett, 8th ed. 1903, pp. 34-35).
     *
     * @param semiArc rad, at least 0, less than &pi;
     */
    public static double circularError(double semiArc) {
        return SECONDS_PER_DAY * (1 - 1 / FiniteArc.periodRatio(semiArc));
    }

    /**
     * Loss for a small growth of the arc, the circular error's slope, s a day for each rad.
     *
     * @param semiArc rad, at least 0, less than &pi; - 0.001
     */
    public static double circularErrorSlope(double semiArc) {
        double step = 1e-4;
        // The error is even in the arc, so its difference may be taken across the vertical.
        return (circularError(semiArc + step) - circularError(Math.abs(semiArc - step))) / (2 * step);
    }

    /**
     * Gain of one turn of the rating nut that raises the bob, {@code 43200 · pitch · (∂L/∂l) / L}.
     *
     * @param pendulum the pendulum
     * @param pitch of the nut's thread, m, positive
     * @throws IllegalArgumentException if the pitch is not positive
     */
    public static double perNutTurn(CompoundPendulum pendulum, double pitch) {
        if (!(pitch > 0)) {
            throw new IllegalArgumentException(
                    "The pitch (%s m) of the rating nut must be more than 0.".formatted(pitch));
        }
        return SECONDS_PER_DAY / 2 * pitch * pendulum.lengthPerBobTravel() / pendulum.equivalentLength();
    }

    /**
     * Gain of a small weight laid on the pendulum, exact for any weight.
     *
     * <p>A point at half the length of a simple pendulum gains {@code 10800 m / M} (Beckett, p. 51).
     *
     * @param pendulum the pendulum without it
     * @param mass of the weight, kg, positive
     * @param distance below the axis, m
     */
    public static double ofAddedWeight(CompoundPendulum pendulum, double mass, double distance) {
        CompoundPendulum loaded = pendulum.with(new PendulumPart(mass, new BodyShape.MassPoint(), distance));
        return ofLengths(pendulum.equivalentLength(), loaded.equivalentLength());
    }

    /**
     * Loss for each kelvin of a pendulum that grows alike in all its parts, {@code 86400 α / 2}.
     *
     * @param expansion coefficient {@code α}, 1/K
     */
    public static double perKelvin(double expansion) {
        return SECONDS_PER_DAY / 2 * expansion;
    }

    /**
     * Loss for each kelvin of a bob that rests with its foot on the nut and grows upwards from there.
     *
     * <p>{@code 43200 / L} times the growth of the equivalent length: all of it as the rod grows, less what the bob's centre
     * rises beyond that, {@code ∂L/∂l (α_b - α_r) height / 2}, more what the bob spreads, {@code 2 m_b k² (α_b - α_r) / (m
     * h)}.
     *
     * @param pendulum the pendulum
     * @param rodExpansion 1/K
     * @param bobExpansion 1/K
     */
    public static double perKelvinOnFoot(CompoundPendulum pendulum, double rodExpansion, double bobExpansion) {
        PendulumPart bob = pendulum.bob();
        double beyond = bobExpansion - rodExpansion;
        double rise = pendulum.lengthPerBobTravel() * bob.shape().height() / 2;
        double spread = 2 * bob.mass() * bob.shape().gyrationSquared() / pendulum.massMoment();
        double length = pendulum.equivalentLength();
        return SECONDS_PER_DAY / 2 * (rodExpansion * length + beyond * (spread - rise)) / length;
    }

    /**
     * Gain when gravity changes, {@code 86400 (√(g' / g) - 1)}, exact.
     *
     * @param before m/s&sup2;, positive
     * @param after m/s&sup2;, positive
     */
    public static double ofGravities(double before, double after) {
        return SECONDS_PER_DAY * (Math.sqrt(after / before) - 1);
    }
}
