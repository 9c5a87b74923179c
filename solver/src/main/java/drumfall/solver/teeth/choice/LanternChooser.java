// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.choice;

import drumfall.solver.teeth.flank.ToothLimitException;
import drumfall.solver.teeth.form.LanternPair;
import drumfall.solver.teeth.form.MeshPair;
import drumfall.solver.teeth.outline.ToothStrength;
import java.util.Optional;

/** The lantern pair with the best worst phase; none where the pinion would drive. */
final class LanternChooser {
    private static final double FINEST = 0.05;

    private final MeshNeed need;
    private final LanternFreedom freedom;
    private final BandJudge judge;

    LanternChooser(MeshNeed need, LanternFreedom freedom) {
        this.need = need;
        this.freedom = freedom;
        judge = new BandJudge(need);
    }

    Optional<MeshPair> choose() {
        if (!need.wheelDrives()) {
            return Optional.empty();
        }
        CompassSearch search = new CompassSearch(
                v -> build(v).map(judge::worstTorque).orElse(Double.NEGATIVE_INFINITY),
                FINEST,
                freedom.pinDiameter(),
                freedom.contactRatio());
        double[] chosen = search.best(
                new double[] {1.3, need.contactRatio()},
                new double[] {1.0, need.contactRatio()},
                new double[] {1.2, 1.02});
        return build(chosen).filter(pair -> judge.worstTorque(pair) > Double.NEGATIVE_INFINITY);
    }

    private Optional<MeshPair> build(double[] v) {
        try {
            LanternPair pair = LanternPair.of(need.driverCount(), need.followerCount(), v[0], v[1], need.rounding());
            return new ToothStrength(pair.wheel(), need.errors().mostThinning()).isPrintable(need.extrusion())
                    ? Optional.of(pair.mesh())
                    : Optional.empty();
        } catch (ToothLimitException impossible) {
            return Optional.empty();
        }
    }
}
