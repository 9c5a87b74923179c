// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.power.ArborFriction;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.books.LoadedArbor;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.power.books.PowerBooks;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.Train;
import java.util.function.UnaryOperator;

/** Cards of torques and powers from the weight down to the escape wheel, each mesh at its work mean. */
final class TorqueCards {
    private static final String SET = "friction as it is set";
    private static final String BALANCE = "balance of torques; our own derivation";

    private final CardShelf shelf;
    private final WhereFromBook rated;
    private final LoadedClock clock;
    private final PowerBooks books;
    private final Train train;

    TorqueCards(CardShelf shelf, WhereFromBook rated, LoadedClock clock, PowerBooks books) {
        this.shelf = shelf;
        this.rated = rated;
        this.clock = clock;
        this.books = books;
        this.train = clock.train();
    }

    void make() {
        weight();
        for (int i = 0; i <= train.meshes().size(); i++) {
            speed(i);
            arbor(i);
        }
        power();
        for (int i = 0; i <= train.meshes().size(); i++) {
            taken(i);
        }
    }

    private Card rated(String name) {
        return rated.card(name)
                .orElseThrow(() -> new IllegalStateException("The rating has no card (%s).".formatted(name)));
    }

    private Card gravity() {
        return rated("gravity");
    }

    private void weight() {
        Card weight = shelf.given("weight-set", "W", books.weight(), "kg", "the weight set");
        boolean single = train.reeving() == Reeving.SINGLE;
        double tension = clock.movement().tensionUnder(books.weight(), train.reeving());
        if (single) {
            shelf.figure(
                    "tension-set",
                    "S",
                    tension,
                    "N",
                    "S = W g",
                    in -> in[0] * in[1],
                    "a line that hangs straight",
                    weight,
                    gravity());
        } else {
            shelf.figure(
                    "tension-set",
                    "S",
                    tension,
                    "N",
                    "S = W g η / (1 + η)",
                    in -> in[0] * in[1] * in[2] / (1 + in[2]),
                    "Ball, Experimental Mechanics, lecture VI: a pulley passes on a share of the pull",
                    weight,
                    gravity(),
                    rated("brief.line.pulleyEfficiency"));
        }
    }

    private Card speed(int i) {
        return shelf.figure(
                "speed-%d".formatted(i + 1),
                "ω_%d".formatted(i + 1),
                clock.running().arbors().get(i).speed(),
                "rad/s",
                "ω = 2π / T",
                in -> 2 * Math.PI / in[0],
                CardShelf.COUNTS,
                rated(RunCards.turnName(i)));
    }

    /** What an arbor is given and what it hands on. */
    private void arbor(int i) {
        Card given = i == 0 ? first() : throughMesh(i - 1);
        LoadedArbor arbor = clock.running().arbors().get(i);
        ArborFriction friction = arbor.friction();
        UnaryOperator<String> at = what -> "%s-set-%d".formatted(what, i + 1);
        boolean last = i == train.meshes().size();
        shelf.figure(
                "torque-handed-on-%d".formatted(i + 1),
                "M_out",
                books.torques().get(i).out(),
                "N m",
                "M_out = (M_in (1 − s_p / a_p) − s_p m_p g − s_w m_w g − M_s) / (1 + s_w / a_w)",
                in -> (in[0] * (1 - in[1] / in[2]) - in[1] * in[3] * in[7] - in[4] * in[6] * in[7] - in[8])
                        / (1 + in[4] / in[5]),
                "friction of forces and weights in the least favourable directions; our own derivation",
                given,
                shelf.given(at.apply("slope-pinion"), "s_p", friction.pinionSlope(), "m", SET),
                rated(i == 0 ? "line-arm" : "pinion-arm-%d".formatted(i)),
                rated(i == 0 ? "drum-mass" : "pinion-mass-%d".formatted(i)),
                shelf.given(at.apply("slope-wheel"), "s_w", friction.wheelSlope(), "m", SET),
                rated(last ? "brief.escapement.wheelRadius" : "wheel-arm-%d".formatted(i + 1)),
                rated(last ? "escape-wheel-mass" : "wheel-mass-%d".formatted(i + 1)),
                gravity(),
                shelf.given(at.apply("standing"), "M_s", friction.standing(), "N m", SET + ", and what hands take"));
    }

    private Card first() {
        return shelf.figure(
                "torque-given-1",
                "M_in",
                books.torques().get(0).given(),
                "N m",
                "M_in = S r_l",
                in -> in[0] * in[1],
                BALANCE,
                shelf.get("tension-set"),
                rated("line-arm"));
    }

    private Card throughMesh(int mesh) {
        return shelf.figure(
                "torque-given-%d".formatted(mesh + 2),
                "M_in",
                books.torques().get(mesh + 1).given(),
                "N m",
                "M_in = M_out p η / z",
                in -> in[0] * in[1] * in[2] / in[3],
                BALANCE,
                shelf.get("torque-handed-on-%d".formatted(mesh + 1)),
                rated("train.pinion-%d".formatted(mesh + 1)),
                mean(mesh),
                rated("train.wheel-%d".formatted(mesh + 1)));
    }

    private Card mean(int mesh) {
        return shelf.given(
                "mesh-mean-%d".formatted(mesh + 1),
                "η",
                clock.running().meshes().get(mesh).curve().mean(),
                "1",
                "work mean over a pitch of the drawn teeth, friction as it is set");
    }

    private void power() {
        Card power = shelf.figure(
                "weight-power-set",
                "P",
                books.weightPower(),
                "W",
                "P = W g r_l ω_1 / k",
                in -> in[0] * in[1] * in[2] * in[3] / in[4],
                "work over time",
                shelf.get("weight-set"),
                gravity(),
                rated("line-arm"),
                shelf.get("speed-1"),
                rated("train.falls"));
        if (train.reeving() != Reeving.SINGLE) {
            double efficiency = clock.movement().pulleyEfficiency();
            shelf.figure(
                    "power-pulley-1",
                    "P_p",
                    books.weightPower() * (1 - efficiency) / (1 + efficiency),
                    "W",
                    "P_p = P (1 − η) / (1 + η)",
                    in -> in[0] * (1 - in[1]) / (1 + in[1]),
                    "of two falls that carry 1 and η, the drum's has the η; our own derivation",
                    power,
                    rated("brief.line.pulleyEfficiency"));
        }
    }

    private void taken(int i) {
        LoadedArbor arbor = clock.running().arbors().get(i);
        boolean centre = arbor.role() == ArborRole.CENTRE;
        double hands = centre ? clock.hands() : 0;
        double bores = arbor.taken(
                        books.torques().get(i).given(), books.torques().get(i).out())
                - hands;
        Card in = shelf.get("torque-given-%d".formatted(i + 1));
        Card out = shelf.get("torque-handed-on-%d".formatted(i + 1));
        Card speed = shelf.get("speed-%d".formatted(i + 1));
        Card torque = centre ? rated("brief.hands.torque") : rated("no-hands");
        shelf.figure(
                "power-bores-%d".formatted(i + 1),
                "P_b",
                bores * arbor.speed(),
                "W",
                "P_b = (M_in − M_out − M_h) ω",
                x -> (x[0] - x[1] - x[2]) * x[3],
                "what the arbor is given and does not hand on; our own derivation",
                in,
                out,
                torque,
                speed);
        if (centre) {
            shelf.figure(
                    "power-hands-%d".formatted(i + 1),
                    "P_h",
                    hands * arbor.speed(),
                    "W",
                    "P_h = M_h ω",
                    x -> x[0] * x[1],
                    "work over time",
                    torque,
                    speed);
        }
        if (i < train.meshes().size()) {
            shelf.figure(
                    "power-mesh-%d".formatted(i + 1),
                    "P_m",
                    out.value() * arbor.speed() * (1 - mean(i).value()),
                    "W",
                    "P_m = M_out ω (1 − η)",
                    x -> x[0] * x[1] * (1 - x[2]),
                    "what the teeth rub away over a pitch; our own derivation",
                    out,
                    speed,
                    mean(i));
        }
    }
}
