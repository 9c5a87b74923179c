// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.choice;

import drumfall.solver.teeth.contact.ContactPath;
import drumfall.solver.teeth.contact.MeshConditions;
import drumfall.solver.teeth.contact.MeshTracer;
import drumfall.solver.teeth.contact.Sampling;
import drumfall.solver.teeth.form.MeshPair;

/** Values a pair by its worst phase over the band of centre distances. */
final class BandJudge {
    /** As drawn, flanks and not corners must carry; a thousandth of the pitch is the sampling's own doubt. */
    private static final double SCRAPING = 1e-3;

    private final MeshNeed need;

    BandJudge(MeshNeed need) {
        this.need = need;
    }

    /**
     * The least torque ratio as a share of the nominal one, or minus infinity for a pair that interferes or scrapes.
     *
     * <p>Thinning turns flanks and leaves the curve alone; its least value is the one that tests the backlash.
     */
    double worstTorque(MeshPair pair) {
        double worst = Double.POSITIVE_INFINITY;
        double thinning = need.errors().leastThinning();
        for (double error :
                new double[] {0, need.errors().closest(), need.errors().widest()}) {
            ContactPath path = MeshTracer.trace(pair, new MeshConditions(error, thinning, thinning), Sampling.SWIFT);
            boolean scrapes = error == 0 && path.cornerShare() > SCRAPING;
            if (scrapes || !path.clearances().isFree()) {
                return Double.NEGATIVE_INFINITY;
            }
            worst = Math.min(worst, path.withFriction(need.friction()).worstTorque());
        }
        return worst;
    }
}
