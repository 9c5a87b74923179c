// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.placing;

import drumfall.solver.brief.BobShell;
import drumfall.solver.brief.Brief;
import drumfall.solver.layout.Layout;
import drumfall.solver.parts.BobSize;
import drumfall.solver.parts.WeightCan;
import drumfall.solver.power.answers.BobClearance;
import drumfall.solver.power.answers.BobClearance.Bob;
import drumfall.solver.power.answers.BobClearance.Weight;
import drumfall.solver.power.books.BookKeeper;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.rating.BriefParts;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.Train;
import java.util.Optional;

/**
 * Whether the weight of a placed train passes the swinging bob.
 *
 * <p>The pendulum is taken to swing about the pallet arbor's axis in a plane behind the back plate, at the arc that the weight
 * keeps on the mean. The weight hangs below the line as the layout leads it; along the arbors it counts where the line lies
 * against the drum's rear flange, which is nearest to the pendulum. Unless the brief says how far behind the plate the bob
 * swings, only distances aside and up and down count.
 *
 * @param clearance both bodies
 * @param lineBeforePlate from the line's last turn on the drum back to the rear of the back plate, m
 * @param planeKnown whether the brief says in which plane the bob swings
 * @param wanted distance that they must keep, m
 */
public record WeightBesideBob(BobClearance clearance, double lineBeforePlate, boolean planeKnown, double wanted) {
    private static final double METRES = 1e-9;

    /** What is known. */
    public enum Verdict {
        /** They keep the distance. */
        CLEAR,
        /** They may meet. */
        MAY_MEET,
        /** They may meet unless the bob swings far enough behind the plate, of which the brief says nothing. */
        PLANE_UNKNOWN
    }

    /**
     * The bodies of a placed train.
     *
     * @param rater rates against the brief
     * @param train the train
     * @param layout where its arbors stand
     * @param weight that hangs, kg, at least the least running weight
     * @throws IllegalArgumentException if the weight is under the least running weight
     */
    public static WeightBesideBob of(TrainRater rater, Train train, Layout layout, double weight) {
        Brief brief = rater.brief();
        BobSize size = BriefParts.bob(brief);
        double length =
                rater.limits().pendulumLength(train.going().secondsPerBeat().doubleValue());
        Bob bob = new Bob(rater.movement().pendulum().bobDistance(length), size.diameter() / 2, size.thickness());
        double arc = new BookKeeper(rater.loaded(train)).under(weight).semiArc();
        Optional<Quantity> behind = brief.pendulum().bob().map(BobShell::behindPlate);
        double before = METRES * layout.planes().drum().from()
                + brief.drum().wall().si()
                + METRES * layout.need().envelope().plateThickness();
        Weight hanging = new Weight(
                METRES * (layout.weightMiddle() - layout.palletPlace().x()),
                behind.map(distance -> before + distance.si()).orElse(0.0),
                brief.weight().width().si() / 2,
                height(brief, train, weight),
                METRES * (layout.palletPlace().y() - layout.weightTop()),
                brief.fall().height().si());
        return new WeightBesideBob(
                new BobClearance(bob, arc, hanging),
                before,
                behind.isPresent(),
                brief.parts().gap().si());
    }

    /** Can of shot and the pulley above it. */
    private static double height(Brief brief, Train train, double weight) {
        double can = WeightCan.CUSTOMARY.height(
                weight, brief.weight().width().si(), brief.printer().layer().si());
        return train.reeving() == Reeving.SINGLE
                ? can
                : can + brief.line().pulley().si() + brief.line().diameter().si();
    }

    /** Distance that they surely keep, m; not positive if they may meet. */
    public double gap() {
        return planeKnown ? clearance.gap() : Math.max(clearance.aside(), clearance.upright());
    }

    /** What is known of them. */
    public Verdict verdict() {
        if (gap() >= wanted) {
            return Verdict.CLEAR;
        }
        return planeKnown ? Verdict.MAY_MEET : Verdict.PLANE_UNKNOWN;
    }

    /** How much further aside the weight would have to hang, m; 0 if they keep the distance. */
    public double furtherAside() {
        return gap() >= wanted ? 0 : wanted - clearance.aside();
    }

    /** How far behind the back plate the middle of the bob keeps the distance however the weight hangs aside, m. */
    public double leastBehindPlate() {
        double half = clearance.bob().thickness() / 2;
        return Math.max(half, clearance.weight().radius() + half + wanted - lineBeforePlate);
    }
}
