// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import java.util.List;
import java.util.Optional;

/**
 * One leaf field of a sheet, as a window needs it to build an entry for it.
 *
 * @param pointer JSON pointer of the field; the entries of a list are written {@code *}
 * @param kind what is entered
 * @param optionalAt pointer of the field itself or of the innermost group around it that may be left out; empty if the
 *     field must be there
 * @param measures what a quantity may measure, with its bounds; one for most, several for a resolution, none for others
 * @param low least count, if this is a count
 * @param high greatest count, if this is a count
 * @param choices the words to choose from, if this is a choice
 */
public record SheetField(
        String pointer,
        FieldKind kind,
        Optional<String> optionalAt,
        List<QuantityRange> measures,
        Optional<Integer> low,
        Optional<Integer> high,
        List<String> choices) {
    /** Copies the lists. */
    public SheetField {
        measures = List.copyOf(measures);
        choices = List.copyOf(choices);
    }

    static SheetField quantity(Place place, Optional<String> optionalAt, List<QuantityRange> measures) {
        return new SheetField(
                place.pointer(),
                FieldKind.QUANTITY,
                optionalAt,
                measures,
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    static SheetField count(Place place, Optional<String> optionalAt, int low, int high) {
        return new SheetField(
                place.pointer(),
                FieldKind.COUNT,
                optionalAt,
                List.of(),
                Optional.of(low),
                Optional.of(high),
                List.of());
    }

    static SheetField plain(Place place, Optional<String> optionalAt, FieldKind kind, List<String> choices) {
        return new SheetField(
                place.pointer(), kind, optionalAt, List.of(), Optional.empty(), Optional.empty(), choices);
    }
}
