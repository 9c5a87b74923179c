// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import drumfall.solver.brief.MeshPlace;
import drumfall.ui.presenter.StripFigure;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/** Places the figures that can be set: wheel count over pinion count, module below, drum, falls, escape wheel, spans. */
final class StripCounts {
    private static final double COUNT = 17;
    private static final double SMALL = 12;

    /** Room beside a figure for its jaws, drawing units. */
    private static final double JAWS = 6;

    /** Middles of rows under the leaves', drawing units. */
    private static final double MODULE_ROW = 22;

    private static final double DISTANCE_ROW = 40;

    /** Width of a column in which a held distance has no room for its letter, drawing units. */
    private static final double NARROW = 90;

    private final StripTerms terms;
    private final StripFrame frame;
    private final double unit;
    private final List<StripSpot> spots = new ArrayList<>();
    private final List<StripPlan.Note> notes = new ArrayList<>();
    private final List<StripPlan.Span> spans = new ArrayList<>();

    StripCounts(StripTerms terms, StripFrame frame) {
        this.terms = terms;
        this.frame = frame;
        this.unit = frame.unit();
        terms.values().keySet().forEach(this::place);
    }

    List<StripSpot> spots() {
        return spots;
    }

    List<StripPlan.Note> notes() {
        return notes;
    }

    List<StripPlan.Span> spans() {
        return spans;
    }

    private void place(StripFigure figure) {
        switch (figure.kind()) {
            case FALLS -> falls(figure);
            case DRUM -> drum(figure);
            case MESHES_ABOVE ->
                span(figure, frame.drumX(), frame.arborX(terms.train().meshesAbove()), "above");
            case MESHES_BELOW -> span(figure, frame.arborX(terms.train().meshesAbove()), frame.escapeX(), "below");
            case WHEEL -> wheel(figure);
            case LEAVES -> leaves(figure);
            case MODULE -> module(figure);
            case DISTANCE -> distance(figure);
            case ESCAPE_TEETH -> escape(figure);
            case DIRECTION, MOTION_DIRECTION, MOTION_DISTANCE, PALLET_DISTANCE ->
                throw new IllegalArgumentException(
                        "The figure (%s) must be one of the strip; this one is of the elevation.".formatted(figure));
        }
    }

    private void falls(StripFigure figure) {
        double middle = (frame.axis() + frame.faces().flange() * frame.scale() + frame.weightTop()) / 2 + 4 * unit;
        int falls = terms.train().reeving().falls();
        String word = TrainText.of("falls." + falls);
        double size = 13 * unit;
        double right = leftOfWeight(falls) - terms.text().width(word, 11 * unit);
        spots.add(terms.spot(figure, size, right - JAWS * unit, middle, 1));
        notes.add(lighter(word, right, middle + 0.36 * size, 11));
    }

    /** Words beside the line keep clear of the weight, which is wider than the line and may hang right below the drum. */
    private double leftOfWeight(int falls) {
        boolean onTheRight = terms.train().going().lineOnTheRight();
        return frame.weightX(onTheRight, falls) - frame.weightHalf() - 4 * unit;
    }

    private void drum(StripFigure figure) {
        double middle = frame.axis() - frame.faces().flange() * frame.scale() - 13 * unit;
        StripSpot spot = terms.spot(figure, 13 * unit, frame.drumX() + 5 * unit, middle, 0.5);
        spots.add(spot);
        String sign = TrainText.of("diameter");
        double width = terms.text().width(sign, 12 * unit);
        notes.add(lighter(sign, spot.box().getX() - width - 2 * unit, middle + 0.36 * 13 * unit, 12));
    }

    private void wheel(StripFigure figure) {
        int mesh = index(figure);
        double radius = frame.faces().meshes().get(mesh).wheelPitch() * frame.scale();
        double tip = frame.faces().meshes().get(mesh).wheelTip() * frame.scale();
        double middle = frame.inside(radius) ? frame.axis() - 0.47 * radius : frame.axis() - tip - 13 * unit;
        spots.add(terms.spot(figure, COUNT * unit, frame.wheelX(mesh), middle, 0.5));
    }

    private void leaves(StripFigure figure) {
        int mesh = index(figure);
        spots.add(terms.spot(figure, COUNT * unit, frame.wheelX(mesh), leavesMiddle(mesh), 0.5));
    }

    private double leavesMiddle(int mesh) {
        return frame.pinionY(mesh) + frame.faces().meshes().get(mesh).pinionTip() * frame.scale() + 13 * unit;
    }

    private void module(StripFigure figure) {
        lettered(figure, TrainText.of("module"), MODULE_ROW);
    }

    /** Under the module; where columns are narrow the letter is left out before figures touch. */
    private void distance(StripFigure figure) {
        boolean narrow = frame.slot() < NARROW * unit;
        lettered(figure, narrow ? "" : TrainText.of("distance"), DISTANCE_ROW);
    }

    private void lettered(StripFigure figure, String letter, double row) {
        int mesh = index(figure);
        double width = terms.text().width(letter, SMALL * unit);
        double middle = leavesMiddle(mesh) + row * unit;
        StripSpot spot = terms.spot(figure, SMALL * unit, frame.wheelX(mesh) + width / 2, middle, 0.5);
        spots.add(spot);
        if (!letter.isEmpty()) {
            double gap = spot.held() ? JAWS : 2;
            notes.add(lighter(letter, spot.box().getX() - width - gap * unit, middle + 0.36 * SMALL * unit, SMALL));
        }
    }

    private void escape(StripFigure figure) {
        double radius = frame.faces().escape() * frame.scale();
        double middle = frame.axis() + radius + 14 * unit;
        spots.add(terms.spot(figure, COUNT * unit, frame.escapeX(), middle, 0.5));
    }

    private void span(StripFigure figure, double from, double to, String side) {
        double size = 12 * unit;
        double y = 13 * unit;
        StripSpot measured = terms.spot(figure, size, 0, y, 0);
        String words = words(
                side,
                terms.values().get(figure).number(),
                to - from - measured.box().getWidth());
        double wordsWidth = terms.text().width(words, 11 * unit) + (JAWS + 4) * unit;
        double left = (from + to - measured.box().getWidth() - wordsWidth) / 2;
        spots.add(terms.spot(figure, size, left, y, 0));
        double wordsX = left + measured.box().getWidth() + JAWS * unit;
        notes.add(lighter(words, wordsX, y + 0.36 * size, 11));
        Point2D gap = new Point2D.Double(left - 3 * unit, wordsX + wordsWidth - JAWS * unit);
        spans.add(new StripPlan.Span(from, to, y, gap));
    }

    private String words(String side, String count, double room) {
        String whole = TrainText.of(count.equals("1") ? side + ".1" : side);
        boolean fits = terms.text().width(whole, 11 * unit) + 40 * unit < room;
        return fits ? whole : TrainText.of("short." + side);
    }

    private StripPlan.Note lighter(String words, double x, double baseline, double size) {
        return new StripPlan.Note(words, x, baseline, size * unit, StripPlan.Tone.LIGHTER);
    }

    private int index(StripFigure figure) {
        MeshPlace place = figure.place().orElseThrow();
        return StripValues.number(place, terms.train().meshesAbove()) - 1;
    }
}
