// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.contact;

import java.util.Comparator;
import java.util.List;

/**
 * One of the equally spaced driver angles of a pitch.
 *
 * @param driverAngle the driver's turn since the pitch started, rad
 * @param followerAngle the follower's angle, rad
 * @param torqueRatio follower torque over driver torque, averaged over the pairs that carry together
 * @param speedRatio follower speed over driver speed, averaged in the same way
 * @param efficiency their product, averaged in the same way
 * @param leastEfficiency the least among the pairs that carry together
 * @param contacts the pairs that carry, foremost tooth first
 */
public record ContactSample(
        double driverAngle,
        double followerAngle,
        double torqueRatio,
        double speedRatio,
        double efficiency,
        double leastEfficiency,
        List<Contact> contacts) {
    /** Copies the contacts. */
    public ContactSample {
        contacts = List.copyOf(contacts);
    }

    static ContactSample of(Stretch.Node node, double start, double friction) {
        List<Contact> contacts = node.contacts();
        double share = 1.0 / contacts.size();
        double torque = 0;
        double speed = 0;
        double efficiency = 0;
        double least = Double.POSITIVE_INFINITY;
        for (Contact contact : contacts) {
            double here = contact.efficiency(friction);
            torque += share * contact.torqueRatio(friction);
            speed += share * contact.speedRatio();
            efficiency += share * here;
            least = Math.min(least, here);
        }
        double follower = contacts.get(0).followerAngle();
        return new ContactSample(node.angle() - start, follower, torque, speed, efficiency, least, contacts);
    }

    /** The pair with the least speed-weighted torque under a coefficient of friction. */
    public Contact worst(double friction) {
        return contacts.stream()
                .min(Comparator.comparingDouble(c -> c.efficiency(friction)))
                .orElseThrow();
    }

    /** Whether the foremost of the pairs still to pass the pitch point has yet to do so. */
    public boolean isApproach() {
        return contacts.get(contacts.size() - 1).isApproach();
    }
}
