// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import drumfall.solver.power.escape.EscapeNeed;
import drumfall.solver.power.escape.HeldArc;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;

/** One escape wheel count: the beats it may keep, what it needs at least, and the least that tails above it need. */
final class EscapeSide {
    private static final double SECONDS_PER_HOUR = 3600;

    /** Bounds are computed by other operations than figures; this is far above their rounding and far below any cell. */
    private static final double ROUNDING = 1e-12;

    final int teeth;
    final HeldArc heldArc;
    final double fewestTurns;
    final double mostTurns;
    final double shortestMemory;
    final double longestMemory;
    private final double torqueConstant;
    private final double torquePerSquare;
    private final HalfRules rules;
    private final List<TailBounds> tails = new ArrayList<>();
    private final List<TailOutlook> outlooks = new ArrayList<>();
    private final List<TailOutlook> lastOutlooks = new ArrayList<>();

    /** What may stand last, the choices of each module apart: together their least figures would belong to no mesh. */
    final List<List<MeshChoice>> lastMeshes = new ArrayList<>();

    /**
     * Works out the side.
     *
     * @param rules what both halves share
     * @param teeth teeth of the escape wheel
     * @param choices what may stand at each place below the centre, from the centre
     * @param cancelled asked often; once true the bounds are cut short and good for nothing
     */
    EscapeSide(HalfRules rules, int teeth, List<List<MeshChoice>> choices, BooleanSupplier cancelled) {
        this.rules = rules;
        this.teeth = teeth;
        this.heldArc = rules.movement.heldArc(teeth);
        double[] beats = rules.limits.roughBeatsPerHour();
        this.fewestTurns = beats[0] / (2 * teeth);
        this.mostTurns = beats[1] / (2 * teeth);
        EscapeNeed shortestBeat = heldArc.need(SECONDS_PER_HOUR / beats[1]);
        this.shortestMemory = shortestBeat.memory() * (1 - ROUNDING);
        this.longestMemory = heldArc.need(SECONDS_PER_HOUR / beats[0]).memory() * (1 + ROUNDING);
        this.torqueConstant = heldArc.need(0).torque();
        this.torquePerSquare = heldArc.need(1).torque() - torqueConstant;
        double running = load(Criterion.RUNNING, 0);
        double binding = load(Criterion.BINDING, 0);
        tails.add(TailBounds.none(
                running, load(Criterion.RUNNING, 1) - running, binding, load(Criterion.BINDING, 1) - binding));
        for (List<MeshChoice> sameModule : byModule(choices.get(choices.size() - 1))) {
            lastMeshes.add(sameModule);
            lastOutlooks.add(new TailOutlook(tails.get(0).withInFront(rules, sameModule, true, cancelled), this));
        }
        for (int length = 1; length < choices.size(); length++) {
            tails.add(tails.get(length - 1)
                    .withInFront(rules, choices.get(choices.size() - length), length == 1, cancelled));
        }
        tails.forEach(bounds -> outlooks.add(new TailOutlook(bounds, this)));
    }

    /** Torque on the escape arbor if the escape wheel needs a torque, N m. */
    double load(Criterion criterion, double torque) {
        return rules.movement
                .regime(criterion)
                .arbor(ArborRole.ESCAPE)
                .load(
                        rules.movement.torqueAsked(criterion, torque),
                        rules.movement.parts().escapeWheelRadius(),
                        rules.movement.parts().escapeWheelMass());
    }

    /**
     * The torque that the escape wheel needs at least; it is a constant and a multiple of the beat's square, since the
     * pendulum's loss rises with its length.
     *
     * @param turns turns an hour that the escape wheel does not exceed
     */
    double leastTorque(double turns) {
        double beat = SECONDS_PER_HOUR / (2 * teeth * turns);
        return (torqueConstant + torquePerSquare * beat * beat) * (1 - ROUNDING);
    }

    /**
     * The least that any tail needs behind meshes that multiply the speed so far.
     *
     * @param length meshes of the tail
     * @param ratio of the meshes before it
     */
    TailBounds.Least tail(int length, double ratio) {
        return outlooks.get(length).behind(ratio);
    }

    /**
     * The least that a last mesh of one module needs behind meshes that multiply the speed so far.
     *
     * @param group index in {@link #lastMeshes}
     * @param ratio of the meshes before it
     */
    TailBounds.Least lastTail(int group, double ratio) {
        return lastOutlooks.get(group).behind(ratio);
    }

    private static Collection<List<MeshChoice>> byModule(List<MeshChoice> place) {
        Map<Integer, List<MeshChoice>> groups = new TreeMap<>();
        place.forEach(choice -> groups.computeIfAbsent(choice.moduleNumber, module -> new ArrayList<>())
                .add(choice));
        return groups.values();
    }

    /**
     * A running torque at the centre that no half with this escape wheel undercuts, N m; infinite if there is none.
     *
     * @param first what may stand first below the centre
     */
    double leastLoad(List<MeshChoice> first) {
        double lowest = first.get(0).ratio;
        double highest = first.get(first.size() - 1).ratio;
        return tails.get(tails.size() - 1)
                .between(fewestTurns / highest, mostTurns / lowest, this, highest)
                .running();
    }
}
