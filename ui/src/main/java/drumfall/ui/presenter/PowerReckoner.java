// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.solver.power.answers.ArcCurve;
import drumfall.solver.power.answers.Coasting;
import drumfall.solver.power.answers.FreeSpin;
import drumfall.solver.power.answers.RatchetHold;
import drumfall.solver.power.books.BookKeeper;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.power.books.PowerBooks;
import drumfall.solver.rating.BandPoint;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.answers.Change;
import drumfall.solver.rating.answers.Changes;
import drumfall.solver.rating.answers.WeightChance;
import drumfall.solver.rating.why.WhereFromBook;
import drumfall.solver.rating.why.WhereFromPower;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** Reckons the power of one rated train, off the event thread; what rests on the brief alone is kept from one time to the next. */
final class PowerReckoner {
    private static final int CURVE_POINTS = 33;

    private final Brief brief;
    private final Rating rating;
    // A picture must not wait for the cards, so each has a lock of its own.
    private final Object bookLock = new Object();
    private TrainRater rater;
    private WhereFromBook book;
    private volatile Loaded last;

    PowerReckoner(Brief brief, Rating rating) {
        this.brief = brief;
        this.rating = rating;
    }

    Brief brief() {
        return brief;
    }

    Rating rating() {
        return rating;
    }

    boolean isOf(Brief other, Rating rated) {
        return brief.equals(other) && rating.equals(rated);
    }

    synchronized TrainRater rater() {
        if (rater == null) {
            rater = new TrainRater(brief);
        }
        return rater;
    }

    /** The solver's cards of the rating. */
    WhereFromBook book() {
        synchronized (bookLock) {
            if (book == null) {
                book = WhereFromBook.of(rater(), rating);
            }
            return book;
        }
    }

    /**
     * What no weight changes.
     *
     * @param point place in the bands
     * @param clock the clock there
     * @param curve its arc against weight
     */
    private record Loaded(BandPoint point, LoadedClock clock, List<ArcCurve.Point> curve) {
        double escapeAngle() {
            return clock.movement().escapement().escapeAngle();
        }
    }

    /** The solver's cards of books that were kept at a setting. */
    WhereFromPower cards(PowerSetting setting, PowerBooks books) {
        return WhereFromPower.of(book(), clock(setting), books);
    }

    /** The clock at a setting. */
    LoadedClock clock(PowerSetting setting) {
        return clock(setting.point(brief));
    }

    private LoadedClock clock(BandPoint point) {
        Loaded known = last;
        return known != null && known.point().equals(point) ? known.clock() : rater().loaded(rating.train(), point);
    }

    PowerPicture picture(PowerSetting setting) {
        Loaded known = loaded(setting.point(brief));
        double least = known.clock().leastWeight();
        Optional<PowerBooks> books = setting.weight() >= least
                ? Optional.of(new BookKeeper(known.clock()).under(setting.weight()))
                : Optional.empty();
        return new PowerPicture(
                setting,
                least,
                rater().objectives().recommended(least),
                known.escapeAngle(),
                books,
                known.curve(),
                books.map(kept -> PowerStep.of(kept, rating.train())).orElse(List.of()),
                books.map(kept -> Coasting.of(known.clock(), kept.semiArc())),
                FreeSpin.all(known.clock()),
                ratchet(known.clock(), setting.weight()));
    }

    private Optional<RatchetHold> ratchet(LoadedClock clock, double weight) {
        double arm = clock.movement().lineArm(rating.train().drumDiameter().doubleValue());
        return rater().limits().ratchet().hold(weight, arm, rating.train().reeving());
    }

    private Loaded loaded(BandPoint point) {
        Loaded known = last;
        if (known == null || !known.point().equals(point)) {
            LoadedClock clock = clock(point);
            double heaviest =
                    PowerSetting.travel(PowerSetting.Dial.WEIGHT, brief, rating).most();
            known = new Loaded(point, clock, curve(clock, heaviest));
            last = known;
        }
        return known;
    }

    /** Steps of arc rather than of weight: the weight of an arc is one walk, the arc of a weight many. */
    private static List<ArcCurve.Point> curve(LoadedClock clock, double heaviest) {
        ArcCurve curve = new ArcCurve(clock, heaviest);
        BookKeeper keeper = new BookKeeper(clock);
        double least = clock.movement().escapement().escapeAngle();
        OptionalDouble most = curve.worstArcUnder(heaviest);
        if (most.isEmpty() || !(most.getAsDouble() > least)) {
            return List.of();
        }
        double step = (most.getAsDouble() - least) / (CURVE_POINTS - 1);
        return IntStream.range(0, CURVE_POINTS)
                .mapToObj(i -> point(curve, least + step * i, keeper))
                .filter(point -> point.weight() <= heaviest)
                .toList();
    }

    private static ArcCurve.Point point(ArcCurve curve, double arc, BookKeeper keeper) {
        double weight = curve.weightKeeping(arc);
        return new ArcCurve.Point(weight, OptionalDouble.of(arc), keeper.arcUnder(weight));
    }

    /** What changes would save, the most first, and how surely weights run: some seconds. */
    PowerFindings.Found findings() {
        // Cards are wanted at a click, so the book is made before any is asked for.
        book();
        List<Change> changes = new Changes(rater(), rating.train())
                .all().stream()
                        .sorted(Comparator.comparingDouble(Change::leastAfter))
                        .toList();
        return new PowerFindings.Found(changes, WeightChance.of(rater(), rating.train(), WeightChance.USUAL_TRIALS));
    }
}
