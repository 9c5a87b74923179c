// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import drumfall.ui.presenter.Highlight;
import drumfall.ui.presenter.StripFigure;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;

/**
 * Where everything on the strip stands.
 *
 * @param frame columns, rows and scale
 * @param centreArbor number of the centre arbor
 * @param falls falls of line
 * @param lineOnTheRight whether the line hangs from the right of the drum
 * @param band the band of power, one piece after the other
 * @param spans dimension lines over the meshes above and below the centre
 * @param gauges ranges with their value
 * @param notes words that are no figures
 * @param spots figures in reading order
 * @param highlight what is pointed at
 */
record StripPlan(
        StripFrame frame,
        int centreArbor,
        int falls,
        boolean lineOnTheRight,
        List<BandPiece> band,
        List<Span> spans,
        List<Gauge> gauges,
        List<Note> notes,
        List<StripSpot> spots,
        Highlight highlight) {
    StripPlan {
        band = List.copyOf(band);
        spans = List.copyOf(spans);
        gauges = List.copyOf(gauges);
        notes = List.copyOf(notes);
        spots = List.copyOf(spots);
    }

    /** How words are inked. */
    enum Tone {
        /** Units, captions. */
        LIGHTER,
        /** Speaks of a missed demand; drawn with its mark. */
        MISSED,
        /** Speaks of a trial. */
        COMPARED
    }

    /**
     * Words.
     *
     * @param text the words
     * @param x left edge, px
     * @param baseline px
     * @param size font size, px
     * @param tone ink
     */
    record Note(String text, double x, double baseline, double size, Tone tone) {
        Rectangle2D box(TabularText measure) {
            return new Rectangle2D.Double(x, baseline - 0.8 * size, measure.width(text, size), size);
        }
    }

    /**
     * A part of the band of power.
     *
     * @param arbor number of the arbor that has this power
     * @param shape px
     */
    record BandPiece(int arbor, Path2D shape) {}

    /**
     * A dimension line.
     *
     * @param from left end, px
     * @param to right end, px
     * @param y px
     * @param gap where its text stands, from and to, px
     */
    record Span(double from, double to, double y, Point2D gap) {}

    /**
     * A range with the value in it.
     *
     * @param box px
     * @param from lower limit, share of the width; negative if there is none
     * @param to upper limit, share of the width
     * @param value share of the width
     * @param missed whether the value lies outside
     */
    record Gauge(Rectangle2D box, double from, double to, double value, boolean missed) {}

    /** The spot at a point. */
    Optional<StripSpot> at(double x, double y) {
        return spots.stream().filter(spot -> spot.box().contains(x, y)).findFirst();
    }

    /** Whether a point is on the caution beside the weight. */
    boolean onCaution(double x, double y, TabularText measure) {
        return notes.stream()
                .filter(note -> note.text().equals(TrainText.of("caution")))
                .anyMatch(note -> note.box(measure).contains(x, y));
    }

    Optional<StripSpot> of(StripFigure figure) {
        return spots.stream()
                .filter(spot -> spot.figure().filter(figure::equals).isPresent())
                .findFirst();
    }

    Optional<StripSpot> of(StripReading reading) {
        return spots.stream()
                .filter(spot -> spot.reading().filter(reading::equals).isPresent())
                .findFirst();
    }

    /** Whether an arbor is pointed at. */
    boolean pointedAt(int arbor) {
        return highlight.arbor().filter(pointed -> pointed == arbor).isPresent();
    }
}
