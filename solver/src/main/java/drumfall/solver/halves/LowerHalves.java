// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.rating.TrainRater;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/** Lists the lower halves with a number of meshes that some front may need, least running torque first. */
public final class LowerHalves {
    private final TrainRater rater;
    private final HalfRules rules;
    private final boolean thin;
    private final List<LowerHalf> known;
    private final BooleanSupplier cancelled;
    private final List<List<MeshChoice>> choices = new ArrayList<>();

    private LowerHalves(
            TrainRater rater, int count, boolean thin, int stride, List<LowerHalf> known, BooleanSupplier cancelled) {
        this.rater = rater;
        this.rules = new HalfRules(rater);
        this.thin = thin;
        this.known = known;
        this.cancelled = cancelled;
        MeshChoices allowed = new MeshChoices(rater);
        for (int number = 1; number <= count; number++) {
            choices.add(everyFew(allowed.at(new MeshPlace(MeshPlace.Side.BELOW, number)), stride));
        }
    }

    /**
     * A sample of the halves, found quickly: only one choice in a few is tried at each place.
     *
     * @param rater rates against the brief
     * @param count meshes from the centre to the escape wheel, at least 1
     * @param stride one choice in so many is tried
     * @param cancelled asked often; once true the list is cut short
     */
    public static List<LowerHalf> sample(TrainRater rater, int count, int stride, BooleanSupplier cancelled) {
        return new LowerHalves(rater, count, true, stride, List.of(), cancelled).list();
    }

    /**
     * All halves that no other one replaces.
     *
     * @param rater rates against the brief
     * @param count meshes from the centre to the escape wheel, at least 1
     * @param known halves known already, which replace most others before these are worked out
     * @param cancelled asked often; once true the list is cut short
     */
    public static List<LowerHalf> thinned(
            TrainRater rater, int count, List<LowerHalf> known, BooleanSupplier cancelled) {
        return new LowerHalves(rater, count, true, 1, known, cancelled).list();
    }

    /**
     * All halves, also those that another one replaces; for small briefs.
     *
     * @param rater rates against the brief
     * @param count meshes from the centre to the escape wheel, at least 1
     * @param cancelled asked often; once true the list is cut short
     */
    public static List<LowerHalf> all(TrainRater rater, int count, BooleanSupplier cancelled) {
        return new LowerHalves(rater, count, false, 1, List.of(), cancelled).list();
    }

    private List<LowerHalf> list() {
        List<EscapeSide> sides = sides();
        if (sides.isEmpty() || cancelled.getAsBoolean()) {
            return List.of();
        }
        CentreOutlook outlook = outlook(sides);
        List<LowerHalf> listed = listed(sides, outlook);
        listed.sort(Comparator.<LowerHalf>comparingDouble(half -> half.runningLoad)
                .thenComparing((a, b) -> a.compareTo(b)));
        return listed;
    }

    private List<LowerHalf> listed(List<EscapeSide> sides, CentreOutlook outlook) {
        List<LowerHalf> halves = new ArrayList<>();
        LowerReaches reaches = new LowerReaches(rules, choices);
        // Each piece of work has a front of its own, whichever thread takes it: the pieces and the order in which they
        // are put together are always the same.
        sides.stream()
                .flatMap(side -> IntStream.range(0, LowerListing.PARTS)
                        .mapToObj(part -> new LowerListing(
                                rules, choices, side, reaches, part, thin, frontOf(known, outlook), cancelled)))
                .toList()
                .parallelStream()
                .map(LowerListing::list)
                .toList()
                .forEach(halves::addAll);
        return thin ? frontOf(halves, outlook).culled(cancelled) : halves;
    }

    private LowerFront frontOf(List<LowerHalf> halves, CentreOutlook outlook) {
        LowerFront front = new LowerFront(rules, outlook);
        for (LowerHalf half : halves) {
            if (cancelled.getAsBoolean()) {
                break;
            }
            front.offer(half);
        }
        return front;
    }

    static List<MeshChoice> everyFew(List<MeshChoice> place, int stride) {
        return IntStream.range(0, place.size())
                .filter(i -> i % stride == 0)
                .mapToObj(place::get)
                .toList();
    }

    private List<EscapeSide> sides() {
        if (choices.stream().anyMatch(List::isEmpty)) {
            return List.of();
        }
        return rules.choices.escapeTeethLeft().stream()
                .filter(rules.limits::arcKept)
                .map(teeth -> new EscapeSide(rules, teeth, choices, cancelled))
                .filter(side -> Double.isFinite(side.leastLoad(choices.get(0))))
                .toList();
    }

    private CentreOutlook outlook(List<EscapeSide> sides) {
        double leastLoad = sides.stream()
                .mapToDouble(side -> side.leastLoad(choices.get(0)))
                .min()
                .orElseThrow();
        double shortest =
                sides.stream().mapToDouble(side -> side.shortestMemory).min().orElseThrow();
        double longest =
                sides.stream().mapToDouble(side -> side.longestMemory).max().orElseThrow();
        return new CentreOutlook(rater, leastLoad, shortest, longest, cancelled);
    }
}
