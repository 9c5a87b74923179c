// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drumfall.solver.power.ArborFriction;
import drumfall.solver.power.ArborSupports;
import drumfall.solver.power.Support;
import drumfall.solver.power.books.LoadedArbor;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.power.pendulum.Pendulum;
import drumfall.solver.power.statics.PlacedArbor.MeshForce;
import drumfall.solver.samples.HandClock;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PlacedWalkTest {
    private static final int SAMPLES = "full".equals(System.getProperty("drumfall.samples")) ? 5_000 : 300;
    private static final double SPAN = 0.06;

    // By hand. Bores of slope 2e-4 m both; wheel at a third of the span, arm 30 mm, pushed to the right; pinion at two
    // thirds, arm 4 mm, pushed to the left. To hand on 0.03 N m: wheel force 1 N to the right. Given x the pinion's is
    // x/0.004
    // to the left. Front: -2/3 + x/0.012; rear: -1/3 + x/0.006. With x near 0.03: 1.83 and 4.67 N, sum x/0.004 - 1, so
    // x = 0.03 + 2e-4 (x/0.004 - 1) = 0.0298/0.95 = 0.0313684.
    @Test
    void reactions_add_as_vectors() {
        PlacedArbor arbor = new PlacedArbor(
                new ArborSupports(new Support(2e-4, 0), new Support(2e-4, 0), 0.06),
                new MeshForce(0.02, 0.030, 0),
                new MeshForce(0.04, 0.004, Math.PI),
                0.04,
                List.of(),
                0);

        double given = arbor.given(0.03);

        assertThat(given).isCloseTo(0.0298 / 0.95, within(1e-12));
        assertThat(arbor.reactions(given, 0.03).frontSize()).isCloseTo(given / 0.012 - 2.0 / 3, within(1e-9));
        assertThat(arbor.reactions(given, 0.03).rearSize()).isCloseTo(given / 0.006 - 1.0 / 3, within(1e-9));
    }

    // A wheel hung out beyond the front support by half the span loads it with one and a half times the force.
    @Test
    void an_overhung_wheel_loads_one_support_with_more_than_the_whole_force() {
        Reactions reactions = Reactions.of(SPAN, List.of(PointForce.weight(-SPAN / 2, 2)));

        assertThat(reactions.frontSize()).isCloseTo(3, within(1e-12));
        assertThat(reactions.rearSize()).isCloseTo(1, within(1e-12));
        assertThat(reactions.front().up()).isPositive();
        assertThat(reactions.rear().up()).isNegative();
    }

    // What is found satisfies the balance of torques, and no smaller torque does.
    @Test
    void what_an_arbor_is_given_covers_what_it_takes() {
        Random random = new Random(31);
        for (int i = 0; i < SAMPLES; i++) {
            PlacedArbor arbor = anyArbor(random, 0.03, 0.004, 1e-3);
            double out = random.nextDouble() * 0.05;
            double given = arbor.given(out);

            assertThat(given - arbor.taken(given, out)).isCloseTo(out, within(1e-14));
            double less = given * (1 - 1e-6);
            assertThat(less - arbor.taken(less, out)).isLessThan(out);
        }
    }

    // Triangle inequality; 1e-12 for rounding. The unplaced walk here has the same supports at their worst place.
    @Test
    void a_placed_train_never_needs_more_than_an_unplaced_one() {
        Random random = new Random(32);
        double saved = 0;
        for (int i = 0; i < SAMPLES; i++) {
            Placed placed = place(random);
            double unplaced = placed.clock.leastWeight();
            double needed = new PlacedWalk(placed.clock, placed.running, placed.starting).leastWeight();

            assertThat(needed).isLessThanOrEqualTo(unplaced * (1 + 1e-12));
            saved += 1 - needed / unplaced;
        }
        assertThat(saved / SAMPLES).isBetween(0.01, 0.5);
    }

    // Where all forces and weights pull one way and every part stands at the worst place, placing wins nothing.
    @Test
    void with_all_forces_one_way_the_placed_walk_is_the_unplaced_one() {
        LoadedClock clock = clock();
        List<PlacedArbor> running = new ArrayList<>();
        List<PlacedArbor> starting = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            running.add(downward(clock.running().arbors().get(i)));
            starting.add(downward(clock.starting().arbors().get(i)));
        }
        PlacedWalk walk = new PlacedWalk(clock, running, starting);

        assertThat(walk.runningWeight()).isCloseTo(clock.runningWeight(), withinPercentage(1e-9));
        assertThat(walk.bindingWeight()).isCloseTo(clock.bindingWeight(), withinPercentage(1e-9));
    }

    // k_p = slope / arm = 1: friction as wide as the arm.
    @Test
    void friction_as_wide_as_the_pinions_arm_holds_a_placed_arbor() {
        Support wide = new Support(0.004, 0);
        PlacedArbor arbor = new PlacedArbor(
                new ArborSupports(wide, wide, SPAN),
                new MeshForce(0.02, 0.03, 0),
                new MeshForce(0.04, 0.004, Math.PI),
                0.04,
                List.of(),
                0);

        assertThat(arbor.given(0.01)).isInfinite();
    }

    // A line that walks from one end of the drum to the other loads the bore it is nearer to; the worse end counts.
    @Test
    void a_line_is_judged_at_the_worse_end_of_its_way() {
        ArborSupports supports = new ArborSupports(new Support(1e-6, 0), new Support(1e-4, 0), SPAN);
        MeshForce wheel = new MeshForce(0.01, 0.05, 0);
        MeshForce line = new MeshForce(0.01, 0.02, -Math.PI / 2);
        double walking = new PlacedArbor(supports, wheel, line, 0.05, List.of(), 0).given(1);
        double near = new PlacedArbor(supports, wheel, line, 0.01, List.of(), 0).given(1);
        double far =
                new PlacedArbor(supports, wheel, new MeshForce(0.05, 0.02, -Math.PI / 2), 0.05, List.of(), 0).given(1);

        assertThat(walking).isEqualTo(Math.max(near, far)).isGreaterThan(near);
    }

    @Test
    void as_many_arbors_as_in_the_train_must_be_placed() {
        assertThatThrownBy(() -> new PlacedWalk(clock(), List.of(), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must be 4");
    }

    private record Placed(LoadedClock clock, List<PlacedArbor> running, List<PlacedArbor> starting) {}

    /** Turning arbors of random bores and directions, in the clock worked by hand. */
    private static Placed place(Random random) {
        LoadedClock clock = LoadedClock.of(HandClock.movement(), HandClock.train(), HandClock.HANDS);
        List<PlacedArbor> running = new ArrayList<>();
        List<PlacedArbor> starting = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            LoadedArbor arbor = clock.running().arbors().get(i);
            double front = 5e-4 * random.nextDouble();
            double rear = 5e-4 * random.nextDouble();
            double wheel = SPAN * random.nextDouble();
            double driven = SPAN * random.nextDouble();
            List<PointForce> weights = List.of(
                    PointForce.weight(wheel, arbor.wheelWeight()), PointForce.weight(driven, arbor.drivenWeight()));
            MeshForce out = new MeshForce(wheel, arbor.wheelArm(), 2 * Math.PI * random.nextDouble());
            MeshForce given = new MeshForce(driven, arbor.drivenArm(), 2 * Math.PI * random.nextDouble());
            ArborSupports kinetic = new ArborSupports(new Support(front, 1e-6), new Support(rear, 2e-6), SPAN);
            ArborSupports stuck =
                    new ArborSupports(new Support(1.3 * front, 1e-6), new Support(1.3 * rear, 2e-6), SPAN);
            running.add(new PlacedArbor(kinetic, out, given, driven, weights, 1e-5));
            starting.add(new PlacedArbor(stuck, out, given, driven, weights, 1e-5));
            clock = clock.withArbor(
                    i,
                    arbor.withFriction(worst(kinetic)),
                    clock.starting().arbors().get(i).withFriction(worst(stuck)));
        }
        return new Placed(clock, running, starting);
    }

    private static ArborFriction worst(ArborSupports supports) {
        double slope = supports.worstSlopeBetween();
        return new ArborFriction(slope, slope, 1e-5 + supports.drag(), Pendulum.STANDARD_GRAVITY);
    }

    private static PlacedArbor downward(LoadedArbor arbor) {
        Support bore = new Support(arbor.friction().wheelSlope(), 0);
        double down = -Math.PI / 2;
        return new PlacedArbor(
                new ArborSupports(bore, bore, SPAN),
                new MeshForce(0.02, arbor.wheelArm(), down),
                new MeshForce(0.03, arbor.drivenArm(), down),
                0.03,
                List.of(PointForce.weight(0.02, arbor.wheelWeight() + arbor.drivenWeight())),
                arbor.friction().standing());
    }

    private static PlacedArbor anyArbor(Random random, double wheelArm, double pinionArm, double slope) {
        return new PlacedArbor(
                new ArborSupports(
                        new Support(slope * random.nextDouble(), 1e-6),
                        new Support(slope * random.nextDouble(), 1e-6),
                        SPAN),
                new MeshForce(SPAN * random.nextDouble(), wheelArm, 7 * random.nextDouble()),
                new MeshForce(SPAN * random.nextDouble(), pinionArm, 7 * random.nextDouble()),
                SPAN * random.nextDouble(),
                List.of(PointForce.weight(0.01, 0.2)),
                1e-6);
    }

    private static LoadedClock clock() {
        return LoadedClock.of(HandClock.movement(), HandClock.train(), HandClock.HANDS);
    }
}
