// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.kit;

import drumfall.solver.brief.Brief.ArborBuild;
import drumfall.solver.brief.Brief.ArborKind;
import drumfall.solver.fit.FitException;
import drumfall.solver.fit.bore.Bearing;
import drumfall.solver.fit.bore.Seating;
import drumfall.solver.fitting.BriefFit;
import drumfall.solver.making.HubRoom;
import java.util.Optional;

/**
 * The rolling bearings of one arbor of the train, all of one size.
 *
 * @param arbor from 1 at the drum
 * @param build how the arbor is built
 * @param count how many, 1 or 2
 * @param seat in the plate, or in what turns on a rod that stands still; empty without a size in the
 *     brief, and where none can be made
 * @param unseated why no drill serves for the seat, or what turns on the rod has no room for it; empty otherwise
 */
public record BearingPlace(
        int arbor, ArborBuild build, int count, Optional<Seating.Rolling> seat, Optional<String> unseated) {
    /**
     * The bearings that an arbor's build asks for.
     *
     * @param fit what the brief says of bores
     * @param hubs whether hubs have room
     * @param arbor from 1 at the drum
     * @param build how the arbor is built
     * @return empty without bearings
     */
    static Optional<BearingPlace> of(BriefFit fit, HubRoom hubs, int arbor, ArborBuild build) {
        int count = build.bearings().count();
        if (count == 0) {
            return Optional.empty();
        }
        if (plain(build)) {
            return Optional.of(new BearingPlace(arbor, build, count, Optional.empty(), Optional.empty()));
        }
        try {
            Optional<Seating.Rolling> seat =
                    fit.seat("arbor " + arbor, build.kind() == ArborKind.FIXED ? "hub" : "plate", build);
            Optional<String> unseated = build.kind() == ArborKind.FIXED ? hubs.refusal(arbor - 1) : Optional.empty();
            return Optional.of(
                    new BearingPlace(arbor, build, count, unseated.isPresent() ? Optional.empty() : seat, unseated));
        } catch (FitException refused) {
            return Optional.of(
                    new BearingPlace(arbor, build, count, Optional.empty(), Optional.of(refused.getMessage())));
        }
    }

    /** A hub for a bearing of no size has no seat. */
    private static boolean plain(ArborBuild build) {
        return build.kind() == ArborKind.FIXED && build.bearing().isEmpty();
    }

    /**
     * The same place with another number of bearings.
     *
     * @param other how many instead, 1 or 2
     */
    BearingPlace withCount(int other) {
        return new BearingPlace(arbor, build, other, seat, unseated);
    }

    /** Bore, outer diameter and width, or what is known of them. */
    public String size() {
        return BriefFit.bearing(build)
                .map(Bearing::name)
                .orElse("bore " + build.diameter() + "; the brief gives no size");
    }

    /** What carries it: a seat as drawn, or why there is none. */
    public String seating() {
        if (plain(build)) {
            return "in what turns on the rod, printed with a bore that runs on it and no seat";
        }
        if (unseated.isPresent()) {
            return unseated.get();
        }
        return seat.map(found -> (build.kind() == ArborKind.FIXED ? "in what turns on the rod, " : "")
                        + "seat drawn " + Shopping.millimetres(found.hole().drawn()) + " mm, "
                        + Shopping.millimetres(found.depth().height()) + " mm deep")
                .orElse("seat unknown");
    }
}
