// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.power.answers.ArcCurve;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.QuantityFormatException;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.ui.wording.FigureWording;
import java.util.OptionalDouble;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The weight that is taken to hang: the recommended one, one typed, or the one that keeps an arc typed. */
final class HangChoice {
    @Option(names = "--weight", paramLabel = "MASS", converter = MassReader.class, descriptionKey = "option.weight")
    private Quantity weight;

    @Option(names = "--arc", paramLabel = "ANGLE", converter = AngleReader.class, descriptionKey = "option.arc")
    private Quantity arc;

    /** The weight in kg; empty if no weight drives the train. */
    OptionalDouble weight(TrainRater rater, Rating rating, FigureWording figures) {
        if (weight != null && arc != null) {
            throw RefusedInput.of("weight-and-arc", weight.text(), arc.text());
        }
        if (Double.isInfinite(rating.weight().leastWeight())) {
            return refuseOrNone();
        }
        LoadedClock clock = rater.loaded(rating.train());
        double hung = weight != null ? weight.si() : rating.recommendedWeight();
        if (arc != null) {
            hung = keeping(new ArcCurve(clock, rater.brief().weight().limit().si()), rater, rating, figures);
        }
        if (hung < rating.weight().leastWeight()) {
            String least = figures.leastWeight(rating);
            throw weight != null
                    ? RefusedInput.of("weight", weight.text(), least)
                    : RefusedInput.of("arc.binding", arc.text(), least);
        }
        return OptionalDouble.of(hung);
    }

    private OptionalDouble refuseOrNone() {
        if (weight != null || arc != null) {
            throw RefusedInput.of("no-weight", (weight != null ? weight : arc).text());
        }
        return OptionalDouble.empty();
    }

    private double keeping(ArcCurve curve, TrainRater rater, Rating rating, FigureWording figures) {
        double least = rating.weight().need().semiArc();
        if (arc.si() < least) {
            throw RefusedInput.of("arc.least", arc.text(), figures.figure(Dimension.ANGLE, least));
        }
        if (arc.si() >= curve.saturationArc()) {
            Quantity limit = rater.brief().weight().limit();
            double heaviest = Math.max(limit.si(), rating.weight().leastWeight());
            OptionalDouble kept = curve.worstArcUnder(heaviest);
            throw RefusedInput.of(
                    "arc.most",
                    arc.text(),
                    figures.figure(Dimension.ANGLE, curve.saturationArc()),
                    figures.figure(Dimension.MASS, heaviest),
                    figures.figure(Dimension.ANGLE, kept.orElse(least)));
        }
        return curve.weightKeeping(arc.si());
    }

    /** Reads a mass. */
    static final class MassReader implements ITypeConverter<Quantity> {
        @Override
        public Quantity convert(String text) {
            return read(Dimension.MASS, text);
        }
    }

    /** Reads an angle. */
    static final class AngleReader implements ITypeConverter<Quantity> {
        @Override
        public Quantity convert(String text) {
            return read(Dimension.ANGLE, text);
        }
    }

    private static Quantity read(Dimension dimension, String text) {
        try {
            return Quantity.parse(dimension, text);
        } catch (QuantityFormatException unreadable) {
            throw new TypeConversionException(unreadable.getMessage());
        }
    }
}
