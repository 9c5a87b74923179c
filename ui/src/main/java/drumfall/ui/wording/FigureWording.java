// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.wording;

import drumfall.solver.brief.Objective;
import drumfall.solver.brief.ObjectiveFigure;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.QuantityFormat;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.DemandFigure;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.why.Card;
import drumfall.solver.train.Train;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.OptionalDouble;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Figures as people read them: three digits, durations rounded down, weights rounded up.
 *
 * @param format units and digits
 */
public record FigureWording(QuantityFormat format) {
    private static final int USUAL_DIGITS = 3;

    /** Numbers have no unit to grow into, so they keep more digits: beats an hour have four or five. */
    private static final int NUMBER_DIGITS = 6;

    private static final int LIMIT_DIGITS = 4;
    private static final int MOST_DIGITS = 15;
    private static final BigInteger MILLISECONDS_PER_HOUR = BigInteger.valueOf(3_600_000);

    /** Beyond these no figure of a clock means anything, and its decimals would fill lines. */
    private static final double LARGEST_SHOWN = 1e9;

    private static final double SMALLEST_SHOWN = 1e-30;

    /**
     * Figures in a system of units.
     *
     * @param system the units
     */
    public static FigureWording in(UnitSystem system) {
        return new FigureWording(QuantityFormat.in(system).withSignificantDigits(USUAL_DIGITS));
    }

    /**
     * The counts and modules from the drum, the centre marked, for example {@code 96/8 m1.5 | 64/8 m1 · 60/8 m1 · E30}.
     *
     * @param train the train
     */
    public static String train(Train train) {
        return train.toString();
    }

    /**
     * An exact fraction, for example "15/2".
     *
     * @param fraction any
     */
    public static String exact(BigFraction fraction) {
        boolean below = fraction.getDenominator().signum() < 0;
        BigInteger above = below ? fraction.getNumerator().negate() : fraction.getNumerator();
        BigInteger denominator = fraction.getDenominator().abs();
        return denominator.equals(BigInteger.ONE) ? above.toString() : above + "/" + denominator;
    }

    /**
     * A share in percent with one decimal.
     *
     * @param share 1 for all of it
     */
    public static String percent(double share) {
        return String.format(java.util.Locale.ROOT, "%.1f %%", 100 * share);
    }

    /** Diameter of the bare drum. */
    public String drum(Train train) {
        return format(
                format.withSignificantDigits(NUMBER_DIGITS),
                Dimension.LENGTH,
                train.drumDiameter().doubleValue());
    }

    /** Duration of a full fall, never more than it lasts. */
    public String duration(Rating rating) {
        return format.roundingDown()
                .format(Quantity.of(Dimension.TIME, wholeMilliseconds(rating.durationRoundedDown())));
    }

    private static BigFraction wholeMilliseconds(BigFraction hours) {
        BigInteger milliseconds = hours.getNumerator()
                .abs()
                .multiply(MILLISECONDS_PER_HOUR)
                .divide(hours.getDenominator().abs());
        return BigFraction.of(milliseconds, BigInteger.valueOf(1000));
    }

    /** Beats an hour. */
    public String beatsPerHour(Rating rating) {
        return figure(Dimension.NUMBER, rating.train().going().beatsPerHour().doubleValue());
    }

    /** Length of the simple pendulum that keeps the beat. */
    public String pendulumLength(Rating rating) {
        return figure(Dimension.LENGTH, rating.pendulumLength());
    }

    /** Least running weight, never less than it takes. */
    public String leastWeight(Rating rating) {
        return weight(rating.weight().leastWeight());
    }

    /** Least running weight from the smoothest to the roughest clock to expect. */
    public String leastWeightBand(Rating rating) {
        return Words.BOOK.phrase("band", weight(rating.leastSmoothest()), weight(rating.leastRoughest()));
    }

    /** Recommended weight, never less than it takes. */
    public String recommendedWeight(Rating rating) {
        return weight(rating.recommendedWeight());
    }

    /** Material of the printed parts. */
    public String filament(Rating rating) {
        return figure(Dimension.MASS, rating.filamentMass());
    }

    /** A weight that must be reached, rounded up; says so if none does. */
    public String weight(double kilograms) {
        return Double.isInfinite(kilograms)
                ? Words.BOOK.phrase("weight.none")
                : format(format.roundingUp(), Dimension.MASS, kilograms);
    }

    /**
     * What an objective is about, for example "largest wheel".
     *
     * @param figure the figure made small
     */
    public static String name(ObjectiveFigure figure) {
        return Words.BOOK.phrase("objective." + figure.name());
    }

    /**
     * The value of an objective.
     *
     * @param objective the objective
     * @param value in SI units
     */
    public String objective(Objective objective, double value) {
        return objective.figure() == ObjectiveFigure.RECOMMENDED_WEIGHT
                ? weight(value)
                : figure(objective.figure().dimension(), value);
    }

    /**
     * Any figure with the usual digits.
     *
     * @param dimension what it measures
     * @param value in SI units; an infinite one is worded
     */
    public String figure(Dimension dimension, double value) {
        return format(usual(dimension), dimension, value);
    }

    /**
     * A coefficient or factor with three digits.
     *
     * @param value finite
     */
    public String plain(double value) {
        return format(format, Dimension.NUMBER, value);
    }

    /**
     * A figure with twice the usual digits, for what is set out or measured.
     *
     * @param dimension what it measures
     * @param value in SI units; an infinite one is worded
     */
    public String precise(Dimension dimension, double value) {
        return format(format.withSignificantDigits(NUMBER_DIGITS), dimension, value);
    }

    private QuantityFormat usual(Dimension dimension) {
        return dimension == Dimension.NUMBER ? format.withSignificantDigits(NUMBER_DIGITS) : format;
    }

    private static String format(QuantityFormat format, Dimension dimension, double value) {
        return Math.abs(value) <= LARGEST_SHOWN
                ? format.format(quantity(dimension, value))
                : Words.BOOK.phrase("figure.beyond");
    }

    private static Quantity quantity(Dimension dimension, double value) {
        double shown = Math.abs(value) < SMALLEST_SHOWN
                ? 0
                : new BigDecimal(value).round(new MathContext(MOST_DIGITS)).doubleValue();
        return Quantity.ofSi(dimension, shown);
    }

    /** The figure of a demand; a missed one with as many digits as it takes to read outside its limits. */
    String beside(DemandFigure figure) {
        if (isShare(figure.demand())) {
            return shareBeside(figure);
        }
        Dimension dimension = figure.dimension();
        if (Math.abs(figure.figure()) > LARGEST_SHOWN) {
            return Words.BOOK.phrase("figure.beyond");
        }
        QuantityFormat shown = usual(dimension);
        while (!figure.met() && readsInside(shown, figure) && shown.significantDigits() < MOST_DIGITS) {
            shown = shown.withSignificantDigits(shown.significantDigits() + 1);
        }
        return format(shown, dimension, figure.figure());
    }

    private static boolean readsInside(QuantityFormat shown, DemandFigure figure) {
        Dimension dimension = figure.dimension();
        Quantity read = Quantity.parse(dimension, format(shown, dimension, figure.figure()));
        boolean bounded = figure.from().isPresent() || figure.to().isPresent();
        return bounded
                && figure.from().stream().allMatch(from -> read.si() >= from)
                && figure.to().stream().allMatch(to -> read.si() <= to);
    }

    /** A share is counted among some thousand builders: a decimal, or as many as a missed one takes to read as missed. */
    private static String shareBeside(DemandFigure figure) {
        String shown = percent(figure.figure());
        boolean reads = figure.from().stream()
                .allMatch(from -> Quantity.parse(Dimension.NUMBER, shown).si() >= from);
        return figure.met() || !reads ? shown : exactPercent(BigDecimal.valueOf(figure.figure()));
    }

    /**
     * Whether a demand is held against a share, which is read in percent.
     *
     * @param demand the demand
     */
    public static boolean isShare(Demand demand) {
        return demand == Demand.BUILDERS;
    }

    /**
     * Whether a card gives a share of builders, which is read in percent.
     *
     * @param card the card
     */
    public static boolean isShare(Card card) {
        return card.name().equals("builders-served") || card.name().equals("chance");
    }

    /**
     * A share that was typed, in percent with every digit.
     *
     * @param share 1 for all of it
     */
    public static String exactPercent(BigDecimal share) {
        return share.movePointRight(2).stripTrailingZeros().toPlainString() + " %";
    }

    /** The limits of a demand that has at least one. */
    String limits(DemandFigure figure) {
        OptionalDouble from = figure.from();
        OptionalDouble to = figure.to();
        if (isShare(figure.demand()) && from.isPresent()) {
            return Words.BOOK.phrase("limit.from", exactPercent(BigDecimal.valueOf(from.getAsDouble())));
        }
        Dimension dimension = figure.dimension();
        if (from.isPresent() && to.isPresent()) {
            String low = limit(dimension, from.getAsDouble());
            String high = limit(dimension, to.getAsDouble());
            return low.equals(high)
                    ? Words.BOOK.phrase("limit.held", low)
                    : Words.BOOK.phrase("limit.between", low, high);
        }
        return from.isPresent()
                ? Words.BOOK.phrase("limit.from", limit(dimension, from.getAsDouble()))
                : Words.BOOK.phrase("limit.to", limit(dimension, to.getAsDouble()));
    }

    /** Limits stand as typed where six digits do; a limit typed in other units is shown with four. */
    private String limit(Dimension dimension, double value) {
        if (Math.abs(value) > LARGEST_SHOWN) {
            return Words.BOOK.phrase("figure.beyond");
        }
        Quantity limit = quantity(dimension, value);
        String whole = format.withSignificantDigits(NUMBER_DIGITS).format(limit);
        return Quantity.parse(dimension, whole).sameValueAs(limit)
                ? whole
                : format.withSignificantDigits(LIMIT_DIGITS).format(limit);
    }
}
