// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.size.HangingLine;
import java.util.List;

/** How far from the dial's vertical the arbors still to be set can reach at most, nm. */
final class Extremes {
    private final long[] reach;

    Extremes(Contacts contacts, int arbors, HangingLine line) {
        List<Joint> joints = contacts.joints();
        int levels = joints.size();
        long[] away = new long[arbors];
        this.reach = new long[levels + 1];
        for (int level = 0; level < levels; level++) {
            Joint joint = joints.get(level);
            away[joint.arbor()] = joint.arbor() == joint.anchor() ? 0 : away[joint.anchor()] + joint.distance() + 1;
        }
        for (int level = levels - 1; level >= 0; level--) {
            int arbor = joints.get(level).arbor();
            long radius = contacts.largest(arbor).radius();
            if (arbor == 0) {
                radius = Math.max(radius, Math.abs(line.lastFall()) + line.diameter());
            }
            reach[level] = Math.max(reach[level + 1], away[arbor] + radius);
        }
    }

    /** The least difference of what parts reach to the left and to the right that can come of an extent. */
    long leastImbalance(int levels, long left, long right) {
        long leftmost = Math.min(left, -reach[levels]);
        long rightmost = Math.max(right, reach[levels]);
        if (left + right > 0) {
            return Math.max(0, right + leftmost);
        }
        return Math.max(0, -(left + rightmost));
    }
}
