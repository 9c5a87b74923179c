// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.power.ArborFriction;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What upper halves can make of torque and memory at the centre, so that lower halves are compared by two torques.
 *
 * <p>If the binding torque is at most a share {@code ξ} of the running torque, no upper half lets binding decide the
 * weight; binding torques below that share are all alike. The share is worked down from the line to the centre: to have
 * {@code bind <= ξ' run} above a mesh it is enough to have {@code bind <= (ξ' g_run / g_bind - w - s / g_bind) run} below,
 * the constant losses taken as shares of the least torque.
 */
final class CentreOutlook {
    private static final double SECONDS_PER_HOUR = 3600;

    /** The bound is computed by other operations than the weight. */
    private static final double ROUNDING = 1 + 1e-9;

    private final HalfRules rules;
    private final double leastLoad;
    private final MemoryCredit credit;
    private final double bindingShare;
    private final double mostTorque;

    /**
     * The outlook over all numbers of meshes that a brief allows above the centre.
     *
     * @param tables of the brief
     * @param leastLoad a running torque at the centre that no lower half undercuts, N m, more than 0
     * @param shortest a memory that no lower half undercuts, s
     * @param longest a memory that no lower half exceeds, s
     * @param cancelled asked often; once true the outlook is cut short and good for nothing
     */
    CentreOutlook(HalfTables tables, double leastLoad, double shortest, double longest, BooleanSupplier cancelled) {
        this.rules = tables.rules;
        this.leastLoad = leastLoad;
        int most = rules.choices.meshesAboveLeft().stream()
                .mapToInt(count -> count)
                .max()
                .orElse(0);
        List<List<MeshChoice>> places = new ArrayList<>();
        for (int number = 1; number <= most; number++) {
            places.add(tables.choicesAt(MeshPlace.Side.ABOVE, number));
        }
        this.credit = new MemoryCredit(places, constantShare(places), shortest, longest, cancelled);
        this.bindingShare = rules.choices.meshesAboveLeft().stream()
                .mapToDouble(count -> bindingShare(places.subList(0, count)))
                .min()
                .orElse(0);
        int fewest = rules.choices.meshesAboveLeft().stream()
                .mapToInt(count -> count)
                .min()
                .orElse(0);
        this.mostTorque = mostTorque(places.subList(0, fewest), longest);
    }

    /**
     * The largest running torque at the centre that any weight the brief allows can give, N m.
     *
     * <p>In the shortest duration {@code H} the heaviest weight brings {@code W g F}, and the centre takes {@code 2 π X} in
     * every hour of it; the meshes between let through no more than each can at best.
     */
    double mostTorque() {
        return mostTorque;
    }

    private double mostTorque(List<List<MeshChoice>> places, double longest) {
        double passed = 1;
        for (List<MeshChoice> place : places) {
            passed *= place.stream()
                    .mapToDouble(choice -> choice.felt.felt(longest * choice.leaves / SECONDS_PER_HOUR))
                    .max()
                    .orElse(0);
        }
        double work =
                rules.limits.heaviestLeastWeight() * rules.movement.pendulum().gravity() * rules.limits.fall();
        double turns = rules.limits.shortestRun() / SECONDS_PER_HOUR;
        return turns > 0 ? work * passed / (2 * Math.PI * turns) * ROUNDING : Double.POSITIVE_INFINITY;
    }

    /** Running torque with its memory's credit, as a half that may replace another offers it. */
    double offered(double runningLoad, double memory) {
        return runningLoad * Math.exp(-credit.below(memory));
    }

    /** Running torque with its memory's credit, as a half that may be replaced asks for it. */
    double asked(double runningLoad, double memory) {
        return runningLoad * Math.exp(-credit.above(memory));
    }

    /** Binding torque as far as it can decide the weight. */
    double deciding(double runningLoad, double bindingLoad) {
        return Math.max(bindingLoad, bindingShare * runningLoad);
    }

    private double constantShare(List<List<MeshChoice>> places) {
        double largest = 0;
        for (List<MeshChoice> place : places) {
            for (MeshChoice choice : place) {
                for (ArborRole role : List.of(ArborRole.DRUM, ArborRole.INTERMEDIATE, ArborRole.CENTRE)) {
                    ArborFriction friction = rules.movement.running().arbor(role);
                    double wheelSide =
                            role == ArborRole.CENTRE ? 0 : friction.load(0, choice.wheelArm, choice.wheelMass);
                    double pinionSide = friction.pinionSlope() * weight(choice.pinionMass);
                    largest = Math.max(largest, Math.max(wheelSide, pinionSide));
                }
            }
        }
        return largest / leastLoad;
    }

    private double weight(long micrograms) {
        return micrograms * 1e-9 * rules.movement.pendulum().gravity();
    }

    private double bindingShare(List<List<MeshChoice>> places) {
        double share = drumShare();
        for (int i = 0; i < places.size(); i++) {
            double least = Double.POSITIVE_INFINITY;
            for (MeshChoice choice : places.get(i)) {
                least = Math.min(least, shareBelow(share, choice, i, places.size()));
            }
            share = Math.max(0, least);
        }
        return Double.isFinite(share) ? share : 0;
    }

    private double drumShare() {
        double least = Double.POSITIVE_INFINITY;
        double running = rules.movement.running().arbor(ArborRole.DRUM).pinionSlope();
        ArborFriction binding = rules.movement.starting().arbor(ArborRole.DRUM);
        for (BigFraction diameter : rules.choices.drumDiametersLeft()) {
            double arm = rules.movement.lineArm(diameter.doubleValue());
            double drum = weight(rules.movement.parts().drumMass(diameter.doubleValue()));
            double gain = (arm - binding.pinionSlope()) / (arm - running);
            least = Math.min(least, gain - binding.pinionSlope() * drum / leastLoad);
        }
        return least;
    }

    private double shareBelow(double shareAbove, MeshChoice choice, int index, int count) {
        ArborRole above = HalfJoin.role(index, count);
        ArborRole below = HalfJoin.role(index + 1, count);
        double constant = step(Criterion.BINDING, 0, below, choice, above);
        double bindingGain = step(Criterion.BINDING, 1, below, choice, above) - constant;
        double runningGain =
                step(Criterion.RUNNING, 1, below, choice, above) - step(Criterion.RUNNING, 0, below, choice, above);
        double share = (shareAbove * runningGain - constant / leastLoad) / bindingGain;
        return Double.isNaN(share) ? 0 : share;
    }

    private double step(Criterion criterion, double load, ArborRole below, MeshChoice choice, ArborRole above) {
        return rules.step(criterion, load, below, choice, choice.passedAtBest(criterion), above);
    }
}
