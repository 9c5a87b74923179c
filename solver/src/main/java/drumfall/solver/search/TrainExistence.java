// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Objective;
import drumfall.solver.brief.ObjectiveFigure;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.TrainRater;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Answers whether any train meets a brief, some of its demands waived.
 *
 * <p>Where nothing holds the beat, half trains of very different beats compare badly and fill the memory. The lengths of
 * pendulum are then gone through piece by piece, the piece of the brief's own length first; together the pieces hold every
 * beat that a search without pieces allows. A range of lengths is a demand and moves no figure of a train but its own, and
 * neighbouring pieces share their end: a train is found in a piece if it meets the rest and beats in it, and if every piece
 * proves empty there is no train.
 */
public final class TrainExistence {
    /**
     * Ends of the pieces, m. Narrow where half trains are many; the outermost lie beyond 1 and 1e9 beats an hour, between
     * which the rough beat is held anyway.
     */
    private static final List<String> LENGTHS = List.of(
            "1e-12",
            "0.005",
            "0.01",
            "0.013",
            "0.017",
            "0.022",
            "0.03",
            "0.04",
            "0.05",
            "0.065",
            "0.08",
            "0.11",
            "0.14",
            "0.18",
            "0.24",
            "0.32",
            "0.45",
            "0.7",
            "1.5",
            "20000000");

    /**
     * A train is often found at once in one piece while another takes long to prove empty, so all pieces are tried in
     * rounds of growing length, ns.
     */
    private static final List<Long> ROUNDS = List.of(1_000_000_000L, 6_000_000_000L, Long.MAX_VALUE);

    /** Whether trains exist does not depend on what is wanted of them, and one objective is the quickest. */
    private static final List<Objective> WEIGHT = List.of(
            new Objective(ObjectiveFigure.RECOMMENDED_WEIGHT, Optional.of(Quantity.parse(Dimension.NUMBER, "10 %"))));

    private final Set<Demand> waived;
    private final BooleanSupplier cancelled;
    private final QuestionSettings settings;

    private TrainExistence(Set<Demand> waived, BooleanSupplier cancelled, QuestionSettings settings) {
        this.waived = waived;
        this.cancelled = cancelled;
        this.settings = settings;
    }

    /**
     * Whether any train meets a brief.
     *
     * @param brief the brief; its objectives do not matter
     * @param waived demands that are taken as met
     * @param cancelled asked all the time; once true the answer is unknown unless a train was found before
     */
    public static Existence of(Brief brief, Set<Demand> waived, BooleanSupplier cancelled) {
        return of(brief, waived, cancelled, QuestionSettings.USUAL);
    }

    /**
     * Whether any train meets a brief, asked in a stated way; the answer does not depend on it, the train found may.
     *
     * @param brief the brief; its objectives do not matter
     * @param waived demands that are taken as met
     * @param cancelled asked all the time; once true the answer is unknown unless a train was found before
     * @param settings which shortcuts are taken
     */
    public static Existence of(Brief brief, Set<Demand> waived, BooleanSupplier cancelled, QuestionSettings settings) {
        return new TrainExistence(waived, cancelled, settings).of(brief);
    }

    private Existence of(Brief brief) {
        Brief asked = settings.take(QuestionShortcut.ONE_OBJECTIVE) ? brief.withObjectives(WEIGHT) : brief;
        return holdsBeat(brief) || !settings.take(QuestionShortcut.LENGTHS_IN_PIECES)
                ? whole(asked, waived, cancelled)
                : inPieces(asked);
    }

    private boolean holdsBeat(Brief brief) {
        boolean length = brief.beat().pendulumLength().isPresent() && !waived.contains(Demand.PENDULUM_LENGTH);
        boolean beats = brief.beat().beatsPerHour().isPresent() && !waived.contains(Demand.BEATS_PER_HOUR);
        return length || beats;
    }

    private Existence whole(Brief brief, Set<Demand> waivedThen, BooleanSupplier ended) {
        return TrainSearch.existence(new TrainRater(brief, waivedThen), ended, settings);
    }

    private Existence inPieces(Brief brief) {
        Set<Demand> waivedElse = EnumSet.noneOf(Demand.class);
        waivedElse.addAll(waived);
        waivedElse.remove(Demand.PENDULUM_LENGTH);
        List<Brief.LengthRange> open = pieces(brief);
        for (long nanoseconds : ROUNDS) {
            List<Brief.LengthRange> unknown = new ArrayList<>();
            for (Brief.LengthRange piece : open) {
                Brief.Beat beat = new Brief.Beat(
                        Optional.of(piece),
                        brief.beat().beatsPerHour(),
                        brief.beat().secondsHand());
                Existence found = whole(brief.withBeat(beat), waivedElse, within(nanoseconds, cancelled));
                if (found.some() || cancelled.getAsBoolean()) {
                    return found.some() ? found : Existence.UNKNOWN;
                }
                if (!found.none()) {
                    unknown.add(piece);
                }
            }
            open = unknown;
        }
        return open.isEmpty() ? Existence.NONE : Existence.UNKNOWN;
    }

    private static BooleanSupplier within(long nanoseconds, BooleanSupplier cancelled) {
        long start = System.nanoTime();
        return () -> System.nanoTime() - start > nanoseconds || cancelled.getAsBoolean();
    }

    private static List<Brief.LengthRange> pieces(Brief brief) {
        double own = brief.beat()
                .pendulumLength()
                .map(range -> range.from().si())
                .orElseGet(() -> brief.beat()
                        .beatsPerHour()
                        .map(range -> Math.pow(3600 / range.to().si(), 2))
                        .orElse(1.0));
        return IntStream.range(0, LENGTHS.size() - 1)
                .mapToObj(i -> new Brief.LengthRange(metres(LENGTHS.get(i)), metres(LENGTHS.get(i + 1))))
                .sorted(Comparator.comparingDouble(piece -> away(piece, own)))
                .toList();
    }

    private static double away(Brief.LengthRange piece, double length) {
        return Math.abs(Math.log(Math.sqrt(piece.from().si() * piece.to().si()) / length));
    }

    private static Quantity metres(String amount) {
        return Quantity.parse(Dimension.LENGTH, amount + " m");
    }
}
