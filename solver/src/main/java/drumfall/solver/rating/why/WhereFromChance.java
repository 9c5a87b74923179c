// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.brief.Brief;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.answers.WeightChance;
import drumfall.solver.train.Train;

/** The card of the chance that a weight runs a train: a share of trials, drawn from the brief's bands. */
public final class WhereFromChance {
    private static final String DRAWN =
            "bands evenly and each by itself, as JCGM 101:2008 takes what is known by its limits alone (from memory); strata"
                    + " in an order drawn from seed " + WeightChance.SEED;

    private WhereFromChance() {}

    /**
     * The card {@code chance}.
     *
     * @param rater rates against the brief
     * @param train the train
     * @param chance its trials
     * @param weight kg
     */
    public static Card of(TrainRater rater, Train train, WeightChance chance, double weight) {
        CardShelf shelf = new CardShelf();
        Card trials =
                shelf.given("trials", "n", chance.trials(), "1", "as many as give quantiles to about one percent");
        Card running = running(
                shelf,
                rater,
                train,
                "trials-that-run",
                chance.thatRun(weight) * chance.trials(),
                shelf.given("weight-set", "W", weight, "kg", "as it is set"),
                trials);
        return shelf.figure(
                "chance",
                "p",
                chance.thatRun(weight),
                "1",
                "p = k / n",
                in -> in[0] / in[1],
                "the share of builders whose clock the weight keeps going",
                running,
                trials);
    }

    /**
     * The card of how many trials a weight runs; none if no weight drives the train.
     *
     * @param name of the card
     * @param count how many
     * @param weight card of the weight
     * @param trials card of how many trials there are
     */
    static Card running(
            CardShelf shelf, TrainRater rater, Train train, String name, double count, Card weight, Card trials) {
        Brief brief = rater.brief();
        return shelf.figure(
                name,
                "k",
                Math.rint(count),
                "1",
                "k: of n trials those whose least weight is at most W",
                in -> Double.isInfinite(in[0])
                        ? 0
                        : Math.rint(drawn(rater, train, in).thatRun(in[0]) * in[1]),
                DRAWN,
                weight,
                trials,
                low("µ_t", "/friction/teeth", brief.friction().teeth(), shelf),
                high("µ_t", "/friction/teeth", brief.friction().teeth(), shelf),
                low("µ", "/friction/bores", brief.friction().bores(), shelf),
                high("µ", "/friction/bores", brief.friction().bores(), shelf),
                low("µ_p", "/friction/pallets", brief.friction().pallets(), shelf),
                high("µ_p", "/friction/pallets", brief.friction().pallets(), shelf),
                shelf.brief(
                        "Q_low",
                        "/pendulum/quality/low",
                        brief.pendulum().quality().low()),
                shelf.brief(
                        "Q_high",
                        "/pendulum/quality/high",
                        brief.pendulum().quality().high()));
    }

    private static Card low(String symbol, String pointer, Brief.FrictionBand band, CardShelf shelf) {
        return shelf.brief(symbol + "_low", pointer + "/low", band.low());
    }

    private static Card high(String symbol, String pointer, Brief.FrictionBand band, CardShelf shelf) {
        return shelf.brief(symbol + "_high", pointer + "/high", band.high());
    }

    /** The trials of the same train with the bands that are put in, the teeth as they are. */
    private static WeightChance drawn(TrainRater rater, Train train, double... in) {
        Brief.Friction friction = new Brief.Friction(
                band(in[2], in[3]),
                band(in[4], in[5]),
                band(in[6], in[7]),
                rater.brief().friction().staticFactor());
        Brief.QualityBand quality = new Brief.QualityBand(number(in[8]), number(in[9]));
        return WeightChance.of(rater.within(friction, quality), train, (int) in[1]);
    }

    private static Brief.FrictionBand band(double low, double high) {
        return new Brief.FrictionBand(number(low), number(high));
    }

    private static Quantity number(double value) {
        return Quantity.ofSi(Dimension.NUMBER, value);
    }
}
