// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * A deadbeat escapement with tangential pallets: geometry and the balance of one beat.
 *
 * <p>The pallets embrace the largest half-odd number of tooth spaces that keeps within the span limit; pallets tangent to
 * the wheel then lie on a circle of radius {@code r_p = r_w tan β}, {@code β} half the span (Beckett, <i>A Rudimentary
 * Treatise on Clocks, Watches and Bells</i>, 8th ed. 1903, p. 97). The impulse face acts as a wedge.
 *
 * @param form what the brief fixes
 * @param teeth teeth of the escape wheel, {@code N}, at least 2
 */
public record Deadbeat(DeadbeatForm form, int teeth) {
    /** Halvings after which two doubles below &pi; have met. */
    private static final int HALVINGS = 80;

    /** The balance of energies is used up to a quarter turn; no clock's pendulum swings so far. */
    private static final double WIDEST = Math.PI / 2;

    /**
     * Checks the count against the drop.
     *
     * @throws IllegalArgumentException if the wheel has fewer than 2 teeth
     */
    public Deadbeat {
        if (teeth < 2) {
            throw new IllegalArgumentException(
                    "The teeth (%d) of an escape wheel must be at least 2.".formatted(teeth));
        }
    }

    /** Whole tooth spaces between the pallets; they embrace this and a half. */
    public int wholeSpaces() {
        return (int) Math.floor(form.spanLimit() * teeth / (2 * Math.PI) - 0.5 + 1e-9);
    }

    /** Half the span of the pallets seen from the wheel's centre, {@code β}, rad. */
    public double halfSpan() {
        return (wholeSpaces() + 0.5) * Math.PI / teeth;
    }

    /** Radius of the pallets' locking faces about their arbor, {@code r_p}, m. */
    public double palletRadius() {
        return form.wheelRadius() * Math.tan(halfSpan());
    }

    /** Turn of the wheel that works in one beat, {@code δ = π / N - d}, rad. */
    public double workingTurn() {
        return Math.PI / teeth - form.drop();
    }

    /** Whether there is such an escapement: pallets embrace a tooth and the wheel has turn left to work with. */
    public boolean exists() {
        return wholeSpaces() >= 1 && halfSpan() < Math.PI / 2 && workingTurn() > 0;
    }

    /** Share of the wheel's work that the impulse faces pass on, {@code η_i = tan γ / tan(γ + φ)}. */
    public double impulseEfficiency() {
        double wedge = Math.atan(palletRadius() * form.lift() / (form.wheelRadius() * workingTurn()));
        double turned = wedge + Math.atan(form.friction());
        return turned < Math.PI / 2 ? Math.tan(wedge) / Math.tan(turned) : 0;
    }

    /** Friction torque at the pallets' locking faces for each unit of torque at the wheel, {@code µ r_p / r_w}. */
    public double rubbingRatio() {
        return form.friction() * palletRadius() / form.wheelRadius();
    }

    /**
     * Work a beat brings to the pendulum for each unit of torque at the wheel, less the locking faces' share; rad.
     *
     * @param semiArc {@code A}, rad, at least the escape angle
     */
    public double gain(double semiArc) {
        double impulse = workingTurn() * impulseEfficiency() * (1 - form.inertiaShare());
        return impulse - rubbingRatio() * (2 * semiArc - form.lift());
    }

    /** The arc that no weight can exceed: there the locking faces take all that the impulse brings; rad. */
    public double saturationArc() {
        double impulse = workingTurn() * impulseEfficiency() * (1 - form.inertiaShare());
        return form.lift() / 2 + impulse / (2 * rubbingRatio());
    }

    /** Arc up to which a torque's arc is looked for: that which none exceeds, or a quarter turn if that is less; rad. */
    public double greatestArc() {
        return Math.min(saturationArc(), WIDEST);
    }

    /**
     * Torque at the escape wheel that keeps the pendulum at an arc.
     *
     * @param semiArc {@code A}, rad
     * @param pendulumLoss energy the pendulum loses in a beat at that arc, J
     * @return N m, or infinity if no torque does or there is no such escapement
     */
    public double torqueFor(double semiArc, double pendulumLoss) {
        double gain = exists() ? gain(semiArc) : 0;
        return gain > 0 ? (pendulumLoss + 2 * semiArc * form.palletArborTorque()) / gain : Double.POSITIVE_INFINITY;
    }

    /**
     * Arc that a torque keeps, the root of {@code M_e gain(A) - 2 A M_f = loss(A)}: the left side falls with the arc and
     * the right side rises, so there is one at most between the escape angle and the greatest arc.
     *
     * @param torque at the escape wheel, N m
     * @param pendulumLoss energy the pendulum loses in a beat at each arc, J; rises with the arc
     * @return rad; empty if the torque does not bring the pendulum to the escape angle: the clock stands
     */
    public OptionalDouble arcFor(double torque, DoubleUnaryOperator pendulumLoss) {
        double low = form.escapeAngle();
        double high = exists() ? greatestArc() : 0;
        if (!(low < high) || !(surplus(torque, low, pendulumLoss) >= 0)) {
            return OptionalDouble.empty();
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (surplus(torque, middle, pendulumLoss) >= 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return OptionalDouble.of(low);
    }

    /** What a beat brings at an arc beyond what it takes there, J; falls with the arc. */
    private double surplus(double torque, double semiArc, DoubleUnaryOperator pendulumLoss) {
        return torque * gain(semiArc) - 2 * semiArc * form.palletArborTorque() - pendulumLoss.applyAsDouble(semiArc);
    }

    /**
     * The books of one beat: {@code M_e π / N = pendulum + locking + impulse friction + pallet arbor + inertia + drop} where
     * the torque keeps the arc.
     *
     * @param torque at the escape wheel, N m
     * @param semiArc {@code A}, rad
     * @param pendulumLoss energy the pendulum loses in a beat at that arc, J
     */
    public BeatBooks books(double torque, double semiArc, double pendulumLoss) {
        double worked = torque * workingTurn();
        double passed = worked * impulseEfficiency();
        return new BeatBooks(
                torque * Math.PI / teeth,
                pendulumLoss,
                torque * rubbingRatio() * (2 * semiArc - form.lift()),
                worked - passed,
                2 * semiArc * form.palletArborTorque(),
                passed * form.inertiaShare(),
                torque * form.drop());
    }
}
