// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.Box;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.size.Envelope;
import drumfall.solver.layout.size.HangingLine;
import drumfall.solver.layout.size.Pillars;
import java.util.List;
import java.util.stream.IntStream;

/** Moves the frame over places that stand, exactly. */
final class FrameFit {
    private final Envelope envelope;
    private final HangingLine line;
    private final long gap;
    private final Contacts contacts;
    private final List<Pillar> pillars;

    FrameFit(LayoutNeed need, Contacts contacts) {
        this.envelope = need.envelope();
        this.line = need.line();
        this.gap = need.gaps().radial();
        this.contacts = contacts;
        this.pillars = envelope.pillars().map(this::pillars).orElse(List.of());
    }

    /** How far parts from left to right stand out of the frame at best, nm; 0 or less if they fit. */
    long excessAcross(long left, long right) {
        return excess(
                left, right, envelope.width(), envelope.dialPlace().fromLeft().orElse(-1));
    }

    /** How far parts from bottom to top stand out of the frame at best, nm; 0 or less if they fit. */
    long excessUp(long bottom, long top) {
        return excess(
                bottom,
                top,
                envelope.height(),
                envelope.dialPlace().fromBottom().orElse(-1));
    }

    private static long excess(long from, long to, long room, long dial) {
        return dial < 0 ? to - from - room : Math.max(-dial - from, to - (room - dial));
    }

    /** Whether the frame has pillars to be kept clear of. */
    boolean hasPillars() {
        return !pillars.isEmpty();
    }

    /**
     * The places for the frame's lower left corner, and what would stand too close to a pillar there.
     *
     * @param extent around the parts that stand, which fits
     * @param obstacles of the arbors that stand
     */
    FreeCorner corners(Box extent, List<Obstacle> obstacles) {
        long left = envelope.dialPlace().fromLeft().orElse(-1);
        long bottom = envelope.dialPlace().fromBottom().orElse(-1);
        Box corners = new Box(
                left < 0 ? extent.right() - envelope.width() : -left,
                bottom < 0 ? extent.top() - envelope.height() : -bottom,
                left < 0 ? extent.left() : -left,
                bottom < 0 ? extent.bottom() : -bottom);
        return new FreeCorner(corners, obstacles);
    }

    private List<Pillar> pillars(Pillars four) {
        long left = four.sideInset();
        long right = envelope.width() - left;
        long bottom = four.endInset();
        long top = envelope.height() - bottom;
        List<Place> axes =
                List.of(new Place(left, bottom), new Place(right, bottom), new Place(left, top), new Place(right, top));
        return IntStream.range(0, axes.size())
                .mapToObj(corner -> new Pillar(new Part(PartKind.PILLAR, corner), axes.get(corner), four.radius()))
                .toList();
    }

    /** The frame's corners that set a pillar too close to what stands on an arbor; a list for each pillar. */
    List<List<Obstacle>> obstacles(int arbor, Place at) {
        return pillars.stream().map(pillar -> obstacles(arbor, at, pillar)).toList();
    }

    private List<Obstacle> obstacles(int arbor, Place at, Pillar pillar) {
        Item item = contacts.largestBetweenPlates(arbor);
        long clear = pillar.radius() + gap;
        long x = at.x() - pillar.axis().x();
        long y = at.y() - pillar.axis().y();
        Obstacle round = new Obstacle(item.part(), pillar.part(), x, 0, y, item.radius() + clear, false);
        if (arbor > 0) {
            return List.of(round);
        }
        Part fall = new Part(PartKind.LINE, 0);
        long reach = (line.diameter() + 1) / 2 + clear;
        Part weight = new Part(PartKind.WEIGHT, 0);
        long half = (line.weightWidth() + 1) / 2;
        long top = y - line.weightDrop();
        return List.of(
                round,
                new Obstacle(fall, pillar.part(), x + line.firstFall(), 0, y, reach, true),
                new Obstacle(fall, pillar.part(), x + line.lastFall(), 0, y, reach, true),
                new Obstacle(weight, pillar.part(), x + line.weightMiddle(), half, top, clear, true));
    }

    private record Pillar(Part part, Place axis, long radius) {}
}
