// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoublePredicate;

/**
 * A gear of standard full-depth involute teeth around the origin, a tooth centred on the x axis.
 *
 * <p>With module {@code m}, count {@code z} and pressure angle {@code α}: pitch radius {@code m z / 2}, base radius
 * {@code m z cos α / 2}, tip radius {@code m z / 2 + m}, root radius {@code m z / 2 - 1.25 m} (ISO 53 type A). At radius
 * {@code r} a tooth has the half angle {@code π / (2 z) + inv α - inv arccos(r_b / r)}. Where that reaches zero below the
 * tip circle the tooth ends in a point; where it reaches {@code π / z} above the root circle the gap does.
 *
 * @param count teeth or leaves, at least 4
 * @param module mm, positive
 * @param pressureAngle rad, more than 0, less than &pi;/4
 */
record Gear(int count, double module, double pressureAngle) {
    /** Largest distance between a curve and the polyline that stands for it, mm; a twentieth of a printer's line width. */
    static final double CHORD_ERROR = 0.005;

    private static final int FEWEST = 4;
    private static final double ADDENDUM = 1;
    private static final double DEDENDUM = 1.25;

    /** Points nearer than this, in mm, are one. */
    private static final double NO_DISTANCE = 1e-9;

    /** Enough halvings of a tooth's height to end below a double's resolution. */
    private static final int HALVINGS = 60;

    /**
     * Checks the count.
     *
     * @throws IllegalArgumentException if there are fewer than 4 teeth
     */
    Gear {
        if (count < FEWEST) {
            throw new IllegalArgumentException(
                    "The count (%d) of a gear must be at least %d teeth for an outline. Maybe raise the fewest leaves in the brief."
                            .formatted(count, FEWEST));
        }
    }

    double pitchRadius() {
        return module * count / 2;
    }

    double baseRadius() {
        return pitchRadius() * Math.cos(pressureAngle);
    }

    double tipRadius() {
        return pitchRadius() + ADDENDUM * module;
    }

    double rootRadius() {
        return pitchRadius() - DEDENDUM * module;
    }

    /** Involute of an angle, {@code tan α - α}. */
    static double involute(double angle) {
        return Math.tan(angle) - angle;
    }

    /**
     * Half the angle a tooth takes up at a radius, rad; below the base circle the one at the base circle.
     *
     * @param radius mm
     */
    double halfAngle(double radius) {
        double middle = Math.PI / (2 * count) + involute(pressureAngle);
        return radius <= baseRadius() ? middle : middle - involute(Math.acos(baseRadius() / radius));
    }

    /** Radius at which a tooth ends: the tip circle, or where its flanks meet below it, mm. */
    double crestRadius() {
        return outermost(tipRadius(), radius -> halfAngle(radius) >= 0);
    }

    /** Radius at which a gap ends: the root circle, or where the flanks of two teeth meet above it, mm. */
    double floorRadius() {
        return outermost(rootRadius(), radius -> halfAngle(radius) <= Math.PI / count);
    }

    /** The wanted radius if it is good, or else the nearest good one towards the pitch circle, which always is. */
    private double outermost(double wanted, DoublePredicate good) {
        if (good.test(wanted)) {
            return wanted;
        }
        double within = pitchRadius();
        double beyond = wanted;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (within + beyond) / 2;
            if (good.test(middle)) {
                within = middle;
            } else {
                beyond = middle;
            }
        }
        return within;
    }

    /** The closed outline, counter-clockwise from the root before the first tooth; the last point is not the first again. */
    List<Point> outline() {
        List<Point> tooth = tooth();
        List<Point> outline = new ArrayList<>(tooth.size() * count);
        for (int i = 0; i < count; i++) {
            double turn = 2 * Math.PI * i / count;
            tooth.forEach(point -> outline.add(point.turned(turn)));
        }
        return withoutRepeats(outline);
    }

    /** Where a tooth or a gap ends in a point, two flanks end at one place. */
    private static List<Point> withoutRepeats(List<Point> points) {
        List<Point> kept = new ArrayList<>(points.size());
        Point last = points.get(points.size() - 1);
        for (Point point : points) {
            if (point.distanceTo(last) > NO_DISTANCE) {
                kept.add(point);
            }
            last = point;
        }
        return kept;
    }

    /** One tooth with the root land after it: up the one flank, along the crest, down the other, to the next tooth. */
    private List<Point> tooth() {
        List<Point> points = new ArrayList<>();
        List<Double> radii = flankRadii();
        for (double radius : radii) {
            points.add(Point.polar(radius, -halfAngle(radius)));
        }
        double crest = crestRadius();
        arc(crest, -halfAngle(crest), halfAngle(crest), points);
        for (int i = radii.size() - 1; i >= 0; i--) {
            points.add(Point.polar(radii.get(i), halfAngle(radii.get(i))));
        }
        double floor = halfAngle(floorRadius());
        arc(floorRadius(), floor, 2 * Math.PI / count - floor, points);
        return points;
    }

    /**
     * Radii of the points of a flank, root to crest. Along the involute {@code r = r_b sqrt(1 + t²)} the curve's radius is
     * {@code r_b t}, so that a step {@code dt} leaves a chord error of {@code r_b t dt² / 8}, largest at the crest.
     */
    private List<Double> flankRadii() {
        List<Double> radii = new ArrayList<>();
        double from = Math.max(baseRadius(), floorRadius());
        if (floorRadius() < baseRadius()) {
            radii.add(floorRadius());
        }
        double start = roll(from);
        double end = roll(crestRadius());
        int steps = (int) Math.max(1, Math.ceil((end - start) / Math.sqrt(8 * CHORD_ERROR / (baseRadius() * end))));
        for (int i = 0; i <= steps; i++) {
            radii.add(baseRadius() * Math.hypot(1, start + (end - start) * i / steps));
        }
        return radii;
    }

    private double roll(double radius) {
        double ratio = radius / baseRadius();
        return Math.sqrt(Math.max(0, ratio * ratio - 1));
    }

    /** Points strictly between the ends of an arc; a step {@code φ} leaves a chord error of {@code r (1 - cos(φ/2))}. */
    private static void arc(double radius, double from, double to, List<Point> points) {
        double step = 2 * Math.acos(Math.max(0, 1 - CHORD_ERROR / radius));
        int steps = (int) Math.max(1, Math.ceil((to - from) / step));
        for (int i = 1; i < steps; i++) {
            points.add(Point.polar(radius, from + (to - from) * i / steps));
        }
    }
}
