// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

import drumfall.plugin.sheet.draw.Drawing;
import drumfall.plugin.sheet.draw.PlacedDrawings;
import drumfall.solver.kit.HoleRow;
import drumfall.solver.kit.Kit;
import drumfall.solver.layout.Layout;
import drumfall.solver.making.BeforePlate;
import drumfall.solver.making.MovementPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where the arbors stand, and the holes of both plates. */
final class Places {
    private Places() {}

    /** The section; empty if the arbors have no places. */
    static Optional<Section> section(Clock clock) {
        return clock.handover().layout().map(layout -> new Section("Where everything stands", blocks(clock, layout)));
    }

    private static List<Block> blocks(Clock clock, Layout layout) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Figures(List.of(PlacedDrawings.elevation(layout), section(clock, layout)), 2));
        String minute = layout.minutePlace().isPresent() ? ", then the minute wheel's stud" : "";
        blocks.add(new Block.Paragraph("Arbors are numbered from the drum, then the pallet arbor" + minute
                + ". The plates stand " + clock.lengths().ofNanometres(clock.depth()) + " apart."));
        clock.kit()
                .flatMap(Kit::beforePlate)
                .filter(stack -> !stack.levels().isEmpty())
                .ifPresent(stack -> blocks.add(new Block.Paragraph(before(stack, clock.lengths()))));
        clock.kit().ifPresent(kit -> {
            blocks.add(
                    holes("Holes of the front plate, seen from the dial", HoleRow.Plate.FRONT, kit, clock.lengths()));
            blocks.add(holes("Holes of the back plate, seen from the dial", HoleRow.Plate.BACK, kit, clock.lengths()));
        });
        return blocks;
    }

    private static Drawing section(Clock clock, Layout layout) {
        List<MovementPart> parts = clock.kit().map(Kit::parts).orElse(List.of());
        return PlacedDrawings.section(layout, parts, clock.kit().isPresent() ? clock.depth() : innerDepth(layout));
    }

    private static long innerDepth(Layout layout) {
        return layout.planes().innerDepth();
    }

    private static String before(BeforePlate stack, Lengths lengths) {
        return "What stands before the front plate takes " + lengths.ofNanometres(1e9 * stack.room()) + "."
                + stack.dial()
                        .map(room -> " A dial has its place between hour wheel and hour hand, from "
                                + lengths.ofNanometres(1e9 * room.from()) + " to "
                                + lengths.ofNanometres(1e9 * room.to())
                                + " before the plate, with a hole for the key.")
                        .orElse("");
    }

    private static Block holes(String caption, HoleRow.Plate plate, Kit kit, Lengths lengths) {
        return new Block.Table(
                caption,
                List.of(
                        new Block.Column("For", 2.6, false),
                        new Block.Column("Right of the dial centre", 2.2, true),
                        new Block.Column("Above it", 2, true),
                        new Block.Column("From the left edge", 2, true),
                        new Block.Column("From below", 2, true),
                        new Block.Column("Drill", 1.8, true),
                        new Block.Column("Bearing seat", 2.8, true)),
                kit.holes().stream()
                        .filter(row -> row.plate() == plate)
                        .map(row -> row(row, lengths))
                        .toList());
    }

    private static List<String> row(HoleRow row, Lengths lengths) {
        return List.of(
                row.name(),
                lengths.ofNanometres(row.fromDial()),
                lengths.ofNanometres(row.aboveDial()),
                lengths.ofNanometres(row.fromLeft()),
                lengths.ofNanometres(row.fromBottom()),
                row.drill(),
                seat(row, lengths));
    }

    private static String seat(HoleRow row, Lengths lengths) {
        if (row.seat().isPresent()) {
            return row.seatDrill() + ", " + lengths.ofNanometres(row.seatDepth()) + " deep";
        }
        return switch (row.use()) {
            case UNKNOWN_SEAT -> "measure the bearing";
            case RUNNING, HOLDING, SEAT -> "none";
        };
    }
}
