// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.Rule;
import drumfall.solver.layout.Shortfall;
import java.util.BitSet;

/**
 * What can be said of pairs of slots before any arbor is placed: two arbors in mesh stand at a known distance, at which
 * their parts are clear, or are not, in every direction.
 */
final class PairClaims {
    /** More than a lock or rounding can move an arbor off its centre distance, nm. */
    static final long SLACK = 1_500;

    private final long gap;
    private Shortfall first;
    private final BitSet forbidden = new BitSet();
    private final BitSet open = new BitSet();

    PairClaims(LayoutNeed need, Contacts contacts) {
        this.gap = need.gaps().radial();
        int arbors = need.parts().placeCount();
        for (int arbor = 0; arbor < arbors; arbor++) {
            for (int anchor = 0; anchor < arbor; anchor++) {
                long distance = Joint.fixedDistance(need, arbor, anchor);
                for (Contact contact : contacts.of(arbor, anchor)) {
                    claim(contact, distance);
                }
            }
            for (Contact contact : contacts.withLineOf(arbor)) {
                claim(contact, -1);
            }
        }
        open.or(forbidden);
    }

    private void claim(Contact contact, long distance) {
        if (contact.meeting() < 0) {
            return;
        }
        if (distance >= 0 && contact.reach() > distance + SLACK) {
            forbidden.set(contact.meeting());
            forbid(contact, distance);
        } else if (distance < 0 || contact.reach() > distance - SLACK) {
            open.set(contact.meeting());
        }
    }

    private void forbid(Contact contact, long distance) {
        long found = gap - (contact.reach() - distance);
        Shortfall shortfall = Shortfall.between(Rule.RADIAL_GAP, contact.first(), contact.second(), gap, found);
        if (first == null || shortfall.amount() < first.amount()) {
            first = shortfall;
        }
    }

    /** The two parts that lack least of being clear although they may meet. */
    Shortfall forbiddenShortfall() {
        return first;
    }

    /** The pairs that matter; not to be changed. */
    BitSet open() {
        return open;
    }

    /** The pairs that must not meet, as their parts cannot be clear; not to be changed. */
    BitSet forbidden() {
        return forbidden;
    }
}
