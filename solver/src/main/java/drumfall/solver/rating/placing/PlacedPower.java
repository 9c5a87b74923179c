// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.placing;

import drumfall.solver.brief.Brief.ArborKind;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.Planes;
import drumfall.solver.layout.Span;
import drumfall.solver.power.ArborSupports;
import drumfall.solver.power.Criterion;
import drumfall.solver.power.books.LoadedArbor;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.power.escape.Deadbeat;
import drumfall.solver.power.statics.PlacedArbor;
import drumfall.solver.power.statics.PlacedArbor.MeshForce;
import drumfall.solver.power.statics.PlacedWalk;
import drumfall.solver.power.statics.PointForce;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Train;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The walk to the weight with forces where the layout puts them and as it turns them, in the middle of all bands.
 *
 * <p>A wheel pushes the pinion along the common normal of their flanks: square to the line of centres in the sense in which
 * the wheel turns, and turned off the wheel by the angle whose cosine is the sum of both arms of the force over the centre
 * distance. Friction turns the force to one side in the approach and to the other in the recess; both are taken to cancel
 * over a pitch. The pallets act square to the radius of the entry or of the exit tooth, whichever costs more.
 */
public final class PlacedPower {
    private static final double METRES = 1e-9;

    private final TrainRater rater;
    private final Train train;
    private final Layout layout;
    private final LoadedClock clock;

    private PlacedPower(TrainRater rater, Train train, Layout layout) {
        this.rater = rater;
        this.train = train;
        this.layout = layout;
        this.clock = rater.loaded(train);
    }

    /**
     * The walk through a placed train.
     *
     * @param rater rates against the brief
     * @param train the train
     * @param layout where its arbors stand
     * @throws IllegalArgumentException if the layout is of a train with another number of meshes
     */
    public static PlacedWalk walk(TrainRater rater, Train train, Layout layout) {
        PlacedPower power = new PlacedPower(rater, train, layout);
        return new PlacedWalk(
                power.clock,
                power.arbors(Criterion.RUNNING, power.clock.running().arbors()),
                power.arbors(Criterion.BINDING, power.clock.starting().arbors()));
    }

    private List<PlacedArbor> arbors(Criterion criterion, List<LoadedArbor> loaded) {
        return IntStream.range(0, loaded.size())
                .mapToObj(arbor -> arbor(criterion, loaded.get(arbor), arbor))
                .toList();
    }

    private PlacedArbor arbor(Criterion criterion, LoadedArbor loaded, int arbor) {
        Axis axis = axis(loaded, arbor);
        ArborSupports supports = rater.supports(loaded.role(), criterion, axis.span());
        double standing = loaded.friction().standing() - supports.drag();
        return handsOn(loaded, arbor, axis)
                .map(wheel -> new PlacedArbor(
                        supports,
                        wheel,
                        driven(loaded, arbor, axis),
                        drivenTo(arbor, axis),
                        weights(loaded, arbor, axis),
                        standing))
                .max(Comparator.comparingDouble(
                        placed -> placed.given(clock.need().torque())))
                .orElseThrow();
    }

    /** Places along an arbor, m behind its front support. */
    private record Axis(double front, double rear) {
        double span() {
            return front - rear;
        }

        double place(double height) {
            return front - height;
        }

        double middle(Span span) {
            return place(METRES * (span.from() + span.to()) / 2);
        }
    }

    /** A turning rod runs in the middle of both plates; on a fixed rod the ends of the hub run. */
    private Axis axis(LoadedArbor loaded, int arbor) {
        Planes planes = layout.planes();
        if (rater.build(loaded.role()).kind() == ArborKind.TURNING) {
            double half = METRES * layout.need().envelope().plateThickness() / 2;
            return new Axis(METRES * planes.innerDepth() + half, -half);
        }
        Span wheel = planes.ofWheel(arbor);
        Span other = arbor == 0 ? planes.drum() : planes.ofPinion(arbor);
        return new Axis(METRES * Math.max(wheel.to(), other.to()), METRES * Math.min(wheel.from(), other.from()));
    }

    /** The force on the wheel; two of the escape wheel. */
    private Stream<MeshForce> handsOn(LoadedArbor loaded, int arbor, Axis axis) {
        double place = axis.middle(layout.planes().ofWheel(arbor));
        if (arbor < train.meshes().size()) {
            return Stream.of(new MeshForce(place, loaded.wheelArm(), pushed(arbor) + Math.PI));
        }
        Deadbeat escapement = rater.movement().escapement().with(train.escapeTeeth());
        double middle = layout.place(arbor).directionTo(layout.palletPlace());
        return Stream.of(middle - escapement.halfSpan(), middle + escapement.halfSpan())
                .map(tooth -> new MeshForce(place, loaded.wheelArm(), tooth - sense(arbor) * Math.PI / 2));
    }

    private MeshForce driven(LoadedArbor loaded, int arbor, Axis axis) {
        return arbor == 0
                ? new MeshForce(lineEnd(axis, layout.planes().drum().to(), -1), loaded.drivenArm(), -Math.PI / 2)
                : new MeshForce(axis.middle(layout.planes().ofPinion(arbor)), loaded.drivenArm(), pushed(arbor - 1));
    }

    private double drivenTo(int arbor, Axis axis) {
        return arbor == 0
                ? lineEnd(axis, layout.planes().drum().from(), 1)
                : axis.middle(layout.planes().ofPinion(arbor));
    }

    /** Where the line leaves the drum when it lies against a flange. */
    private double lineEnd(Axis axis, long face, int inwards) {
        return axis.place(METRES * face + inwards * rater.brief().drum().wall().si());
    }

    private List<PointForce> weights(LoadedArbor loaded, int arbor, Axis axis) {
        Planes planes = layout.planes();
        return List.of(
                PointForce.weight(axis.middle(planes.ofWheel(arbor)), loaded.wheelWeight()),
                PointForce.weight(
                        axis.middle(arbor == 0 ? planes.drum() : planes.ofPinion(arbor)), loaded.drivenWeight()));
    }

    /** Direction in which the wheel of a mesh pushes the pinion. */
    private double pushed(int mesh) {
        double arms = clock.running().arbors().get(mesh).wheelArm()
                + clock.running().arbors().get(mesh + 1).drivenArm();
        double distance = METRES * layout.need().parts().meshes().get(mesh).centreDistance();
        double off = Math.acos(Math.min(1, arms / distance));
        return layout.direction(mesh) + sense(mesh) * (Math.PI / 2 - off);
    }

    /** 1 if an arbor turns anticlockwise seen from the dial, -1 if clockwise: a fall at the left turns the drum to the left. */
    private int sense(int arbor) {
        int drum = -layout.side().sign();
        return arbor % 2 == 0 ? drum : -drum;
    }
}
