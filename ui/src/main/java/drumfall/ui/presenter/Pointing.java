// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.train.Train;
import java.util.Optional;

/** Which arbor a figure of the strip sits on. */
final class Pointing {
    private Pointing() {}

    /** The highlight of a figure of a train. */
    static Highlight at(Optional<StripFigure> figure, Optional<Train> train) {
        return new Highlight(figure, figure.flatMap(pointed -> train.map(known -> arborOf(pointed, known))));
    }

    private static int arborOf(StripFigure figure, Train train) {
        int last = train.meshes().size();
        return switch (figure.kind()) {
            case WHEEL, MODULE, DISTANCE, DIRECTION -> Math.min(last, index(figure, train));
            case LEAVES -> Math.min(last, index(figure, train) + 1);
            case DRUM, FALLS -> 0;
            case ESCAPE_TEETH, PALLET_DISTANCE -> last;
            case MESHES_ABOVE, MESHES_BELOW, MOTION_DIRECTION, MOTION_DISTANCE -> train.meshesAbove();
        };
    }

    private static int index(StripFigure figure, Train train) {
        MeshPlace place = figure.place().orElseThrow();
        return place.side() == MeshPlace.Side.ABOVE ? place.number() - 1 : train.meshesAbove() + place.number() - 1;
    }
}
