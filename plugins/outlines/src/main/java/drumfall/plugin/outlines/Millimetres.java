// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.solver.layout.Place;
import drumfall.solver.teeth.outline.Point;

/** The whole nanometres of layouts in the millimetres of drawings. */
final class Millimetres {
    private static final double NANOMETRES = 1e6;

    private Millimetres() {}

    static double of(long nanometres) {
        return nanometres / NANOMETRES;
    }

    static Point of(Place place) {
        return new Point(of(place.x()), of(place.y()));
    }
}
