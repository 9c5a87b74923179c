// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.written;

import static drumfall.solver.quantity.Dimension.LENGTH;

import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.Planes;
import drumfall.solver.layout.Span;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.Entries;
import drumfall.solver.sheet.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The places and planes of a movement as its file has them.
 *
 * @param name what the maker calls it
 * @param arbors where the arbors stand, from the drum to the escape wheel, seen from the dial centre
 * @param pallets where the pallet arbor stands
 * @param minuteArbor where the minute arbor of the motion work stands, if there is one
 * @param frameCorner the lower left corner of the frame
 * @param planes along the arbors
 */
public record LayoutSheet(
        String name,
        @Entries(from = 2, to = 8) List<PlaceEntry> arbors,
        PlaceEntry pallets,
        Optional<PlaceEntry> minuteArbor,
        PlaceEntry frameCorner,
        PlanesEntry planes) {
    private static final long PER_MILLIMETRE = 1_000_000;
    private static final long PER_METRE = 1_000_000_000;

    /** Copies the list. */
    public LayoutSheet {
        arbors = List.copyOf(arbors);
    }

    /**
     * A point of the elevation.
     *
     * @param x from the dial centre to the right
     * @param y from the dial centre upwards
     */
    public record PlaceEntry(
            @Measure(value = LENGTH, from = "-1 m", to = "1 m")
            Quantity x,

            @Measure(value = LENGTH, from = "-1 m", to = "1 m")
            Quantity y) {
        private static PlaceEntry of(Place place) {
            return new PlaceEntry(length(place.x()), length(place.y()));
        }

        private Place place() {
            return new Place(nanometres(x), nanometres(y));
        }
    }

    /**
     * A range along the arbors, from the back plate's inner face towards the dial.
     *
     * @param from rear end
     * @param to front end
     */
    public record SpanEntry(
            @Measure(value = LENGTH, from = "-1 m", to = "1 m")
            Quantity from,

            @Measure(value = LENGTH, from = "-1 m", to = "1 m")
            Quantity to) {
        private static SpanEntry of(Span span) {
            return new SpanEntry(length(span.from()), length(span.to()));
        }

        Span span() {
            return new Span(nanometres(from), nanometres(to));
        }
    }

    /**
     * The planes.
     *
     * @param meshes of each mesh from the drum: its wheel and its pinion
     * @param escapement of escape wheel and pallets
     * @param drum the drum over its flanges
     * @param motionWork of cannon pinion and minute wheel, then of minute pinion and hour wheel; empty without it
     * @param frontPlate from the back plate's inner face to the front plate's
     * @param depth over plates and motion work
     */
    public record PlanesEntry(
            @Entries(from = 1, to = 7) List<SpanEntry> meshes,
            SpanEntry escapement,
            SpanEntry drum,
            @Entries(from = 0, to = 2) List<SpanEntry> motionWork,

            @Measure(value = LENGTH, from = "0 m", to = "1 m")
            Quantity frontPlate,

            @Measure(value = LENGTH, from = "0 m", to = "1 m")
            Quantity depth) {
        /** Copies the lists. */
        public PlanesEntry {
            meshes = List.copyOf(meshes);
            motionWork = List.copyOf(motionWork);
        }

        private static PlanesEntry of(Planes planes) {
            int meshes = planes.gears().size() - 1;
            return new PlanesEntry(
                    planes.gears().subList(0, meshes).stream()
                            .map(SpanEntry::of)
                            .toList(),
                    SpanEntry.of(planes.ofEscape()),
                    SpanEntry.of(planes.drum()),
                    planes.motion().stream().map(SpanEntry::of).toList(),
                    length(planes.innerDepth()),
                    length(planes.depth()));
        }

        private Planes planes() {
            return new Planes(
                    Stream.concat(meshes.stream(), Stream.of(escapement))
                            .map(SpanEntry::span)
                            .toList(),
                    drum.span(),
                    motionWork.stream().map(SpanEntry::span).toList(),
                    nanometres(frontPlate),
                    nanometres(depth));
        }
    }

    /**
     * The sheet of a layout.
     *
     * @param name what to call it
     * @param layout the layout
     */
    public static LayoutSheet of(String name, Layout layout) {
        int pallets = layout.need().parts().palletArbor();
        return new LayoutSheet(
                name,
                layout.places().subList(0, pallets).stream().map(PlaceEntry::of).toList(),
                PlaceEntry.of(layout.palletPlace()),
                layout.minutePlace().map(PlaceEntry::of),
                PlaceEntry.of(layout.frameCorner()),
                PlanesEntry.of(layout.planes()));
    }

    /**
     * The layout that the sheet describes, sound or not.
     *
     * @param need what is asked of it
     * @throws IllegalArgumentException if the sheet breaks a rule that {@link LayoutReader} checks
     */
    public Layout layout(LayoutNeed need) {
        List<PlaceEntry> all = new ArrayList<>(arbors);
        all.add(pallets);
        minuteArbor.ifPresent(all::add);
        return new Layout(need, all.stream().map(PlaceEntry::place).toList(), frameCorner.place(), planes.planes());
    }

    /** A length in millimetres, of which a nanometre is the sixth decimal. */
    private static Quantity length(long nanometres) {
        return Quantity.of(BigFraction.of(nanometres, PER_MILLIMETRE), LENGTH.unit("mm"));
    }

    static boolean isWholeNanometres(Quantity length) {
        return length.exact().multiply(PER_METRE).getDenominator().abs().bitLength() == 1;
    }

    /** Exact: a length that is not whole is refused before, and one beyond a metre by the bounds of its field. */
    private static long nanometres(Quantity length) {
        if (!isWholeNanometres(length)) {
            throw new IllegalArgumentException(
                    "The length (%s) must be a whole number of nanometres. Maybe write it in mm with six decimals."
                            .formatted(length));
        }
        return length.exact().multiply(PER_METRE).longValue();
    }
}
