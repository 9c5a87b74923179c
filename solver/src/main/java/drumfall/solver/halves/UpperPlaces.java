// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.brief.ObjectiveFigure;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.DrumRun;
import drumfall.solver.train.Reeving;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/** What may stand where above the centre, beside listed lower halves. Unmodifiable once made; shared by all threads. */
final class UpperPlaces {
    final HalfRules rules;
    final int count;
    final UpperLines lines;
    final UpperReaches reaches;
    final boolean durationAsked;
    final boolean lowerMayBreak;
    /** The choices at each place, from the drum, lowest ratio first. */
    final List<List<MeshChoice>> choices = new ArrayList<>();
    /** The choices at the last place, sorted into groups. */
    final List<LastMeshes> lastMeshes;

    private final Map<Reeving, List<DrumChoice>> drums = new EnumMap<>(Reeving.class);
    private final List<double[]> mostFelt = new ArrayList<>();
    private double fewest = Double.POSITIVE_INFINITY;
    private double most;
    /** Fewest hours for a turn of the drum. */
    final double fewestHours;
    /** Most hours for a turn of the drum. */
    final double mostHours;

    /**
     * Works out the places.
     *
     * @param rater rates against the brief
     * @param count meshes from the drum to the centre, at least 1
     * @param stride one choice in so many is tried
     * @param lower the lower halves to be joined, at least one
     */
    UpperPlaces(TrainRater rater, int count, int stride, List<LowerHalf> lower) {
        this.rules = new HalfRules(rater);
        this.count = count;
        this.lines = new UpperLines(rules, lower);
        this.reaches = new UpperReaches(rules, count, lower);
        this.lowerMayBreak = lower.stream().anyMatch(half -> half.borne < rules.mostCentreTorque);
        this.durationAsked = rules.asked.contains(ObjectiveFigure.DURATION_ERROR);
        MeshChoices allowed = new MeshChoices(rater);
        for (int number = 1; number <= count; number++) {
            choices.add(LowerHalves.everyFew(allowed.at(new MeshPlace(MeshPlace.Side.ABOVE, number)), stride));
            mostFelt.add(choices.get(number - 1).stream()
                    .mapToDouble(lines::mostFelt)
                    .toArray());
        }
        for (Reeving reeving : Reeving.values()) {
            drums.put(reeving, new ArrayList<>());
        }
        this.lastMeshes = LastMeshes.of(choices.get(count - 1), rules, lines, count);
        for (BigFraction diameter : rules.choices.drumDiametersLeft()) {
            for (Reeving reeving : rules.choices.reevingsLeft()) {
                addDrum(diameter, rules.limits.drumRun(diameter, reeving));
            }
        }
        this.fewestHours = fewest;
        this.mostHours = most;
    }

    private void addDrum(BigFraction diameter, DrumRun run) {
        if (rules.limits.windsInOneLayer(run)) {
            double size = diameter.doubleValue();
            double[] hours = rules.limits.hoursPerTurn(run);
            double lineArm = rules.movement.lineArm(size);
            long mass = rules.movement.parts().drumMass(size);
            drumsOf(run.reeving())
                    .add(new DrumChoice(
                            diameter,
                            run,
                            hours[0],
                            hours[1],
                            lineArm,
                            rules.limits.drumFlangeRadius(size),
                            mass,
                            lines.drumLine(lineArm, mass, run.reeving()),
                            run.turns(),
                            rules.limits.ratchet().heaviest(lineArm, run.reeving()),
                            rules.limits.heaviestCarried(lineArm, run.reeving())));
            fewest = Math.min(fewest, hours[0]);
            most = Math.max(most, hours[1]);
        }
    }

    /** Whether there is nothing to list. */
    boolean isEmpty() {
        return drums.values().stream().allMatch(List::isEmpty)
                || choices.stream().anyMatch(List::isEmpty);
    }

    /** The drums with a reeving. */
    List<DrumChoice> drumsOf(Reeving reeving) {
        return drums.get(reeving);
    }

    /** What a choice lets through at most when running. */
    double mostFelt(int place, int choice) {
        return mostFelt.get(place)[choice];
    }
}
