// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Brief;

/** Where in the brief's bands of friction and quality a figure is computed. */
public enum Expectation {
    /** Least friction, highest quality: the smoothest clock to expect. */
    SMOOTHEST(0),
    /** The middle of every band. */
    MIDDLE(0.5),
    /** Most friction, lowest quality: the roughest clock to expect. */
    ROUGHEST(1);

    private final double share;

    Expectation(double share) {
        this.share = share;
    }

    /** The place in all bands. */
    BandPoint point() {
        return BandPoint.all(share);
    }

    /**
     * A coefficient of friction.
     *
     * @param band the brief's band
     */
    double friction(Brief.FrictionBand band) {
        return BandPoint.friction(band, share);
    }
}
