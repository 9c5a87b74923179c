// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.wording;

import drumfall.solver.brief.Brief;
import drumfall.solver.explain.Clashes;
import drumfall.solver.explain.MinimalClash;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.DemandFigure;
import drumfall.solver.search.Clash;
import drumfall.solver.search.HeldDemand;
import java.util.List;
import java.util.stream.Stream;

/** Words for the demands of one brief, made of the maker's own entries. */
public final class DemandWording {
    private final BriefEntries entries;
    private final FigureWording figures;

    /**
     * The words of a brief.
     *
     * @param brief the brief
     * @param system units in which figures and limits are shown; entries stay as typed
     */
    public DemandWording(Brief brief, UnitSystem system) {
        this.entries = new BriefEntries(brief);
        this.figures = FigureWording.in(system);
    }

    /**
     * What a demand is about, for example "shortest duration".
     *
     * @param demand the demand
     */
    public static String name(Demand demand) {
        return Words.BOOK.phrase("demand." + demand.name());
    }

    /**
     * A demand as a clause, for example "the clock runs at least 7.5 d".
     *
     * @param demand any but {@link Demand#LOCK}, whose clauses {@link LockWording} words
     */
    public String clause(Demand demand) {
        return Words.BOOK.phrase(
                "demand." + demand.name() + ".clause", entries.of(demand).toArray());
    }

    /**
     * A demand or lock of a clash as a clause.
     *
     * @param held the demand or the single lock
     */
    public String clause(HeldDemand held) {
        return held.demand() == Demand.LOCK
                ? String.join("; ", LockWording.clauses(held.lock()))
                : clause(held.demand());
    }

    /**
     * A clash: one sentence on how far it is proven, then a clause for each demand.
     *
     * @param clash the clash
     */
    public List<String> lines(Clash clash) {
        return Stream.concat(
                        Stream.of(Words.BOOK.phrase(opening(clash))),
                        clash.demands().stream().map(this::line))
                .toList();
    }

    /**
     * A demand of a clash with its place in the brief.
     *
     * @param held the demand or the single lock
     */
    public String line(HeldDemand held) {
        return Words.BOOK.phrase("clash.line", clause(held), held.pointer());
    }

    /**
     * How many clashes there are and how far that is proven; what else there is to say if the choices alone clash.
     *
     * @param clashes at least one clash
     */
    public List<String> lines(Clashes clashes) {
        int count = clashes.list().size();
        if (clashes.list().get(0).demands().isEmpty()) {
            return List.of(Words.BOOK.phrase("clash.choices"));
        }
        String key = clashes.complete() ? "clashes.complete" : "clashes.some";
        return List.of(Words.BOOK.phrase(count == 1 ? key + ".one" : key, count));
    }

    /**
     * The heading of a clash in a list.
     *
     * @param number from 1
     * @param clash the clash
     */
    public String heading(int number, MinimalClash clash) {
        return Words.BOOK.phrase(clash.minimal() ? "clashes.number" : "clashes.number.unproved", number);
    }

    private static String opening(Clash clash) {
        if (clash.demands().isEmpty()) {
            return "clash.choices";
        }
        return clash.smallest() ? "clash.smallest" : "clash.some";
    }

    /**
     * The figure of a train, with as many digits as it takes to see that a missed demand is missed.
     *
     * @param figure the demand with the train's figure
     */
    public String figure(DemandFigure figure) {
        return figure.demand() == Demand.SECONDS_HAND
                ? Words.BOOK.phrase(figure.met() ? "seconds.served" : "seconds.unserved")
                : figures.beside(figure);
    }

    /**
     * The limit that a figure is held against, for example "at most 5 kg".
     *
     * @param figure the demand with its limits
     */
    public String limit(DemandFigure figure) {
        if (figure.demand() == Demand.SECONDS_HAND) {
            return Words.BOOK.phrase("seconds.asked");
        }
        return figure.from().isEmpty() && figure.to().isEmpty() ? choices(figure.demand()) : figures.limits(figure);
    }

    private String choices(Demand demand) {
        List<String> choices = entries.of(demand);
        boolean one = choices.size() == 1
                ? !choices.get(0).contains(", ")
                : choices.get(0).equals(choices.get(1));
        return one
                ? Words.BOOK.phrase("limit.held", choices.get(0))
                : Words.BOOK.phrase("demand." + demand.name() + ".choices", choices.toArray());
    }
}
