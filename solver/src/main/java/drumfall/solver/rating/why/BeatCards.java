// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.power.answers.Coasting;
import drumfall.solver.power.books.BookEntry;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.power.books.Place;
import drumfall.solver.power.books.PowerBooks;
import drumfall.solver.power.pendulum.FiniteArc;

/** Cards of one beat under a weight: the arc that it keeps, where the escape wheel's work goes, how long the arc lasts. */
final class BeatCards {
    private static final String BEAT = "the escape wheel's work of one beat; our own derivation";
    private static final int HALVINGS = 80;

    private final CardShelf shelf;
    private final WhereFromBook rated;
    private final LoadedClock clock;
    private final PowerBooks books;

    BeatCards(CardShelf shelf, WhereFromBook rated, LoadedClock clock, PowerBooks books) {
        this.shelf = shelf;
        this.rated = rated;
        this.clock = clock;
        this.books = books;
    }

    void make() {
        Card arc = arc();
        Card loss = loss(arc);
        Card torque = torque();
        Card beat = rated("beat");
        Card turn = rated("working-turn");
        Card efficiency = shelf.get("impulse-efficiency-set");
        entry(Place.DROP, "P_d = M_e d / t", in -> in[0] * in[1] / in[2], torque, rated("brief.escapement.drop"), beat);
        entry(
                Place.IMPULSE,
                "P_i = M_e δ (1 − η_i) / t",
                in -> in[0] * in[1] * (1 - in[2]) / in[3],
                torque,
                turn,
                efficiency,
                beat);
        entry(
                Place.INERTIA,
                "P_n = M_e δ η_i i / t",
                in -> in[0] * in[1] * in[2] * in[3] / in[4],
                torque,
                turn,
                efficiency,
                rated("brief.escapement.inertiaShare"),
                beat);
        entry(
                Place.LOCKING,
                "P_l = M_e µ_p (r_p / r_w) (2 A − λ) / t",
                in -> in[0] * in[1] * in[2] / in[3] * (2 * in[4] - in[5]) / in[6],
                torque,
                friction(),
                rated("pallet-radius"),
                rated("brief.escapement.wheelRadius"),
                arc,
                rated("brief.escapement.lift"),
                beat);
        entry(
                Place.PALLET_ARBOR,
                "P_f = 2 A M_f / t",
                in -> 2 * in[0] * in[1] / in[2],
                arc,
                rated("brief.escapement.palletArborTorque"),
                beat);
        Card pendulum = entry(Place.PENDULUM, "P_b = E_b / t", in -> in[0] / in[1], loss, beat);
        shelf.figure(
                "delivered",
                "P_b/P",
                pendulum.value() / books.weightPower(),
                "1",
                "what the pendulum gets of the weight's power",
                in -> in[0] / in[1],
                CardShelf.OUR_OWN,
                pendulum,
                shelf.get("weight-power-set"));
        coasting(arc, beat);
    }

    private Card rated(String name) {
        return rated.card(name)
                .orElseThrow(() -> new IllegalStateException("The rating has no card (%s).".formatted(name)));
    }

    private Card torque() {
        return shelf.get("torque-handed-on-%d".formatted(clock.train().meshes().size() + 1));
    }

    private Card friction() {
        return shelf.set(
                "pallet-friction-set", "µ_p", clock.movement().escapement().friction(), "1", "/friction/pallets/low");
    }

    private Card quality() {
        return shelf.set("quality-set", "Q", clock.movement().pendulum().quality(), "1", "/pendulum/quality/low");
    }

    private Card impulse() {
        return shelf.figure(
                "impulse-efficiency-set",
                "η_i",
                clock.movement().escapement().with(clock.train().escapeTeeth()).impulseEfficiency(),
                "1",
                "η_i = tan γ / tan(γ + φ), tan γ = r_p λ / (r_w δ), φ = atan µ_p",
                in -> {
                    double wedge = Math.atan(in[0] * in[1] / (in[2] * in[3]));
                    return Math.tan(wedge) / Math.tan(wedge + Math.atan(in[4]));
                },
                "the impulse face as a wedge; textbook statics",
                rated("pallet-radius"),
                rated("brief.escapement.lift"),
                rated("brief.escapement.wheelRadius"),
                rated("working-turn"),
                friction());
    }

    private Card arc() {
        return shelf.figure(
                "arc-set",
                "A",
                books.semiArc(),
                "rad",
                "M_e (δ η_i (1 − i) − µ_p (r_p / r_w) (2 A − λ)) − 2 A M_f = π E(A) / Q, solved for A from e up",
                BeatCards::solved,
                "balance of energy over one beat, each mesh at its work mean; our own derivation",
                torque(),
                rated("working-turn"),
                impulse(),
                rated("brief.escapement.inertiaShare"),
                friction(),
                rated("pallet-radius"),
                rated("brief.escapement.wheelRadius"),
                rated("brief.escapement.lift"),
                rated("brief.escapement.palletArborTorque"),
                quality(),
                rated("escape-angle"),
                rated("beat"),
                rated("gravity"),
                rated("brief.pendulum.bobMass"),
                rated("brief.pendulum.rodMass"));
    }

    /** The surplus of a beat falls with the arc, so halving finds its one root; a quarter turn is beyond every clock. */
    private static double solved(double... in) {
        double low = in[10];
        double high = Math.PI / 2;
        for (int i = 0; i < HALVINGS; i++) {
            double arc = (low + high) / 2;
            double gain = in[1] * in[2] * (1 - in[3]) - in[4] * in[5] / in[6] * (2 * arc - in[7]);
            double surplus = in[0] * gain - 2 * arc * in[8] - lost(arc, in[9], in[11], in[12], in[13], in[14]);
            if (surplus >= 0) {
                low = arc;
            } else {
                high = arc;
            }
        }
        return low;
    }

    /** Energy lost in a beat: arc, quality, beat, gravity, masses of bob and rod. */
    private static double lost(double... in) {
        double perRadian = in[2] / (Math.PI * FiniteArc.periodRatio(in[0]));
        double length = in[3] * perRadian * perRadian;
        double both = in[4] + in[5] / 2;
        double moment = length * both * both / (in[4] + in[5] / 3);
        return Math.PI / in[1] * moment * in[3] * 2 * Math.pow(Math.sin(in[0] / 2), 2);
    }

    private Card loss(Card arc) {
        double seconds = clock.train().secondsPerBeat();
        return shelf.figure(
                "pendulum-loss-set",
                "E_b",
                at(Place.PENDULUM) * seconds,
                "J",
                "E_b = π m h g (1 − cos A) / Q, m h = L (m_b + m_r/2)² / (m_b + m_r/3), L = g (t / (π C(A)))²",
                BeatCards::lost,
                "textbook: the quality factor is 2π over the share of energy lost in a period",
                arc,
                quality(),
                rated("beat"),
                rated("gravity"),
                rated("brief.pendulum.bobMass"),
                rated("brief.pendulum.rodMass"));
    }

    private double at(Place place) {
        return books.entries().stream()
                .filter(entry -> entry.place() == place)
                .mapToDouble(BookEntry::power)
                .findFirst()
                .orElseThrow();
    }

    private Card entry(Place place, String text, Formula.Function function, Card... inputs) {
        String symbol = text.substring(0, text.indexOf(' '));
        return shelf.figure(WhereFromPower.name(place, 0), symbol, at(place), "W", text, function, BEAT, inputs);
    }

    private void coasting(Card arc, Card beat) {
        shelf.figure(
                "coasting",
                "t_c",
                Coasting.of(clock, books.semiArc()).seconds(),
                "s",
                "t_c = t (2 Q / π) ln(A / e)",
                in -> Math.max(0, in[0] * 2 * in[1] / Math.PI * Math.log(in[2] / in[3])),
                "the arc fades by itself down to where a tooth escapes, the train pushing nothing while it is wound;"
                        + " textbook decay",
                beat,
                quality(),
                arc,
                rated("escape-angle"));
    }
}
