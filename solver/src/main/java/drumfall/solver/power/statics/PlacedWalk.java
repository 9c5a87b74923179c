// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.statics;

import drumfall.solver.power.Criterion;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.power.books.LoadedMesh;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The walk to the weight by vectors, once the arbors are placed.
 *
 * <p>With the same supports, arms and masses it never asks for more than the walk with least favourable directions: a sum of
 * vectors is no longer than the sum of their lengths, so friction is no more for the same torques, and what an arbor must be
 * given rises with what it must hand on.
 */
public final class PlacedWalk {
    private final LoadedClock clock;
    private final List<PlacedArbor> running;
    private final List<PlacedArbor> starting;

    /**
     * A walk through a placed train.
     *
     * @param clock the clock, for all but the friction of its arbors
     * @param running its arbors under kinetic friction, from the drum
     * @param starting its arbors under static friction, from the drum
     * @throws IllegalArgumentException if the arbors are not as many as the clock's
     */
    public PlacedWalk(LoadedClock clock, List<PlacedArbor> running, List<PlacedArbor> starting) {
        this.clock = clock;
        this.running = List.copyOf(running);
        this.starting = List.copyOf(starting);
        int arbors = clock.running().arbors().size();
        if (running.size() != arbors || starting.size() != arbors) {
            throw new IllegalArgumentException(
                    "The placed arbors (%d running, %d starting) must be %d, as in the train."
                            .formatted(running.size(), starting.size(), arbors));
        }
    }

    /** The arbors under kinetic friction, from the drum. */
    public List<PlacedArbor> running() {
        return running;
    }

    /** The arbors under static friction, from the drum. */
    public List<PlacedArbor> starting() {
        return starting;
    }

    /** Smallest weight that keeps the arc asked for, kg; infinite if none does. */
    public double runningWeight() {
        var need = clock.need();
        return weight(running, clock.running().meshes(), need.torque(), mesh -> mesh.felt(need.memory()));
    }

    /** Smallest weight that overcomes every mesh at its worst at once and leaves the reserve, kg; infinite if none does. */
    public double bindingWeight() {
        double asked =
                clock.movement().torqueAsked(Criterion.BINDING, clock.need().torque());
        return weight(
                starting, clock.starting().meshes(), asked, mesh -> mesh.curve().worst());
    }

    /** Smallest weight that meets both criteria, kg; infinite if none does. */
    public double leastWeight() {
        return Math.max(runningWeight(), bindingWeight());
    }

    private double weight(
            List<PlacedArbor> arbors,
            List<LoadedMesh> meshes,
            double escapeTorque,
            ToDoubleFunction<LoadedMesh> passed) {
        double given = arbors.get(arbors.size() - 1).given(escapeTorque);
        for (int i = arbors.size() - 2; i >= 0 && Double.isFinite(given); i--) {
            LoadedMesh mesh = meshes.get(i);
            given = arbors.get(i).given(mesh.out(given, passed.applyAsDouble(mesh)));
        }
        double tension = given / arbors.get(0).driven().arm();
        return Double.isInfinite(given)
                ? Double.POSITIVE_INFINITY
                : clock.movement().weightFor(tension, clock.train().reeving());
    }
}
