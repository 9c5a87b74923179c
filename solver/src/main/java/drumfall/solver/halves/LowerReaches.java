// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import static drumfall.solver.halves.UpperReach.FREE;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.layout.place.PlaneRoom;
import drumfall.solver.layout.place.PlaneRoom.Pair;
import drumfall.solver.power.ArborRole;
import java.util.ArrayList;
import java.util.List;

/** The reaches of lower halves with a number of meshes, beside upper halves with any number that is left. */
final class LowerReaches {
    private final Overlaps overlaps;
    private final int count;
    private final double escapeWheel;
    private final double leastSecondTip;
    private final List<Beside> shapes = new ArrayList<>();
    private final boolean ample;
    private final boolean someAmple;

    /**
     * A number of meshes above the centre.
     *
     * @param above the number
     * @param room of such trains
     * @param most an upper half whose last pinion and hub are the largest; the rest of it is anything
     */
    private record Beside(int above, PlaneRoom room, UpperReach most) {
        /** Pairs on which the upper half has a say apart from its last pinion and hub. */
        long open() {
            return PlaneRoom.bit(above, Pair.DRIVEN_AND_WHEEL) - 1;
        }
    }

    /**
     * The reaches for a list.
     *
     * @param tables of the brief
     * @param choices what may stand at each place below the centre, at least one
     */
    LowerReaches(HalfTables tables, List<List<MeshChoice>> choices) {
        HalfRules rules = tables.rules;
        this.overlaps = new Overlaps(rules);
        this.count = choices.size();
        this.escapeWheel = rules.limits.escapeWheelRadius();
        this.leastSecondTip = count == 1
                ? escapeWheel
                : choices.get(1).stream()
                        .mapToDouble(choice -> choice.tipRadius)
                        .min()
                        .orElse(0);
        for (int above : rules.choices.meshesAboveLeft()) {
            PlaneRoom room = overlaps.room(above + count);
            if (room.decisive() != 0 || !room.keepsApart(0)) {
                shapes.add(new Beside(above, room, most(tables.choicesAt(MeshPlace.Side.ABOVE, above))));
            }
        }
        this.ample = shapes.isEmpty();
        this.someAmple = shapes.size() < rules.choices.meshesAboveLeft().size();
    }

    private UpperReach most(List<MeshChoice> last) {
        double pinion =
                last.stream().mapToDouble(choice -> choice.pinionTip).max().orElse(0);
        double hub = last.stream()
                .mapToDouble(choice -> overlaps.hub(choice, ArborRole.CENTRE))
                .max()
                .orElse(0);
        return new UpperReach(0, FREE, FREE, pinion, hub);
    }

    /** Whether the planes of some train with a half may go into the frame's depth. */
    boolean mayFit(LowerReach reach) {
        return someAmple
                || shapes.stream().anyMatch(shape -> shape.room.keepsApart(PlaneRoom.from(reach.apart(), shape.above)));
    }

    /**
     * The reach of a half; of the first meshes of one, a reach that serves for all that begin so.
     *
     * @param meshes from the centre arbor, at least one
     */
    LowerReach of(List<MeshChoice> meshes) {
        if (ample) {
            return LowerReach.NONE;
        }
        LowerReach whole = whole(meshes);
        long apart = 0;
        LowerReach reach = LowerReach.NONE;
        for (Beside shape : shapes) {
            PlaneRoom left = shape.room.left(
                    PlaneRoom.from(whole.apart(), shape.above),
                    shape.open() | overlaps.crossing(shape.most, shape.above, whole));
            if (left.decisive() != 0 || !left.keepsApart(0)) {
                apart |= shape.room.decisive() >>> PlaneRoom.shift(shape.above);
                reach = reach.worst(decisive(whole, left.decisive(), shape.above));
            }
        }
        return new LowerReach(apart & whole.apart(), reach.centreWheel(), reach.wheelRoom(), reach.hubRoom());
    }

    private static LowerReach decisive(LowerReach whole, long decisive, int above) {
        return new LowerReach(
                0,
                whole.centreWheel(),
                Overlaps.holds(decisive, above, Pair.DRIVEN_AND_WHEEL, Pair.HUB_AND_WHEEL) ? whole.wheelRoom() : FREE,
                Overlaps.holds(decisive, above, Pair.DRIVEN_AND_HUB, Pair.HUB_AND_HUB) ? whole.hubRoom() : FREE);
    }

    private LowerReach whole(List<MeshChoice> meshes) {
        MeshChoice first = meshes.get(0);
        double distance = first.mesh.centreDistance();
        double hub = overlaps.hub(first, role(1));
        double wheel = meshes.size() == 1 ? leastSecondTip : meshes.get(1).tipRadius;
        return new LowerReach(
                overlaps.along(meshes, 1, first.pinionTip, hub, this::role) | withEscapeWheel(meshes),
                first.tipRadius,
                distance - wheel,
                distance - hub);
    }

    private long withEscapeWheel(List<MeshChoice> meshes) {
        if (meshes.size() < count || count == 1) {
            return 0;
        }
        MeshChoice before = meshes.get(count - 2);
        double distance = meshes.get(count - 1).mesh.centreDistance();
        double hub = overlaps.hub(before, role(count - 1));
        return overlaps.wheels(count - 1, distance - before.pinionTip, distance - hub, escapeWheel);
    }

    /** Role of an arbor counted from the centre, from 1. */
    private ArborRole role(int arbor) {
        return arbor == count ? ArborRole.ESCAPE : ArborRole.INTERMEDIATE;
    }
}
