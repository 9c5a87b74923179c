// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.brief.ObjectiveFigure;
import drumfall.solver.train.Reeving;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What may stand where above the centre, beside listed lower halves. Unmodifiable once made; shared by all threads. */
final class UpperPlaces {
    final HalfRules rules;
    final int count;
    /** Meshes of the lower halves. */
    final int countBelow;

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
    /** Fewest hours for a turn of the drum. */
    final double fewestHours;
    /** Most hours for a turn of the drum. */
    final double mostHours;

    /**
     * Works out the places.
     *
     * @param tables of the brief
     * @param count meshes from the drum to the centre, at least 1
     * @param stride one choice in so many is tried
     * @param lower the lower halves to be joined, at least one
     */
    UpperPlaces(HalfTables tables, int count, int stride, List<LowerHalf> lower) {
        this.rules = tables.rules;
        this.count = count;
        this.countBelow = lower.get(0).meshes().size();
        this.lines = new UpperLines(rules, lower);
        this.reaches = new UpperReaches(rules, count, lower);
        this.lowerMayBreak = lower.stream().anyMatch(half -> half.borne < rules.mostCentreTorque);
        this.durationAsked = rules.asked.contains(ObjectiveFigure.DURATION_ERROR);
        for (int number = 1; number <= count; number++) {
            choices.add(LowerHalves.everyFew(tables.choicesAt(MeshPlace.Side.ABOVE, number), stride));
            mostFelt.add(choices.get(number - 1).stream()
                    .mapToDouble(lines::mostFelt)
                    .toArray());
        }
        for (Reeving reeving : Reeving.values()) {
            drums.put(reeving, new ArrayList<>());
        }
        this.lastMeshes = LastMeshes.of(choices.get(count - 1), rules, lines, count);
        double fewest = Double.POSITIVE_INFINITY;
        double most = 0;
        for (DrumChoice drum : DrumChoice.all(rules)) {
            drumsOf(drum.run().reeving()).add(drum);
            fewest = Math.min(fewest, drum.fewestHours());
            most = Math.max(most, drum.mostHours());
        }
        this.fewestHours = fewest;
        this.mostHours = most;
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
