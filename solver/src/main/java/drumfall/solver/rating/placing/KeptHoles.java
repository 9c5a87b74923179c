// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.placing;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Locks;
import drumfall.solver.brief.MeshLock;
import drumfall.solver.brief.MeshPlace;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.size.MovementParts;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Holds the holes of a placed train's plates, so that every other train stands on the same plates.
 *
 * <p>What settles a hole is held and nothing else. Distance and direction of each mesh and the number of meshes settle the
 * arbors from the dial centre; the pallet arbor stands above the escape arbor, {@code r_w / cos β} from it; distance and
 * direction of the motion work settle the minute arbor; and the dial centre's place in the frame settles edges and pillars.
 * Counts, modules, drum and falls stay as free as they were.
 *
 * <p>Distances of the pallet arbor and the minute arbor hang on escapement, modules offered, nozzle and fewest leaves of the
 * brief: where these are changed so that a hole would move, no train is found. Rejected: locks on the places of arbors. A
 * place is no figure of a mesh, so half trains could not be told apart by it.
 */
public final class KeptHoles {
    private static final long PER_MILLIMETRE = 1_000_000;

    /** A thousandth of a nanometre in a metre. */
    private static final int FINEST_DECIMALS = 11;

    private final Brief brief;
    private final Train train;
    private final Layout layout;

    private KeptHoles(Brief brief, Train train, Layout layout) {
        this.brief = brief;
        this.train = train;
        this.layout = layout;
    }

    /**
     * The brief with the holes of a train's plates held; what else it holds stays held. Whether it is in order then, a train
     * from elsewhere having more meshes than the brief allows perhaps, is for its reader to say.
     *
     * @param brief the brief by which the train was placed
     * @param train the train
     * @param layout where it stands
     * @throws IllegalArgumentException if the layout is of a train with other numbers of meshes
     */
    public static Brief of(Brief brief, Train train, Layout layout) {
        MovementParts parts = layout.need().parts();
        if (parts.meshes().size() != train.meshes().size() || parts.centreArbor() != train.meshesAbove()) {
            throw new IllegalArgumentException(
                    "The layout of %d meshes, %d of them above the centre, must be that of the train (%s). Maybe it is of another one."
                            .formatted(parts.meshes().size(), parts.centreArbor(), train));
        }
        return new KeptHoles(brief, train, layout).held();
    }

    private Brief held() {
        Locks locks = brief.locks()
                .withMeshes(meshes())
                .withMeshesAbove(Optional.of(train.meshesAbove()))
                .withMeshesBelow(Optional.of(train.below().size()))
                .withMotionDirection(motionDirection())
                .withMotionDistance(
                        layout.minutePlace().map(minute -> length(layout.need().centreDistance(motion()))))
                .withPalletDistance(
                        Optional.of(length(layout.need().parts().escape().palletDistance())));
        Place corner = layout.frameCorner();
        Brief.Frame frame = brief.frame();
        return brief.withFrame(frame.withDial(
                        asTyped(frame.dialFromLeft(), length(-corner.x())),
                        asTyped(frame.dialFromBottom(), length(-corner.y()))))
                .withLocks(locks);
    }

    private static Quantity asTyped(Optional<Quantity> typed, Quantity found) {
        return typed.filter(found::sameValueAs).orElse(found);
    }

    private List<MeshLock> meshes() {
        List<MeshLock> locks = new ArrayList<>(brief.locks().meshes());
        for (int i = 0; i < train.meshes().size(); i++) {
            MeshPlace place = MeshPlace.of(i, train.meshesAbove());
            locks.removeIf(lock -> lock.place().equals(place));
            locks.add(brief.locks()
                    .at(place)
                    .orElse(MeshLock.open(place))
                    .withDistance(Optional.of(distance(train.meshes().get(i))))
                    .withDirection(Optional.of(direction(
                            layout.place(i), layout.place(i + 1), layout.need().centreDistance(i)))));
        }
        locks.sort(Comparator.comparing((MeshLock lock) -> lock.place().side())
                .thenComparing(lock -> lock.place().number()));
        return locks;
    }

    private static Quantity distance(Mesh mesh) {
        return Quantity.of(MeshLock.centreDistance(mesh).multiply(1000), Dimension.LENGTH.unit("mm"));
    }

    private Optional<Quantity> motionDirection() {
        return layout.minutePlace()
                .map(minute ->
                        direction(Place.DIAL_CENTRE, minute, layout.need().centreDistance(motion())));
    }

    /** Number of the motion work's mesh. */
    private int motion() {
        return train.meshes().size();
    }

    /** The roundest angle that leads from one arbor to the other to the nanometre, or the finest if none does. */
    private static Quantity direction(Place from, Place to, long distance) {
        BigDecimal degrees = new BigDecimal(Math.toDegrees(from.directionTo(to)));
        Place step = to.minus(from);
        int decimals = 0;
        Quantity angle = angle(degrees, decimals);
        while (decimals < FINEST_DECIMALS && !Place.polar(distance, angle.si()).equals(step)) {
            decimals++;
            angle = angle(degrees, decimals);
        }
        return angle;
    }

    private static Quantity angle(BigDecimal degrees, int decimals) {
        BigDecimal round = degrees.setScale(decimals, RoundingMode.HALF_EVEN);
        return Quantity.of(
                BigFraction.of(
                        round.unscaledValue(), BigDecimal.TEN.pow(decimals).toBigInteger()),
                Dimension.ANGLE.unit("deg"));
    }

    private static Quantity length(long nanometres) {
        return Quantity.of(BigFraction.of(nanometres, PER_MILLIMETRE), Dimension.LENGTH.unit("mm"));
    }
}
