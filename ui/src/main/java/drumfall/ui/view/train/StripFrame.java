// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Columns, rows and scale of a strip, px.
 *
 * <p>From the left: readings, drum with weight, a column for each mesh, escape wheel, pendulum, readings. From the top:
 * spans, wheels over their pinions, band of power with its figures, messages. All lengths grow with the font.
 *
 * @param width of the strip
 * @param height of the strip
 * @param unit a thirteenth of the font size
 * @param faces what is drawn
 * @param scale pixels for a metre
 * @param counts room for the figures under the pinions, drawing units
 */
record StripFrame(double width, double height, double unit, TrainFaces faces, double scale, double counts) {
    /** Column widths beside the meshes', in columns: drum, escape wheel, pendulum. */
    private static final double OTHER_COLUMNS = 2.75;

    private static final double TOP = 27;
    private static final double COUNTS = 48;

    /** A row of held centre distances under the modules, drawing units. */
    private static final double DISTANCES = 18;

    private static final double ANCHOR = 1.75;

    /** Width of the readings at either end, drawing units. */
    private static final double READINGS = 134;

    /** Pitch radius from which a count finds room inside its wheel, and the room it takes above, drawing units. */
    private static final double ROOM_INSIDE = 33;

    private static final double ABOVE_WHEEL = 25;

    /** Pixels for a metre below which nothing is left to see. */
    private static final double LEAST_SCALE = 50;

    private static final double FINER = 0.98;

    double zone() {
        return READINGS * unit;
    }

    double slot() {
        return (width - 2 * zone()) / (faces.meshes().size() + OTHER_COLUMNS);
    }

    double drumX() {
        return zone() + 0.5 * slot();
    }

    double wheelX(int index) {
        return zone() + (1.5 + index) * slot();
    }

    double escapeX() {
        return wheelX(faces.meshes().size());
    }

    double pendulumX() {
        return escapeX() + 0.8 * slot();
    }

    /** Place of an arbor's wheel; the escape arbor's is the escape wheel. */
    double arborX(int arbor) {
        return wheelX(arbor);
    }

    double top() {
        return TOP * unit;
    }

    double bandTop() {
        return height - 77 * unit;
    }

    double bandHeight() {
        return 16 * unit;
    }

    double bandMiddle() {
        return bandTop() + bandHeight() / 2;
    }

    double torqueRow() {
        return bandTop() + bandHeight() + 12.5 * unit;
    }

    double powerRow() {
        return torqueRow() + 16 * unit;
    }

    double messageRow() {
        return height - 9 * unit;
    }

    /**
     * The frame with the largest scale that rows and columns allow without neighbours touching.
     *
     * @param width of the strip, px
     * @param height of the strip, px
     * @param unit a thirteenth of the font size, px
     * @param faces what is drawn
     * @param distances whether centre distances are shown
     */
    static StripFrame of(double width, double height, double unit, TrainFaces faces, boolean distances) {
        double counts = COUNTS + (distances ? DISTANCES : 0);
        StripFrame frame = new StripFrame(width, height, unit, faces, LEAST_SCALE, counts);
        double scale = frame.across();
        while (scale > LEAST_SCALE && frame.above(scale) + frame.below(scale) > frame.upright()) {
            scale *= FINER;
        }
        return new StripFrame(width, height, unit, faces, Math.max(LEAST_SCALE, scale), counts);
    }

    /** Whether a wheel's count finds room inside it. */
    boolean inside(double pitchRadius) {
        return pitchRadius >= ROOM_INSIDE * unit;
    }

    private double upright() {
        return bandTop() - top() - counts * unit;
    }

    /** Room above the row of wheel centres: drum with its size, wheels with counts that stand above them, pallets. */
    private double above(double scale) {
        double drum = faces.flange() * scale + ABOVE_WHEEL * unit;
        return faces.meshes().stream()
                .mapToDouble(
                        face -> face.wheelTip() * scale + (inside(face.wheelPitch() * scale) ? 0 : ABOVE_WHEEL * unit))
                .reduce(Math.max(drum, ANCHOR * faces.escape() * scale), Math::max);
    }

    private double below(double scale) {
        return scale
                * faces.meshes().stream()
                        .mapToDouble(face -> face.centreDistance() + face.pinionTip())
                        .reduce(faces.escape(), Math::max);
    }

    private double across() {
        double[] radii = radii();
        return IntStream.range(1, radii.length)
                .mapToDouble(i -> (slot() - 7 * unit) / (radii[i - 1] + radii[i]))
                .min()
                .orElseThrow();
    }

    private double[] radii() {
        return DoubleStream.concat(
                        DoubleStream.of(faces.flange()),
                        DoubleStream.concat(
                                faces.meshes().stream().mapToDouble(TrainFaces.MeshFace::wheelTip),
                                DoubleStream.of(faces.escape())))
                .toArray();
    }

    /** Row of all wheel centres. */
    double axis() {
        double spare = upright() - above(scale) - below(scale);
        return top() + spare / 2 + above(scale);
    }

    double pinionY(int index) {
        return axis() + faces.meshes().get(index).centreDistance() * scale;
    }

    /** Pivot of the pallets above the escape wheel. */
    double anchorY() {
        return axis() - 1.45 * faces.escape() * scale;
    }

    /** Where the line leaves the drum. */
    double lineX(boolean onTheRight) {
        return drumX() + (onTheRight ? 1 : -1) * faces.drum() * scale;
    }

    /** Where the line comes up again to its fixed point, if it is reeved double: towards the drum's middle. */
    double backX(boolean onTheRight) {
        return lineX(onTheRight) - (onTheRight ? 2 : -2) * pulley();
    }

    /** Radius of the pulley at the weight. */
    double pulley() {
        return 8 * unit;
    }

    /** Axis of the weight: below its line, or between the two that carry it. */
    double weightX(boolean onTheRight, int falls) {
        return falls == 2 ? (lineX(onTheRight) + backX(onTheRight)) / 2 : lineX(onTheRight);
    }

    /** Half the width of the weight. */
    double weightHalf() {
        return 11 * unit;
    }

    double weightTop() {
        return weightBottom() - 34 * unit;
    }

    double weightBottom() {
        return bandTop() - 16 * unit;
    }

    /** Whether there is room for words beside figures. */
    boolean roomy() {
        return slot() >= 104 * unit;
    }
}
