// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.brief.Brief;
import drumfall.solver.power.escape.Deadbeat;
import drumfall.solver.power.escape.EscapeNeed;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;

/** Cards of the deadbeat escapement and of what it needs. */
final class EscapeCards {
    private static final String BECKETT =
            "Beckett, A Rudimentary Treatise on Clocks, Watches and Bells, 8th ed. 1903, p. 97: pallets tangent to the wheel";

    private final CardShelf shelf;
    private final Brief brief;
    private final Rating rating;
    private final Deadbeat deadbeat;

    EscapeCards(CardShelf shelf, TrainRater rater, Rating rating) {
        this.shelf = shelf;
        this.brief = rater.brief();
        this.rating = rating;
        this.deadbeat = rater.movement().escapement().with(rating.train().escapeTeeth());
    }

    void make() {
        geometry();
        impulse();
        gain();
        saturation();
        need();
    }

    private Card teeth() {
        return shelf.train("escape-teeth", "N", rating.train().escapeTeeth(), "1");
    }

    private Card wheelRadius() {
        return shelf.brief("r_w", "/escapement/wheelRadius", brief.escapement().wheelRadius());
    }

    private void geometry() {
        Card half = shelf.figure(
                "half-span",
                "β",
                deadbeat.halfSpan(),
                "rad",
                "β = (⌊span N / 2π − ½⌋ + ½) π / N",
                in -> (Math.floor(in[0] * in[1] / (2 * Math.PI) - 0.5 + 1e-9) + 0.5) * Math.PI / in[1],
                BECKETT,
                shelf.brief("span", "/escapement/palletSpan", brief.escapement().palletSpan()),
                teeth());
        shelf.figure(
                "pallet-radius",
                "r_p",
                deadbeat.palletRadius(),
                "m",
                "r_p = r_w tan β",
                in -> in[0] * Math.tan(in[1]),
                BECKETT,
                wheelRadius(),
                half);
        shelf.figure(
                "working-turn",
                "δ",
                deadbeat.workingTurn(),
                "rad",
                "δ = π / N − d",
                in -> Math.PI / in[0] - in[1],
                CardShelf.OUR_OWN,
                teeth(),
                shelf.brief("d", "/escapement/drop", brief.escapement().drop()));
    }

    private void impulse() {
        Card friction = ArborCards.middle(
                shelf,
                "pallet-friction",
                "µ_p",
                "/friction/pallets",
                brief.friction().pallets());
        Card lift = shelf.brief("λ", "/escapement/lift", brief.escapement().lift());
        shelf.figure(
                "impulse-efficiency",
                "η_i",
                deadbeat.impulseEfficiency(),
                "1",
                "η_i = tan γ / tan(γ + φ), tan γ = r_p λ / (r_w δ), φ = atan µ_p",
                in -> {
                    double wedge = Math.atan(in[0] * in[1] / (in[2] * in[3]));
                    return Math.tan(wedge) / Math.tan(wedge + Math.atan(in[4]));
                },
                "the impulse face as a wedge; textbook statics",
                shelf.get("pallet-radius"),
                lift,
                wheelRadius(),
                shelf.get("working-turn"),
                friction);
    }

    private void gain() {
        shelf.figure(
                "impulse-gain",
                "G",
                deadbeat.gain(rating.weight().need().semiArc()),
                "rad",
                "G = δ η_i (1 − i) − µ_p (r_p / r_w) (2 A − λ)",
                in -> in[0] * in[1] * (1 - in[2]) - in[3] * in[4] / in[5] * (2 * in[6] - in[7]),
                CardShelf.OUR_OWN,
                shelf.get("working-turn"),
                shelf.get("impulse-efficiency"),
                shelf.brief("i", "/escapement/inertiaShare", brief.escapement().inertiaShare()),
                shelf.get("pallet-friction"),
                shelf.get("pallet-radius"),
                wheelRadius(),
                shelf.get("semi-arc"),
                shelf.get("brief.escapement.lift"));
    }

    private void saturation() {
        shelf.figure(
                "saturation-arc",
                "A_sat",
                deadbeat.saturationArc(),
                "rad",
                "A_sat = λ/2 + δ η_i (1 − i) r_w / (2 µ_p r_p)",
                in -> in[0] / 2 + in[1] * in[2] * (1 - in[3]) * in[4] / (2 * in[5] * in[6]),
                CardShelf.OUR_OWN,
                shelf.get("brief.escapement.lift"),
                shelf.get("working-turn"),
                shelf.get("impulse-efficiency"),
                shelf.get("brief.escapement.inertiaShare"),
                wheelRadius(),
                shelf.get("pallet-friction"),
                shelf.get("pallet-radius"));
    }

    private void need() {
        EscapeNeed need = rating.weight().need();
        Card torque = shelf.figure(
                "escape-torque",
                "M_e",
                need.torque(),
                "N m",
                "M_e = (E_b + 2 A M_f) / G",
                in -> in[3] > 0 ? (in[0] + 2 * in[1] * in[2]) / in[3] : Double.POSITIVE_INFINITY,
                "balance of energy over one beat; " + CardShelf.OUR_OWN,
                shelf.get("pendulum-loss"),
                shelf.get("semi-arc"),
                shelf.brief(
                        "M_f",
                        "/escapement/palletArborTorque",
                        brief.escapement().palletArborTorque()),
                shelf.get("impulse-gain"));
        shelf.figure(
                "memory",
                "τ",
                need.memory(),
                "s",
                "τ = (Q/π) t / (1 + 2 (µ_p M_e r_p / r_w + M_f) Q / (π m h g sin A))",
                EscapeCards::memory,
                CardShelf.OUR_OWN,
                shelf.get("quality"),
                shelf.get("beat"),
                shelf.get("pallet-friction"),
                torque,
                shelf.get("pallet-radius"),
                wheelRadius(),
                shelf.get("mass-moment"),
                PendulumCards.gravity(shelf),
                shelf.get("semi-arc"),
                shelf.get("brief.escapement.palletArborTorque"));
    }

    private static double memory(double... in) {
        if (Double.isInfinite(in[3])) {
            return 0;
        }
        double rubbing = in[2] * in[3] * in[4] / in[5] + in[9];
        return in[0] / Math.PI * in[1] / (1 + 2 * rubbing * in[0] / (Math.PI * in[6] * in[7] * Math.sin(in[8])));
    }
}
