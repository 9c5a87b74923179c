// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.Box;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.Rule;
import drumfall.solver.layout.Shortfall;
import drumfall.solver.layout.size.Envelope;
import drumfall.solver.layout.size.HangingLine;
import java.util.Arrays;
import java.util.List;
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
        List<Joint> joints = contacts.joints();
        for (Joint joint : joints) {
            Optional<Shortfall> found = tooLarge(contacts.largest(joint.arbor()))
                    .or(() -> joint.arbor() == 0 ? drumTooWide() : Optional.empty())
                    .or(() -> joint.arbor() == joint.anchor() ? Optional.empty() : neighbours(joint));
            if (found.isPresent()) {
                return found;
            }
        }
        return joints.stream()
                .flatMap(joint -> joints.stream()
                        .filter(other -> other.arbor() < joint.arbor())
                        .map(other -> kept(joint.arbor(), other.arbor())))
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** Two arbors on which some parts meet in every order of the planes, so that these must stand clear of each other. */
    private Optional<Shortfall> kept(int one, int other) {
        return Arrays.stream(contacts.of(one, other))
                .filter(contact -> contact.meeting() == Slots.ALWAYS)
                .mapToLong(Contact::reach)
                .max()
                .stream()
                .mapToObj(reach -> tooFarApart(contacts.largest(one), contacts.largest(other), reach))
                .flatMap(Optional::stream)
                .findFirst();
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
        Item one = contacts.largest(joint.arbor());
        Item other = contacts.largest(joint.anchor());
        return settled(joint, one, other).or(() -> tooFarApart(one, other, joint.distance()));
    }

    /** Two neighbours whose direction is settled reach as far across and up as it makes them. */
    private Optional<Shortfall> settled(Joint joint, Item one, Item other) {
        Place step = joint.settledStep(need);
        if (step == null) {
            return Optional.empty();
        }
        Box both = Box.around(step, one.radius()).around(Box.around(Place.DIAL_CENTRE, other.radius()));
        Envelope frame = need.envelope();
        if (both.width() > frame.width() + PairClaims.SLACK) {
            return Optional.of(Shortfall.between(Rule.WIDTH, one.part(), other.part(), frame.width(), both.width()));
        }
        return both.height() > frame.height() + PairClaims.SLACK
                ? Optional.of(Shortfall.between(Rule.HEIGHT, one.part(), other.part(), frame.height(), both.height()))
                : Optional.empty();
    }

    /** Two arbors fit a box only if the distance between them fits what their radii leave of its diagonal. */
    private Optional<Shortfall> tooFarApart(Item one, Item other, long distance) {
        double across = need.envelope().width() - one.radius() - other.radius();
        double up = need.envelope().height() - one.radius() - other.radius();
        if (Math.hypot(across, up) + PairClaims.SLACK >= distance) {
            return Optional.empty();
        }
        double least = Math.sqrt(Math.max(0, (double) distance * distance - across * across));
        long height = one.radius() + other.radius() + (long) Math.ceil(least);
        return Optional.of(Shortfall.between(
                Rule.HEIGHT, one.part(), other.part(), need.envelope().height(), height));
    }
}
