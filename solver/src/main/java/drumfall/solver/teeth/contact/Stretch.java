// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.contact;

import java.util.List;

/**
 * A part of the pitch in which the same teeth touch in the same way.
 *
 * @param from driver angle at its start, rad
 * @param to driver angle at its end, rad
 * @param nodes driver angles with their weights in an integral over the stretch; the ends have weight 0
 */
record Stretch(double from, double to, List<Node> nodes) {
    Stretch {
        nodes = List.copyOf(nodes);
    }

    double length() {
        return to - from;
    }

    /** The pairs that carry together all through the stretch. */
    int pairs() {
        return middle().contacts().size();
    }

    /** How many of them touch before the pitch point. */
    long approaching() {
        return middle().contacts().stream().filter(Contact::isApproach).count();
    }

    /** A node well inside, which shows the contacts of the whole stretch. */
    Node middle() {
        return nodes.get(nodes.size() / 2);
    }

    /**
     * One driver angle.
     *
     * @param angle driver angle, rad
     * @param weight weight in an integral over the driver angle, rad
     * @param contacts the pairs that carry
     */
    record Node(double angle, double weight, List<Contact> contacts) {
        Node {
            contacts = List.copyOf(contacts);
        }
    }
}
