// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.brief.Brief;
import drumfall.solver.parts.RatchetForm;
import drumfall.solver.parts.RatchetSize;
import drumfall.solver.rating.BriefParts;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.DemandFigure;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;

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
                toothDepth(),
                thickness());
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
        RatchetForm form = rater.limits().ratchet().form(shelf.get("line-arm").value());
        Card bore =
                shelf.brief("d", "/arbors/drum/diameter", brief.arbors().drum().diameter());
        if (!form.hollow()) {
            return shelf.figure(
                    "ratchet-root",
                    "r_0",
                    form.rootRadius(),
                    "m",
                    "r_0 = max(d/2 + 4.5 e + d_p, 2 e n / π)",
                    in -> Math.max(in[0] / 2 + 4.5 * in[1] + in[2], 2 * in[1] * in[3] / Math.PI),
                    MADE,
                    bore,
                    nozzle(),
                    pin(),
                    teeth());
        }
        return shelf.figure(
                "ratchet-root",
                "r_0",
                form.rootRadius(),
                "m",
                "r_0 = max(d/2 + w_d + 4.5 e + d_p, 2 e n / π)",
                in -> Math.max(in[0] / 2 + in[1] + 4.5 * in[2] + in[3], 2 * in[2] * in[4] / Math.PI),
                MADE,
                bore,
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

    private Card toothDepth() {
        return brief.drum()
                .ratchet()
                .map(given -> shelf.brief("h", "/drum/ratchet/toothDepth", given.toothDepth()))
                .orElseGet(() -> shelf.given("ratchet-tooth-depth", "h", size.toothDepth(), "m", CUSTOMARY));
    }

    private Card thickness() {
        return brief.drum()
                .ratchet()
                .map(given -> shelf.brief("b", "/drum/ratchet/thickness", given.thickness()))
                .orElseGet(this::thicknessInItsRoom);
    }

    /** The customary thickness, or what the click space leaves if that is less. */
    private Card thicknessInItsRoom() {
        double customary = RatchetSize.CUSTOMARY.thickness();
        boolean limited = size.thickness() < customary;
        return shelf.figure(
                "ratchet-thickness",
                "b",
                size.thickness(),
                "m",
                "b = min(b_0, s − e_l)",
                in -> Math.min(in[0], in[1] - in[2]),
                limited
                        ? "the click space less a layer of play, which is thinner than the customary ratchet"
                        : "the customary ratchet, for which the click space less a layer of play has room",
                shelf.given("ratchet-customary-thickness", "b_0", customary, "m", CUSTOMARY),
                shelf.brief("s", "/drum/clickSpace", brief.drum().clickSpace()),
                shelf.brief("e_l", "/printer/layer", brief.printer().layer()));
    }
}
