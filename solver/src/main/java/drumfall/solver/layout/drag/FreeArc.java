// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.drag;

import drumfall.solver.layout.Box;
import drumfall.solver.layout.Disc;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.size.DialPlace;
import drumfall.solver.layout.size.Envelope;
import drumfall.solver.layout.size.MovementParts;
import drumfall.solver.layout.size.Nanometres;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The stretches of an arc that are free of what stays and cannot be mended by another order of the planes: rods in the way
 * of parts and parts in the way of rods, the frame, and locked arbors out of reach.
 *
 * <p>The free point nearest to a wished one is the foot of the wished point on the arc or the end of a free stretch, and
 * every such end lies where the arc crosses a ring about something that stays or an edge of the frame.
 */
final class FreeArc {
    /** Two nanometres to either side of a crossing: more than rounding can move it, nm. */
    private static final double NUDGE = 2;

    private final Layout layout;
    private final MovementParts parts;
    private final Arc arc;
    private final List<Ring> rings = new ArrayList<>();
    private final Box room;

    FreeArc(Layout layout, Arc arc) {
        this.layout = layout;
        this.parts = layout.need().parts();
        this.arc = arc;
        List<Disc> moving = onArbor(arc.arbor());
        List<Disc> staying = staying();
        for (Disc mine : moving) {
            staying.stream()
                    .filter(other -> other.part().number() != arc.anchor())
                    .filter(other -> isUnmendable(mine, other))
                    .forEach(other -> keepOff(mine, other));
        }
        keepInReach();
        this.room = room(moving, staying);
    }

    /** The direction from the neighbour of the free point nearest to a wished one. */
    Optional<Double> nearest(Place wished) {
        List<Double> angles = new ArrayList<>();
        angles.add(wished.equals(arc.middle()) ? 0 : arc.angleTo(wished));
        rings.forEach(ring -> angles.addAll(ring.crossings(arc)));
        Stream.of(room.left(), room.right()).forEach(x -> crossUpright(x, angles));
        Stream.of(room.bottom(), room.top()).forEach(y -> crossLevel(y, angles));
        double nudge = NUDGE / arc.radius();
        return angles.stream()
                .flatMap(angle -> Stream.of(angle, angle - nudge, angle + nudge))
                .filter(angle -> isFree(arc.at(angle)))
                .min(Comparator.comparingDouble(angle -> arc.at(angle).distance(wished)));
    }

    private boolean isFree(Place at) {
        return at.x() >= room.left()
                && at.x() <= room.right()
                && at.y() >= room.bottom()
                && at.y() <= room.top()
                && rings.stream().allMatch(ring -> ring.admits(at));
    }

    private List<Disc> onArbor(int arbor) {
        return layout.discs().stream()
                .filter(disc -> disc.part().number() == arbor)
                .toList();
    }

    /** Parts of the arbors between the dial centre and the drawn one, and of those with a locked place. */
    private List<Disc> staying() {
        int from = Math.min(arc.anchor(), parts.centreArbor());
        int to = Math.max(arc.anchor(), parts.centreArbor());
        return layout.discs().stream()
                .filter(disc -> disc.part().number() != arc.arbor())
                .filter(disc -> (disc.part().number() >= from && disc.part().number() <= to)
                        || layout.need().locks().placeOf(disc.part().number()).isPresent())
                .toList();
    }

    private boolean isUnmendable(Disc mine, Disc other) {
        boolean rod = mine.part().kind() == PartKind.ROD || other.part().kind() == PartKind.ROD;
        boolean neighbours = Math.abs(mine.part().number() - other.part().number()) == 1;
        return rod
                && !neighbours
                && mine.span().gapTo(other.span()) < layout.need().gaps().spacing();
    }

    private void keepOff(Disc mine, Disc other) {
        long reach = mine.radius() + other.radius() + layout.need().gaps().radial();
        rings.add(new Ring(other.place(), reach, Long.MAX_VALUE, 0));
    }

    /** The next arbor with a locked place further out must stay within what the meshes up to it can bridge. */
    private void keepInReach() {
        if (arc.arbor() > parts.escapeArbor()) {
            return;
        }
        int way = arc.arbor() < arc.anchor() ? -1 : 1;
        long sum = 0;
        long longest = 0;
        for (int next = arc.arbor() + way; next >= 0 && next <= parts.escapeArbor(); next += way) {
            long distance = layout.need().centreDistance(Math.min(next, next - way));
            sum += distance;
            longest = Math.max(longest, distance);
            Optional<Place> locked = layout.need().locks().placeOf(next);
            if (locked.isPresent()) {
                rings.add(new Ring(locked.get(), 2 * longest - sum, sum, Nanometres.PER_MICROMETRE));
                return;
            }
        }
    }

    /** Where the arbor's axis may stand for its largest part to be inside the frame with all that stays. */
    private Box room(List<Disc> moving, List<Disc> staying) {
        long radius = moving.stream().mapToLong(Disc::radius).max().orElseThrow();
        Box box = staying.stream().map(Disc::box).reduce(Box::around).orElseThrow();
        Envelope envelope = layout.need().envelope();
        DialPlace dial = envelope.dialPlace();
        long left = dial.fromLeft().isPresent() ? -dial.fromLeft().getAsLong() : box.right() - envelope.width();
        long bottom = dial.fromBottom().isPresent() ? -dial.fromBottom().getAsLong() : box.top() - envelope.height();
        long right = dial.fromLeft().isPresent() ? left + envelope.width() : box.left() + envelope.width();
        long top = dial.fromBottom().isPresent() ? bottom + envelope.height() : box.bottom() + envelope.height();
        return new Box(left + radius, bottom + radius, right - radius, top - radius);
    }

    private void crossUpright(long x, List<Double> angles) {
        double share = (x - arc.middle().x()) / (double) arc.radius();
        if (Math.abs(share) <= 1) {
            angles.add(Math.acos(share));
            angles.add(-Math.acos(share));
        }
    }

    private void crossLevel(long y, List<Double> angles) {
        double share = (y - arc.middle().y()) / (double) arc.radius();
        if (Math.abs(share) <= 1) {
            angles.add(Math.asin(share));
            angles.add(Math.PI - Math.asin(share));
        }
    }
}
