// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.brief.Brief;
import drumfall.solver.power.Movement;
import drumfall.solver.power.escape.EscapeNeed;
import drumfall.solver.power.pendulum.FiniteArc;
import drumfall.solver.power.pendulum.Pendulum;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;

/** Cards of the pendulum at the arc that is asked for. */
final class PendulumCards {
    private static final String MECHANICS = "textbook mechanics: thin uniform rod and small bob";

    private final CardShelf shelf;
    private final Brief brief;
    private final Rating rating;
    private final Movement movement;

    PendulumCards(CardShelf shelf, TrainRater rater, Rating rating) {
        this.shelf = shelf;
        this.brief = rater.brief();
        this.rating = rating;
        this.movement = rater.movement();
    }

    void make() {
        arc();
        length();
        energy();
    }

    static Card gravity(CardShelf shelf) {
        return shelf.given("gravity", "g", Pendulum.STANDARD_GRAVITY, "m/s²", "standard gravity, 3rd CGPM (1901)");
    }

    private void arc() {
        Brief.Escapement escapement = brief.escapement();
        Card escape = shelf.figure(
                "escape-angle",
                "e",
                movement.escapement().escapeAngle(),
                "rad",
                "e = (λ + ℓ) / 2",
                in -> (in[0] + in[1]) / 2,
                CardShelf.OUR_OWN,
                shelf.brief("λ", "/escapement/lift", escapement.lift()),
                shelf.brief("ℓ", "/escapement/lock", escapement.lock()));
        Card arc = shelf.figure(
                "semi-arc",
                "A",
                rating.weight().need().semiArc(),
                "rad",
                "A = e + reserve arc",
                in -> in[0] + in[1],
                CardShelf.OUR_OWN,
                escape,
                shelf.brief("A_r", "/escapement/reserveArc", escapement.reserveArc()));
        shelf.figure(
                "period-ratio",
                "C",
                FiniteArc.periodRatio(arc.value()),
                "1",
                "C = 1 / AGM(1, cos(A/2))",
                in -> FiniteArc.periodRatio(in[0]),
                "exact period at a finite arc; J. Denker, Classical Simple Pendulum",
                arc);
    }

    private void length() {
        Pendulum pendulum = movement.pendulum();
        Card length = shelf.figure(
                "pendulum-length",
                "L",
                rating.pendulumLength(),
                "m",
                "L = g (t / (π C))²",
                in -> in[0] * Math.pow(in[1] / (Math.PI * in[2]), 2),
                "textbook: T = 2π √(L/g)",
                gravity(shelf),
                shelf.get("beat"),
                shelf.get("period-ratio"));
        Card bob = shelf.brief("m_b", "/pendulum/bobMass", brief.pendulum().bobMass());
        Card rod = shelf.brief("m_r", "/pendulum/rodMass", brief.pendulum().rodMass());
        Card distance = shelf.figure(
                "bob-distance",
                "l_b",
                pendulum.bobDistance(length.value()),
                "m",
                "l_b = L (m_b + m_r/2) / (m_b + m_r/3), from L = I / (m h)",
                in -> in[0] * (in[1] + in[2] / 2) / (in[1] + in[2] / 3),
                MECHANICS,
                length,
                bob,
                rod);
        shelf.figure(
                "mass-moment",
                "m h",
                pendulum.massMoment(length.value()),
                "kg m",
                "m h = l_b (m_b + m_r/2)",
                in -> in[0] * (in[1] + in[2] / 2),
                MECHANICS,
                distance,
                bob,
                rod);
    }

    private void energy() {
        EscapeNeed need = rating.weight().need();
        Pendulum pendulum = movement.pendulum();
        Card moment = shelf.get("mass-moment");
        Card energy = shelf.figure(
                "pendulum-energy",
                "E",
                pendulum.energy(moment.value() * pendulum.gravity(), need.semiArc()),
                "J",
                "E = m h g (1 − cos A)",
                in -> in[0] * in[1] * 2 * Math.pow(Math.sin(in[2] / 2), 2),
                MECHANICS,
                moment,
                gravity(shelf),
                shelf.get("semi-arc"));
        Card quality =
                middle("quality", "Q", "/pendulum/quality", brief.pendulum().quality());
        shelf.figure(
                "pendulum-loss",
                "E_b",
                need.pendulumLoss(),
                "J",
                "E_b = π E / Q",
                in -> Math.PI * in[0] / in[1],
                "textbook: the quality factor is 2π over the share of energy lost in a period",
                energy,
                quality);
    }

    private Card middle(String name, String symbol, String pointer, Brief.QualityBand band) {
        return shelf.figure(
                name,
                symbol,
                movement.pendulum().quality(),
                "1",
                "middle of its band",
                in -> (in[0] + in[1]) / 2,
                "common practice, no source",
                shelf.brief(symbol + "_low", pointer + "/low", band.low()),
                shelf.brief(symbol + "_high", pointer + "/high", band.high()));
    }
}
