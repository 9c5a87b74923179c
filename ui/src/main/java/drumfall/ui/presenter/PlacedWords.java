// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.layout.LayoutOutcome.NoLayout;
import drumfall.solver.layout.LayoutOutcome.Scope;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.Rule;
import drumfall.solver.layout.Shortfall;
import drumfall.solver.layout.size.MovementParts;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.UnitSystem;
import drumfall.ui.wording.FigureWording;

/**
 * A layout in words and figures.
 *
 * @param parts what is placed
 * @param units which units are read
 */
public record PlacedWords(MovementParts parts, UnitSystem units) {
    private static final double NANOMETRES = 1e-9;

    private static final double NANOMETRES_IN_MILLIMETRES = 1e-6;

    /** Places are shown to a hundredth of a millimetre: finer than anything printed or drilled. */
    private static final long SHOWN = 10_000;

    /**
     * An arbor in words, numbered from the drum.
     *
     * @param arbor its number in {@link MovementParts}, 0 at the drum
     */
    public String arbor(int arbor) {
        if (arbor == 0) {
            return Texts.of("arbor.drum");
        }
        if (arbor == parts.palletArbor()) {
            return Texts.of("placed.pallet");
        }
        if (arbor == parts.minuteArbor()) {
            return Texts.of("placed.minute");
        }
        if (arbor == parts.escapeArbor()) {
            return Texts.of("arbor.escape");
        }
        return arbor == parts.centreArbor() ? Texts.of("arbor.centre") : Texts.of("arbor.other", arbor + 1);
    }

    /**
     * What is written at an arbor: its number from 1 at the drum.
     *
     * @param arbor its number in {@link MovementParts}, 0 at the drum
     */
    public String mark(int arbor) {
        return Integer.toString(arbor + 1);
    }

    /**
     * A part in words.
     *
     * @param part the part
     */
    public String part(Part part) {
        String kind = Texts.of("part." + part.kind().name());
        return part.kind() == PartKind.PILLAR
                ? Texts.of("placed.pillar." + part.number())
                : Texts.of("placed.part", kind, part.number() + 1);
    }

    /**
     * A part or a rod before the front plate, with its sizes.
     *
     * @param piece the part
     */
    public String piece(PlacedFront.Piece piece) {
        String name = piece.name().isEmpty()
                ? Integer.toString(piece.arbor() + 1)
                : piece.name().replace('-', ' ');
        double size = piece.kind() == PlacedFront.Kind.HAND ? piece.reach() : piece.across();
        return Texts.of(
                "placed.front." + piece.kind().name(),
                name,
                millimetres(size),
                millimetres(piece.from()),
                millimetres(piece.to()));
    }

    /**
     * The room for a dial.
     *
     * @param dial where it is
     */
    public String dial(PlacedFront.DialSpan dial) {
        return Texts.of("placed.front.dial", millimetres(dial.from()), millimetres(dial.to()));
    }

    private String millimetres(double shown) {
        return length(Math.round(shown / NANOMETRES_IN_MILLIMETRES));
    }

    /**
     * A length of the layout, to a hundredth of a millimetre.
     *
     * @param nanometres the length
     */
    public String length(long nanometres) {
        double shown = Math.round(nanometres / (double) SHOWN) * SHOWN * NANOMETRES;
        return FigureWording.in(units).precise(Dimension.LENGTH, shown).replace('-', '−');
    }

    /**
     * How far a place is from the dial centre, across and up.
     *
     * @param place the place
     */
    public String place(Place place) {
        return Texts.of("placed.place", length(place.x()), length(place.y()));
    }

    /**
     * A fault: what clashes, and by how much.
     *
     * @param fault the fault
     */
    public String fault(Shortfall fault) {
        String amount = length(fault.amount());
        if (fault.rule() == Rule.RADIAL_GAP && fault.second().isPresent()) {
            String key = fault.found() < 0 ? "placed.overlap" : "placed.gap";
            long told = fault.found() < 0 ? -fault.found() : fault.amount();
            return Texts.of(key, part(fault.first()), part(fault.second().get()), length(told));
        }
        return Texts.of("placedrule." + fault.rule().name(), part(fault.first()), amount);
    }

    /**
     * Why there is no layout, and the next step.
     *
     * @param none the outcome
     */
    public String none(NoLayout none) {
        String scope = Texts.of(none.scope() == Scope.ON_GRID ? "placed.none.grid" : "placed.none.anywhere");
        return scope + " " + Texts.of("placed.closest", fault(none.closest())) + " " + Texts.of("placed.none.next");
    }
}
