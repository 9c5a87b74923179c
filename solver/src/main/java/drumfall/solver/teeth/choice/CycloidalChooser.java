// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.choice;

import drumfall.solver.teeth.flank.ToothLimitException;
import drumfall.solver.teeth.form.CycloidalPair;
import drumfall.solver.teeth.form.CycloidalWheel;
import drumfall.solver.teeth.form.LeafTop;
import drumfall.solver.teeth.form.MeshPair;
import drumfall.solver.teeth.form.WheelTop;
import drumfall.solver.teeth.outline.ToothStrength;
import java.util.Optional;

/** The cycloidal pair with the best worst phase. */
final class CycloidalChooser {
    private static final double FINEST = 0.05;
    private static final double LOWER = 0.85;
    private static final double LOWEST = 0.75;
    private static final double ROUNDED = 0.55;

    private final MeshNeed need;
    private final CycloidalFreedom freedom;
    private final BandJudge judge;
    private final int toothCount;
    private final int leafCount;

    CycloidalChooser(MeshNeed need, CycloidalFreedom freedom) {
        this.need = need;
        this.freedom = freedom;
        judge = new BandJudge(need);
        toothCount = Math.max(need.driverCount(), need.followerCount());
        leafCount = Math.min(need.driverCount(), need.followerCount());
    }

    Optional<MeshPair> choose() {
        Optional<MeshPair> best = Optional.empty();
        double most = Double.NEGATIVE_INFINITY;
        double customary = LeafTop.customary(leafCount).addendum(leafCount);
        for (WheelTop top : freedom.wheelTops()) {
            CompassSearch search = new CompassSearch(
                    v -> worst(top, v),
                    FINEST,
                    freedom.leafAddendum(),
                    freedom.practical(),
                    freedom.leafThickness(),
                    freedom.toothThickness());
            double[] chosen = search.best(
                    start(customary, CycloidalWheel.PRACTICAL),
                    start(customary, LOWER),
                    start(customary, LOWEST),
                    start(ROUNDED, LOWER),
                    start(ROUNDED, LOWEST));
            double value = worst(top, chosen);
            if (value > most) {
                most = value;
                best = build(top, chosen);
            }
        }
        return best;
    }

    /** A place to start from: a printer may not manage the customary addenda in full. */
    private double[] start(double top, double practical) {
        return new double[] {top, practical, LeafTop.thickness(leafCount), Math.PI / 2};
    }

    private double worst(WheelTop top, double[] v) {
        return build(top, v).map(judge::worstTorque).orElse(Double.NEGATIVE_INFINITY);
    }

    private Optional<MeshPair> build(WheelTop top, double[] v) {
        try {
            CycloidalPair pair = CycloidalPair.of(
                    new CycloidalPair.Proportions(toothCount, leafCount, top, v[0], v[1], v[3], v[2], need.rounding()));
            double thinning = need.errors().mostThinning();
            boolean printable = new ToothStrength(pair.wheel(), thinning).isPrintable(need.extrusion())
                    && new ToothStrength(pair.pinion(), thinning).isPrintable(need.extrusion());
            return printable
                    ? Optional.of(need.wheelDrives() ? pair.wheelDriving() : pair.pinionDriving())
                    : Optional.empty();
        } catch (ToothLimitException impossible) {
            return Optional.empty();
        }
    }
}
