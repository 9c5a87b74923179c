// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Brief.ArborBuild;
import drumfall.solver.brief.Brief.ArborKind;
import drumfall.solver.brief.Brief.BearingPlaces;
import drumfall.solver.power.ArborFriction;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import drumfall.solver.rating.TrainRater;
import java.util.Locale;

/**
 * Cards of an arbor role's friction under one criterion: slopes at wheel and pinion, and what stands.
 *
 * <p>They retrace how a build of the brief becomes supports and slopes.
 */
final class ArborCards {
    private static final String STATICS = "moment balance on two supports; textbook statics";

    private final CardShelf shelf;
    private final TrainRater rater;
    private final Brief brief;
    private final ArborRole role;
    private final Criterion criterion;
    private final ArborBuild build;
    private final String pointer;
    private final LoadCards loads;

    ArborCards(CardShelf shelf, TrainRater rater, ArborRole role, Criterion criterion) {
        this.shelf = shelf;
        this.rater = rater;
        this.brief = rater.brief();
        this.role = role;
        this.criterion = criterion;
        this.build = rater.build(role);
        this.pointer = "/arbors/" + role.name().toLowerCase(Locale.ROOT);
        this.loads = new LoadCards(shelf, rater, role);
    }

    /** Name of a card of this role and criterion. */
    static String name(String what, ArborRole role, Criterion criterion) {
        return "%s-%s-%s"
                .formatted(
                        what,
                        role.name().toLowerCase(Locale.ROOT),
                        criterion.name().toLowerCase(Locale.ROOT));
    }

    static Card middle(CardShelf shelf, String name, String symbol, String pointer, Brief.FrictionBand band) {
        Card low = shelf.brief(symbol + "_low", pointer + "/low", band.low());
        Card high = shelf.brief(symbol + "_high", pointer + "/high", band.high());
        return shelf.cards().containsKey(name)
                ? shelf.get(name)
                : shelf.figure(
                        name,
                        symbol,
                        low.value() * 0.5 + high.value() * 0.5,
                        "1",
                        "middle of its band",
                        in -> (in[0] + in[1]) / 2,
                        "common practice, no source",
                        low,
                        high);
    }

    void make() {
        Card front =
                support("front", build.bearings() == BearingPlaces.FRONT || build.bearings() == BearingPlaces.BOTH);
        Card rear = support("rear", build.bearings() == BearingPlaces.REAR || build.bearings() == BearingPlaces.BOTH);
        Card slope = slope("slope-wheel", friction().wheelSlope(), front, rear);
        slope("slope-pinion", friction().pinionSlope(), front, rear);
        standing(front, rear, slope);
    }

    private ArborFriction friction() {
        return rater.movement().regime(criterion).arbor(role);
    }

    /** Static friction is a factor on kinetic friction. */
    private Card factor() {
        return criterion == Criterion.RUNNING
                ? shelf.given("kinetic-factor", "f", 1, "1", "kinetic friction as it is")
                : shelf.brief("f", "/friction/staticFactor", brief.friction().staticFactor());
    }

    private Card boreFriction() {
        return middle(
                shelf, "bore-friction", "µ", "/friction/bores", brief.friction().bores());
    }

    private Card support(String where, boolean rolls) {
        Card diameter = shelf.brief("d", pointer + "/diameter", build.diameter());
        Card friction = rolls
                ? shelf.brief(
                        "µ_r",
                        "/arbors/bearing/friction",
                        brief.arbors().bearing().friction())
                : boreFriction();
        return shelf.figure(
                name("slope-" + where, role, criterion),
                "s_" + where,
                friction.value() * factor().value() * diameter.value() / 2,
                "m",
                "s = µ f d / 2",
                in -> in[0] * in[1] * in[2] / 2,
                rolls
                        ? "JTEKT/Koyo, Ball and Roller Bearings, table 8-1: M = µ P d / 2"
                        : "Coulomb friction at the rod",
                friction,
                factor(),
                diameter);
    }

    private Card slope(String what, double value, Card front, Card rear) {
        return shelf.figure(
                name(what, role, criterion),
                "s",
                value,
                "m",
                "s = max(s_front, s_rear), the worst place between the supports",
                in -> Math.max(in[0], in[1]),
                STATICS,
                front,
                rear);
    }

    /** Drag of bearings, the hands on the centre arbor, and the weight of all that no train decides. */
    private void standing(Card front, Card rear, Card slope) {
        Card bearings = shelf.given(
                name("bearing-count", role, criterion),
                "n",
                build.bearings().count(),
                "1",
                "the brief's build of the arbor");
        Card drag = shelf.brief(
                "M_0", "/arbors/bearing/drag", brief.arbors().bearing().drag());
        Card hands = role == ArborRole.CENTRE
                ? shelf.brief("M_h", "/hands/torque", brief.hands().torque())
                : shelf.given("no-hands", "M_h", 0, "N m", "the centre arbor alone drives the hands");
        shelf.figure(
                name("standing", role, criterion),
                "M_s",
                friction().standing(),
                "N m",
                "M_s = n M_0 f + M_h + s (w_r + w_s − w_b) + M_d",
                in -> in[0] * in[1] * in[2] + in[3] + in[4] * (in[5] + in[6] - in[7]) + in[8],
                CardShelf.OUR_OWN,
                bearings,
                drag,
                factor(),
                hands,
                slope,
                loads.rod(),
                loads.spacers(),
                loads.bores(),
                dial(front, rear));
    }

    /** What the weight of motion work and hands takes; on a rod that stands still they turn as a bore on it does. */
    private Card dial(Card front, Card rear) {
        if (role != ArborRole.CENTRE) {
            return shelf.given("no-dial", "M_d", 0, "N m", "the centre arbor alone carries the hands");
        }
        String name = name("dial-torque", role, criterion);
        double value = rater.dialTorque(criterion);
        if (build.kind() == ArborKind.TURNING) {
            return loads.dialTorque(name, value, front, rear);
        }
        return shelf.figure(
                name,
                "M_d",
                value,
                "N m",
                "M_d = µ f d/2 m_h g",
                in -> in[0] * in[1] * in[2] / 2 * in[3] * in[4],
                "Coulomb friction at the rod",
                boreFriction(),
                factor(),
                shelf.brief("d", pointer + "/diameter", build.diameter()),
                loads.dialMass(),
                PendulumCards.gravity(shelf));
    }
}
