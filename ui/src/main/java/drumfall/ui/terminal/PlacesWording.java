// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.layout.Box;
import drumfall.solver.layout.Disc;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutOutcome.Scope;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Rule;
import drumfall.solver.layout.Shortfall;
import drumfall.solver.layout.Span;
import drumfall.solver.layout.size.Nanometres;
import drumfall.solver.quantity.Dimension;
import drumfall.ui.wording.FigureWording;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Words and figures of places. */
final class PlacesWording {
    /** Places are shown to a hundredth of a millimetre: finer than anything printed or drilled. */
    private static final long SHOWN = 10_000;

    private static final Set<PartKind> NOT_IN_A_PLANE = EnumSet.of(PartKind.ROD, PartKind.HUB);

    private final FigureWording figures;

    PlacesWording(FigureWording figures) {
        this.figures = figures;
    }

    /** A length to a hundredth of a millimetre. */
    String length(long nanometres) {
        return exactly(Math.round(nanometres / (double) SHOWN) * SHOWN);
    }

    /** A length with all digits that figures have: what is wrong may be wrong by little. */
    private String exactly(long nanometres) {
        return figures.precise(Dimension.LENGTH, Nanometres.toMetres(nanometres));
    }

    String span(Span span) {
        return Phrases.phrase("places.span", length(span.from()), length(span.to()));
    }

    /** Width and height of the parts, depth over plates and motion work. */
    String size(Layout layout) {
        return Phrases.phrase(
                "places.size",
                figure(layout.extent().width()),
                figure(layout.extent().height()),
                figure(layout.depth()));
    }

    /** Width and height of the smallest upright plate. */
    String plate(Layout layout) {
        Box plate = layout.size().plate();
        return Phrases.phrase("places.plate.size", figure(plate.width()), figure(plate.height()));
    }

    private String figure(long nanometres) {
        return figures.figure(Dimension.LENGTH, Nanometres.toMetres(nanometres));
    }

    static String kind(PartKind kind) {
        return Phrases.phrase("part." + kind.name());
    }

    static String part(Part part) {
        return part.kind() == PartKind.PILLAR
                ? Phrases.phrase("part.pillar." + part.number())
                : Phrases.phrase("part.of", kind(part.kind()), part.number() + 1);
    }

    /** The parts on an arbor that have a plane, as they stand. */
    static List<Disc> onArbor(Layout layout, int arbor) {
        return layout.discs().stream()
                .filter(disc -> disc.part().number() == arbor
                        && !NOT_IN_A_PLANE.contains(disc.part().kind()))
                .toList();
    }

    /** A conflict: what stands against what, and by how much. */
    String conflict(Shortfall fault) {
        return Phrases.phrase(
                "conflict." + key(fault),
                part(fault.first()),
                fault.second().map(PlacesWording::part).orElse(""),
                exactly(fault.amount()),
                exactly(fault.asked()),
                exactly(Math.abs(fault.found())));
    }

    private static String key(Shortfall fault) {
        Rule rule = fault.rule();
        boolean overlap = rule == Rule.RADIAL_GAP && fault.found() < 0;
        boolean single = rule == Rule.AXIAL_GAP && fault.second().isEmpty();
        return rule.name() + (overlap ? ".overlap" : "") + (single ? ".plate" : "");
    }

    /** Why there is no place, in one sentence. */
    String none(TrainPlaces places) {
        String key = places.scope().orElseThrow() == Scope.ON_GRID ? "places.none.grid" : "places.none.anywhere";
        return Phrases.phrase(key, conflict(places.conflicts().get(0)));
    }
}
