// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Rule;
import drumfall.solver.layout.Shortfall;
import drumfall.solver.layout.size.HangingLine;
import java.util.Optional;

/** Refuses at once what no places whatever would make fit. */
final class Refusals {
    private final LayoutNeed need;
    private final Contacts contacts;

    Refusals(LayoutNeed need, Contacts contacts) {
        this.need = need;
        this.contacts = contacts;
    }

    Optional<Shortfall> first() {
        for (Joint joint : Joint.order(need)) {
            Optional<Shortfall> found = tooLarge(contacts.largest(joint.arbor()))
                    .or(() -> joint.arbor() == 0 ? drumTooWide() : Optional.empty())
                    .or(() -> joint.arbor() == joint.anchor() ? Optional.empty() : neighbours(joint));
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private Optional<Shortfall> tooLarge(Item item) {
        long across = 2 * item.radius();
        if (across > need.envelope().width()) {
            return Optional.of(
                    Shortfall.of(Rule.WIDTH, item.part(), need.envelope().width(), across));
        }
        return across > need.envelope().height()
                ? Optional.of(
                        Shortfall.of(Rule.HEIGHT, item.part(), need.envelope().height(), across))
                : Optional.empty();
    }

    private Optional<Shortfall> drumTooWide() {
        HangingLine line = need.line();
        long radius = contacts.largest(0).radius();
        long across = radius + Math.max(radius, Math.abs(line.lastFall()) + (line.diameter() + 1) / 2);
        return across > need.envelope().width()
                ? Optional.of(Shortfall.between(
                        Rule.WIDTH,
                        contacts.largest(0).part(),
                        new Part(PartKind.LINE, 0),
                        need.envelope().width(),
                        across))
                : Optional.empty();
    }

    private Optional<Shortfall> neighbours(Joint joint) {
        for (Contact contact : contacts.of(joint.arbor(), joint.anchor())) {
            if (contact.meeting() == Slots.ALWAYS && contact.reach() > joint.distance() + PairClaims.SLACK) {
                long asked = need.gaps().radial();
                long found = asked - (contact.reach() - joint.distance());
                return Optional.of(Shortfall.between(Rule.RADIAL_GAP, contact.first(), contact.second(), asked, found));
            }
        }
        return tooFarApart(joint);
    }

    /** Two neighbours fit a box only if their distance fits what their radii leave of its diagonal. */
    private Optional<Shortfall> tooFarApart(Joint joint) {
        Item one = contacts.largest(joint.arbor());
        Item other = contacts.largest(joint.anchor());
        double across = need.envelope().width() - one.radius() - other.radius();
        double up = need.envelope().height() - one.radius() - other.radius();
        if (Math.hypot(across, up) + PairClaims.SLACK >= joint.distance()) {
            return Optional.empty();
        }
        double least = Math.sqrt(Math.max(0, (double) joint.distance() * joint.distance() - across * across));
        long height = one.radius() + other.radius() + (long) Math.ceil(least);
        return Optional.of(Shortfall.between(
                Rule.HEIGHT, one.part(), other.part(), need.envelope().height(), height));
    }
}
