// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.power.Criterion;
import drumfall.solver.power.escape.EscapeNeed;
import drumfall.solver.power.escape.HeldArc;
import java.util.List;
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
    private final Tails tails;
    private final TailOutlook[] outlooks;
    private final TailOutlook anyOutlook;

    /**
     * Works out the side.
     *
     * @param rules what both halves share
     * @param teeth teeth of the escape wheel
     * @param tails what may stand before the escape wheel
     */
    EscapeSide(HalfRules rules, int teeth, Tails tails) {
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
        this.tails = tails;
        this.outlooks = new TailOutlook[tails.numbers];
        tails.kinds.forEach(this::look);
        TailKind some = tails.kinds.get(0);
        this.anyOutlook = new TailOutlook(tails.longest, this, some.lowestBefore(), some.highestBefore(), 0);
    }

    /**
     * The sides of all escape wheels that are left and have a half.
     *
     * @param rules what both halves share
     * @param choices what may stand at each place below the centre, from the centre
     * @param cancelled asked often; once true the bounds are cut short and good for nothing
     */
    static List<EscapeSide> all(HalfRules rules, List<List<MeshChoice>> choices, BooleanSupplier cancelled) {
        if (choices.stream().anyMatch(List::isEmpty)) {
            return List.of();
        }
        Tails tails = new Tails(rules, choices, cancelled);
        return rules.choices.escapeTeethLeft().stream()
                .filter(rules.limits::arcKept)
                .filter(rules.limits::holesKept)
                .map(teeth -> new EscapeSide(rules, teeth, tails))
                .filter(side -> Double.isFinite(side.leastLoad(choices.get(0))))
                .toList();
    }

    private void look(TailKind kind) {
        if (outlooks[kind.number()] == null) {
            outlooks[kind.number()] =
                    new TailOutlook(kind.bounds(), this, kind.lowestBefore(), kind.highestBefore(), kind.modules());
            if (kind.rest() != null) {
                look(kind.rest());
            }
        }
    }

    /** The kinds of tails behind a first mesh; of halves with one mesh, the kinds of that mesh. */
    List<TailKind> kinds() {
        return tails.kinds;
    }

    /** Torque on the escape arbor if the escape wheel needs a torque, N m. */
    double load(Criterion criterion, double torque) {
        return Tails.atEscape(rules, criterion, torque);
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
     * The least that any tail behind a first mesh needs.
     *
     * @param band of the first mesh's ratio, see {@link TailOutlook#band}
     */
    TailBounds.Least anyTail(int band) {
        return anyOutlook.behind(band);
    }

    /**
     * The least that any tail of a kind needs behind meshes that multiply the speed so far.
     *
     * @param kind of the tail
     * @param band of the ratio of the meshes before it, see {@link TailOutlook#band}
     */
    TailBounds.Least tail(TailKind kind, int band) {
        return outlooks[kind.number()].behind(band);
    }

    /**
     * A running torque at the centre that no half with this escape wheel undercuts, N m; infinite if there is none.
     *
     * @param first what may stand first below the centre
     */
    double leastLoad(List<MeshChoice> first) {
        double lowest = first.get(0).ratio;
        double highest = first.get(first.size() - 1).ratio;
        return tails.longest
                .between(fewestTurns / highest, mostTurns / lowest, this, highest, 0)
                .running();
    }
}
