// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Brief;
import drumfall.solver.quantity.Quantity;

/**
 * A place in the brief's bands, each from 0 for the smoothest clock to 1 for the roughest.
 *
 * @param teeth friction at the teeth
 * @param bores friction in plain bores
 * @param pallets friction at the pallets
 * @param quality the pendulum's quality; 0 takes the highest
 */
public record BandPoint(double teeth, double bores, double pallets, double quality) {
    /**
     * Checks the shares.
     *
     * @throws IllegalArgumentException if a share is outside 0 to 1
     */
    public BandPoint {
        for (double share : new double[] {teeth, bores, pallets, quality}) {
            if (!(share >= 0 && share <= 1)) {
                throw new IllegalArgumentException("The share (%s) of a band must be from 0 to 1.".formatted(share));
            }
        }
    }

    /** The same share of every band. */
    static BandPoint all(double share) {
        return new BandPoint(share, share, share, share);
    }

    /**
     * Friction at the teeth there.
     *
     * @param friction the bands
     */
    public double teeth(Brief.Friction friction) {
        return friction(friction.teeth(), teeth);
    }

    /**
     * Friction in plain bores there.
     *
     * @param friction the bands
     */
    public double bores(Brief.Friction friction) {
        return friction(friction.bores(), bores);
    }

    /**
     * Friction at the pallets there.
     *
     * @param friction the bands
     */
    public double pallets(Brief.Friction friction) {
        return friction(friction.pallets(), pallets);
    }

    /**
     * The pendulum's quality there.
     *
     * @param band the band
     */
    public double quality(Brief.QualityBand band) {
        return between(band.low(), band.high(), 1 - quality);
    }

    static double friction(Brief.FrictionBand band, double share) {
        return between(band.low(), band.high(), share);
    }

    private static double between(Quantity low, Quantity high, double share) {
        return low.si() * (1 - share) + high.si() * share;
    }
}
