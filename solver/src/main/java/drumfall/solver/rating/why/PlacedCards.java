// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.layout.Layout;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.power.statics.PlacedArbor;
import drumfall.solver.power.statics.PlacedWalk;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.PlacedPower;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Cards of the walk to the weight with every force where the layout puts it and as it points. */
final class PlacedCards {
    private static final String STATICS =
            "statics of a rod on two supports, forces summed as vectors; our own derivation. A sum of vectors is no longer"
                    + " than the sum of their lengths, so placing never costs weight";
    private static final String LAYOUT = "the layout and the drawn teeth";

    private final CardShelf shelf;
    private final Train train;
    private final PlacedWalk walk;

    PlacedCards(CardShelf shelf, TrainRater rater, Rating rating, Layout layout) {
        this.shelf = shelf;
        this.train = rating.train();
        this.walk = PlacedPower.walk(rater, train, layout);
    }

    void make() {
        Card running = weight(Criterion.RUNNING, walk.running(), walk.runningWeight());
        Card binding = weight(Criterion.BINDING, walk.starting(), walk.bindingWeight());
        shelf.figure(
                "placed-least-weight",
                "W′",
                walk.leastWeight(),
                "kg",
                "W′ = max(W′_running, W′_binding)",
                in -> Math.max(in[0], in[1]),
                "both criteria must be met; our own derivation",
                running,
                binding);
    }

    private Card weight(Criterion criterion, List<PlacedArbor> arbors, double value) {
        int last = train.meshes().size();
        Card out = shelf.get("torque-out-%d-%s".formatted(last + 1, word(criterion)));
        Card given = given(criterion, arbors.get(last), last, out);
        for (int arbor = last - 1; arbor >= 0; arbor--) {
            given = given(criterion, arbors.get(arbor), arbor, out(criterion, arbor, given));
        }
        Card tension = shelf.figure(
                "placed-tension-" + word(criterion),
                "S′",
                given.value() / shelf.get("line-arm").value(),
                "N",
                "S′ = M_in / r_l",
                in -> in[0] / in[1],
                "textbook statics",
                given,
                shelf.get("line-arm"));
        String name = "placed-weight-" + word(criterion);
        Card gravity = PendulumCards.gravity(shelf);
        return train.reeving() == Reeving.SINGLE
                ? shelf.figure(
                        name,
                        "W′",
                        value,
                        "kg",
                        "W′ = S′ / g",
                        in -> in[0] / in[1],
                        "a line that hangs straight",
                        tension,
                        gravity)
                : shelf.figure(
                        name,
                        "W′",
                        value,
                        "kg",
                        "W′ = S′ (1 + η) / (η g)",
                        in -> in[0] * (1 + in[1]) / (in[1] * in[2]),
                        "Ball, Experimental Mechanics, lecture VI: a pulley passes on a share of the pull",
                        tension,
                        shelf.get("brief.line.pulleyEfficiency"),
                        gravity);
    }

    private Card out(Criterion criterion, int mesh, Card given) {
        Card passed =
                shelf.get((criterion == Criterion.RUNNING ? "mesh-felt-%d" : "mesh-worst-%d").formatted(mesh + 1));
        Card teeth = RunCards.toothCount(shelf, train, mesh);
        Card leaves = RunCards.leafCount(shelf, train, mesh);
        return shelf.figure(
                "placed-torque-out-%d-%s".formatted(mesh + 1, word(criterion)),
                "M_out",
                given.value() * teeth.value() / (leaves.value() * passed.value()),
                "N m",
                "M_out = M_in z / (p η)",
                in -> in[0] * in[1] / (in[2] * in[3]),
                "balance of torques at the teeth; our own derivation",
                given,
                teeth,
                leaves,
                passed);
    }

    private Card given(Criterion criterion, PlacedArbor arbor, int number, Card out) {
        ArborRole role = WeightWalk.role(train, number);
        boolean last = number == train.meshes().size();
        List<Card> inputs = new ArrayList<>();
        inputs.add(out);
        inputs.add(shelf.get(ArborCards.name("slope-front", role, criterion)));
        inputs.add(shelf.get(ArborCards.name("slope-rear", role, criterion)));
        inputs.add(shelf.get(ArborCards.name("standing", role, criterion)));
        inputs.add(placed(number, "span", "l", arbor.supports().span(), "m"));
        inputs.add(shelf.get(last ? "brief.escapement.wheelRadius" : "wheel-arm-%d".formatted(number + 1)));
        inputs.add(placed(number, "wheel-place", "x_w", arbor.wheel().place(), "m"));
        inputs.add(
                placed(number, toothName(criterion, last), "φ_w", arbor.wheel().direction(), "rad"));
        inputs.add(shelf.get(number == 0 ? "line-arm" : "pinion-arm-%d".formatted(number)));
        inputs.add(placed(number, "driven-place", "x_p", arbor.driven().place(), "m"));
        inputs.add(placed(number, "driven-end", "x_p′", arbor.drivenTo(), "m"));
        inputs.add(placed(number, "driven-direction", "φ_p", arbor.driven().direction(), "rad"));
        inputs.add(shelf.get(last ? "escape-wheel-mass" : "wheel-mass-%d".formatted(number + 1)));
        inputs.add(placed(number, "wheel-middle", "x_1", arbor.weights().get(0).place(), "m"));
        inputs.add(shelf.get(number == 0 ? "drum-mass" : "pinion-mass-%d".formatted(number)));
        inputs.add(placed(number, "driven-middle", "x_2", arbor.weights().get(1).place(), "m"));
        inputs.add(PendulumCards.gravity(shelf));
        return shelf.figure(
                "placed-torque-in-%d-%s".formatted(number + 1, word(criterion)),
                "M_in",
                arbor.given(out.value()),
                "N m",
                "M_in = M_out + s_front |R_front| + s_rear |R_rear| + M_s, R_rear = −∑ F x/l, R_front = −∑ F (1 − x/l);"
                        + " F: M_out/a_w at x_w along φ_w, M_in/a_p along φ_p at x_p or x_p′, whichever rubs more, weights"
                        + " at x_1 and x_2",
                PlacedCards::solved,
                STATICS,
                inputs.toArray(Card[]::new));
    }

    /** The pallets may push the escape wheel at another tooth under each criterion. */
    private static String toothName(Criterion criterion, boolean escape) {
        return escape ? "wheel-direction-" + word(criterion) : "wheel-direction";
    }

    private Card placed(int arbor, String what, String symbol, double value, String unit) {
        return shelf.given("layout.%s-%d".formatted(what, arbor + 1), symbol, value, unit, LAYOUT);
    }

    /** The torque that friction of its own reactions leaves just enough, found by putting it in again and again. */
    private static double solved(double... in) {
        if (!(Math.max(slope(in[9], in), slope(in[10], in)) < in[8])) {
            return Double.POSITIVE_INFINITY;
        }
        double given = in[0];
        for (int i = 0; i < 10_000 && Double.isFinite(given); i++) {
            double next = in[0] + in[3] + Math.max(rubbing(given, in[9], in), rubbing(given, in[10], in));
            if (Math.abs(next - given) <= 1e-16 * next) {
                return next;
            }
            given = next;
        }
        return given;
    }

    /** Friction torque for each newton at a place. */
    private static double slope(double place, double... in) {
        return in[1] * Math.abs(1 - place / in[4]) + in[2] * Math.abs(place / in[4]);
    }

    private static double rubbing(double given, double place, double... in) {
        double[] places = {in[6], place, in[13], in[15]};
        double[] across = {in[0] / in[5] * Math.cos(in[7]), given / in[8] * Math.cos(in[11]), 0, 0};
        double[] up = {
            in[0] / in[5] * Math.sin(in[7]), given / in[8] * Math.sin(in[11]), -in[12] * in[16], -in[14] * in[16]
        };
        double[] sums = new double[4];
        for (int i = 0; i < places.length; i++) {
            double share = places[i] / in[4];
            sums[0] += across[i] * (1 - share);
            sums[1] += up[i] * (1 - share);
            sums[2] += across[i] * share;
            sums[3] += up[i] * share;
        }
        return in[1] * Math.hypot(sums[0], sums[1]) + in[2] * Math.hypot(sums[2], sums[3]);
    }

    private static String word(Criterion criterion) {
        return criterion.name().toLowerCase(Locale.ROOT);
    }
}
