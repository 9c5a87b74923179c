// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.brief.BobShell;
import drumfall.solver.brief.Brief;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.size.Nanometres;
import drumfall.solver.parts.BobSize;
import drumfall.solver.parts.WeightCan;
import drumfall.solver.power.answers.BobClearance;
import drumfall.solver.rating.BriefParts;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.WeightBesideBob;
import drumfall.solver.train.Reeving;
import java.util.Optional;

/** Cards of the bob: the size it is taken to have, and in a layout the distance that the recommended weight keeps from it. */
final class BobCards {
    private static final String PRACTICE = "common practice, no source";
    private static final String MADE = "tested against the bobs that are made";
    private static final String BOXES =
            "boxes around what bob and weight sweep keep apart if they do so along one axis; our own derivation";

    private final CardShelf shelf;
    private final TrainRater rater;
    private final Brief brief;
    private final Rating rating;

    BobCards(CardShelf shelf, TrainRater rater, Rating rating) {
        this.shelf = shelf;
        this.rater = rater;
        this.brief = rater.brief();
        this.rating = rating;
    }

    /** The size: as the brief gives it, or room for any bob of its mass. */
    void make() {
        Optional<BobShell> shell = brief.pendulum().bob();
        if (shell.isPresent()) {
            shelf.brief("D_b", "/pendulum/bob/diameter", shell.get().diameter());
            shelf.brief("t_b", "/pendulum/bob/thickness", shell.get().thickness());
        } else {
            room(BriefParts.bob(brief));
        }
    }

    private void room(BobSize size) {
        Card proportion = shelf.given("bob-proportion", "p", BobSize.PROPORTION, "1", PRACTICE);
        Card diameter = shelf.figure(
                "bob-diameter",
                "D_b",
                size.diameter(),
                "m",
                "D_b = ∛(4 m_b / (π p ρ_b))",
                in -> Math.cbrt(4 * in[0] / (Math.PI * in[1] * in[2])),
                "room for any bob that is made of this mass: a disc as thick as p D_b; our own derivation",
                shelf.brief("m_b", "/pendulum/bobMass", brief.pendulum().bobMass()),
                proportion,
                shelf.given("bob-least-density", "ρ_b", BobSize.SURELY_DENSER, "kg/m3", "shell and shot, " + MADE));
        shelf.figure(
                "bob-thickness",
                "t_b",
                size.thickness(),
                "m",
                "t_b = max(t_0, p D_b)",
                in -> Math.max(in[0], in[1] * in[2]),
                "no thinner than a rod and walls beside it",
                shelf.given("bob-least-thickness", "t_0", BobSize.THINNEST, "m", MADE),
                proportion,
                diameter);
    }

    /** The distance from the weight, unless no weight drives the train. */
    void make(Layout layout) {
        if (Double.isFinite(rating.recommendedWeight())) {
            new Gaps(layout).make();
        }
    }

    private Card diameter() {
        return shelf.get(brief.pendulum().bob().isPresent() ? "brief.pendulum.bob.diameter" : "bob-diameter");
    }

    private Card thickness() {
        return shelf.get(brief.pendulum().bob().isPresent() ? "brief.pendulum.bob.thickness" : "bob-thickness");
    }

    private Card width() {
        return shelf.brief("w", "/weight/width", brief.weight().width());
    }

    /** Gaps along the three axes in one layout. */
    private final class Gaps {
        private final Layout layout;
        private final WeightBesideBob beside;
        private final BobClearance clearance;
        private final Card arc;

        Gaps(Layout layout) {
            this.layout = layout;
            this.beside = WeightBesideBob.of(rater, rating.train(), layout, rating.recommendedWeight());
            this.clearance = beside.clearance();
            this.arc = shelf.given(
                    "loaded-arc",
                    "A_w",
                    clearance.semiArc(),
                    "rad",
                    "the arc at which the books of the power under the recommended weight balance, on the mean");
        }

        void make() {
            Card aside = aside();
            Card upright = upright();
            if (beside.planeKnown()) {
                shelf.figure(
                        "bob-gap",
                        "a",
                        beside.gap(),
                        "m",
                        "a = max(a_x, a_y, a_z)",
                        in -> Math.max(in[0], Math.max(in[1], in[2])),
                        BOXES,
                        aside,
                        upright,
                        across());
            } else {
                shelf.figure(
                        "bob-gap",
                        "a",
                        beside.gap(),
                        "m",
                        "a = max(a_x, a_y)",
                        in -> Math.max(in[0], in[1]),
                        BOXES + "; the brief does not say in which plane the bob swings",
                        aside,
                        upright);
            }
        }

        private Card aside() {
            return shelf.figure(
                    "bob-gap-aside",
                    "a_x",
                    clearance.aside(),
                    "m",
                    "a_x = |x| − w/2 − (l_b sin A_w + D_b/2)",
                    in -> Math.abs(in[0]) - in[1] / 2 - (in[2] * Math.sin(in[3]) + in[4] / 2),
                    "in the plane of the swing, the bob at the end of it",
                    shelf.given(
                            "layout.weight-aside",
                            "x",
                            clearance.weight().aside(),
                            "m",
                            "from the pallet arbor across to where the weight hangs in this layout"),
                    width(),
                    shelf.get("bob-distance"),
                    arc,
                    diameter());
        }

        private Card upright() {
            return shelf.figure(
                    "bob-gap-upright",
                    "a_y",
                    clearance.upright(),
                    "m",
                    "a_y = max(l_b cos A_w − D_b/2 − (y + F + h_w), y − l_b − D_b/2)",
                    in -> Math.max(
                            in[0] * Math.cos(in[1]) - in[2] / 2 - (in[3] + in[4] + in[5]), in[3] - in[0] - in[2] / 2),
                    "the weight ends its fall above the bob, or begins it below",
                    shelf.get("bob-distance"),
                    arc,
                    diameter(),
                    shelf.given(
                            "layout.weight-top",
                            "y",
                            clearance.weight().highestTop(),
                            "m",
                            "from the pallet arbor down to the top of the weight fully wound, in this layout"),
                    shelf.get("brief.fall.height"),
                    height());
        }

        /** Can of shot, and above it the pulley that it hangs from. */
        private Card height() {
            WeightCan can = WeightCan.CUSTOMARY;
            boolean pulley = rating.train().reeving() != Reeving.SINGLE;
            Card[] inputs = {
                shelf.get("recommended-weight"),
                shelf.given("can-shot-density", "ρ_s", can.shotDensity(), "kg/m3", "steel shot, poured; from memory"),
                width(),
                shelf.given("can-wall", "e_w", can.wall(), "m", "a customary size; " + PRACTICE),
                shelf.given("can-rod", "d_s", can.rod(), "m", "a customary size; " + PRACTICE),
                shelf.brief("e_l", "/printer/layer", brief.printer().layer()),
                shelf.brief("d_p", "/line/pulley", brief.line().pulley()),
                shelf.brief("u", "/line/diameter", brief.line().diameter())
            };
            return shelf.figure(
                    "weight-height",
                    "h_w",
                    clearance.weight().height(),
                    "m",
                    "h_w = ⌈(W_r / (ρ_s π (r_o² − r_i²)) + e_w) / e_l⌉ e_l + 2 e_w%s, r_o = w/2 − e_w, r_i = d_s/2 + e_w"
                            .formatted(pulley ? " + d_p + u" : ""),
                    in -> new WeightCan(in[1], in[3], in[4]).height(in[0], in[2], in[5]) + (pulley ? in[6] + in[7] : 0),
                    "a can of whole layers around its shot%s".formatted(pulley ? ", and the pulley above it" : ""),
                    pulley ? inputs : java.util.Arrays.copyOf(inputs, 6));
        }

        private Card across() {
            BobShell shell = brief.pendulum().bob().orElseThrow();
            Card before = shelf.figure(
                    "weight-before-bob",
                    "z",
                    clearance.weight().before(),
                    "m",
                    "z = z_d + w_d + e + b",
                    in -> in[0] + in[1] + in[2] + in[3],
                    "the line against the drum's rear flange, where the weight is nearest to the pendulum",
                    shelf.given(
                            "layout.drum-from",
                            "z_d",
                            Nanometres.toMetres(layout.planes().drum().from()),
                            "m",
                            "from the back plate to the drum in this layout"),
                    shelf.brief("w_d", "/drum/wall", brief.drum().wall()),
                    shelf.brief("e", "/frame/plate", brief.frame().plate()),
                    shelf.brief("b", "/pendulum/bob/behindPlate", shell.behindPlate()));
            return shelf.figure(
                    "bob-gap-across",
                    "a_z",
                    clearance.across(),
                    "m",
                    "a_z = |z| − w/2 − t_b/2",
                    in -> Math.abs(in[0]) - in[1] / 2 - in[2] / 2,
                    "across the plane of the swing",
                    before,
                    width(),
                    thickness());
        }
    }
}
