// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.train.Train;
import drumfall.ui.presenter.StripFigure.Kind;

/** What figures and places are called. */
public final class Names {
    private Names() {}

    /** A figure of the strip in words. */
    public static String of(StripFigure figure) {
        return figure.place()
                .map(place -> Texts.of("figure." + figure.kind().name(), of(place, figure.kind())))
                .orElseGet(() -> Texts.of("figure." + figure.kind().name()));
    }

    /** Distances and directions have longer values, so their meshes are named in short. */
    private static String of(MeshPlace place, Kind kind) {
        boolean inShort = kind == Kind.DISTANCE || kind == Kind.DIRECTION;
        return inShort ? Texts.of("place.short." + place.side().name(), place.number()) : of(place);
    }

    /** A mesh in words. */
    public static String of(MeshPlace place) {
        return Texts.of("place." + place.side().name(), place.number());
    }

    /** An arbor in words, by its number from 0 at the drum. */
    static String arbor(int number, Train train) {
        if (number == 0) {
            return Texts.of("arbor.drum");
        }
        if (number == train.meshes().size()) {
            return Texts.of("arbor.escape");
        }
        return number == train.meshesAbove() ? Texts.of("arbor.centre") : Texts.of("arbor.other", number + 1);
    }

    /** A place as a rating names it, in words; unknown ones stay as they are. */
    public static String place(String place) {
        if (place.matches("(above|below)-\\d+.*")) {
            String side = place.startsWith("above") ? "ABOVE" : "BELOW";
            String number = place.substring(6).replaceAll("\\D.*", "");
            return Texts.of("place." + side, number) + place.substring(6 + number.length());
        }
        return place;
    }
}
