// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.wording;

import drumfall.solver.brief.MeshPlace;
import java.util.regex.Pattern;

/** Words for the places that a rating names, such as {@code above-1} or {@code drum flange and arbor 2}. */
public final class PlaceWording {
    private static final Pattern NUMBER = Pattern.compile("\\d+");

    private PlaceWording() {}

    /**
     * A mesh, for example "mesh 1 above the centre".
     *
     * @param place the mesh
     */
    public static String of(MeshPlace place) {
        return of(place.toString());
    }

    /**
     * A place of a {@link drumfall.solver.rating.DemandFigure}.
     *
     * @param place as the rating names it; empty for the whole train, worded empty too
     */
    public static String of(String place) {
        if (place.isEmpty()) {
            return "";
        }
        String key = "place." + NUMBER.matcher(place).replaceAll("#").replace(' ', '.');
        Object[] numbers =
                NUMBER.matcher(place).results().map(found -> found.group()).toArray();
        return Words.BOOK.phraseIfAny(key, numbers).orElse(place);
    }
}
