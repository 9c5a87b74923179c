// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.brief.ObjectiveFigure;
import drumfall.solver.power.ArborFriction;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import drumfall.solver.power.Movement;
import drumfall.solver.rating.BriefChoices;
import drumfall.solver.rating.Refused;
import drumfall.solver.rating.TrainLimits;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.Trust;
import drumfall.solver.train.Mesh;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** What both halves share: the brief's rater, the objectives that are asked, and single steps of the walk. */
final class HalfRules {
    /**
     * A torque smaller by more than this share makes a smaller weight in floating point too: the rest of the walk is
     * a rising line whose constant part is of the order of the weight itself, so the share shrinks by a factor of ten at
     * most, while the walk's rounding is below 1e-14.
     */
    private static final double SURELY_LESS = 1 - 1e-9;

    final TrainRater rater;
    final Movement movement;
    final TrainLimits limits;
    final BriefChoices choices;
    final Set<ObjectiveFigure> asked = EnumSet.noneOf(ObjectiveFigure.class);
    final int moduleCount;
    private final Refused refused;

    /** Friction is asked for at every step of every walk; enum maps answer quickest. */
    private final EnumMap<ArborRole, ArborFriction> running;

    private final EnumMap<ArborRole, ArborFriction> starting;

    /** Torque on the centre arbor that no weight allowed exceeds; teeth that bear it bear everything. */
    final double mostCentreTorque;

    HalfRules(TrainRater rater) {
        this.rater = rater;
        this.movement = rater.movement();
        this.limits = rater.limits();
        this.choices = rater.choices();
        this.refused = rater.refused();
        this.mostCentreTorque = limits.mostCentreTorque();
        this.running = new EnumMap<>(movement.running().arbors());
        this.starting = new EnumMap<>(movement.starting().arbors());
        this.moduleCount = choices.modules().size();
        rater.objectives().asked().forEach(objective -> asked.add(objective.figure()));
    }

    static boolean surelyLess(double first, double second) {
        return first < second * SURELY_LESS;
    }

    Trust trust(List<MeshChoice> below, int escapeTeeth) {
        return refused.isEmpty() ? Trust.TRUSTED : refused.trust(meshes(below), escapeTeeth, choices.meshesAboveLeft());
    }

    Trust trust(List<MeshChoice> above, DrumChoice drum, int meshesBelow) {
        return refused.isEmpty()
                ? Trust.TRUSTED
                : refused.trust(meshes(above), drum.diameter(), drum.run().reeving(), meshesBelow);
    }

    /** Halves as what is known by now makes them; the hopeless ones are left out. */
    List<LowerHalf> judged(List<LowerHalf> halves) {
        if (refused.isEmpty()) {
            return halves;
        }
        List<LowerHalf> judged = new ArrayList<>();
        for (LowerHalf half : halves) {
            Trust trust = trust(half.meshes, half.escapeTeeth);
            if (trust != Trust.HOPELESS) {
                judged.add(half.distrusted(trust == Trust.DISTRUSTED));
            }
        }
        return judged;
    }

    private static List<Mesh> meshes(List<MeshChoice> choices) {
        return choices.stream().map(choice -> choice.mesh).toList();
    }

    /** Torque on the wheel's side of an arbor, for what the mesh's pinion below must be given. */
    double step(
            Criterion criterion, double loadBelow, ArborRole below, MeshChoice choice, double passed, ArborRole above) {
        EnumMap<ArborRole, ArborFriction> arbors = criterion == Criterion.RUNNING ? running : starting;
        double given = arbors.get(below).drive(loadBelow, choice.pinionArm, choice.pinionMass);
        double out = given * choice.teeth / (choice.leaves * passed);
        return arbors.get(above).load(out, choice.wheelArm, choice.wheelMass);
    }

    /** Room for the attributes that asked objectives add to the fixed ones. */
    int objectiveAttributes() {
        int count = asked.contains(ObjectiveFigure.FILAMENT_MASS) ? 1 : 0;
        count += asked.contains(ObjectiveFigure.LARGEST_WHEEL) ? 1 : 0;
        count += asked.contains(ObjectiveFigure.CENTRE_DISTANCES) ? 1 : 0;
        return count + (asked.contains(ObjectiveFigure.MODULES) ? moduleCount : 0);
    }

    /** Writes the attributes of asked objectives behind the fixed ones. */
    void writeObjectives(double[] point, int from, PartSums sums) {
        int next = from;
        if (asked.contains(ObjectiveFigure.FILAMENT_MASS)) {
            point[next++] = sums.filament();
        }
        if (asked.contains(ObjectiveFigure.LARGEST_WHEEL)) {
            point[next++] = sums.largestTip();
        }
        if (asked.contains(ObjectiveFigure.CENTRE_DISTANCES)) {
            point[next++] = sums.centreDistances();
        }
        if (asked.contains(ObjectiveFigure.MODULES)) {
            for (int i = 0; i < moduleCount; i++) {
                point[next++] = sums.moduleBits() >> i & 1;
            }
        }
    }
}
