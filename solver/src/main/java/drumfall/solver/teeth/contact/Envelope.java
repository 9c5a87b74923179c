// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.contact;

import drumfall.solver.teeth.form.MeshPair;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All pairs of teeth together: which carry at a driver angle. */
final class Envelope {
    /** Pairs whose follower angles differ by less carry together, rad. */
    static final double TIE = 1e-9;

    private final PairReach reach;
    private final double driverPitch;
    private final double followerPitch;

    Envelope(MeshPair pair, MeshConditions conditions, int nodesPerPiece) {
        reach = new PairReach(pair, conditions, nodesPerPiece);
        driverPitch = pair.driver().pitchAngle();
        followerPitch = pair.follower().pitchAngle();
    }

    double driverPitch() {
        return driverPitch;
    }

    double followerPitch() {
        return followerPitch;
    }

    /**
     * The pairs that carry at a driver angle, foremost tooth first; empty if none is in reach.
     *
     * <p>Where a corner and a pair of flanks tie, the corner has only just left the flank and is left out.
     */
    List<Contact> carrying(double angle) {
        return leading(all(angle));
    }

    /** Every pair in reach at a driver angle, foremost tooth first, placed where it alone would hold the follower. */
    List<Contact> all(double angle) {
        List<Contact> found = new ArrayList<>(4);
        int from = (int) Math.ceil((angle - reach.last()) / driverPitch);
        int to = (int) Math.floor((angle - reach.first()) / driverPitch);
        for (int tooth = from; tooth <= to; tooth++) {
            Optional<Contact> contact = reach.at(angle - tooth * driverPitch);
            if (contact.isPresent()) {
                found.add(contact.get().asTooth(tooth, tooth * driverPitch, tooth * followerPitch));
            }
        }
        return found;
    }

    /** Those among the pairs in reach that hold the follower furthest on. */
    static List<Contact> leading(List<Contact> found) {
        double most = Double.NEGATIVE_INFINITY;
        for (Contact contact : found) {
            most = Math.max(most, contact.followerAngle());
        }
        return leading(found, most - TIE);
    }

    private static List<Contact> leading(List<Contact> found, double least) {
        List<Contact> tied = new ArrayList<>(2);
        boolean flanks = false;
        for (Contact contact : found) {
            if (contact.followerAngle() >= least) {
                tied.add(contact);
                flanks |= contact.touch() == Touch.FLANKS;
            }
        }
        if (flanks && tied.size() > 1) {
            tied.removeIf(contact -> contact.touch() != Touch.FLANKS);
        }
        return tied;
    }
}
