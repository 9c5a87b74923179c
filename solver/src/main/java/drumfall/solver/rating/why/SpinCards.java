// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.power.ArborFriction;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.answers.FreeSpin;
import drumfall.solver.power.books.LoadedArbor;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.train.Train;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Cards of how long each arbor spins by itself after a flick, and of the one that stands first. */
final class SpinCards {
    private static final String SET = "friction as it is set";

    private final CardShelf shelf;
    private final WhereFromBook rated;
    private final LoadedClock clock;
    private final Train train;
    private final List<FreeSpin> spins;
    private final InertiaCards inertias;

    SpinCards(CardShelf shelf, WhereFromBook rated, LoadedClock clock) {
        this.shelf = shelf;
        this.rated = rated;
        this.clock = clock;
        this.train = clock.train();
        this.spins = FreeSpin.all(clock);
        this.inertias = new InertiaCards(shelf, rated, clock);
    }

    /** The card of the arbor that stands first. */
    Card make() {
        Card[] all = IntStream.range(0, spins.size()).mapToObj(this::spin).toArray(Card[]::new);
        return shelf.figure(
                "free-spin",
                "t",
                Arrays.stream(all).mapToDouble(Card::value).min().orElseThrow(),
                "s",
                "the least of all arbors",
                in -> Arrays.stream(in).min().orElseThrow(),
                "a free bore lets a wheel turn 10 to 20 s: common practice, no source",
                all);
    }

    private Card rated(String name) {
        return rated.card(name)
                .orElseThrow(() -> new IllegalStateException("The rating has no card (%s).".formatted(name)));
    }

    private boolean last(int i) {
        return i == train.meshes().size();
    }

    private Card wheelRadius(int i) {
        return last(i) ? rated("brief.escapement.wheelRadius") : pitchRadius("wheel", "r_w", i + 1);
    }

    private Card drivenRadius(int i) {
        if (i > 0) {
            return pitchRadius("pinion", "r_p", i);
        }
        Card diameter = rated("train.drum-diameter");
        return shelf.figure(
                "drum-radius", "r_p", diameter.value() / 2, "m", "r_p = D / 2", in -> in[0] / 2, "bare drum", diameter);
    }

    private Card pitchRadius(String gear, String symbol, int mesh) {
        Card module = rated("train.module-%d".formatted(mesh));
        Card count = rated("train.%s-%d".formatted(gear, mesh));
        return shelf.figure(
                "%s-radius-%d".formatted(gear, mesh),
                symbol,
                module.value() * count.value() / 2,
                "m",
                "%s = %s %s / 2".formatted(symbol, module.symbol(), count.symbol()),
                in -> in[0] * in[1] / 2,
                "pitch circle",
                module,
                count);
    }

    private Card spin(int i) {
        FreeSpin spin = spins.get(i);
        Card wheel = wheelRadius(i);
        Card driven = drivenRadius(i);
        Card wheelMass = rated(last(i) ? "escape-wheel-mass" : "wheel-mass-%d".formatted(i + 1));
        Card drivenMass = rated(i == 0 ? "drum-mass" : "pinion-mass-%d".formatted(i));
        Card inertia = shelf.figure(
                "inertia-%d".formatted(i + 1),
                "I",
                spin.inertia(),
                "kg m²",
                "I = I_w + I_p",
                in -> in[0] + in[1],
                "parts as they are made; rod and spacers are too near to the axis to count",
                inertias.wheel(i),
                inertias.driven(i));
        return shelf.figure(
                "free-spin-%d".formatted(i + 1),
                "t_%d".formatted(i + 1),
                spin.seconds(),
                "s",
                "t = I v / (M max(r_w, r_p)), nothing in mesh and hands off",
                in -> in[0] * in[1] / (in[2] * Math.max(in[3], in[4])),
                "balance of angular momentum, air left out",
                inertia,
                shelf.given("rim-speed", "v", FreeSpin.USUAL_RIM_SPEED, "m/s", "a modest flick, from memory"),
                torque(i, wheelMass, drivenMass),
                wheel,
                driven);
    }

    private Card torque(int i, Card wheelMass, Card drivenMass) {
        LoadedArbor arbor = clock.running().arbors().get(i);
        ArborFriction friction = arbor.friction();
        String at = "-free-%d".formatted(i + 1);
        boolean centre = arbor.role() == ArborRole.CENTRE;
        return shelf.figure(
                "torque" + at,
                "M",
                spins.get(i).torque(),
                "N m",
                "M = s_w m_w g + s_p m_p g + M_s − M_h − M_d",
                in -> (in[0] * in[1] + in[2] * in[3]) * in[4] + in[5] - in[6] - in[7],
                "friction under the parts' own weight; textbook statics",
                shelf.given("slope-wheel" + at, "s_w", friction.wheelSlope(), "m", SET),
                wheelMass,
                shelf.given("slope-pinion" + at, "s_p", friction.pinionSlope(), "m", SET),
                drivenMass,
                rated("gravity"),
                shelf.given("standing" + at, "M_s", friction.standing(), "N m", SET + ", and what hands take"),
                rated(centre ? "brief.hands.torque" : "no-hands"),
                centre
                        ? shelf.given(
                                "dial" + at, "M_d", clock.dial(), "N m", SET + ": the weight of motion work and hands")
                        : rated("no-dial"));
    }
}
