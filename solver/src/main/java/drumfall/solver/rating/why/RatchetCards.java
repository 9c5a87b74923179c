// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Ratchet;
import drumfall.solver.parts.RatchetSize;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.rating.BriefParts;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.DemandFigure;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import java.util.Optional;
import java.util.function.Function;

/** Cards of the ratchet and its click under the recommended weight at rest. */
final class RatchetCards {
    private static final String MADE =
            "as it is printed: tube, wall, pins, wall, teeth two walls apart; our own derivation";
    private static final String CUSTOMARY = "a customary size; common practice, no source";

    private final CardShelf shelf;
    private final TrainRater rater;
    private final Brief brief;
    private final Rating rating;
    private final RatchetSize size;

    RatchetCards(CardShelf shelf, TrainRater rater, Rating rating) {
        this.shelf = shelf;
        this.rater = rater;
        this.brief = rater.brief();
        this.rating = rating;
        this.size = BriefParts.ratchet(brief);
    }

    void make() {
        Card root = root();
        Card force = force(root);
        shelf.figure(
                "ratchet-bending",
                "σ_r",
                demanded(),
                "Pa",
                "σ_r = 6 F y / (b t²), t = 2 r_0 sin(π / n), y = 2 e, or h² / (4 (h − 2 e)) if that is over h/2",
                in -> {
                    double thickness = 2 * in[1] * Math.sin(Math.PI / in[2]);
                    return 6 * in[0] * height(2 * in[3], in[4]) / (in[5] * thickness * thickness);
                },
                "W. Lewis, 1892, by way of Shigley's Mechanical Engineering Design, ch. 14; from memory",
                force,
                root,
                teeth(),
                nozzle(),
                typed("ratchet-tooth-depth", "h", "toothDepth", Ratchet::toothDepth, size.toothDepth()),
                typed("ratchet-thickness", "b", "thickness", Ratchet::thickness, size.thickness()));
        shelf.figure(
                "click-pin-shear",
                "τ",
                4 * force.value() / (Math.PI * size.pin() * size.pin()),
                "Pa",
                "τ = 4 F / (π d_p²)",
                in -> 4 * in[0] / (Math.PI * in[1] * in[1]),
                "mean shear of a round pin sheared through once; textbook statics",
                force,
                pin());
    }

    private static double height(double contact, double depth) {
        if (contact <= depth / 2) {
            return contact;
        }
        return contact < depth ? depth * depth / (4 * (depth - contact)) : Double.POSITIVE_INFINITY;
    }

    private double demanded() {
        return rating.demands().stream()
                .filter(figure -> figure.demand() == Demand.RATCHET)
                .mapToDouble(DemandFigure::figure)
                .findFirst()
                .orElseThrow();
    }

    private Card root() {
        return shelf.figure(
                "ratchet-root",
                "r_0",
                rater.limits().ratchet().form().rootRadius(),
                "m",
                "r_0 = max(d/2 + w_d + 4 e + d_p, 2 e n / π)",
                in -> Math.max(in[0] / 2 + in[1] + 4 * in[2] + in[3], 2 * in[2] * in[4] / Math.PI),
                MADE,
                shelf.brief("d", "/arbors/drum/diameter", brief.arbors().drum().diameter()),
                shelf.brief("w_d", "/drum/wall", brief.drum().wall()),
                nozzle(),
                pin(),
                teeth());
    }

    private Card force(Card root) {
        return shelf.figure(
                "ratchet-force",
                "F",
                rater.limits()
                        .ratchet()
                        .force(
                                rating.recommendedWeight(),
                                shelf.get("line-arm").value(),
                                rating.train().reeving()),
                "N",
                "F = W_r g r_l / (k (r_0 + 2 e))",
                in -> in[0] * in[1] * in[2] / (in[3] * (in[4] + 2 * in[5])),
                "moments about the drum, the click half its nose above the root; textbook statics",
                shelf.get("recommended-weight"),
                PendulumCards.gravity(shelf),
                shelf.get("line-arm"),
                shelf.get("train.falls"),
                root,
                nozzle());
    }

    private Card nozzle() {
        return shelf.brief("e", "/printer/nozzle", brief.printer().nozzle());
    }

    private Card pin() {
        return shelf.given("ratchet-pin", "d_p", size.pin(), "m", CUSTOMARY);
    }

    private Card teeth() {
        String source = brief.drum().ratchet().isPresent() ? "the brief" : CUSTOMARY;
        return shelf.given("ratchet-teeth", "n", size.teeth(), "1", source);
    }

    private Card typed(String name, String symbol, String field, Function<Ratchet, Quantity> entry, double customary) {
        Optional<Quantity> given = brief.drum().ratchet().map(entry);
        return given.map(quantity -> shelf.brief(symbol, "/drum/ratchet/" + field, quantity))
                .orElseGet(() -> shelf.given(name, symbol, customary, "m", CUSTOMARY));
    }
}
