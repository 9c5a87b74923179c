// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.lists;

import drumfall.solver.fit.cutting.ArborPiece;
import drumfall.solver.fit.cutting.CuttingPlan;
import drumfall.solver.fit.cutting.RodCut;
import drumfall.solver.fit.cutting.RodPlan;
import drumfall.solver.fit.shake.EndShake;
import drumfall.solver.fit.shake.LayerChange;
import drumfall.solver.fitting.FittedArbor;
import drumfall.solver.fitting.PlateHole;
import drumfall.solver.kit.HoleRow;
import drumfall.solver.kit.Item;
import drumfall.solver.kit.Kit;
import drumfall.solver.layout.size.Face;
import drumfall.solver.making.BeforePlate;
import drumfall.solver.making.Mount;
import drumfall.solver.making.MovementPart;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The kit as tables. */
final class KitTables {
    private final Kit kit;

    KitTables(Kit kit) {
        this.kit = kit;
    }

    List<Table> all() {
        List<Table> tables = new ArrayList<>();
        tables.add(parts());
        tables.add(shopping());
        tables.add(BuildTable.of(kit.builds()));
        kit.cutting().ifPresent(plan -> {
            tables.add(arbors());
            tables.add(cutting(plan));
            tables.add(holes());
            tables.add(shakes());
        });
        kit.beforePlate().filter(stack -> !stack.levels().isEmpty()).ifPresent(stack -> tables.add(before(stack)));
        return tables;
    }

    private Table parts() {
        return new Table(
                "parts",
                "Printed parts",
                "For one clock. Each part has a file of the same name among the solids. The side that lies up on the bed faces"
                        + " the dial or the back plate as the last column says.",
                List.of("part", "count", "material", "mass_g", "width_mm", "depth_mm", "height_mm", "up_faces"),
                kit.parts().stream().map(KitTables::part).toList());
    }

    private static List<String> part(MovementPart part) {
        return List.of(
                part.name(),
                Integer.toString(part.count()),
                part.material(),
                fixed(1e3 * part.mass(), 1),
                fixed(part.solid().box().width(), 2),
                fixed(part.solid().box().depth(), 2),
                fixed(part.solid().height(), 2),
                faces(part));
    }

    /** Parts outside the frame face nothing. */
    private static String faces(MovementPart part) {
        if (part.mount().equals(Mount.LOOSE)) {
            return "";
        }
        return part.mount().up() == Face.FRONT ? "dial" : "back";
    }

    private Table shopping() {
        return new Table(
                "shopping",
                "To buy",
                "",
                List.of("what", "size", "one clock", clocks(), "for"),
                kit.shopping().stream().map(KitTables::item).toList());
    }

    private String clocks() {
        int clocks = kit.brief().fit().kits();
        return clocks == 1 ? "one clock in all" : clocks + " clocks";
    }

    private static List<String> item(Item item) {
        return List.of(item.what(), item.size(), item.perClock(), item.forAll(), item.why());
    }

    private Table arbors() {
        return new Table(
                "arbors",
                "Arbors",
                "Steel rods of one clock, cut square and their ends rounded.",
                List.of("arbor", "diameter_mm", "length_mm"),
                kit.pieces().stream().map(KitTables::piece).toList());
    }

    private static List<String> piece(ArborPiece piece) {
        return List.of(piece.name(), millimetres(piece.diameter()), millimetres(piece.length()));
    }

    private Table cutting(CuttingPlan plan) {
        List<List<String>> rows = new ArrayList<>();
        for (RodPlan rod : plan.rods()) {
            for (RodCut cut : rod.cuts()) {
                rows.add(List.of(
                        millimetres(rod.stock().diameter()),
                        millimetres(rod.stock().length()),
                        Integer.toString(cut.rods()),
                        cut.pieces().entrySet().stream()
                                .map(piece -> piece.getValue() + " × " + piece.getKey())
                                .collect(Collectors.joining("; ")),
                        millimetres(cut.offcut())));
            }
        }
        String saw = "Each cut takes " + kit.brief().fit().sawCut() + ".";
        return new Table(
                "cutting",
                "How to cut the rods for " + clocks(),
                plan.provenLeast() ? saw + " No plan with fewer rods exists." : saw,
                List.of("rod_diameter_mm", "rod_length_mm", "rods", "pieces of each", "left_of_each_mm"),
                rows);
    }

    private Table holes() {
        return new Table(
                "holes",
                "Holes of the plates",
                "Both plates seen from the dial. Drill square to the plate, the part clamped.",
                List.of(
                        "plate",
                        "hole",
                        "for",
                        "use",
                        "right_of_dial_centre_mm",
                        "above_dial_centre_mm",
                        "from_left_edge_mm",
                        "from_lower_edge_mm",
                        "drawn_mm",
                        "drill",
                        "seat_drawn_mm",
                        "seat_tool",
                        "seat_depth_mm"),
                kit.holes().stream().map(KitTables::hole).toList());
    }

    private static List<String> hole(HoleRow row) {
        return List.of(
                row.plate() == HoleRow.Plate.FRONT ? "front" : "back",
                Integer.toString(row.number()),
                row.name(),
                use(row.use()),
                millimetres(row.fromDial()),
                millimetres(row.aboveDial()),
                millimetres(row.fromLeft()),
                millimetres(row.fromBottom()),
                millimetres(row.drawn()),
                row.drill(),
                row.seat().isPresent() ? millimetres(row.seat().getAsLong()) : "",
                row.seatDrill(),
                row.seat().isPresent() ? millimetres(row.seatDepth()) : "");
    }

    private static String use(PlateHole.Use use) {
        return switch (use) {
            case RUNNING -> "the rod turns in it";
            case HOLDING -> "holds the rod";
            case SEAT -> "bearing seat";
            case UNKNOWN_SEAT -> "bearing of unknown size";
        };
    }

    private Table shakes() {
        return new Table(
                "end-shake",
                "End shake",
                "Wanted: " + kit.brief().fit().endShake().low() + " to "
                        + kit.brief().fit().endShake().high()
                        + ". Put a spacer on each side of what stands on the arbor. Least and most are those of all errors at"
                        + " their worst; likely ones those of their root sum of squares. The last column says what change of"
                        + " one spacer leaves the least chance outside.",
                List.of(
                        "arbor",
                        "spacer_behind_mm",
                        "parts_mm",
                        "spacer_before_mm",
                        "end_shake_mm",
                        "least_mm",
                        "most_mm",
                        "likely_least_mm",
                        "likely_most_mm",
                        "outside_the_band",
                        "helps_most"),
                kit.fitted().orElseThrow().arbors().stream()
                        .filter(arbor -> arbor.standing().isPresent())
                        .map(KitTables::shake)
                        .toList());
    }

    private static List<String> shake(FittedArbor arbor) {
        FittedArbor.Standing standing = arbor.standing().orElseThrow();
        EndShake shake = standing.shake();
        return List.of(
                arbor.name(),
                millimetres(standing.backSpacer()),
                millimetres(standing.parts()),
                millimetres(standing.frontSpacer()),
                millimetres(shake.stack().nominal()),
                fixed(1e-6 * shake.least(), 2),
                fixed(1e-6 * shake.most(), 2),
                fixed(1e-6 * shake.stack().rootSumSquare().least(), 2),
                fixed(1e-6 * shake.stack().rootSumSquare().most(), 2),
                percent(shake.chance().outside()),
                shake.change().map(KitTables::change).orElse("none"));
    }

    private static String change(LayerChange change) {
        return change.part() + " " + millimetres(Math.abs(change.height()))
                + (change.height() > 0 ? " mm higher: " : " mm lower: ") + percent(change.after());
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", 100 * share);
    }

    private static Table before(BeforePlate stack) {
        String dial = stack.dial()
                .map(room -> " A dial has its place from " + fixed(1e3 * room.from(), 2) + " to "
                        + fixed(1e3 * room.to(), 2) + " mm; leave a hole in it for the key.")
                .orElse("");
        return new Table(
                "before-plate",
                "Before the front plate",
                "Measured from the plate's front face. All of it takes " + fixed(1e3 * stack.room(), 2) + " mm." + dial,
                List.of("part", "from_mm", "to_mm"),
                stack.levels().stream()
                        .map(level -> List.of(level.part(), fixed(1e3 * level.from(), 2), fixed(1e3 * level.to(), 2)))
                        .toList());
    }

    static String fixed(double value, int places) {
        return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).toPlainString();
    }

    /** Nanometres as millimetres to the hundredth, exact where they are whole hundredths. */
    static String millimetres(long nanometres) {
        return BigDecimal.valueOf(nanometres, 6)
                .setScale(2, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
