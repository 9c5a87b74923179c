// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.layout.place.PlaneRoom;
import drumfall.solver.layout.place.PlaneRoom.Pair;
import drumfall.solver.power.ArborRole;
import drumfall.solver.rating.PlaneLimits;
import java.util.List;
import java.util.function.IntFunction;

/** Parts of neighbouring arbors that overlap in every layout and must be kept apart by their planes. */
final class Overlaps {
    /** The drum arbor has no hub that anything could overlap. */
    static final double NO_HUB = Double.NEGATIVE_INFINITY;

    private final HalfRules rules;
    private final PlaneLimits planes;

    Overlaps(HalfRules rules) {
        this.rules = rules;
        this.planes = rules.rater.planes();
    }

    PlaneRoom room(int meshes) {
        return planes.room(meshes);
    }

    /** Radius of the hub on an arbor, on to which the leaves of its pinion go, m. */
    double hub(MeshChoice driven, ArborRole role) {
        return Math.max(rules.limits.ringRadius(role), driven.pinionTip);
    }

    /**
     * Overlaps from arbor to arbor.
     *
     * @param meshes the first from the first arbor; what stands beyond the wheel of the last is left out
     * @param from the first mesh asked about, which is also the number of the arbor it starts at
     * @param driven radius of the pinion or drum on that arbor, m
     * @param hub radius of its hub, m
     * @param role of an arbor by its number
     */
    long along(List<MeshChoice> meshes, int from, double driven, double hub, IntFunction<ArborRole> role) {
        long apart = 0;
        double before = driven;
        double hubBefore = hub;
        for (int arbor = from; arbor < meshes.size(); arbor++) {
            MeshChoice choice = meshes.get(arbor);
            double distance = choice.mesh.centreDistance();
            double next = hub(choice, role.apply(arbor + 1));
            apart |= hubs(arbor, distance - before, distance - hubBefore, next);
            if (arbor + 1 < meshes.size()) {
                apart |= wheels(arbor, distance - before, distance - hubBefore, meshes.get(arbor + 1).tipRadius);
            }
            before = choice.pinionTip;
            hubBefore = next;
        }
        return apart;
    }

    /** The wheel of the next arbor overlaps what leaves so much room on an arbor. */
    long wheels(int arbor, double drivenRoom, double hubRoom, double wheel) {
        return claim(drivenRoom, wheel, arbor, Pair.DRIVEN_AND_WHEEL)
                | claim(hubRoom, wheel, arbor, Pair.HUB_AND_WHEEL);
    }

    private long hubs(int arbor, double drivenRoom, double hubRoom, double hub) {
        return claim(drivenRoom, hub, arbor, Pair.DRIVEN_AND_HUB) | claim(hubRoom, hub, arbor, Pair.HUB_AND_HUB);
    }

    private long claim(double room, double radius, int arbor, Pair pair) {
        return planes.overlap(room, radius) ? PlaneRoom.bit(arbor, pair) : 0;
    }

    /** Overlaps of parts of both halves. */
    long crossing(UpperReach upper, int above, LowerReach lower) {
        return wheels(above - 1, upper.drivenRoom(), upper.hubRoom(), lower.centreWheel())
                | claim(lower.wheelRoom(), upper.pinion(), above, Pair.DRIVEN_AND_WHEEL)
                | claim(lower.wheelRoom(), upper.hub(), above, Pair.HUB_AND_WHEEL)
                | claim(lower.hubRoom(), upper.pinion(), above, Pair.DRIVEN_AND_HUB)
                | claim(lower.hubRoom(), upper.hub(), above, Pair.HUB_AND_HUB);
    }

    /** Whether the planes of a joined train go into the frame's depth. */
    boolean keptApart(UpperReach upper, int above, LowerReach lower, int below) {
        long apart = upper.apart() | PlaneRoom.from(lower.apart(), above) | crossing(upper, above, lower);
        return room(above + below).keepsApart(apart);
    }

    /** Whether a set holds one of some pairs. */
    static boolean holds(long set, int arbor, Pair... pairs) {
        for (Pair pair : pairs) {
            if ((set & PlaneRoom.bit(arbor, pair)) != 0) {
                return true;
            }
        }
        return false;
    }
}
