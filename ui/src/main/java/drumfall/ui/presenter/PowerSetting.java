// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.BandPoint;
import drumfall.solver.rating.Rating;
import drumfall.ui.presenter.MeshSetting.Travel;

/**
 * What the power of a train is reckoned at.
 *
 * @param weight that hangs, kg
 * @param friction place in the brief's bands of friction, 0 for the smoothest to 1 for the roughest
 * @param quality the pendulum's quality
 */
public record PowerSetting(double weight, double friction, double quality) {
    /** What can be set. */
    public enum Dial {
        /** The weight that hangs. */
        WEIGHT,
        /** The place in all bands of friction. */
        FRICTION,
        /** The pendulum's quality. */
        QUALITY
    }

    /** The weight dial goes this far beyond the heaviest weight of interest, so that the end of the curve is seen. */
    private static final double BEYOND = 1.25;

    private static final double MIDDLE = 0.5;

    /** The recommended weight, or the heaviest allowed if none drives the train, in the middle of every band. */
    static PowerSetting middle(Brief brief, Rating rating) {
        double recommended = rating.recommendedWeight();
        double weight = Double.isFinite(recommended)
                ? recommended
                : brief.weight().limit().si();
        return new PowerSetting(
                weight, MIDDLE, travel(Dial.QUALITY, brief, rating).middle());
    }

    static Travel travel(Dial dial, Brief brief, Rating rating) {
        return switch (dial) {
            case WEIGHT -> weights(brief, rating);
            case FRICTION -> new Travel(0, 1, 0, 1);
            case QUALITY -> {
                double low = brief.pendulum().quality().low().si();
                double high = brief.pendulum().quality().high().si();
                yield new Travel(low, high, low, high);
            }
        };
    }

    /** The band is that of the least weight: from the smoothest clock to expect to the roughest. */
    private static Travel weights(Brief brief, Rating rating) {
        double most = BEYOND * Math.max(brief.weight().limit().si(), finite(rating.recommendedWeight(), 0));
        double low = Math.min(most, rating.leastSmoothest());
        return new Travel(0, most, low, Math.min(most, rating.leastRoughest()));
    }

    private static double finite(double value, double otherwise) {
        return Double.isFinite(value) ? value : otherwise;
    }

    /** What a dial stands at, SI. */
    public double at(Dial dial) {
        return switch (dial) {
            case WEIGHT -> weight;
            case FRICTION -> friction;
            case QUALITY -> quality;
        };
    }

    PowerSetting with(Dial dial, double value) {
        return switch (dial) {
            case WEIGHT -> new PowerSetting(value, friction, quality);
            case FRICTION -> new PowerSetting(weight, value, quality);
            case QUALITY -> new PowerSetting(weight, friction, value);
        };
    }

    /** The place in the brief's bands; a band of one value has only one place. */
    BandPoint point(Brief brief) {
        double low = brief.pendulum().quality().low().si();
        double high = brief.pendulum().quality().high().si();
        double rough = high > low ? (high - quality) / (high - low) : MIDDLE;
        return new BandPoint(friction, friction, friction, Math.max(0, Math.min(1, rough)));
    }

    /** Friction at the teeth at a place in the brief's band. */
    static double atTheTeeth(Brief brief, double share) {
        var band = brief.friction().teeth();
        return band.low().si() * (1 - share) + band.high().si() * share;
    }

    /** Whether friction and quality stand in the middle of their bands, as in every rating. */
    boolean inTheMiddle(Brief brief) {
        return friction == MIDDLE && Math.abs(point(brief).quality() - MIDDLE) < 1e-9;
    }
}
