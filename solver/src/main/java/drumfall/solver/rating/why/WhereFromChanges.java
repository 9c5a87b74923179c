// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.brief.Brief.ArborBuild;
import drumfall.solver.brief.Brief.BearingPlaces;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.answers.Change;
import drumfall.solver.rating.answers.Changes;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Cards of what changes of a clock save. The clock after a change has a chain of its own, whose figures are named as those of the
 * rating with {@code -after}, but for those that the change leaves as they are.
 */
public final class WhereFromChanges {
    private static final String AFTER = "-after";
    private static final String CHANGED = "as it is changed";
    private static final double MICROGRAM = 1e-9;
    private static final double ROUNDING = 1e-12;

    private final TrainRater rater;
    private final WhereFromBook rated;
    private final Train train;

    /**
     * Cards of the changes of a train.
     *
     * @param rater what rated it
     * @param rated the cards of its rating
     * @param train the train
     */
    public WhereFromChanges(TrainRater rater, WhereFromBook rated, Train train) {
        this.rater = rater;
        this.rated = rated;
        this.train = train;
    }

    /**
     * Name of the card of a change, for example {@code saved-bearing-2}; arbors and meshes count from 1 at the drum.
     *
     * @param change the change
     */
    public static String name(Change change) {
        String kind = change.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
        return "saved-%s-%d".formatted(kind, change.number() + 1);
    }

    /**
     * What a change saves of the least weight.
     *
     * @param change of this train
     */
    public Card card(Change change) {
        Card before = rated("least-weight");
        Card after = after(least(change), new HashMap<>());
        return new CardShelf()
                .figure(
                        name(change),
                        "ΔW",
                        before.value() - after.value(),
                        "kg",
                        "ΔW = W − W′, the clock weighed anew with this one thing changed",
                        in -> in[0] - in[1],
                        "least weights in the middle of all bands; our own derivation",
                        before,
                        after);
    }

    private Card rated(String name) {
        return rated.card(name)
                .orElseThrow(() -> new IllegalStateException("The rating has no card (%s).".formatted(name)));
    }

    private Card least(Change change) {
        return switch (change.kind()) {
            case BEARING -> rebuilt(change, built(change).withBearings(BearingPlaces.BOTH));
            case THINNER_ARBOR -> rebuilt(change, Changes.thinner(built(change)));
            case LIGHTER_ESCAPE_WHEEL -> lighterEscapeWheel();
            case ONE_MORE_LEAF ->
                book(rater, change.train().orElseThrow()).card("least-weight").orElseThrow();
        };
    }

    private static WhereFromBook book(TrainRater other, Train changed) {
        return WhereFromBook.of(other, other.rate(changed));
    }

    private ArborBuild built(Change change) {
        return rater.build(WeightWalk.role(train, change.number()));
    }

    /** One arbor turns in other supports; a rod or bearing without a like changes the hubs of all wheels too. */
    private Card rebuilt(Change change, ArborBuild build) {
        int arbor = change.number();
        ArborRole role = WeightWalk.role(train, arbor);
        WhereFromBook other = book(rater.built(role, build), train);
        if (Changes.alone(train, arbor)) {
            return other.card("least-weight").orElseThrow();
        }
        Map<String, Card> changed = new HashMap<>();
        for (Criterion criterion : Criterion.values()) {
            String word = criterion.name().toLowerCase(Locale.ROOT);
            String load = "torque-load-%d-%s".formatted(arbor + 1, word);
            String driven = arbor == 0 ? "tension-" + word : "torque-in-%d-%s".formatted(arbor + 1, word);
            Map<String, Card> supports = new HashMap<>();
            for (String what : List.of("slope-wheel", "slope-pinion", "standing")) {
                String name = ArborCards.name(what, role, criterion);
                supports.put(name, other.card(name).orElseThrow());
            }
            Card loaded = swapped(rated(load), supports);
            supports.put(load, loaded);
            changed.put(load, loaded);
            changed.put(driven, swapped(rated(driven), supports));
        }
        return rated("least-weight").with(changed);
    }

    /** The same card with others in place of its own inputs; what these rest on stays, other arbors of the same build with it. */
    private static Card swapped(Card card, Map<String, Card> others) {
        List<Card> inputs = card.inputs().stream()
                .map(input -> others.getOrDefault(input.name(), input))
                .toList();
        return anew(card, card.name(), inputs);
    }

    private static Card anew(Card card, String name, List<Card> inputs) {
        double value = card.formula()
                .map(how -> how.function()
                        .of(inputs.stream().mapToDouble(Card::value).toArray()))
                .orElse(card.value());
        return new Card(name, card.symbol(), value, card.unit(), card.formula(), inputs, card.source(), card.pointer());
    }

    private Card lighterEscapeWheel() {
        CardShelf shelf = new CardShelf();
        Card mass = rated("escape-wheel-mass");
        Card share = rated("brief.escapement.inertiaShare");
        Map<String, Card> changed = new HashMap<>();
        changed.put(
                mass.name(),
                shelf.figure(
                        mass.name(),
                        mass.symbol(),
                        half(mass.value()),
                        "kg",
                        "m_e′ = m_e / 2, in whole micrograms",
                        in -> half(in[0]),
                        CHANGED,
                        mass));
        changed.put(
                share.name(),
                shelf.figure(
                        share.name(),
                        share.symbol(),
                        share.value() / 2,
                        share.unit(),
                        "i′ = i / 2",
                        in -> in[0] / 2,
                        CHANGED,
                        share));
        return rated("least-weight").with(changed);
    }

    private static double half(double kilograms) {
        long half = Math.round(kilograms / MICROGRAM) / 2;
        return MICROGRAM * half;
    }

    /** Figures reckoned anew without a change come out alike but for rounding. */
    private static boolean equal(double one, double other) {
        return one == other || Math.abs(one - other) <= ROUNDING * Math.abs(one);
    }

    /** Names figures that differ from the rating's after the change, and takes the rating's where they do not. */
    private Card after(Card card, Map<Card, Card> known) {
        boolean same = rated.card(card.name())
                .filter(was -> equal(was.value(), card.value()))
                .isPresent();
        if (same) {
            return rated(card.name());
        }
        Card made = known.get(card);
        if (made == null) {
            List<Card> inputs = new ArrayList<>();
            card.inputs().forEach(input -> inputs.add(after(input, known)));
            made = anew(card, card.name() + AFTER, inputs);
            known.put(card, made);
        }
        return made;
    }
}
