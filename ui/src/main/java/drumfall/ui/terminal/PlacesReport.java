// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.layout.AngleGrid;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutOutcome.Merit;
import drumfall.solver.layout.size.MovementParts;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.train.Train;
import drumfall.ui.wording.FigureWording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** Where the arbors of one train stand, for people. */
final class PlacesReport {
    private static final long FULL_TURN = 360;

    /** Directions are shown to a ten-thousandth of a degree: a place is rounded to a nanometre. */
    private static final int DECIMALS = 4;

    private static final long SHOWN = 10_000;

    private final PlacesWording wording;
    private final Train train;

    PlacesReport(FigureWording figures, Train train) {
        this.wording = new PlacesWording(figures);
        this.train = train;
    }

    /** The step of a grid in degrees, for example "15". */
    static String step(AngleGrid grid) {
        return FigureWording.exact(BigFraction.of(FULL_TURN, grid.steps()));
    }

    List<String> lines(TrainPlaces places) {
        List<String> lines = new ArrayList<>();
        places.layout().ifPresent(layout -> {
            lines.addAll(table(layout).lines());
            lines.addAll(frame(layout));
        });
        switch (places.standing()) {
            case PLACED ->
                lines.addAll(merit(places.layout().orElseThrow(), places.merit().orElseThrow()));
            case NO_PLACE -> lines.add(wording.none(places));
            case UNSOUND -> {
                lines.add(Phrases.phrase("places.UNSOUND", places.conflicts().size()));
                places.conflicts().forEach(fault -> lines.add("  " + wording.conflict(fault)));
            }
            default -> lines.add(Phrases.phrase("places." + places.standing().name()));
        }
        return lines;
    }

    /** What is known of a layout that was looked for, and of what its size is the size. */
    private static List<String> merit(Layout layout, Merit merit) {
        String known =
                Phrases.phrase("places." + merit.name(), step(layout.need().grid()));
        return layout.need().preference().wishes().stream()
                .filter(wish -> merit == Merit.BEST_ON_GRID)
                .map(wish -> List.of(
                        known, Phrases.phrase("places.preferred." + wish.wish().name())))
                .findFirst()
                .orElse(List.of(known));
    }

    private TextTable table(Layout layout) {
        TextTable table = TextTable.of("places.columns");
        for (int arbor = 0; arbor < layout.places().size(); arbor++) {
            table.row(
                    arbor + 1,
                    carries(layout, arbor),
                    wording.length(layout.place(arbor).x()),
                    wording.length(layout.place(arbor).y()),
                    from(layout, arbor),
                    distance(layout, arbor),
                    direction(layout, arbor),
                    planes(layout, arbor));
        }
        return table;
    }

    private String carries(Layout layout, int arbor) {
        MovementParts parts = layout.need().parts();
        if (arbor > parts.escapeArbor()) {
            return Phrases.phrase(arbor == parts.palletArbor() ? "role.PALLETS" : "role.MINUTE");
        }
        return Phrases.phrase("role." + WeightWalk.role(train, arbor).name());
    }

    /** The arbor that another one is set out from: the one that drives it; itself for the drum arbor. */
    private static int anchor(Layout layout, int arbor) {
        MovementParts parts = layout.need().parts();
        return arbor > parts.palletArbor() ? parts.centreArbor() : Math.max(0, arbor - 1);
    }

    private static String from(Layout layout, int arbor) {
        return arbor == 0 ? "" : String.valueOf(anchor(layout, arbor) + 1);
    }

    private String distance(Layout layout, int arbor) {
        double nanometres = layout.place(anchor(layout, arbor)).distance(layout.place(arbor));
        return arbor == 0 ? "" : wording.length(Math.round(nanometres));
    }

    private static String direction(Layout layout, int arbor) {
        double radians = layout.place(anchor(layout, arbor)).directionTo(layout.place(arbor));
        long shown = Math.floorMod(Math.round(Math.toDegrees(radians) * SHOWN), FULL_TURN * SHOWN);
        BigDecimal degrees = BigDecimal.valueOf(shown, DECIMALS).stripTrailingZeros();
        return arbor == 0 ? "" : Phrases.phrase("places.direction", degrees.toPlainString());
    }

    private String planes(Layout layout, int arbor) {
        return PlacesWording.onArbor(layout, arbor).stream()
                .map(disc -> Phrases.phrase(
                        "places.plane", PlacesWording.kind(disc.part().kind()), wording.span(disc.span())))
                .collect(Collectors.joining(", "));
    }

    private List<String> frame(Layout layout) {
        return List.of(
                Phrases.phrase("places.movement", wording.size(layout), wording.plate(layout)),
                Phrases.phrase(
                        "places.frame",
                        wording.length(-layout.frameCorner().x()),
                        wording.length(-layout.frameCorner().y()),
                        wording.length(layout.planes().innerDepth())));
    }
}
