// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import drumfall.ui.presenter.StripFigure;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Which figure the keyboard is on, kept by what it is and not by where it stands. */
final class StripFocus {
    private Optional<StripFigure> figure = Optional.empty();
    private Optional<StripReading> reading = Optional.empty();

    /** The spot with the focus; the first one until the maker moves. */
    Optional<StripSpot> within(List<StripSpot> spots) {
        return spots.stream()
                .filter(this::isOn)
                .findFirst()
                .or(() -> spots.stream().findFirst());
    }

    private boolean isOn(StripSpot spot) {
        return spot.figure().equals(figure) && spot.reading().equals(reading);
    }

    void moveTo(StripSpot spot) {
        figure = spot.figure();
        reading = spot.reading();
    }

    /** Lets go of a figure that the train no longer has. */
    void keepWithin(List<StripSpot> spots) {
        if (spots.stream().noneMatch(this::isOn)) {
            figure = Optional.empty();
            reading = Optional.empty();
        }
    }

    /** The spot a number of steps further in reading order; stops at the ends. */
    Optional<StripSpot> stepped(List<StripSpot> spots, int steps) {
        return within(spots).map(spot -> {
            int index = spots.indexOf(spot) + steps;
            return spots.get(Math.max(0, Math.min(spots.size() - 1, index)));
        });
    }

    /** The nearest spot above or below; empty if there is none. */
    Optional<StripSpot> upright(List<StripSpot> spots, boolean down) {
        return within(spots)
                .flatMap(from -> spots.stream()
                        .filter(spot -> down ? gap(from, spot) > 0 : gap(spot, from) > 0)
                        .min(Comparator.comparingDouble(spot -> distance(from, spot))));
    }

    private static double gap(StripSpot upper, StripSpot lower) {
        return lower.box().getMinY() - upper.box().getMaxY() + 1;
    }

    /** Sideways counts double, so that a column is followed before a neighbour is. */
    private static double distance(StripSpot one, StripSpot other) {
        Rectangle2D from = one.box();
        Rectangle2D to = other.box();
        return 2 * Math.abs(from.getCenterX() - to.getCenterX()) + Math.abs(from.getCenterY() - to.getCenterY());
    }
}
