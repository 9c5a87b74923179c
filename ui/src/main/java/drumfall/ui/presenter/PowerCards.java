// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.power.answers.FreeSpin;
import drumfall.solver.power.books.PowerBooks;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.answers.Change;
import drumfall.solver.rating.why.Card;
import drumfall.solver.rating.why.WhereFromChance;
import drumfall.solver.rating.why.WhereFromChanges;
import drumfall.solver.rating.why.WhereFromDials;
import drumfall.solver.rating.why.WhereFromPower;
import drumfall.solver.train.Train;
import drumfall.ui.presenter.PowerFindings.Found;
import drumfall.ui.presenter.WhereCard.Input;
import java.util.List;
import java.util.Optional;

/** The figures of the sheet of the power and where each comes from. */
public final class PowerCards {
    private static final int BUILDERS = 20;

    private final PowerReckoner reckoner;
    private final PowerPicture picture;
    private final UnitSystem units;
    private final Train train;

    PowerCards(PowerReckoner reckoner, PowerPicture picture, UnitSystem units) {
        this.reckoner = reckoner;
        this.picture = picture;
        this.units = units;
        this.train = reckoner.rating().train();
    }

    /** A figure's value. */
    public ShownFigure value(PowerFigure figure) {
        return switch (figure) {
            case LEAST -> mass(picture.least());
            case ARC -> books(books -> ShownFigure.of(Dimension.ANGLE, books.semiArc(), units));
            case POWER -> books(books -> PowerStep.microwatts(books.weightPower()));
            case DELIVERED -> books(books -> MeshFigure.percent(picture.delivered()));
            case COASTING ->
                picture.coasting().map(coasting -> time(coasting.seconds())).orElse(ShownFigure.NONE);
            case FREE_SPIN ->
                time(picture.spins().stream()
                        .mapToDouble(FreeSpin::seconds)
                        .min()
                        .orElse(Double.NaN));
            case RATCHET ->
                picture.ratchet()
                        .map(hold -> ShownFigure.of(Dimension.STRESS, hold.toothBending(), units))
                        .orElse(ShownFigure.NONE);
        };
    }

    private ShownFigure books(java.util.function.Function<PowerBooks, ShownFigure> figure) {
        return picture.books().map(figure).orElse(ShownFigure.NONE);
    }

    /** The card of a figure: the rating's where it has the same figure, else reckoned at what the dials stand at. */
    public WhereCard card(PowerFigure figure) {
        Optional<Card> known = figure.card().flatMap(name -> reckoner.book().card(name));
        if (known.isPresent() && isRated(figure)) {
            return new BookCards(units).shown(figure.title(), known.get());
        }
        return switch (figure) {
            case LEAST ->
                shown(
                        figure,
                        dials().leastWeight(reckoner.brief(), picture.setting().point(reckoner.brief())));
            case RATCHET ->
                shown(figure, dials().ratchet(picture.setting().weight()).orElseThrow());
            case FREE_SPIN -> shown(figure, dials().freeSpin(reckoner.clock(picture.setting())));
            case ARC, POWER, DELIVERED, COASTING ->
                cardOfBooks(figure, figure.cardOfBooks().orElseThrow());
        };
    }

    private WhereFromDials dials() {
        return new WhereFromDials(reckoner.book());
    }

    private WhereCard shown(PowerFigure figure, Card card) {
        return new BookCards(units).shown(figure.title(), value(figure), card);
    }

    private WhereCard cardOfBooks(PowerFigure figure, String name) {
        return picture.books()
                .map(books -> shown(figure, ofBooks(books).card(name).orElseThrow()))
                .orElseGet(() -> new WhereCard(
                        figure.title(),
                        value(figure),
                        Texts.of("powerformula.stands"),
                        set(),
                        Texts.of("powersource.books")));
    }

    /** Made at a click, so that no picture waits for it. */
    private WhereFromPower ofBooks(PowerBooks books) {
        return reckoner.cards(picture.setting(), books);
    }

    /** Whether the rating, which the solver's cards speak of, has the same figure. */
    private boolean isRated(PowerFigure figure) {
        boolean middle = picture.setting().inTheMiddle(reckoner.brief());
        return switch (figure) {
            case LEAST -> middle;
            case POWER, RATCHET ->
                picture.setting().weight() == reckoner.rating().recommendedWeight();
            case ARC, DELIVERED, COASTING, FREE_SPIN -> false;
        };
    }

    /** What the dials stand at. */
    private List<Input> set() {
        PowerSetting setting = picture.setting();
        return List.of(
                plain("W", "weight", mass(setting.weight())),
                typed(
                        "µ",
                        "friction",
                        number(PowerSetting.atTheTeeth(reckoner.brief(), setting.friction())),
                        "/friction/teeth/low"),
                typed("Q", "quality", number(setting.quality()), "/pendulum/quality/low"));
    }

    /** The card of a place where power goes. */
    public WhereCard card(PowerStep step) {
        Card card = picture.books()
                .flatMap(books -> ofBooks(books).card(step.place(), step.number()))
                .orElseThrow(() -> new IllegalStateException(
                        "The place (%s) must have a card of the solver's.".formatted(step.title())));
        return new BookCards(units).shown(step.title(), card);
    }

    /** A change in words. */
    public String title(Change change) {
        String what = change.kind() == Change.Kind.ONE_MORE_LEAF
                ? train.meshes().get(change.number()).counts().toString()
                : Names.arbor(change.number(), train);
        return Texts.of("powerchange." + change.kind().name(), what);
    }

    /** What a change saves of the least weight; what it costs has a plus sign, since the weight grows. */
    public ShownFigure value(Change change) {
        if (Double.isInfinite(change.leastAfter())) {
            return new ShownFigure(Texts.of("power.never"), "");
        }
        ShownFigure size = ShownFigure.of(Dimension.MASS, Math.abs(change.saved()), units);
        return new ShownFigure((change.saved() < 0 ? "+" : "−") + size.number(), size.unit());
    }

    /** The card of a change. */
    public WhereCard card(Change change) {
        Card card = new WhereFromChanges(reckoner.rater(), reckoner.book(), train).card(change);
        return new BookCards(units).shown(title(change), value(change), card);
    }

    /** The share of builders whose clock the weight set keeps going, in twentieths. */
    public ShownFigure chance(Found found) {
        double runs = found.chance().thatRun(picture.setting().weight());
        return new ShownFigure(
                Integer.toString((int) Math.floor(runs * BUILDERS + 1e-9)), Texts.of("power.in", BUILDERS));
    }

    /** What half of all builders and what nearly all need. */
    public String spread(Found found) {
        return Texts.of(
                "power.spread",
                mass(found.chance().quantile(0.5)).text(),
                mass(found.chance().quantile(0.95)).text());
    }

    /** The card of the chance. */
    public WhereCard chanceCard(Found found) {
        Card card = WhereFromChance.of(
                reckoner.rater(), train, found.chance(), picture.setting().weight());
        return new BookCards(units).shown(Texts.of("power.chance"), chance(found), card);
    }

    private ShownFigure mass(double kilograms) {
        return ShownFigure.of(Dimension.MASS, kilograms, units, ShownFigure.Rounding.UP);
    }

    private ShownFigure time(double seconds) {
        return ShownFigure.of(Dimension.TIME, seconds, units, ShownFigure.Rounding.DOWN);
    }

    private ShownFigure number(double value) {
        return ShownFigure.of(Dimension.NUMBER, value, units);
    }

    private static Input plain(String symbol, String key, ShownFigure value) {
        return new Input(symbol, Texts.of("powerinput." + key), value.text(), Optional.empty());
    }

    private static Input typed(String symbol, String key, ShownFigure value, String pointer) {
        return new Input(symbol, Texts.of("powerinput." + key), value.text(), Optional.of(pointer));
    }
}
