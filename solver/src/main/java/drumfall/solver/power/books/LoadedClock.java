// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.books;

import drumfall.solver.power.Criterion;
import drumfall.solver.power.Movement;
import drumfall.solver.power.escape.EscapeNeed;
import drumfall.solver.train.Train;

/**
 * A train with its movement, ready to be asked about weights.
 *
 * @param movement the movement
 * @param train the train
 * @param hands torque that motion work and hands take of the centre arbor, part of what its friction counts as standing, N m
 * @param dial torque that the weight of motion work and hands takes at the centre arbor's supports under kinetic friction, part
 *     of what its friction counts as standing, N m
 * @param running the train under kinetic friction
 * @param starting the train under static friction
 */
public record LoadedClock(
        Movement movement, Train train, double hands, double dial, LoadedTrain running, LoadedTrain starting) {
    /**
     * The clock of a movement and a train, its hands without weight.
     *
     * @param movement the movement
     * @param train the train
     * @param hands torque of motion work and hands, N m
     */
    public static LoadedClock of(Movement movement, Train train, double hands) {
        return new LoadedClock(
                movement,
                train,
                hands,
                0,
                LoadedTrain.of(movement, train, Criterion.RUNNING),
                LoadedTrain.of(movement, train, Criterion.BINDING));
    }

    /** What the escape wheel needs at the arc that the movement asks for. */
    public EscapeNeed need() {
        return movement.heldArc(train.escapeTeeth()).need(train.secondsPerBeat());
    }

    /** Smallest weight that keeps the arc asked for, kg; infinite if none does. */
    public double runningWeight() {
        return weightKeeping(need());
    }

    /**
     * Smallest weight that keeps an arc at the least that the pendulum ever feels.
     *
     * @param need of the escape wheel at that arc
     * @return kg, infinite if none does
     */
    public double weightKeeping(EscapeNeed need) {
        return weightFor(need.torque(), running.tensionFor(need.torque(), mesh -> mesh.felt(need.memory())));
    }

    /** Smallest weight that overcomes every mesh at its worst at once and leaves the reserve, kg; infinite if none does. */
    public double bindingWeight() {
        double asked = movement.torqueAsked(Criterion.BINDING, need().torque());
        return weightFor(asked, starting.tensionFor(asked, mesh -> mesh.curve().worst()));
    }

    /** Smallest weight that meets both criteria, kg; infinite if none does. */
    public double leastWeight() {
        return Math.max(runningWeight(), bindingWeight());
    }

    private double weightFor(double escapeTorque, double tension) {
        // Where no torque keeps the arc, a mesh that passes nothing would make infinity into no number.
        return Double.isInfinite(escapeTorque)
                ? Double.POSITIVE_INFINITY
                : movement.weightFor(tension, train.reeving());
    }

    /**
     * The same clock, of whose centre arbor's friction some is known to be that of motion work and hands.
     *
     * @param torque that their weight takes under kinetic friction, N m
     */
    public LoadedClock withDial(double torque) {
        return new LoadedClock(movement, train, hands, torque, running, starting);
    }

    /**
     * The same clock with one arbor changed.
     *
     * @param index number of the arbor from the drum
     * @param kinetic the arbor under kinetic friction
     * @param stuck the arbor under static friction
     */
    public LoadedClock withArbor(int index, LoadedArbor kinetic, LoadedArbor stuck) {
        return new LoadedClock(
                movement, train, hands, dial, running.withArbor(index, kinetic), starting.withArbor(index, stuck));
    }

    /**
     * The same clock with another movement behind the escape wheel; the arbors stay.
     *
     * @param other gives escapement and pendulum
     */
    public LoadedClock withMovement(Movement other) {
        return new LoadedClock(other, train, hands, dial, running, starting);
    }
}
