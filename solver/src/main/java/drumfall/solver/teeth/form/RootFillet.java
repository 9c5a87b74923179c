// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.form;

import drumfall.solver.teeth.flank.ArcPiece;
import drumfall.solver.teeth.flank.FlankPiece;
import drumfall.solver.teeth.flank.RadialPiece;
import drumfall.solver.teeth.flank.ToothLimitException;
import java.util.List;

/** A radial flank standing on the root circle with a round fillet between them. */
final class RootFillet {
    private RootFillet() {}

    /** The pieces from the root circle to the end of the radial flank, modules and radians. */
    static List<FlankPiece> pieces(double rootRadius, double fillet, double angle, double endRadius) {
        if (fillet == 0) {
            return List.of(new RadialPiece(rootRadius, endRadius, angle));
        }
        double centre = rootRadius + fillet;
        double start = Math.sqrt((centre - fillet) * (centre + fillet));
        ArcPiece arc = new ArcPiece(
                centre, angle + Math.asin(fillet / centre), fillet, true, Math.PI, Math.acos(-fillet / centre));
        return List.of(arc, new RadialPiece(start, endRadius, angle));
    }

    /** Refuses a fillet that two neighbouring flanks leave no room for. */
    static void check(String part, double rootRadius, double fillet, double angle, int count, double endRadius) {
        if (!(rootRadius > 0)) {
            throw ToothLimitException.below("rootRadius of " + part, rootRadius, 0.1, "modules");
        }
        double space = Math.sin(Math.PI / count - angle);
        double roomAcross = rootRadius * space / (1 - space);
        double roomUp = (endRadius - rootRadius) * (endRadius + rootRadius) / (2 * rootRadius);
        double room = Math.min(roomAcross, roomUp);
        if (!(fillet <= room)) {
            throw ToothLimitException.above("fillet of " + part, fillet, room, "modules");
        }
        if (!(fillet >= 0)) {
            throw ToothLimitException.below("fillet of " + part, fillet, 0, "modules");
        }
    }
}
