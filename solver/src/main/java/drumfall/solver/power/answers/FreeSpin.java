// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.answers;

import drumfall.solver.power.ArborFriction;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.books.LoadedArbor;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A wheel flicked in its bores with nothing in mesh: {@code t = κ² ω0 / (µ g r)}.
 *
 * <p>{@code κ²} is inertia over mass and {@code µ r} friction torque over weight, so {@code t = I ω0 / M}; drag of a bearing
 * is part of {@code M}. Rods, spacers and air are left out of {@code I}; see {@link ArborInertia}.
 *
 * @param inertia of the parts that turn, kg m²
 * @param torque that the supports take under their weight, N m
 * @param flick speed given by the finger, {@code ω0}, rad/s
 */
public record FreeSpin(double inertia, double torque, double flick) {
    /** Speed that a flicking finger leaves at the rim, m/s; a modest flick, from memory. */
    public static final double USUAL_RIM_SPEED = 2;

    /**
     * The spin of one arbor.
     *
     * @param arbor the arbor; what stands in its friction must not hold the hands any more
     * @param inertia of its parts, kg m²
     * @param flick rad/s
     */
    public static FreeSpin of(LoadedArbor arbor, double inertia, double flick) {
        return new FreeSpin(inertia, arbor.taken(0, 0), flick);
    }

    /**
     * The spin of each arbor of a clock from the drum, its larger part flicked at {@link #USUAL_RIM_SPEED}; hands off.
     *
     * @param clock the clock
     */
    public static List<FreeSpin> all(LoadedClock clock) {
        return IntStream.rangeClosed(0, clock.train().meshes().size())
                .mapToObj(i -> of(clock, i))
                .toList();
    }

    private static FreeSpin of(LoadedClock clock, int i) {
        Train train = clock.train();
        LoadedArbor arbor = clock.running().arbors().get(i);
        ArborFriction friction = arbor.friction();
        double hands = arbor.role() == ArborRole.CENTRE ? clock.hands() + clock.dial() : 0;
        ArborFriction bare = new ArborFriction(
                friction.wheelSlope(), friction.pinionSlope(), friction.standing() - hands, friction.gravity());
        double wheel = i == train.meshes().size()
                ? clock.movement().parts().escapeWheelRadius()
                : radius(train.meshes().get(i), true);
        double driven = i == 0
                ? train.drumDiameter().doubleValue() / 2
                : radius(train.meshes().get(i - 1), false);
        ArborInertia parts = new ArborInertia(clock.movement(), train);
        return of(
                arbor.withFriction(bare), parts.wheel(i) + parts.driven(i), USUAL_RIM_SPEED / Math.max(wheel, driven));
    }

    private static double radius(Mesh mesh, boolean wheel) {
        return mesh.module().metres() * (wheel ? mesh.toothCount() : mesh.leafCount()) / 2;
    }

    /** Time until it stands, s; infinite without friction. */
    public double seconds() {
        return inertia * flick / torque;
    }
}
