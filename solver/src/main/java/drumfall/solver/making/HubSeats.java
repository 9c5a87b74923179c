// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.brief.Brief.ArborBuild;
import drumfall.solver.brief.Brief.ArborKind;
import drumfall.solver.brief.Brief.BearingPlaces;
import drumfall.solver.fitting.BriefFit;
import drumfall.solver.layout.size.Face;
import drumfall.solver.making.part.HubSeat;
import drumfall.solver.making.solid.Solid;
import java.util.Optional;

/**
 * Seats for the rolling bearings of rods that stand still, in what turns on them, sized as those in the plates are.
 *
 * <p>A bearing at the front sits in the end towards the dial. Without a size in the brief the bore stays one that runs on the
 * rod. The drum's rod always turns, since the key winds it, and has its bearings in the plates.
 *
 * @param shop what parts are made from
 */
record HubSeats(Workshop shop) {
    private static final double METRES = 1e-9;

    /**
     * The part on an arbor, with its seats.
     *
     * @param arbor its number, from 1 after the drum's
     * @param up which way the side that lies up on the bed faces in the clock
     * @param solid the part, bored
     * @throws drumfall.solver.fit.FitException if it has no room for one, or no drill serves
     */
    Solid in(int arbor, Face up, Solid solid) {
        return HubSeat.cut(solid, seat(arbor, other(up)), seat(arbor, up), shop.print());
    }

    /** The same for the part at the wheel's end alone, where the other end is a part of its own. */
    Solid below(int arbor, Face up, Solid solid) {
        return HubSeat.cut(solid, seat(arbor, other(up)), Optional.empty(), shop.print());
    }

    /** The same for the part at the far end alone. */
    Solid above(int arbor, Face up, Solid solid) {
        return HubSeat.cut(solid, Optional.empty(), seat(arbor, up), shop.print());
    }

    /** The bore of a wheel at its outer face, m: the seat where there is one. */
    double wheelBore(int arbor) {
        double bore = shop.bore(arbor);
        return seat(arbor, other(shop.toward(arbor)))
                .map(seat -> Math.max(bore, seat.diameter()))
                .orElse(bore);
    }

    private static Face other(Face face) {
        return face == Face.FRONT ? Face.REAR : Face.FRONT;
    }

    private Optional<HubSeat> seat(int arbor, Face face) {
        ArborBuild build = shop.build(arbor);
        if (build.kind() != ArborKind.FIXED || !rolls(build.bearings(), face)) {
            return Optional.empty();
        }
        String end = face == Face.FRONT ? "front" : "rear";
        return new BriefFit(shop.brief())
                .seat("arbor " + (arbor + 1), end, build)
                .map(seat -> new HubSeat(
                        "arbor " + (arbor + 1) + ", " + end,
                        METRES * seat.hole().drawn(),
                        METRES * seat.depth().height()));
    }

    private static boolean rolls(BearingPlaces places, Face face) {
        return switch (places) {
            case NONE -> false;
            case FRONT -> face == Face.FRONT;
            case REAR -> face == Face.REAR;
            case BOTH -> true;
        };
    }
}
