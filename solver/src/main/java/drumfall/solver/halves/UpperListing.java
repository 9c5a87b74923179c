// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.rating.Trust;
import drumfall.solver.train.Reeving;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.apache.commons.numbers.fraction.BigFraction;

/** Goes through the upper halves that begin with one part of the first mesh's choices. */
final class UpperListing {
    /** Parts into which the first mesh's choices are dealt out in turn, so that each part is alike. */
    static final int PARTS = 4;

    /** Bounds are computed by other operations than figures; this is far above their rounding and far below any cell. */
    private static final double ROUNDING = 1e-12;

    private final UpperPlaces places;
    private final HalfRules rules;
    private final int count;
    private final int part;
    private final boolean thin;
    private final UpperFront front;
    private final BooleanSupplier cancelled;
    private final List<UpperHalf> all = new ArrayList<>();

    /** What each mesh put so far lets through at most when running. */
    private final double[] mostFelt;

    /**
     * Prepares the listing.
     *
     * @param places what may stand where
     * @param part which of the {@link #PARTS} parts of the first mesh's choices to go through, from 0
     * @param thin whether to leave out what the front replaces
     * @param front halves known, added to while thinning
     * @param cancelled asked often; once true the listing ends early
     */
    UpperListing(UpperPlaces places, int part, boolean thin, UpperFront front, BooleanSupplier cancelled) {
        this.places = places;
        this.rules = places.rules;
        this.count = places.count;
        this.part = part;
        this.thin = thin;
        this.front = front;
        this.cancelled = cancelled;
        this.mostFelt = new double[count];
    }

    /** The halves; with thinning those that were not known before. */
    List<UpperHalf> list() {
        int known = front.size();
        extend(
                new ArrayList<>(),
                1,
                PartSums.NONE.withMass(rules.movement.parts().escapeWheelMass()));
        return thin ? front.keptSince(known) : all;
    }

    private void extend(List<MeshChoice> meshes, double ratio, PartSums sums) {
        boolean first = meshes.isEmpty();
        if (meshes.size() == count - 1) {
            for (LastMeshes group : places.lastMeshes) {
                if (cancelled.getAsBoolean()) {
                    return;
                }
                finishWith(group, meshes, ratio, sums);
            }
            return;
        }
        List<MeshChoice> place = places.choices.get(meshes.size());
        for (int i = first ? part : 0; i < place.size(); i += first ? PARTS : 1) {
            MeshChoice choice = place.get(i);
            double product = ratio * choice.ratio;
            if (product > places.mostHours * (1 + 1e-9) || cancelled.getAsBoolean()) {
                return;
            }
            if (clearsArborBefore(meshes, choice)) {
                mostFelt[meshes.size()] = places.mostFelt(meshes.size(), i);
                meshes.add(choice);
                extend(meshes, product, sums.with(choice));
                meshes.remove(meshes.size() - 1);
            }
        }
    }

    private void finishWith(LastMeshes group, List<MeshChoice> meshes, double ratio, PartSums sums) {
        int from = group.firstAtLeast(places.fewestHours * (1 - 1e-9) / ratio);
        int to = group.firstAtLeast(places.mostHours * (1 + 1e-9) / ratio);
        boolean first = meshes.isEmpty();
        for (int start = from; start < to && !cancelled.getAsBoolean(); ) {
            int end = Math.min(to, group.endOfStretch(start));
            if (first || !thin || !unwanted(group.stretch(start), meshes, ratio, sums)) {
                for (int i = start; i < end; i++) {
                    if (!first || i % PARTS == part) {
                        finishWith(group, i, meshes, sums);
                    }
                }
            }
            start = end;
        }
    }

    private void finishWith(LastMeshes group, int index, List<MeshChoice> meshes, PartSums sums) {
        MeshChoice choice = group.choices.get(index);
        if (clearsArborBefore(meshes, choice)) {
            mostFelt[meshes.size()] = group.mostFelt(index);
            meshes.add(choice);
            putDrums(meshes, sums.with(choice));
            meshes.remove(meshes.size() - 1);
        }
    }

    private boolean clearsArborBefore(List<MeshChoice> meshes, MeshChoice choice) {
        int before = meshes.size() - 1;
        return meshes.isEmpty()
                || rules.limits.clears(meshes.get(before).mesh, HalfJoin.role(before, count), choice.tipRadius);
    }

    /** Whether no half is wanted that begins with some meshes and ends with one of a stretch. */
    private boolean unwanted(LastMeshes.Best last, List<MeshChoice> meshes, double ratio, PartSums sums) {
        double[] least = places.lines.leastAtDrumArbor(meshes, mostFelt, last.constant(), last.slope());
        double fewest = ratio * last.leastRatio() * (1 - ROUNDING);
        double most = ratio * last.mostRatio() * (1 + ROUNDING);
        PartSums all = sums.with(last.sums());
        for (Reeving reeving : Reeving.values()) {
            BestDrum best = BestDrum.of(places.drumsOf(reeving), fewest, most);
            if (best == null || front.hopeless(line(least, best), all.withMass(best.mass()))) {
                continue;
            }
            UpperFigures figures = new UpperFigures(
                    UpperLines.atLine(least, best.line()),
                    last.clearance(),
                    borne(last, meshes),
                    rules.limits.teeth().centrePull(best.lineArm(), reeving, most),
                    best.carried(),
                    0,
                    all.withMass(best.mass()));
            if (!front.replaced(figures, UpperReach::servesForAll)) {
                return false;
            }
        }
        return true;
    }

    /** Torque on the centre arbor that the teeth bear at most if the last mesh is one of a stretch, N m. */
    private static double borne(LastMeshes.Best last, List<MeshChoice> meshes) {
        double borne = last.borne();
        double turned = last.leastRatio();
        for (int i = meshes.size() - 1; i >= 0; i--) {
            turned *= meshes.get(i).ratio;
            borne = Math.min(borne, meshes.get(i).borne / turned);
        }
        return borne * (1 + ROUNDING);
    }

    private static DrumLine line(double[] leastAtDrumArbor, BestDrum drum) {
        return drum.line().behind(leastAtDrumArbor[UpperLines.RUNNING], leastAtDrumArbor[UpperLines.RUNNING + 1]);
    }

    private void putDrums(List<MeshChoice> meshes, PartSums sums) {
        double hours = hours(meshes);
        double[] least = thin ? places.lines.leastAtDrumArbor(meshes, mostFelt) : null;
        double[] atDrumArbor = null;
        for (Reeving reeving : Reeving.values()) {
            BestDrum best = BestDrum.of(places.drumsOf(reeving), hours, hours);
            if (best == null || (thin && front.hopeless(line(least, best), sums.withMass(best.mass())))) {
                continue;
            }
            List<DrumChoice> fitting = fitting(meshes, hours, reeving);
            if (fitting.isEmpty() || (thin && replacedAtBest(meshes, hours, sums, fitting, least, best))) {
                continue;
            }
            atDrumArbor = atDrumArbor == null ? places.lines.atDrumArbor(meshes) : atDrumArbor;
            for (DrumChoice drum : fitting) {
                Trust trust = rules.trust(meshes, drum, places.countBelow);
                if (trust != Trust.HOPELESS) {
                    offer(half(meshes, hours, sums, drum, atDrumArbor, trust == Trust.DISTRUSTED));
                }
            }
        }
    }

    private List<DrumChoice> fitting(List<MeshChoice> meshes, double hours, Reeving reeving) {
        List<DrumChoice> fitting = new ArrayList<>();
        for (DrumChoice drum : places.drumsOf(reeving)) {
            if (drum.mayRun(hours, hours)
                    && rules.limits.clears(meshes.get(0).mesh, HalfJoin.role(1, count), drum.flangeRadius())
                    && (drum.surelyRuns(hours) || runs(meshes, drum))) {
                fitting.add(drum);
            }
        }
        return fitting;
    }

    private UpperHalf half(
            List<MeshChoice> meshes,
            double hours,
            PartSums sums,
            DrumChoice drum,
            double[] atDrumArbor,
            boolean distrusted) {
        return new UpperHalf(
                meshes,
                drum,
                sums.withMass(drum.mass()),
                durationError(hours, drum),
                UpperLines.atLine(atDrumArbor, drum.line()),
                rules.limits.teeth(),
                distrusted,
                places.reaches.of(meshes, drum.flangeRadius()));
    }

    private double durationError(double hours, DrumChoice drum) {
        return places.durationAsked ? rules.rater.objectives().durationError(hours, drum.turns()) : 0;
    }

    /** Whether the best of some drums with one reeving, as quick and light and wide as any of them, would be replaced. */
    private boolean replacedAtBest(
            List<MeshChoice> meshes,
            double hours,
            PartSums sums,
            List<DrumChoice> fitting,
            double[] least,
            BestDrum best) {
        Reeving reeving = fitting.get(0).run().reeving();
        UpperFigures figures = new UpperFigures(
                UpperLines.atLine(least, best.line()),
                front.clearance(meshes.get(count - 1), count),
                UpperHalf.borne(meshes),
                rules.limits.teeth().centrePull(best.lineArm(), reeving, hours),
                best.carried(),
                fitting.stream()
                        .mapToDouble(drum -> durationError(hours, drum))
                        .min()
                        .orElseThrow(),
                sums.withMass(best.mass()));
        return front.replaced(figures, new Serving(meshes, fitting)::test);
    }

    /** Asked of few halves, so worked out when asked: whether a reach serves for that of every fitting drum. */
    private final class Serving {
        private final List<MeshChoice> meshes;
        private final List<DrumChoice> fitting;
        private UpperReach best;

        Serving(List<MeshChoice> meshes, List<DrumChoice> fitting) {
            this.meshes = meshes;
            this.fitting = fitting;
        }

        boolean test(UpperReach reach) {
            if (reach.servesForAll()) {
                return true;
            }
            if (best == null) {
                best = fitting.stream()
                        .map(drum -> places.reaches.of(meshes, drum.flangeRadius()))
                        .reduce(UpperReach::best)
                        .orElseThrow();
            }
            return reach.servesFor(best);
        }
    }

    private boolean runs(List<MeshChoice> meshes, DrumChoice drum) {
        BigFraction hours = meshes.stream()
                .map(choice -> choice.mesh.counts().ratio())
                .reduce(BigFraction.ONE, BigFraction::multiply);
        return rules.limits.runsLongEnough(hours, drum.run()) && rules.limits.runsNotTooLong(hours, drum.run());
    }

    private static double hours(List<MeshChoice> meshes) {
        long teeth = 1;
        long leaves = 1;
        for (MeshChoice choice : meshes) {
            teeth *= choice.teeth;
            leaves *= choice.leaves;
        }
        return (double) teeth / leaves;
    }

    private void offer(UpperHalf half) {
        if (!places.lines.finite(half.lines) || front.tooHeavy(half) || !places.reaches.mayFit(half.reach)) {
            return;
        }
        if (thin) {
            front.offer(half);
        } else {
            all.add(half);
        }
    }
}
