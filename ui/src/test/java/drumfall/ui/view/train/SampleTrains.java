// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.brief.Locks;
import drumfall.solver.brief.MeshLock;
import drumfall.solver.brief.MeshPlace;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import drumfall.ui.presenter.Highlight;
import drumfall.ui.presenter.TrainStripContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Trains to draw; their counts are the scenario's own. */
final class SampleTrains {
    private static final String[] ABOVE = {
        "", "85/10 m1.5", "36/12 m1.5 34/12 m1.25", "", "24/12 m1.5 25/12 m1.5 24/12 m1.25 24/12 m1.25"
    };

    private static final String[] BELOW = {
        "",
        "90/8 m1",
        "87/8 m1.25 89/8 m1",
        "83/12 m1.5 63/12 m1.25 56/10 m1",
        "50/12 m1.5 48/12 m1.25 45/12 m1.25 39/12 m1"
    };

    private SampleTrains() {}

    /** A train of 2 to 8 meshes; those of 3 to 5 meet the demonstration brief or nearly do. */
    static Train of(int meshes) {
        return switch (meshes) {
            case 2 -> of(1, 1, Reeving.SINGLE);
            case 3 -> of(1, 2, Reeving.DOUBLE);
            case 4 -> of(1, 3, Reeving.DOUBLE);
            case 5 -> of(2, 3, Reeving.DOUBLE);
            case 6 -> of(2, 4, Reeving.DOUBLE);
            case 7 -> of(4, 3, Reeving.DOUBLE);
            default -> of(4, 4, Reeving.DOUBLE);
        };
    }

    static Train of(int above, int below, Reeving reeving) {
        List<Mesh> list = new ArrayList<>(meshes(ABOVE[above]));
        list.addAll(meshes(BELOW[below]));
        return new Train(list, above, BigFraction.of(36, 1000), reeving, below == 2 ? 30 : 18);
    }

    private static List<Mesh> meshes(String text) {
        return Pattern.compile("(\\d+)/(\\d+) m([\\d.]+)")
                .matcher(text)
                .results()
                .map(found -> Mesh.of(
                        Integer.parseInt(found.group(1)),
                        Integer.parseInt(found.group(2)),
                        ToothModule.ofMillimetres(found.group(3))))
                .toList();
    }

    /** The same train with another wheel in one mesh. */
    static Train withWheel(Train train, int mesh, int teeth) {
        List<Mesh> list = new ArrayList<>(train.meshes());
        Mesh old = list.get(mesh);
        list.set(mesh, Mesh.of(teeth, old.leafCount(), old.module()));
        return new Train(list, train.meshesAbove(), train.drumDiameter(), train.reeving(), train.escapeTeeth());
    }

    static Brief brief() {
        return BundledBriefs.demo();
    }

    /** The demonstration brief with wheel, pinion, module and drum held. */
    static Brief heldBrief() {
        MeshLock first = MeshLock.open(new MeshPlace(MeshPlace.Side.ABOVE, 1)).withWheel(Optional.of(85));
        MeshLock below = MeshLock.open(new MeshPlace(MeshPlace.Side.BELOW, 1))
                .withLeaves(Optional.of(12))
                .withModule(Optional.of(Quantity.parse(Dimension.LENGTH, "1.5 mm")));
        return brief().withLocks(Locks.NONE
                .withMeshes(List.of(first, below))
                .withMeshesBelow(Optional.of(3))
                .withDrumDiameter(Optional.of(Quantity.parse(Dimension.LENGTH, "36 mm"))));
    }

    /** The demonstration brief with the centre distances of a train held. */
    static Brief onDrilledPlates(Train train) {
        List<MeshLock> locks = IntStream.range(0, train.meshes().size())
                .mapToObj(i -> MeshLock.open(MeshPlace.of(i, train.meshesAbove()))
                        .withDistance(Optional.of(Quantity.of(
                                MeshLock.centreDistance(train.meshes().get(i)).multiply(1000),
                                Dimension.LENGTH.unit("mm")))))
                .toList();
        return brief().withLocks(Locks.NONE.withMeshes(locks));
    }

    static Rating rate(Train train, Brief brief) {
        return new TrainRater(brief).rate(train);
    }

    static TrainStripContent content(Train train) {
        return content(train, brief(), Optional.empty());
    }

    static TrainStripContent content(Train train, Brief brief, Optional<Train> tried) {
        return new TrainStripContent(
                Optional.of(rate(train, brief)),
                tried.map(other -> rate(other, brief)),
                brief,
                Highlight.NONE,
                UnitSystem.METRIC,
                false);
    }
}
