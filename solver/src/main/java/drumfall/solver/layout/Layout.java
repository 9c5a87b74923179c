// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

import drumfall.solver.layout.size.MovementParts;
import drumfall.solver.layout.size.Pillars;
import drumfall.solver.layout.size.Side;
import java.util.List;
import java.util.Optional;

/**
 * Where everything stands.
 *
 * <p>A value only: that it meets its need is for {@code LayoutCheck} to say.
 *
 * @param need what was asked
 * @param places of the arbors by number, then the pallet arbor, then the minute arbor if there is motion work
 * @param frameCorner the lower left corner of the frame, seen from the dial centre
 * @param planes along the arbors
 */
public record Layout(LayoutNeed need, List<Place> places, Place frameCorner, Planes planes) {
    /**
     * Copies the list and checks its length.
     *
     * @throws IllegalArgumentException if there is not one place for each arbor or one plane for each gear
     */
    public Layout {
        places = List.copyOf(places);
        sameCount("places", places.size(), need.parts().placeCount());
        sameCount(
                "planes of gears", planes.gears().size(), need.parts().meshes().size() + 1);
        sameCount(
                "planes of the motion work",
                planes.motion().size(),
                need.parts().motion().isPresent() ? 2 : 0);
    }

    private static void sameCount(String subject, int found, int asked) {
        if (found != asked) {
            throw new IllegalArgumentException(
                    "The %s (%d) must be %d. Maybe they are of another movement.".formatted(subject, found, asked));
        }
    }

    /** Where an arbor stands, by its number in {@link MovementParts}. */
    public Place place(int arbor) {
        return places.get(arbor);
    }

    /** Where the pallet arbor stands. */
    public Place palletPlace() {
        return places.get(need.parts().palletArbor());
    }

    /** Where the minute arbor of the motion work stands. */
    public Optional<Place> minutePlace() {
        return need.parts().motion().map(motion -> places.get(need.parts().minuteArbor()));
    }

    /**
     * The direction of a mesh, from the wheel's arbor to the pinion's, rad anticlockwise from the right.
     *
     * @param mesh from 0 at the drum
     */
    public double direction(int mesh) {
        return place(mesh).directionTo(place(mesh + 1));
    }

    /** The side on which the line leaves the drum. */
    public Side side() {
        return need.line().side();
    }

    /** The middle of each fall of the line across, nm from the dial centre to the right, from the drum outwards. */
    public List<Long> falls() {
        long drum = place(0).x();
        long first = drum + need.line().firstFall();
        return need.line().falls() == 1
                ? List.of(first)
                : List.of(first, drum + need.line().lastFall());
    }

    /** The middle of the weight across, nm from the dial centre to the right. */
    public long weightMiddle() {
        return place(0).x() + need.line().weightMiddle();
    }

    /** The top of the wound weight, nm from the dial centre upwards. */
    public long weightTop() {
        return place(0).y() - need.line().weightDrop();
    }

    /** The frame in the elevation. */
    public Box frame() {
        return new Box(
                frameCorner.x(),
                frameCorner.y(),
                frameCorner.x() + need.envelope().width(),
                frameCorner.y() + need.envelope().height());
    }

    /** The axes of the pillars: lower left, lower right, upper left, upper right; none without pillars. */
    public List<Place> pillarPlaces() {
        return need.envelope().pillars().map(this::corners).orElse(List.of());
    }

    private List<Place> corners(Pillars pillars) {
        Box frame = frame();
        long left = frame.left() + pillars.sideInset();
        long right = frame.right() - pillars.sideInset();
        long bottom = frame.bottom() + pillars.endInset();
        long top = frame.top() - pillars.endInset();
        return List.of(new Place(left, bottom), new Place(right, bottom), new Place(left, top), new Place(right, top));
    }

    /** Every round part where it stands, in the order of the arbors; for elevation and section. */
    public List<Disc> discs() {
        return new RoundParts(this).all();
    }

    /** The smallest box around all round parts and the line at the drum; pillars and weight are left out. */
    public Box extent() {
        Box discs = discs().stream().map(Disc::box).reduce(Box::around).orElseThrow();
        long half = (need.line().diameter() + 1) / 2;
        long y = place(0).y();
        return falls().stream()
                .map(fall -> new Box(fall - half, y, fall + half, y))
                .reduce(discs, Box::around);
    }

    /** The room that the movement takes as it stands. */
    public MovementSize size() {
        return MovementSize.of(this);
    }

    /** The depth over plates and motion work, nm. */
    public long depth() {
        return planes.depth();
    }

    /**
     * What a wish is judged by, nm, for a plate nm&sup2;; less is better.
     *
     * @param wish the wish
     */
    public long measure(Wish wish) {
        return switch (wish) {
            case UPRIGHT -> spread();
            case COMPACT -> extent().height();
            case SYMMETRIC -> Math.abs(extent().left() + extent().right());
            case SHALLOW -> depth();
            case NARROW -> extent().width();
            case SMALL_PLATE -> Math.multiplyExact(extent().width(), extent().height());
        };
    }

    private long spread() {
        List<Place> train = places.subList(0, need.parts().palletArbor() + 1);
        return train.stream().mapToLong(Place::x).max().orElseThrow()
                - train.stream().mapToLong(Place::x).min().orElseThrow();
    }
}
