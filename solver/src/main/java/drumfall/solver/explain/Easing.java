// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefChange;
import drumfall.solver.rating.Demand;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A figure of the brief and the way in which a maker can ease it.
 *
 * @param pointer JSON pointer of the figure
 * @param way to larger or to smaller values
 * @param eases the demands that may be easier to meet; all others are met by the same trains or fewer
 * @param hardens the demands that may be harder to meet
 * @param effect how the trains that meet the brief change with the figure
 */
public record Easing(String pointer, Way way, Set<Demand> eases, Set<Demand> hardens, Effect effect) {
    /** The way in which a figure is eased. */
    public enum Way {
        /** To larger values. */
        UP,
        /** To smaller values. */
        DOWN
    }

    /**
     * How the trains that meet the brief change while a figure is eased. A test rates trains at eased values: what a figure is
     * said not to touch stays the same to the last bit.
     */
    public enum Effect {
        /** Trains are only added, a demand being less strict; no figure of a train depends on what is eased. */
        LIMIT,
        /** Trains are only added, there being more to choose from; no figure of a train depends on what is eased. */
        CHOICE,
        /** Trains are only added as long as the hardened demands are set aside; no figure of theirs moves but of these and the eased. */
        TRADE,
        /** Weights or teeth change too, so that every value has trains of its own. */
        OPEN
    }

    private static final Set<Demand> LOADS =
            EnumSet.of(Demand.WEIGHT_LIMIT, Demand.LINE_LOAD, Demand.RATCHET, Demand.TOOTH_BENDING);
    /** A heavier drum or other teeth move the weights of all builders too, each by its own part. */
    private static final Set<Demand> WEIGHTS = union(LOADS, EnumSet.of(Demand.BUILDERS));

    private static final Set<Demand> SIZES = EnumSet.of(Demand.PRINT_BED, Demand.FRAME, Demand.CLEARANCE);
    private static final Set<Demand> ALL = EnumSet.allOf(Demand.class);

    private static final List<Easing> KNOWN = List.of(
            trade(
                    "/fall/height",
                    Way.UP,
                    EnumSet.of(Demand.RUN_AT_LEAST),
                    EnumSet.of(Demand.RUN_AT_MOST, Demand.SINGLE_LAYER)),
            trade(
                    "/fall/height",
                    Way.DOWN,
                    EnumSet.of(Demand.RUN_AT_MOST, Demand.SINGLE_LAYER),
                    EnumSet.of(Demand.RUN_AT_LEAST)),
            limit("/run/atLeast", Way.DOWN, Demand.RUN_AT_LEAST),
            limit("/run/atMost", Way.UP, Demand.RUN_AT_MOST),
            limit("/weight/limit", Way.UP, Demand.WEIGHT_LIMIT),
            limit("/weight/builders", Way.DOWN, Demand.BUILDERS),
            limit("/line/ratedLoad", Way.UP, Demand.LINE_LOAD),
            limit("/line/safetyFactor", Way.DOWN, Demand.LINE_LOAD),
            limit("/beat/pendulumLength/from", Way.DOWN, Demand.PENDULUM_LENGTH),
            limit("/beat/pendulumLength/to", Way.UP, Demand.PENDULUM_LENGTH),
            limit("/beat/beatsPerHour/from", Way.DOWN, Demand.BEATS_PER_HOUR),
            limit("/beat/beatsPerHour/to", Way.UP, Demand.BEATS_PER_HOUR),
            // Without pillars a larger frame takes what a smaller one takes. Pillars move out with its edges, and so
            // farther
            // from whatever stands between them; only what stands outside of one, within its inset from the edge, could
            // come too close. No wheel is so small where insets are as usual, a line might hang there. Of such trains
            // alone
            // the nearest value could be missed; the value told has a train and a step less has none in any case.
            limit("/frame/width", Way.UP, Demand.FRAME),
            limit("/frame/height", Way.UP, Demand.FRAME),
            limit("/printer/bedWidth", Way.UP, Demand.PRINT_BED),
            limit("/printer/bedDepth", Way.UP, Demand.PRINT_BED),
            limit("/material/allowable", Way.UP, Demand.TOOTH_BENDING, Demand.RATCHET),
            // The motion work has the fewest leaves: its weight is on the centre arbor, and teeth of fewer may not
            // print.
            new Easing("/teeth/leaves/from", Way.DOWN, ALL, ALL, Effect.OPEN),
            choice("/teeth/leaves/to", Way.UP),
            choice("/teeth/wheelTeeth/from", Way.DOWN),
            choice("/teeth/wheelTeeth/to", Way.UP),
            choice("/escapement/teeth/from", Way.DOWN),
            choice("/escapement/teeth/to", Way.UP),
            choice("/drum/diameter/from", Way.DOWN),
            choice("/drum/diameter/to", Way.UP),
            choice("/train/above/from", Way.DOWN),
            choice("/train/above/to", Way.UP),
            choice("/train/below/from", Way.DOWN),
            choice("/train/below/to", Way.UP),
            // Click and hands stand as far out as the gap wants them, and weigh on their arbors accordingly.
            open("/parts/gap", Way.DOWN, Demand.CLEARANCE, WEIGHTS),
            open("/drum/length", Way.UP, Demand.SINGLE_LAYER, WEIGHTS),
            // Other teeth may print, and with them another motion work, whose distance may be held.
            open("/printer/nozzle", Way.DOWN, Demand.TOOTH_SIZE, union(WEIGHTS, union(SIZES, EnumSet.of(Demand.LOCK)))),
            new Easing("/weight/reserve", Way.UP, EnumSet.of(Demand.BUILDERS), LOADS, Effect.OPEN));

    /** Copies the sets. */
    public Easing {
        eases = Set.copyOf(eases);
        hardens = Set.copyOf(hardens);
    }

    /**
     * Every figure of a brief that can be eased: demands, choices, then what changes every train.
     *
     * @param brief the brief
     */
    public static List<Easing> of(Brief brief) {
        return KNOWN.stream()
                .filter(easing -> !easing.eases.equals(Set.of(Demand.BUILDERS))
                        || brief.weight().builders().isPresent())
                .filter(easing -> !BriefChange.typed(brief, easing.pointer).isEmpty())
                .toList();
    }

    /** Whether every demand may be easier to meet, so that no clash stands whatever the figure, not even one of choices alone. */
    boolean easesAll() {
        return eases.equals(ALL);
    }

    private static Easing limit(String pointer, Way way, Demand eased, Demand... more) {
        return new Easing(pointer, way, EnumSet.of(eased, more), Set.of(), Effect.LIMIT);
    }

    private static Easing choice(String pointer, Way way) {
        return new Easing(pointer, way, ALL, Set.of(), Effect.CHOICE);
    }

    private static Easing trade(String pointer, Way way, Set<Demand> eased, Set<Demand> hardened) {
        return new Easing(pointer, way, eased, hardened, Effect.TRADE);
    }

    private static Easing open(String pointer, Way way, Demand eased, Set<Demand> changed) {
        return new Easing(pointer, way, union(EnumSet.of(eased), changed), changed, Effect.OPEN);
    }

    private static Set<Demand> union(Set<Demand> first, Set<Demand> second) {
        Set<Demand> union = EnumSet.copyOf(first);
        union.addAll(second);
        return union;
    }
}
