// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.placed;

import drumfall.solver.layout.Disc;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Span;
import drumfall.solver.layout.size.MovementParts;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The section through the planes with the arbors unfolded in the order of the train.
 *
 * <p>Across, mm from the drum arbor, each arbor its centre distance from the one before; upwards, mm before the back plate's
 * inner face, the dial on top. The minute arbor stands apart at the end, beside no arbor it could be taken to mesh with.
 *
 * @param blocks the round parts cut through their axes, larger ones first
 * @param plates back plate, then front plate
 * @param arbors where each arbor stands, by its number from 0 at the drum
 * @param innerDepth between the plates, mm
 * @param depth over all, mm
 */
record SectionPlan(List<Block> blocks, List<Rectangle2D> plates, List<Double> arbors, double innerDepth, double depth) {
    /** Room beside the outermost parts, mm. */
    private static final double ROOM = 8;

    SectionPlan {
        blocks = List.copyOf(blocks);
        plates = List.copyOf(plates);
        arbors = List.copyOf(arbors);
    }

    /**
     * A part cut through its axis.
     *
     * @param part whose
     * @param box mm, its y the rear end
     */
    record Block(Part part, Rectangle2D box) {}

    static SectionPlan of(Layout layout) {
        List<Double> arbors = unfolded(layout);
        List<Block> blocks = layout.discs().stream()
                .sorted(Comparator.comparingLong(Disc::radius).reversed())
                .map(disc -> block(disc, arbors))
                .toList();
        Rectangle2D all = blocks.stream()
                .map(Block::box)
                .reduce((one, other) -> one.createUnion(other))
                .orElseThrow();
        double plate = mm(layout.need().envelope().plateThickness());
        double inner = mm(layout.planes().innerDepth());
        double left = all.getX() - ROOM;
        double width = all.getWidth() + 2 * ROOM;
        return new SectionPlan(
                blocks,
                List.of(
                        new Rectangle2D.Double(left, -plate, width, plate),
                        new Rectangle2D.Double(left, inner, width, plate)),
                arbors,
                inner,
                mm(layout.depth()));
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
        return all;
    }

    /** The arbor of the smallest part under a point, mm. */
    Optional<Integer> arborAt(double across, double up) {
        return blocks.stream()
                .filter(block -> block.box().contains(across, up))
                .reduce((larger, smaller) -> smaller)
                .map(block -> block.part().number());
    }
}
