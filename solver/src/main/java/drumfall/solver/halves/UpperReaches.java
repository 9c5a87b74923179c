// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import static drumfall.solver.halves.UpperReach.FREE;
import static drumfall.solver.halves.UpperReach.POINT;

import drumfall.solver.layout.place.PlaneRoom;
import drumfall.solver.layout.place.PlaneRoom.Pair;
import java.util.List;

/** The reaches of upper halves with a number of meshes beside listed lower halves. */
final class UpperReaches {
    private final Overlaps overlaps;
    private final int above;
    private final PlaneRoom room;
    private final boolean ample;
    /** Pairs of any lower half by itself. */
    private final long lowerApart;
    /** What makes most of overlaps in each respect. */
    private final LowerReach worst;

    /**
     * The reaches for a list.
     *
     * @param rules of the brief
     * @param above meshes from the drum to the centre
     * @param lowers the lower halves that the upper ones will be joined to, at least one
     */
    UpperReaches(HalfRules rules, int above, List<LowerHalf> lowers) {
        this.overlaps = new Overlaps(rules);
        this.above = above;
        this.room = overlaps.room(above + lowers.get(0).meshes.size());
        this.ample = room.decisive() == 0 && room.keepsApart(0);
        this.worst = lowers.stream().map(half -> half.reach).reduce(LowerReach.NONE, LowerReach::worst);
        this.lowerApart = PlaneRoom.from(worst.apart(), above);
    }

    /** Whether the planes of some train with a half may go into the frame's depth. */
    boolean mayFit(UpperReach reach) {
        return room.keepsApart(reach.apart());
    }

    /**
     * The reach of a half.
     *
     * @param meshes from the drum to the centre
     * @param flangeRadius of the drum, m
     */
    UpperReach of(List<MeshChoice> meshes, double flangeRadius) {
        if (ample) {
            return UpperReach.NONE;
        }
        UpperReach whole = whole(meshes, flangeRadius);
        PlaneRoom left = room.left(whole.apart(), lowerApart | overlaps.crossing(whole, above, worst));
        if (left.decisive() == 0 && left.keepsApart(0)) {
            return UpperReach.NONE;
        }
        long decisive = left.decisive();
        return new UpperReach(
                room.decisive() & whole.apart(),
                Overlaps.holds(decisive, above - 1, Pair.DRIVEN_AND_WHEEL) ? whole.drivenRoom() : FREE,
                Overlaps.holds(decisive, above - 1, Pair.HUB_AND_WHEEL) ? whole.hubRoom() : FREE,
                Overlaps.holds(decisive, above, Pair.DRIVEN_AND_WHEEL, Pair.DRIVEN_AND_HUB) ? whole.pinion() : POINT,
                Overlaps.holds(decisive, above, Pair.HUB_AND_WHEEL, Pair.HUB_AND_HUB) ? whole.hub() : POINT);
    }

    private UpperReach whole(List<MeshChoice> meshes, double flangeRadius) {
        MeshChoice last = meshes.get(above - 1);
        double distance = last.mesh.centreDistance();
        double driven = above == 1 ? flangeRadius : meshes.get(above - 2).pinionTip;
        double hub =
                above == 1 ? Overlaps.NO_HUB : overlaps.hub(meshes.get(above - 2), HalfJoin.role(above - 1, above));
        return new UpperReach(
                overlaps.along(meshes, 0, flangeRadius, Overlaps.NO_HUB, arbor -> HalfJoin.role(arbor, above)),
                distance - driven,
                distance - hub,
                last.pinionTip,
                overlaps.hub(last, HalfJoin.role(above, above)));
    }
}
