// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.rating.TrainRater;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/** Lists the upper halves with a number of meshes that some front may need. */
public final class UpperHalves {
    /** One choice in so many at each place is tried first: its halves replace most others before these are worked out. */
    private static final int SAMPLE = 7;

    private final TrainRater rater;
    private final int count;
    private final List<LowerHalf> lower;
    private final boolean thin;
    private final BooleanSupplier cancelled;

    /**
     * Prepares a list.
     *
     * @param rater rates against the brief
     * @param count meshes from the drum to the centre, at least 1
     * @param lower the lower halves it will be joined to, at least one
     * @param thin whether to leave out halves that another one replaces; the front is the same either way
     * @param cancelled asked often; once true the list ends early
     */
    public UpperHalves(TrainRater rater, int count, List<LowerHalf> lower, boolean thin, BooleanSupplier cancelled) {
        this.rater = rater;
        this.count = count;
        this.lower = lower;
        this.thin = thin;
        this.cancelled = cancelled;
    }

    /**
     * A sample of the halves, found quickly: only one choice in a few is tried at each place.
     *
     * @param rater rates against the brief
     * @param count meshes from the drum to the centre, at least 1
     * @param stride one choice in so many is tried
     * @param lower the lower halves it will be joined to, at least one
     * @param cancelled asked often; once true the list ends early
     */
    public static List<UpperHalf> sample(
            TrainRater rater, int count, int stride, List<LowerHalf> lower, BooleanSupplier cancelled) {
        UpperHalves halves = new UpperHalves(rater, count, lower, true, cancelled);
        return sorted(halves.listed(new UpperPlaces(rater, count, stride, lower), List.of()));
    }

    /** The halves, those that make least of the centre's torque first. */
    public List<UpperHalf> list() {
        UpperPlaces places = new UpperPlaces(rater, count, 1, lower);
        List<UpperHalf> known =
                thin && count > 1 ? listed(new UpperPlaces(rater, count, SAMPLE, lower), List.of()) : List.of();
        return sorted(listed(places, known));
    }

    private static List<UpperHalf> sorted(List<UpperHalf> halves) {
        int slope = 2 * UpperLines.BANDS + 1;
        halves.sort(Comparator.<UpperHalf>comparingDouble(half -> half.lines[slope])
                .thenComparing((a, b) -> a.compareTo(b)));
        return halves;
    }

    private List<UpperHalf> listed(UpperPlaces places, List<UpperHalf> known) {
        List<UpperHalf> halves = new ArrayList<>();
        if (places.isEmpty() || cancelled.getAsBoolean()) {
            return halves;
        }
        // Each piece of work has a front of its own, whichever thread takes it: the pieces and the order in which they
        // are put together are always the same.
        IntStream.range(0, UpperListing.PARTS)
                .mapToObj(part -> new UpperListing(places, part, thin, frontOf(places, known), cancelled))
                .toList()
                .parallelStream()
                .map(UpperListing::list)
                .toList()
                .forEach(halves::addAll);
        return thin ? frontOf(places, halves).culled(cancelled) : halves;
    }

    private UpperFront frontOf(UpperPlaces places, List<UpperHalf> halves) {
        UpperFront front = new UpperFront(places.rules, places.lines, places.durationAsked, places.lowerMayBreak);
        for (UpperHalf half : halves) {
            if (cancelled.getAsBoolean()) {
                break;
            }
            front.offer(half);
        }
        return front;
    }
}
