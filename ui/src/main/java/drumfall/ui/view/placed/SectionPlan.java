// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.placed;

import drumfall.solver.layout.Disc;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Span;
import drumfall.solver.layout.size.MovementParts;
import drumfall.ui.presenter.PlacedFront;
import drumfall.ui.presenter.PlacedFront.DialSpan;
import drumfall.ui.presenter.PlacedFront.Piece;
import drumfall.ui.presenter.PlacedFront.Slice;
import drumfall.ui.presenter.PlacedState.Seen;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The section through the planes with the arbors unfolded in the order of the train.
 *
 * <p>Across, mm from the drum arbor, each arbor its centre distance from the one before; upwards, mm before the back plate's
 * inner face, the dial on top. The minute arbor stands apart at the end, beside no arbor it could be taken to mesh with. Hands
 * are turned towards the drum.
 *
 * @param blocks the round parts cut through their axes, larger ones first
 * @param plates back plate, then front plate
 * @param arbors where each arbor stands, by its number from 0 at the drum
 * @param innerDepth between the plates, mm
 * @param depth over plates and motion work, mm
 * @param front slabs of what stands before the front plate, narrow ones first
 * @param dial room for a dial before the front plate, as wide as the plates
 * @param frontRoom what stands before the front plate takes, mm
 */
record SectionPlan(
        List<Block> blocks,
        List<Rectangle2D> plates,
        List<Double> arbors,
        double innerDepth,
        double depth,
        List<Before> front,
        Optional<Dial> dial,
        double frontRoom) {
    /** Room beside the outermost parts, mm. */
    private static final double ROOM = 8;

    SectionPlan {
        blocks = List.copyOf(blocks);
        plates = List.copyOf(plates);
        arbors = List.copyOf(arbors);
        front = List.copyOf(front);
    }

    /**
     * A part cut through its axis.
     *
     * @param part whose
     * @param box mm, its y the rear end
     */
    record Block(Part part, Rectangle2D box) {}

    /**
     * A slab of what stands before the front plate.
     *
     * @param piece whose
     * @param box mm, its y the rear end
     */
    record Before(Piece piece, Rectangle2D box) {}

    /**
     * Room for a dial.
     *
     * @param span where it is, mm before the front plate
     * @param box mm, its y the rear end
     */
    record Dial(DialSpan span, Rectangle2D box) {}

    static SectionPlan of(Seen seen) {
        Layout layout = seen.layout();
        PlacedFront before = seen.front();
        List<Double> arbors = unfolded(layout);
        List<Block> blocks = layout.discs().stream()
                .sorted(Comparator.comparingLong(Disc::radius).reversed())
                .map(disc -> block(disc, arbors))
                .toList();
        double plate = mm(layout.need().envelope().plateThickness());
        double inner = mm(layout.planes().innerDepth());
        List<Before> front = before.pieces().stream()
                .flatMap(piece -> piece.slabs().stream()
                        .map(slab -> new Before(piece, box(slab, arbors.get(piece.arbor()), inner + plate))))
                .sorted(Comparator.comparingDouble(slab -> slab.box().getWidth()))
                .toList();
        Rectangle2D all = Stream.concat(
                        blocks.stream().map(Block::box), front.stream().map(Before::box))
                .reduce((one, other) -> one.createUnion(other))
                .orElseThrow();
        double left = all.getX() - ROOM;
        double width = all.getWidth() + 2 * ROOM;
        return new SectionPlan(
                blocks,
                List.of(
                        new Rectangle2D.Double(left, -plate, width, plate),
                        new Rectangle2D.Double(left, inner, width, plate)),
                arbors,
                inner,
                mm(layout.depth()),
                front,
                before.dial()
                        .map(span -> new Dial(
                                span,
                                new Rectangle2D.Double(
                                        left, inner + plate + span.from(), width, span.to() - span.from()))),
                before.room());
    }

    private static Rectangle2D box(Slice slab, double axis, double face) {
        return new Rectangle2D.Double(
                axis + slab.left(), face + slab.from(), slab.right() - slab.left(), slab.to() - slab.from());
    }

    private static double mm(long nanometres) {
        return ElevationPlan.millimetres(nanometres);
    }

    private static List<Double> unfolded(Layout layout) {
        MovementParts parts = layout.need().parts();
        List<Double> arbors = new ArrayList<>();
        double at = 0;
        arbors.add(at);
        for (int mesh = 0; mesh < parts.escapeArbor(); mesh++) {
            at += mm(layout.need().centreDistance(mesh));
            arbors.add(at);
        }
        at += mm(parts.escape().palletDistance());
        arbors.add(at);
        double end = at + mm(parts.escape().palletRadius());
        parts.motion().ifPresent(motion -> arbors.add(end + ROOM + mm(motion.minuteWheelTipRadius())));
        return arbors;
    }

    private static Block block(Disc disc, List<Double> arbors) {
        double radius = mm(disc.radius());
        Span span = disc.span();
        return new Block(
                disc.part(),
                new Rectangle2D.Double(
                        arbors.get(disc.part().number()) - radius, mm(span.from()), 2 * radius, mm(span.length())));
    }

    /** A part, if there is one. */
    Optional<Block> block(PartKind kind, int arbor) {
        return blocks.stream()
                .filter(block -> block.part().equals(new Part(kind, arbor)))
                .findFirst();
    }

    /** Everything. */
    Rectangle2D bounds() {
        Rectangle2D all = plates.get(0).createUnion(plates.get(1));
        blocks.forEach(block -> all.add(block.box()));
        front.forEach(slab -> all.add(slab.box()));
        return all;
    }

    /** What stands before the front plate under a point, mm, where no round part of the layout covers it. */
    Optional<Piece> pieceAt(double across, double up) {
        return blockAt(across, up).isPresent() ? Optional.empty() : uncovered(across, up);
    }

    private Optional<Piece> uncovered(double across, double up) {
        return front.stream()
                .filter(slab -> slab.box().contains(across, up))
                .reduce((narrower, wider) -> wider)
                .map(Before::piece);
    }

    /** The room for a dial if it is free under a point, mm. */
    Optional<DialSpan> dialAt(double across, double up) {
        return arborAt(across, up).isPresent()
                ? Optional.empty()
                : dial.filter(room -> room.box().contains(across, up)).map(Dial::span);
    }

    private Optional<Block> blockAt(double across, double up) {
        return blocks.stream()
                .filter(block -> block.part().kind() != PartKind.ROD)
                .filter(block -> block.box().contains(across, up))
                .reduce((larger, smaller) -> smaller);
    }

    /** The arbor of the smallest part under a point, mm; of a part before the front plate where no other is. */
    Optional<Integer> arborAt(double across, double up) {
        return blocks.stream()
                .filter(block -> block.box().contains(across, up))
                .reduce((larger, smaller) -> smaller)
                .map(block -> block.part().number())
                .or(() -> uncovered(across, up).map(Piece::arbor));
    }
}
