// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.Rating;
import drumfall.ui.view.train.StripReading.Kind;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Places what the train gives: run and weight at the left, beat and pendulum at the right, each with its limits. */
final class StripSides {
    private static final double CAPTION = 11;
    private static final double VALUE = 18;

    /** Value while something is tried: old and new have to stand side by side. */
    private static final double TRIED = 14;

    private final StripTerms terms;
    private final StripFrame frame;
    private final double unit;
    private final List<StripSpot> left = new ArrayList<>();
    private final List<StripSpot> right = new ArrayList<>();
    private final List<StripPlan.Note> notes = new ArrayList<>();
    private final List<StripPlan.Gauge> gauges = new ArrayList<>();

    StripSides(StripTerms terms, StripFrame frame) {
        this.terms = terms;
        this.frame = frame;
        this.unit = frame.unit();
        run();
        weight();
        beat();
        pendulum();
    }

    List<StripSpot> left() {
        return left;
    }

    List<StripSpot> right() {
        return right;
    }

    List<StripPlan.Note> notes() {
        return notes;
    }

    List<StripPlan.Gauge> gauges() {
        return gauges;
    }

    private double leftX() {
        return 14 * unit;
    }

    private double rightX() {
        return frame.width() - frame.zone() + 18 * unit;
    }

    private double firstRow() {
        return 17 * unit;
    }

    private double secondRow() {
        return Math.max(firstRow() + 66 * unit, frame.height() * 0.36);
    }

    private void run() {
        Brief.Run run = terms.content().brief().run();
        double y = firstRow();
        Figures figures = terms.figures();
        caption("run", leftX(), y);
        left.add(value(Kind.RUN, rating -> figures.duration(rating.durationRoundedDown()), leftX(), y));
        String limits = Figures.range(figures.typed(run.atLeast()), figures.typed(run.atMost()));
        note(limits, leftX(), y + 36 * unit);
        double span = run.atMost().si() - run.atLeast().si();
        gauge(Kind.RUN, leftX(), y + 41 * unit, run.atLeast().si(), run.atMost().si(), seconds(), span);
    }

    private double seconds() {
        return terms.shown().durationRoundedDown().doubleValue() * 3600;
    }

    private void weight() {
        double y = secondRow();
        Figures figures = terms.figures();
        caption("weight", leftX(), y);
        left.add(value(Kind.WEIGHT, rating -> figures.weight(rating.recommendedWeight()), leftX(), y));
        double limit = terms.content().brief().weight().limit().si();
        note(
                TrainText.of(
                        "atMost",
                        figures.typed(terms.content().brief().weight().limit()).text()),
                leftX(),
                y + 36 * unit);
        gauge(
                Kind.WEIGHT,
                leftX(),
                y + 41 * unit,
                Double.NaN,
                limit,
                terms.shown().recommendedWeight(),
                limit);
        caution(y + 64 * unit);
    }

    private void caution(double y) {
        notes.add(new StripPlan.Note(TrainText.of("caution"), leftX(), y, 10.2 * unit, StripPlan.Tone.LIGHTER));
    }

    private void beat() {
        double y = firstRow();
        Figures figures = terms.figures();
        caption("beat", rightX(), y);
        right.add(value(
                Kind.BEAT,
                rating -> figures.of(
                        drumfall.solver.quantity.Dimension.TIME, rating.train().secondsPerBeat()),
                rightX(),
                y));
        StripSpot perHour = terms.spot(
                StripReading.of(Kind.BEATS_PER_HOUR),
                beats(terms.chosen()),
                beats(terms.shown()),
                12 * unit,
                rightX() - 3 * unit,
                y + 35 * unit,
                0);
        right.add(perHour);
    }

    private Figure beats(Rating rating) {
        double beats = rating.train().going().beatsPerHour().doubleValue();
        return new Figure(terms.figures().beats(beats), TrainText.of("perHour"));
    }

    private void pendulum() {
        double y = secondRow();
        Figures figures = terms.figures();
        caption("pendulum", rightX(), y);
        right.add(value(Kind.PENDULUM, rating -> figures.length(rating.pendulumLength()), rightX(), y));
        terms.content().brief().beat().pendulumLength().ifPresent(range -> {
            note(Figures.range(figures.typed(range.from()), figures.typed(range.to())), rightX(), y + 36 * unit);
            double from = range.from().si();
            double to = range.to().si();
            gauge(
                    Kind.PENDULUM,
                    rightX(),
                    y + 41 * unit,
                    from,
                    to,
                    terms.shown().pendulumLength(),
                    to - from);
        });
    }

    private StripSpot value(Kind kind, Function<Rating, Figure> figure, double x, double y) {
        Figure old = figure.apply(terms.chosen());
        Figure now = figure.apply(terms.shown());
        double size = (old.equals(now) ? VALUE : TRIED) * unit;
        return terms.spot(StripReading.of(kind), old, now, size, x - 0.26 * size, y + 15 * unit, 0);
    }

    private void caption(String key, double x, double baseline) {
        notes.add(new StripPlan.Note(TrainText.of(key), x, baseline, CAPTION * unit, StripPlan.Tone.LIGHTER));
    }

    private void note(String words, double x, double baseline) {
        notes.add(new StripPlan.Note(words, x, baseline, CAPTION * unit, StripPlan.Tone.LIGHTER));
    }

    /** The limits stand a quarter in from the ends, so that a value outside still shows on which side. */
    private void gauge(Kind kind, double x, double y, double from, double to, double value, double span) {
        Rectangle2D box = new Rectangle2D.Double(x, y, 96 * unit, 7 * unit);
        boolean missed = terms.missed().on(StripReading.of(kind));
        double lower = Double.isNaN(from) ? -1 : 0.25;
        double start = Double.isNaN(from) ? 0 : from - span / 2;
        double whole = Double.isNaN(from) ? to / 0.75 : 2 * span;
        double share = Double.isFinite(value) ? (value - start) / whole : 1;
        gauges.add(new StripPlan.Gauge(box, lower, 0.75, Math.max(0, Math.min(1, share)), missed));
    }
}
