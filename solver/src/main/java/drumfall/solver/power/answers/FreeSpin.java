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
 * is part of {@code M}. Wheels count as discs, crossed out evenly; air is left out.
 *
 * @param inertia of the parts that turn, kg m²
 * @param torque that the supports take under their weight, N m
 * @param flick speed given by the finger, {@code ω0}, rad/s
 */
public record FreeSpin(double inertia, double torque, double flick) {
    /** Speed that a flicking finger leaves at the rim, m/s; a modest flick, from memory. */
    public static final double USUAL_RIM_SPEED = 2;

    private static final double KILOGRAMS_PER_MICROGRAM = 1e-9;

    /**
     * The spin of one arbor.
     *
     * @param arbor the arbor; what stands in its friction must not hold the hands any more
     * @param wheelRadius radius of its wheel, m
     * @param drivenRadius radius of its pinion or drum, m
     * @param flick rad/s
     */
    public static FreeSpin of(LoadedArbor arbor, double wheelRadius, double drivenRadius, double flick) {
        double inertia = disc(arbor.wheelMass(), wheelRadius) + disc(arbor.drivenMass(), drivenRadius);
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
        double hands = arbor.role() == ArborRole.CENTRE ? clock.hands() : 0;
        ArborFriction bare = new ArborFriction(
                friction.wheelSlope(), friction.pinionSlope(), friction.standing() - hands, friction.gravity());
        double wheel = i == train.meshes().size()
                ? clock.movement().parts().escapeWheelRadius()
                : radius(train.meshes().get(i), true);
        double driven = i == 0
                ? train.drumDiameter().doubleValue() / 2
                : radius(train.meshes().get(i - 1), false);
        return of(arbor.withFriction(bare), wheel, driven, USUAL_RIM_SPEED / Math.max(wheel, driven));
    }

    private static double radius(Mesh mesh, boolean wheel) {
        return mesh.module().metres() * (wheel ? mesh.toothCount() : mesh.leafCount()) / 2;
    }

    private static double disc(long micrograms, double radius) {
        return micrograms * KILOGRAMS_PER_MICROGRAM * radius * radius / 2;
    }

    /** Time until it stands, s; infinite without friction. */
    public double seconds() {
        return inertia * flick / torque;
    }
}
