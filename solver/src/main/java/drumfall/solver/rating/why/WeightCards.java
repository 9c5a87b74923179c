// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.brief.Brief;
import drumfall.solver.power.ArborNeed;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import drumfall.solver.power.Movement;
import drumfall.solver.power.PowerPath;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.teeth.EfficiencyCurve;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.Train;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Cards of the walk from the escape wheel to the weight, under both criteria. */
final class WeightCards {
    private static final String WALK =
            "balance of torques with least favourable directions, so that it holds wherever the arbors stand; our own derivation";
    private static final String DRAWN = "contact of the drawn teeth under friction";
    private static final EfficiencyCurve NOTHING = EfficiencyCurve.of(0);

    private final CardShelf shelf;
    private final TrainRater rater;
    private final Brief brief;
    private final Movement movement;
    private final Rating rating;
    private final Train train;

    WeightCards(CardShelf shelf, TrainRater rater, Rating rating) {
        this.shelf = shelf;
        this.rater = rater;
        this.brief = rater.brief();
        this.movement = rater.movement();
        this.rating = rating;
        this.train = rating.train();
    }

    void make() {
        Card running = walk(Criterion.RUNNING, rating.weight().running());
        Card binding = walk(Criterion.BINDING, rating.weight().binding());
        Card least = shelf.figure(
                "least-weight",
                "W",
                rating.weight().leastWeight(),
                "kg",
                "W = max(W_running, W_binding)",
                in -> Math.max(in[0], in[1]),
                "both criteria must be met; our own derivation",
                running,
                binding);
        shelf.figure(
                "recommended-weight",
                "W_r",
                rating.recommendedWeight(),
                "kg",
                "W_r = W (1 + reserve)",
                in -> in[0] * (1 + in[1]),
                "common practice, no source: 30 to 50 % over the least",
                least,
                shelf.brief("reserve", "/weight/reserve", brief.weight().reserve()));
    }

    private Card walk(Criterion criterion, PowerPath path) {
        Stream.of(ArborRole.values())
                .filter(role -> roles().contains(role))
                .forEach(role -> new ArborCards(shelf, rater, role, criterion).make());
        int last = train.meshes().size();
        Card out = asked(criterion, path);
        for (int arbor = last; arbor > 0; arbor--) {
            Card load = load(criterion, path, arbor, out);
            Card passed = passed(criterion, path, arbor - 1);
            out = out(criterion, path, arbor, drive(criterion, arbor, load), passed);
        }
        return weight(criterion, path, load(criterion, path, 0, out));
    }

    private List<ArborRole> roles() {
        return IntStream.rangeClosed(0, train.meshes().size())
                .mapToObj(arbor -> WeightWalk.role(train, arbor))
                .distinct()
                .toList();
    }

    private static String word(Criterion criterion) {
        return criterion.name().toLowerCase(Locale.ROOT);
    }

    private static String name(String what, int arbor, Criterion criterion) {
        return "%s-%d-%s".formatted(what, arbor + 1, word(criterion));
    }

    private Card asked(Criterion criterion, PowerPath path) {
        Card need = shelf.get("escape-torque");
        double value = path.arbors().get(train.meshes().size()).out();
        String name = name("torque-out", train.meshes().size(), criterion);
        return criterion == Criterion.RUNNING
                ? shelf.figure(name, "M_out", value, "N m", "M_out = M_e", in -> in[0], "the arc is kept", need)
                : shelf.figure(
                        name,
                        "M_out",
                        value,
                        "N m",
                        "M_out = M_e · reserve",
                        in -> in[0] * in[1],
                        "a share of the need must be left; common practice, no source",
                        need,
                        shelf.brief(
                                "reserve",
                                "/weight/bindingReserve",
                                brief.weight().bindingReserve()));
    }

    private Card load(Criterion criterion, PowerPath path, int arbor, Card out) {
        ArborRole role = WeightWalk.role(train, arbor);
        boolean escape = arbor == train.meshes().size();
        return shelf.figure(
                name("torque-load", arbor, criterion),
                "M_l",
                path.arbors().get(arbor).load(),
                "N m",
                "M_l = M_out (1 + s/a) + s m g + M_s",
                in -> in[0] * (1 + in[1] / in[2]) + in[1] * in[3] * in[4] + in[5],
                WALK,
                out,
                shelf.get(ArborCards.name("slope-wheel", role, criterion)),
                escape
                        ? shelf.brief(
                                "a",
                                "/escapement/wheelRadius",
                                brief.escapement().wheelRadius())
                        : arm("wheel", arbor, movement.wheelArm(train.meshes().get(arbor))),
                shelf.get(escape ? "escape-wheel-mass" : "wheel-mass-%d".formatted(arbor + 1)),
                PendulumCards.gravity(shelf),
                shelf.get(ArborCards.name("standing", role, criterion)));
    }

    private Card arm(String gear, int mesh, double metres) {
        String name = "%s-arm-%d".formatted(gear, mesh + 1);
        if (shelf.cards().containsKey(name)) {
            return shelf.get(name);
        }
        double module = train.meshes().get(mesh).module().metres();
        return shelf.figure(
                name,
                "a",
                metres,
                "m",
                "a = m · arm at module 1",
                in -> in[0] * in[1],
                "smallest arm of the mesh force on its path; " + DRAWN,
                RunCards.module(shelf, train, mesh),
                shelf.given("drawn-" + name, "a_1", metres / module, "1", DRAWN));
    }

    private Card drive(Criterion criterion, int arbor, Card load) {
        ArborRole role = WeightWalk.role(train, arbor);
        double value = movement.regime(criterion)
                .arbor(role)
                .drive(
                        load.value(),
                        movement.pinionArm(train.meshes().get(arbor - 1)),
                        movement.pinionMass(train.meshes().get(arbor - 1)));
        return shelf.figure(
                name("torque-in", arbor, criterion),
                "M_in",
                value,
                "N m",
                "M_in = (M_l + s m g) / (1 − s/a)",
                in -> in[1] < in[2] ? (in[0] + in[1] * in[3] * in[4]) / (1 - in[1] / in[2]) : Double.POSITIVE_INFINITY,
                WALK,
                load,
                shelf.get(ArborCards.name("slope-pinion", role, criterion)),
                arm("pinion", arbor - 1, movement.pinionArm(train.meshes().get(arbor - 1))),
                shelf.get("pinion-mass-%d".formatted(arbor)),
                PendulumCards.gravity(shelf));
    }

    private Card out(Criterion criterion, PowerPath path, int arbor, Card given, Card passed) {
        return shelf.figure(
                name("torque-out", arbor - 1, criterion),
                "M_out",
                path.arbors().get(arbor - 1).out(),
                "N m",
                "M_out = M_in z / (p η)",
                in -> in[0] * in[1] / (in[2] * in[3]),
                WALK,
                given,
                RunCards.toothCount(shelf, train, arbor - 1),
                RunCards.leafCount(shelf, train, arbor - 1),
                passed);
    }

    private Card passed(Criterion criterion, PowerPath path, int mesh) {
        ArborNeed need = path.arbors().get(mesh);
        Card friction = toothFriction(criterion);
        Mesh found = train.meshes().get(mesh);
        if (criterion == Criterion.BINDING) {
            return shelf.figure(
                    "mesh-worst-%d".formatted(mesh + 1),
                    "η",
                    need.passed(),
                    "1",
                    "η = least of the curve over one pitch under friction µ_t",
                    in -> curve(found, in[0]).worst(),
                    DRAWN,
                    friction);
        }
        return shelf.figure(
                "mesh-felt-%d".formatted(mesh + 1),
                "η",
                need.passed(),
                "1",
                "η = least over all phases of the curve averaged with e^(−t/τ)/τ, τ over the pitch T/z",
                in -> curve(found, in[0]).felt(in[1] * in[2] / in[3]),
                DRAWN,
                friction,
                shelf.get("memory"),
                RunCards.toothCount(shelf, train, mesh),
                shelf.get(RunCards.turnName(mesh)));
    }

    private EfficiencyCurve curve(Mesh mesh, double friction) {
        return movement.teeth(mesh).map(teeth -> teeth.curve(friction)).orElse(NOTHING);
    }

    private Card toothFriction(Criterion criterion) {
        Card kinetic = ArborCards.middle(
                shelf,
                "tooth-friction",
                "µ_t",
                "/friction/teeth",
                brief.friction().teeth());
        if (criterion == Criterion.RUNNING) {
            return kinetic;
        }
        return shelf.cards().containsKey("tooth-friction-static")
                ? shelf.get("tooth-friction-static")
                : shelf.figure(
                        "tooth-friction-static",
                        "µ_t",
                        movement.regime(criterion).toothFriction(),
                        "1",
                        "µ_t = µ f",
                        in -> in[0] * in[1],
                        "static over kinetic friction, a band from memory",
                        kinetic,
                        shelf.brief(
                                "f", "/friction/staticFactor", brief.friction().staticFactor()));
    }

    private Card weight(Criterion criterion, PowerPath path, Card load) {
        ArborRole role = WeightWalk.role(train, 0);
        Card tension = shelf.figure(
                "tension-" + word(criterion),
                "S",
                path.tension(),
                "N",
                "S = (M_l + s m_d g) / (r_l − s)",
                in -> in[1] < in[4] ? (in[0] + in[1] * in[2] * in[3]) / (in[4] - in[1]) : Double.POSITIVE_INFINITY,
                WALK,
                load,
                shelf.get(ArborCards.name("slope-pinion", role, criterion)),
                shelf.get("drum-mass"),
                PendulumCards.gravity(shelf),
                shelf.get("line-arm"));
        String name = "weight-" + word(criterion);
        if (train.reeving() == Reeving.SINGLE) {
            return shelf.figure(
                    name,
                    "W",
                    path.weight(),
                    "kg",
                    "W = S / g",
                    in -> in[0] / in[1],
                    "a line that hangs straight",
                    tension,
                    PendulumCards.gravity(shelf));
        }
        return shelf.figure(
                name,
                "W",
                path.weight(),
                "kg",
                "W = S (1 + η) / (η g)",
                in -> in[0] * (1 + in[1]) / (in[1] * in[2]),
                "Ball, Experimental Mechanics, lecture VI: a pulley passes on a share of the pull",
                tension,
                shelf.brief("η", "/line/pulleyEfficiency", brief.line().pulleyEfficiency()),
                PendulumCards.gravity(shelf));
    }
}
