// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.choice;

import drumfall.solver.teeth.contact.ContactBand;
import drumfall.solver.teeth.flank.ToothLimitException;
import drumfall.solver.teeth.form.BasicRack;
import drumfall.solver.teeth.form.InvoluteGear;
import drumfall.solver.teeth.form.InvolutePair;
import drumfall.solver.teeth.outline.ToothStrength;
import java.util.Optional;

/** The involute pair with the best worst phase. */
final class InvoluteChooser {
    private static final double FINEST = 2e-3;
    private static final double CLEARANCE = 0.1;

    private final MeshNeed need;
    private final InvoluteFreedom freedom;

    InvoluteChooser(MeshNeed need, InvoluteFreedom freedom) {
        this.need = need;
        this.freedom = freedom;
    }

    Optional<InvolutePair> choose() {
        Optional<InvolutePair> best = Optional.empty();
        double most = Double.NEGATIVE_INFINITY;
        for (double degrees : freedom.pressureAngles()) {
            Optional<InvolutePair> here = atAngle(degrees);
            double value = here.map(this::worst).orElse(Double.NEGATIVE_INFINITY);
            if (value > most) {
                most = value;
                best = here;
            }
        }
        return best;
    }

    private Optional<InvolutePair> atAngle(double degrees) {
        try {
            BasicRack rack = BasicRack.atAngle(degrees).roundedFor(need.rounding());
            double shift = Math.max(0, InvoluteGear.leastShift(rack, need.followerCount()));
            CompassSearch search = new CompassSearch(
                    v -> build(rack, v).filter(this::isGood).map(this::worst).orElse(Double.NEGATIVE_INFINITY),
                    FINEST,
                    freedom.followerShift(),
                    freedom.shiftSum(),
                    freedom.driverAddendum());
            double[] chosen = search.best(
                    new double[] {shift, 0, 1 - shift},
                    new double[] {shift, 0.1, 0.6},
                    new double[] {shift * 0.8, 0.2, 1},
                    new double[] {0, 0, 1});
            return build(rack, chosen).filter(this::isGood);
        } catch (ToothLimitException noRoomForRounding) {
            return Optional.empty();
        }
    }

    /** The pair whose follower is just high enough for the contact ratio at the widest centres. */
    private Optional<InvolutePair> build(BasicRack rack, double[] v) {
        try {
            double driverShift = v[1] - v[0];
            InvolutePair tall = pair(
                    rack, driverShift, v[0], v[2], freedom.followerAddendum().low());
            double wide = tall.centreDistance() + need.errors().widest();
            double lacking = need.contactRatio() - tall.recessRatio(wide);
            double height = tall.followerTipFor(lacking, wide) - need.followerCount() / 2.0;
            Range allowed = freedom.followerAddendum();
            double addendum = Math.max(allowed.low(), Math.min(allowed.high(), height));
            return Optional.of(pair(rack, driverShift, v[0], v[2], addendum));
        } catch (ToothLimitException impossible) {
            return Optional.empty();
        }
    }

    private InvolutePair pair(BasicRack rack, double x1, double x2, double h1, double h2) {
        return InvolutePair.ofAddenda(rack, need.driverCount(), need.followerCount(), x1, x2, h1, h2);
    }

    private boolean isGood(InvolutePair pair) {
        ContactBand.Errors errors = need.errors();
        double a = pair.centreDistance();
        double close = a + errors.closest();
        return pair.contactRatio(a + errors.widest()) >= need.contactRatio() - 1e-9
                && pair.isFreeOfInterference(close)
                && close - pair.driver().tipRadius() - pair.follower().rootRadius() >= CLEARANCE
                && close - pair.follower().tipRadius() - pair.driver().rootRadius() >= CLEARANCE
                && new ToothStrength(pair.driver(), errors.mostThinning()).isPrintable(need.extrusion())
                && new ToothStrength(pair.follower(), errors.mostThinning()).isPrintable(need.extrusion());
    }

    private double worst(InvolutePair pair) {
        double a = pair.centreDistance();
        double close = pair.worstEfficiency(need.friction(), a + need.errors().closest());
        double wide = pair.worstEfficiency(need.friction(), a + need.errors().widest());
        return Math.min(pair.worstEfficiency(need.friction(), a), Math.min(close, wide));
    }
}
