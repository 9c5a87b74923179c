// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import drumfall.solver.power.EscapeNeed;
import drumfall.solver.power.HeldArc;
import java.util.ArrayList;
import java.util.List;

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
    private final HalfRules rules;
    private final List<TailBounds> tails = new ArrayList<>();

    /**
     * Works out the side.
     *
     * @param rules what both halves share
     * @param teeth teeth of the escape wheel
     * @param choices what may stand at each place below the centre, from the centre
     */
    EscapeSide(HalfRules rules, int teeth, List<List<MeshChoice>> choices) {
        this.rules = rules;
        this.teeth = teeth;
        this.heldArc = rules.movement.heldArc(teeth);
        double[] beats = rules.limits.roughBeatsPerHour();
        this.fewestTurns = beats[0] / (2 * teeth);
        this.mostTurns = beats[1] / (2 * teeth);
        EscapeNeed shortestBeat = heldArc.need(SECONDS_PER_HOUR / beats[1]);
        this.shortestMemory = shortestBeat.memory() * (1 - ROUNDING);
        this.longestMemory = heldArc.need(SECONDS_PER_HOUR / beats[0]).memory() * (1 + ROUNDING);
        tails.add(TailBounds.none(
                load(Criterion.RUNNING, shortestBeat) * (1 - ROUNDING),
                load(Criterion.BINDING, shortestBeat) * (1 - ROUNDING)));
        for (int length = 1; length < choices.size(); length++) {
            tails.add(tails.get(length - 1).withInFront(rules, choices.get(choices.size() - length), length == 1));
        }
    }

    /** Torque on the escape arbor for a need, N m. */
    double load(Criterion criterion, EscapeNeed need) {
        return rules.movement
                .regime(criterion)
                .arbor(ArborRole.ESCAPE)
                .load(
                        rules.movement.torqueAsked(criterion, need),
                        rules.movement.parts().escapeWheelRadius(),
                        rules.movement.parts().escapeWheelMass());
    }

    /**
     * The least that any tail needs behind meshes that multiply the speed so far.
     *
     * @param length meshes of the tail
     * @param ratio of the meshes before it
     */
    TailBounds.Least tail(int length, double ratio) {
        return tails.get(length).between(fewestTurns / ratio, mostTurns / ratio);
    }

    /**
     * A running torque at the centre that no half with this escape wheel undercuts, N m; infinite if there is none.
     *
     * @param first what may stand first below the centre
     */
    double leastLoad(List<MeshChoice> first) {
        return tails.get(tails.size() - 1)
                .between(fewestTurns / first.get(first.size() - 1).ratio, mostTurns / first.get(0).ratio)
                .running();
    }
}
