// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.answers;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Brief.ArborBuild;
import drumfall.solver.brief.Brief.BearingPlaces;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import drumfall.solver.power.Movement;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.power.books.LoadedArbor;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.power.escape.DeadbeatForm;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Weighs a clock anew with one thing changed at a time. */
public final class Changes {
    /** A thinner rod is a quarter thinner: 2 mm becomes 1.5 mm. */
    private static final BigFraction THINNER = BigFraction.of(3, 4);

    private static final double KILOGRAMS_PER_MICROGRAM = 1e-9;

    private final TrainRater rater;
    private final Train train;
    private final LoadedClock clock;
    private final double before;

    /**
     * Changes of a train.
     *
     * @param rater rates against the brief
     * @param train the train
     */
    public Changes(TrainRater rater, Train train) {
        this.rater = rater;
        this.train = train;
        this.clock = rater.loaded(train);
        this.before = clock.leastWeight();
    }

    /** Every change, arbor by arbor from the drum, then the escape wheel, then the pinions. */
    public List<Change> all() {
        List<Change> changes = new ArrayList<>();
        for (int arbor = 0; arbor <= train.meshes().size(); arbor++) {
            ArborBuild build = rater.build(role(arbor));
            if (build.bearings() != BearingPlaces.BOTH) {
                changes.add(bearing(arbor));
            }
            changes.add(thinner(arbor));
        }
        changes.add(lighterEscapeWheel());
        for (int mesh = 0; mesh < train.meshes().size(); mesh++) {
            changes.add(oneMoreLeaf(mesh));
        }
        return changes;
    }

    /**
     * Rolling bearings at both supports of an arbor.
     *
     * @param arbor from 0 at the drum
     */
    public Change bearing(int arbor) {
        ArborBuild build = rater.build(role(arbor));
        ArborBuild rolling = build.withBearings(BearingPlaces.BOTH);
        // Hubs take the bearings that sit in them.
        return change(Change.Kind.BEARING, arbor, build.bearings().count(), 2, rebuilt(arbor, rolling));
    }

    /**
     * A rod a quarter thinner.
     *
     * @param arbor from 0 at the drum
     */
    public Change thinner(int arbor) {
        ArborBuild build = rater.build(role(arbor));
        ArborBuild thin = thinner(build);
        // Hubs take the thickest rod and the drum's parts its own, so parts change with the rod of an arbor without a
        // like.
        return change(
                Change.Kind.THINNER_ARBOR,
                arbor,
                build.diameter().si(),
                thin.diameter().si(),
                rebuilt(arbor, thin));
    }

    private LoadedClock rebuilt(int arbor, ArborBuild build) {
        return alone(train, arbor) ? rater.built(role(arbor), build).loaded(train) : built(arbor, build);
    }

    /**
     * A build with a rod a quarter thinner.
     *
     * @param build the build
     */
    public static ArborBuild thinner(ArborBuild build) {
        Quantity diameter = Quantity.of(
                build.diameter().dimension(), build.diameter().exact().multiply(THINNER));
        return new ArborBuild(build.kind(), diameter, build.bearings(), build.bearing());
    }

    /**
     * Whether no other arbor of a train is of the same role, and so of the same build.
     *
     * @param train the train
     * @param arbor from 0 at the drum
     */
    public static boolean alone(Train train, int arbor) {
        return IntStream.rangeClosed(0, train.meshes().size())
                .noneMatch(other -> other != arbor && WeightWalk.role(train, other) == WeightWalk.role(train, arbor));
    }

    private LoadedClock built(int arbor, Brief.ArborBuild build) {
        LoadedArbor running = clock.running().arbors().get(arbor);
        LoadedArbor starting = clock.starting().arbors().get(arbor);
        // Spacers and bores go with the rod, so the loads are those of the changed build.
        Movement other = rater.built(role(arbor), build).movement();
        return clock.withArbor(
                arbor,
                running.withFriction(other.regime(Criterion.RUNNING).arbor(role(arbor))),
                starting.withFriction(other.regime(Criterion.BINDING).arbor(role(arbor))));
    }

    /** An escape wheel of half the mass. */
    public Change lighterEscapeWheel() {
        int escape = train.meshes().size();
        LoadedArbor running = clock.running().arbors().get(escape);
        LoadedArbor starting = clock.starting().arbors().get(escape);
        long half = running.wheelMass() / 2;
        LoadedClock lighter = clock.withArbor(escape, running.withWheelMass(half), starting.withWheelMass(half))
                .withMovement(halfInertia(clock.movement()));
        return change(
                Change.Kind.LIGHTER_ESCAPE_WHEEL,
                escape,
                running.wheelMass() * KILOGRAMS_PER_MICROGRAM,
                half * KILOGRAMS_PER_MICROGRAM,
                lighter);
    }

    private static Movement halfInertia(Movement movement) {
        DeadbeatForm form = movement.escapement();
        DeadbeatForm lighter = new DeadbeatForm(
                form.wheelRadius(),
                form.spanLimit(),
                form.lift(),
                form.lock(),
                form.drop(),
                form.friction(),
                form.palletArborTorque(),
                form.inertiaShare() / 2);
        return new Movement(
                movement.parts(),
                movement.teeth(),
                movement.pendulum(),
                lighter,
                movement.reserveArc(),
                movement.running(),
                movement.starting(),
                movement.bindingReserve(),
                movement.pulleyEfficiency());
    }

    /**
     * One more leaf in a pinion, its wheel grown to the count that keeps the ratio nearest.
     *
     * @param mesh from 0 at the drum
     */
    public Change oneMoreLeaf(int mesh) {
        Mesh old = train.meshes().get(mesh);
        List<Mesh> meshes = new ArrayList<>(train.meshes());
        int leaves = old.leafCount() + 1;
        int teeth = (2 * old.toothCount() * leaves + old.leafCount()) / (2 * old.leafCount());
        meshes.set(mesh, Mesh.of(teeth, leaves, old.module()));
        Train changed =
                new Train(meshes, train.meshesAbove(), train.drumDiameter(), train.reeving(), train.escapeTeeth());
        double after = rater.loaded(changed).leastWeight();
        return new Change(
                Change.Kind.ONE_MORE_LEAF, mesh, old.leafCount(), leaves, Optional.of(changed), before, after);
    }

    private Change change(Change.Kind kind, int number, double from, double to, LoadedClock changed) {
        return new Change(kind, number, from, to, Optional.empty(), before, changed.leastWeight());
    }

    private ArborRole role(int arbor) {
        return WeightWalk.role(train, arbor);
    }
}
