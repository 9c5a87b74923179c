// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import static drumfall.solver.halves.UpperLines.BINDING;
import static drumfall.solver.halves.UpperLines.RUNNING;

import drumfall.solver.brief.Objective;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.rating.Objectives;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.List;

/** Joins an upper and a lower half: whether they fit, what they weigh, and the train they make. */
public final class HalfJoin {
    private static final double ROUNDING = 1e-12;

    private final HalfRules rules;
    private final Overlaps overlaps;
    private final Objective[] asked;

    /**
     * Joins for one brief.
     *
     * @param rater rates against the brief
     */
    public HalfJoin(TrainRater rater) {
        this.rules = new HalfRules(rater);
        this.overlaps = new Overlaps(rules);
        this.asked = rater.objectives().asked().toArray(Objective[]::new);
    }

    /**
     * The train of two halves.
     *
     * @param upper from the drum to the centre
     * @param lower from the centre to the escape wheel
     */
    public Train train(UpperHalf upper, LowerHalf lower) {
        List<Mesh> meshes = new ArrayList<>();
        upper.meshes.forEach(choice -> meshes.add(choice.mesh));
        lower.meshes.forEach(choice -> meshes.add(choice.mesh));
        return new Train(meshes, upper.meshes.size(), upper.drumDiameter, upper.reeving, lower.escapeTeeth);
    }

    /**
     * Whether two halves may stand in one train with at least such a weight: nothing touches, the frame is deep enough,
     * line, ratchet and teeth carry it.
     *
     * @param upper from the drum to the centre
     * @param lower from the centre to the escape wheel
     * @param recommendedWeight kg
     */
    public boolean allows(UpperHalf upper, LowerHalf lower, double recommendedWeight) {
        return weightKept(upper, recommendedWeight)
                && clears(upper, lower)
                && teethBear(upper, lower, recommendedWeight)
                && deepEnough(upper, lower);
    }

    /**
     * Whether the centre wheel clears the arbor above the centre.
     *
     * @param upper from the drum to the centre
     * @param lower from the centre to the escape wheel
     */
    public boolean clears(UpperHalf upper, LowerHalf lower) {
        return rules.limits.clears(upper.lastMesh().mesh, role(upper, upper.meshes.size() - 1), lower.centreWheelTip());
    }

    /**
     * Whether the frame may be deep enough for the planes of the joined train; if not, it has no place.
     *
     * @param upper from the drum to the centre
     * @param lower from the centre to the escape wheel
     */
    public boolean deepEnough(UpperHalf upper, LowerHalf lower) {
        return overlaps.keptApart(upper.reach, upper.meshes.size(), lower.reach, lower.meshes.size());
    }

    /**
     * A recommended weight that the joined train surely does not undercut, quick to compute; kg.
     *
     * @param upper from the drum to the centre
     * @param lower from the centre to the escape wheel
     */
    public double leastRecommendedWeight(UpperHalf upper, LowerHalf lower) {
        double running = upper.lines[RUNNING] + upper.lines[RUNNING + 1] * lower.runningLoad;
        double binding = upper.lines[BINDING] + upper.lines[BINDING + 1] * lower.bindingLoad;
        return rules.rater.objectives().recommended(Math.max(running, binding)) * (1 - ROUNDING);
    }

    /**
     * The recommended weight of the joined train, to the last bit that of its rating; kg.
     *
     * @param upper from the drum to the centre
     * @param lower from the centre to the escape wheel
     */
    public double recommendedWeight(UpperHalf upper, LowerHalf lower) {
        double running = weight(upper, lower, Criterion.RUNNING, lower.runningLoad);
        double binding = weight(upper, lower, Criterion.BINDING, lower.bindingLoad);
        return rules.rater.objectives().recommended(Math.max(running, binding));
    }

    /**
     * The weight keeps the limit of the brief, and line and ratchet carry it.
     *
     * @param upper gives drum and reeving
     * @param recommendedWeight kg
     */
    public boolean weightKept(UpperHalf upper, double recommendedWeight) {
        return rules.limits.lightEnough(recommendedWeight)
                && rules.limits.lineCarries(recommendedWeight, upper.reeving)
                && rules.limits.ratchet().holds(recommendedWeight, upper.held);
    }

    /**
     * The teeth of both halves bear the weight, decided to the last bit as in the rating.
     *
     * @param upper from the drum to the centre
     * @param lower from the centre to the escape wheel
     * @param recommendedWeight kg
     */
    public boolean teethBear(UpperHalf upper, LowerHalf lower, double recommendedWeight) {
        double torque = rules.limits.teeth().centreTorque(recommendedWeight, upper.centrePull);
        return rules.limits.teeth().bear(torque, Math.min(upper.borne, lower.borne));
    }

    /**
     * Values of the asked objectives in the brief's order, to the last bit those of the rating.
     *
     * @param upper from the drum to the centre
     * @param lower from the centre to the escape wheel
     * @param recommendedWeight kg
     * @param values where to write them
     */
    public void values(UpperHalf upper, LowerHalf lower, double recommendedWeight, double[] values) {
        write(
                asked,
                upper.sums.with(lower.sums),
                upper.meshes.size() + lower.meshes.size(),
                upper.durationError,
                recommendedWeight,
                values);
    }

    /**
     * Writes objective values.
     *
     * @param asked the objectives
     * @param sums of all parts
     * @param meshes of the train
     * @param durationError s
     * @param recommendedWeight kg
     * @param values where to write them
     */
    static void write(
            Objective[] asked,
            PartSums sums,
            int meshes,
            double durationError,
            double recommendedWeight,
            double[] values) {
        for (int i = 0; i < asked.length; i++) {
            values[i] = switch (asked[i].figure()) {
                case RECOMMENDED_WEIGHT -> recommendedWeight;
                case FILAMENT_MASS -> Objectives.kilograms(sums.filament());
                case LARGEST_WHEEL -> 2 * sums.largestTip();
                case CENTRE_DISTANCES -> Objectives.metres(sums.centreDistances());
                case MESHES -> meshes;
                case MODULES -> Long.bitCount(sums.moduleBits());
                case DURATION_ERROR -> durationError;
            };
        }
    }

    private double weight(UpperHalf upper, LowerHalf lower, Criterion criterion, double centreLoad) {
        double load = centreLoad;
        for (int i = upper.meshes.size() - 1; i >= 0; i--) {
            MeshChoice choice = upper.meshes.get(i);
            double pitches = WeightWalk.pitchesRemembered(lower.need, upper.hoursPerTurn[i], choice.teeth);
            load = rules.step(
                    criterion, load, role(upper, i + 1), choice, choice.passed(criterion, pitches), role(upper, i));
        }
        double tension =
                rules.movement.regime(criterion).arbor(ArborRole.DRUM).tension(load, upper.lineArm, upper.drumMass);
        return rules.movement.weightFor(tension, upper.reeving);
    }

    /** Role of an arbor of the upper half, 0 for the drum arbor. */
    private static ArborRole role(UpperHalf upper, int arbor) {
        return role(arbor, upper.meshes.size());
    }

    static ArborRole role(int arbor, int meshesAbove) {
        if (arbor == 0) {
            return ArborRole.DRUM;
        }
        return arbor == meshesAbove ? ArborRole.CENTRE : ArborRole.INTERMEDIATE;
    }
}
