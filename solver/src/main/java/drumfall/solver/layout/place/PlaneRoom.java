// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.Planes;
import drumfall.solver.layout.Span;
import drumfall.solver.layout.size.Face;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;

/**
 * Which parts of neighbouring arbors the planes can keep from meeting within a depth, whatever the directions.
 *
 * <p>Neighbours stand one centre distance apart in every layout. If two of their parts overlap at that distance, their
 * planes must not meet, and some orders of the planes drop out. A set of such pairs is a set of bits, {@link #bit} each.
 * Kept are the sets of pairs that meet in some order which fits the depth, less those that contain another one: a set of
 * pairs to be kept apart can be had if one of the kept sets shares nothing with it.
 */
public final class PlaneRoom {
    /** Room for everything: no two parts ever meet. */
    public static final PlaneRoom AMPLE = new PlaneRoom(List.of(0L));

    /** A part of an arbor and a part of the next one towards the escape wheel. */
    public enum Pair {
        /** The pinion, or the drum on the drum arbor, and the wheel. */
        DRIVEN_AND_WHEEL(0),
        /** The pinion, or the drum on the drum arbor, and the hub. */
        DRIVEN_AND_HUB(1),
        /** The hub, which the drum arbor lacks, and the wheel. */
        HUB_AND_WHEEL(2),
        /** Both hubs. */
        HUB_AND_HUB(3);

        private final int place;

        Pair(int place) {
            this.place = place;
        }
    }

    private static final int PAIRS = 4;

    private final long[] meetings;
    private final long decisive;

    /** Halves by the million ask for the same few; racing threads may both work one out. */
    private final Map<Left, PlaneRoom> known = new ConcurrentHashMap<>();

    private record Left(long apart, long possible) {}

    private PlaneRoom(List<Long> meetings) {
        this.meetings = meetings.stream().mapToLong(set -> set).toArray();
        this.decisive = meetings.stream().reduce(0L, (one, other) -> one | other);
    }

    /**
     * The room of a depth.
     *
     * @param sizes what stands between the plates, at most 15 meshes
     * @param depth from plate to plate, nm
     * @param cancelled asked often; once true the room is good for nothing
     */
    public static PlaneRoom of(PlaneSizes sizes, long depth, BooleanSupplier cancelled) {
        Packing packing = new Packing(sizes, Face.FRONT, 0, Optional.empty());
        List<Long> least = new ArrayList<>();
        packing.each(
                planes -> {
                    if (planes.innerDepth() <= depth) {
                        takeIn(meetings(planes, sizes), least);
                    }
                },
                cancelled);
        return new PlaneRoom(least);
    }

    private static void takeIn(long set, List<Long> least) {
        if (least.stream().noneMatch(kept -> (kept & ~set) == 0)) {
            least.removeIf(kept -> (set & ~kept) == 0);
            least.add(set);
        }
    }

    private static long meetings(Planes planes, PlaneSizes sizes) {
        Slots slots = new Slots(sizes.gears().size() - 1);
        Span[] spans = slots.spans(planes);
        long set = 0;
        for (int arbor = 0; arbor < sizes.gears().size() - 1; arbor++) {
            for (Pair pair : Pair.values()) {
                if (arbor > 0 || !ofHub(pair)) {
                    Span span = spans[first(slots, arbor, pair)];
                    boolean meet = span.gapTo(spans[second(slots, arbor, pair)])
                            < sizes.gaps().spacing();
                    set |= meet ? bit(arbor, pair) : 0;
                }
            }
        }
        return set;
    }

    private static boolean ofHub(Pair pair) {
        return pair == Pair.HUB_AND_WHEEL || pair == Pair.HUB_AND_HUB;
    }

    private static int first(Slots slots, int arbor, Pair pair) {
        if (ofHub(pair)) {
            return slots.hub(arbor);
        }
        return arbor == 0 ? Slots.DRUM : slots.plane(arbor - 1);
    }

    private static int second(Slots slots, int arbor, Pair pair) {
        boolean wheel = pair == Pair.DRIVEN_AND_WHEEL || pair == Pair.HUB_AND_WHEEL;
        return wheel ? slots.plane(arbor + 1) : slots.hub(arbor + 1);
    }

    /**
     * The bit of a pair.
     *
     * @param arbor the arbor nearer to the drum, 0 for the drum arbor
     * @param pair its part and that of the next arbor
     */
    public static long bit(int arbor, Pair pair) {
        return 1L << (shift(arbor) + pair.place);
    }

    /**
     * A set of pairs, its arbors counted from another one.
     *
     * @param pairs bits, arbors counted from an arbor
     * @param arbor the number of that arbor
     */
    public static long from(long pairs, int arbor) {
        return pairs << shift(arbor);
    }

    /**
     * How far bits of an arbor lie above those of the drum arbor.
     *
     * @param arbor its number
     */
    public static int shift(int arbor) {
        return PAIRS * arbor;
    }

    /**
     * Whether some order of the planes that fits the depth keeps pairs apart.
     *
     * @param pairs bits of the pairs that must not meet
     */
    public boolean keepsApart(long pairs) {
        for (long meeting : meetings) {
            if ((meeting & pairs) == 0) {
                return true;
            }
        }
        return false;
    }

    /**
     * What is left of the room when some pairs must not meet and only some others may yet be added to them.
     *
     * @param apart bits of the pairs that must not meet
     * @param possible bits of the pairs that may be added
     */
    public PlaneRoom left(long apart, long possible) {
        // What makes no difference tells nothing apart.
        return known.computeIfAbsent(new Left(apart & decisive, possible & decisive), this::leftAnew);
    }

    private PlaneRoom leftAnew(Left asked) {
        List<Long> least = new ArrayList<>();
        for (long meeting : meetings) {
            if ((meeting & asked.apart) == 0) {
                takeIn(meeting & asked.possible, least);
            }
        }
        return new PlaneRoom(least);
    }

    /** The bits of all pairs that make a difference; keeping others apart costs nothing. */
    public long decisive() {
        return decisive;
    }
}
