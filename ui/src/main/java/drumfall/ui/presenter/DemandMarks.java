// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.DemandFigure;
import drumfall.solver.rating.Rating;
import drumfall.solver.search.Clash;
import drumfall.solver.search.HeldDemand;
import drumfall.ui.wording.FigureWording;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Marks beside the brief's entries: demands that bind on the chosen train, that it misses, or that clash with others. */
public final class DemandMarks {
    /** A figure this near its limit, as a share of it, is said to bind. Chosen by us, no source. */
    private static final double NEAR = 0.02;

    /** Room in the frame below which the frame is said to bind, m. Chosen by us, no source. */
    private static final double LITTLE_ROOM = 0.002;

    private DemandMarks() {}

    /** How a demand stands, the mildest first. */
    public enum Standing {
        /** The chosen train is at the limit. */
        BINDS,
        /** The chosen train misses it. */
        MISSED,
        /** It cannot be met together with others. */
        CLASHES
    }

    /**
     * A mark.
     *
     * @param standing how the demand stands
     * @param text what to say beside the entry
     */
    public record Mark(Standing standing, String text) {}

    /**
     * The marks by JSON pointer of the entry or group they belong to.
     *
     * @param chosen the chosen train's rating, if any
     * @param front the front shown, if any
     * @param units which units are read
     */
    public static Map<String, Mark> of(Optional<Rating> chosen, Optional<Front> front, UnitSystem units) {
        Map<String, Mark> marks = new TreeMap<>();
        chosen.ifPresent(rating -> rating.demands().stream()
                .flatMap(figure -> mark(figure, units).stream().map(mark -> Map.entry(figure.demand(), mark)))
                .forEach(entry -> put(marks, entry.getKey().pointer(), entry.getValue())));
        front.flatMap(Front::clash)
                .map(Clash::demands)
                .orElse(List.of())
                .forEach(held -> put(marks, held.pointer(), new Mark(Standing.CLASHES, Texts.of("mark.clashes"))));
        return marks;
    }

    private static void put(Map<String, Mark> marks, String pointer, Mark mark) {
        marks.merge(
                pointer, mark, (first, second) -> second.standing().compareTo(first.standing()) > 0 ? second : first);
    }

    private static Optional<Mark> mark(DemandFigure figure, UnitSystem units) {
        if (!figure.met()) {
            return Optional.of(new Mark(Standing.MISSED, Texts.of("mark.missed", shown(figure, units))));
        }
        boolean near = near(figure, figure.from()) || near(figure, figure.to());
        return near
                        && figure.demand() != Demand.LOCK
                        && figure.demand() != Demand.SECONDS_HAND
                        && figure.demand() != Demand.MESHES
                ? Optional.of(new Mark(Standing.BINDS, Texts.of("mark.binds", shown(figure, units))))
                : Optional.empty();
    }

    private static boolean near(DemandFigure figure, OptionalDouble limit) {
        if (limit.isEmpty() || figure.demand() == Demand.STEPS_UP) {
            return false;
        }
        double apart = Math.abs(figure.figure() - limit.getAsDouble());
        if (figure.demand() == Demand.FRAME) {
            return apart <= LITTLE_ROOM;
        }
        boolean count = figure.dimension() == Dimension.NUMBER && figure.demand() != Demand.BEATS_PER_HOUR;
        return count ? apart == 0 : apart <= NEAR * Math.abs(limit.getAsDouble());
    }

    private static String shown(DemandFigure figure, UnitSystem units) {
        String value = value(figure, figure.figure(), units);
        return figure.place().isEmpty() ? value : Texts.of("mark.at", value, Names.place(figure.place()));
    }

    /** What a missed demand says, with its figure and limits. */
    public static String missed(DemandFigure figure, UnitSystem units) {
        return Texts.of("missed", name(figure.demand()), shown(figure, units), limits(figure, units));
    }

    private static String limits(DemandFigure figure, UnitSystem units) {
        String from = limit(figure, figure.from(), units);
        String to = limit(figure, figure.to(), units);
        if (!from.isEmpty() && !to.isEmpty()) {
            return from.equals(to) ? Texts.of("limit.is", from) : Texts.of("limit.between", from, to);
        }
        return from.isEmpty()
                ? (to.isEmpty() ? Texts.of("limit.choice") : Texts.of("limit.most", to))
                : Texts.of("limit.least", from);
    }

    private static String limit(DemandFigure figure, OptionalDouble limit, UnitSystem units) {
        return limit.isEmpty() ? "" : value(figure, limit.getAsDouble(), units);
    }

    private static String value(DemandFigure figure, double si, UnitSystem units) {
        return FigureWording.isShare(figure.demand())
                ? ShownFigure.share(si).text()
                : ShownFigure.of(figure.dimension(), si, units).text();
    }

    /** A demand in the brief's words. */
    public static String name(Demand demand) {
        return Texts.of("demand." + demand.name());
    }

    /**
     * A clashing demand in the brief's words, with what was typed.
     *
     * @param held the demand or lock
     * @param brief the brief that has no train
     */
    public static String words(HeldDemand held, Brief brief) {
        if (held.demand() == Demand.LOCK) {
            return LockEdits.held(held.lock()).stream()
                    .map(figure -> Texts.of(
                            "clash.lock",
                            Names.of(figure),
                            LockEdits.heldValue(held.lock(), figure).orElse("")))
                    .findFirst()
                    .orElse(Texts.of("demand.LOCK"));
        }
        return typed(held, brief)
                .map(value -> Texts.of("clash.demand", name(held.demand()), value))
                .orElseGet(() -> name(held.demand()));
    }

    private static Optional<String> typed(HeldDemand held, Brief brief) {
        var draft = drumfall.ui.design.BriefDraft.of(brief);
        Stream<String> places = BriefSheet.rowOf(held.pointer()).stream()
                .flatMap(row -> row.lines().stream())
                .map(SheetLine::pointer);
        String text = String.join(
                " – ",
                places.map(draft::typed).filter(value -> !value.isEmpty()).toList());
        boolean flag = text.equals("true") || text.equals("false");
        return Optional.of(text).filter(value -> !value.isEmpty() && !flag);
    }
}
