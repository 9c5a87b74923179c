// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.formdev.flatlaf.FlatLightLaf;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.train.Mesh;
import drumfall.ui.presenter.MeshPhases;
import drumfall.ui.presenter.MeshSheet;
import drumfall.ui.presenter.MeshTrains;
import drumfall.ui.presenter.TracedMesh;
import drumfall.ui.presenter.Turns;
import java.awt.Graphics2D;
import java.awt.event.KeyEvent;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MeshDrawingTest {
    private static final Mesh MESH = MeshTrains.mesh(60, 8, "1.25");
    private final Turns turns = new Turns();

    private static void onEvents(Runnable action) throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            FlatLightLaf.setup();
            action.run();
        });
    }

    private MeshSheet sheet() {
        return MeshTrains.sheet(turns, turns.workspace(BundledBriefs.demo()));
    }

    static int[] painted(JComponent component, int width, int height) {
        component.setSize(width, height);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        component.paint(graphics);
        graphics.dispose();
        return image.getRGB(0, 0, width, height, null, 0, width);
    }

    private static void press(JComponent component, String key) {
        Object action = component.getInputMap().get(KeyStroke.getKeyStroke(key));
        component.getActionMap().get(action).actionPerformed(null);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 0.35, 0.6, 0.85})
    void drawn_teeth_touch_and_hardly_overlap_at_any_phase(double share) {
        TracedMesh traced = MeshTrains.traced(MESH, 0, 75e-6);
        MeshPhases.Phase phase = new MeshPhases(traced.path().withFriction(0)).at(share);
        GearFace wheel = GearFace.of(traced.teeth().pair().driver(), traced.wheelTooth());
        GearFace pinion = GearFace.of(traced.teeth().pair().follower(), traced.leaf());
        AffineTransform held = AffineTransform.getTranslateInstance(34, 0);
        held.concatenate(pinion.turned(Math.PI - phase.pinionAngle()));
        AffineTransform ahead = AffineTransform.getTranslateInstance(34, 0);
        ahead.concatenate(pinion.turned(Math.PI - phase.pinionAngle() + 0.02));
        Area teeth = new Area(wheel.turned(phase.wheelAngle()).createTransformedShape(wheel.body()));
        Area window = new Area(new Rectangle2D.Double(26, -5, 8, 10));
        // Outlines are drawn to 0.001 modules, contact is some modules long at most; pushed into the wheel by 0.02 rad,
        // a leaf
        // of a module's height overlaps far more.
        assertThat(overlap(teeth, window, held.createTransformedShape(pinion.body())))
                .isLessThan(2e-3);
        assertThat(overlap(teeth, window, ahead.createTransformedShape(pinion.body())))
                .isGreaterThan(4e-3);
    }

    private static double overlap(Area one, Area window, java.awt.Shape other) {
        Area both = new Area(other);
        both.intersect(window);
        both.intersect(one);
        return area(both);
    }

    /** Half the sum of cross products along the area's edge. */
    private static double area(Area shape) {
        double sum = 0;
        double[] at = new double[6];
        double startX = 0;
        double startY = 0;
        double x = 0;
        double y = 0;
        for (var edge = shape.getPathIterator(null, 1e-4); !edge.isDone(); edge.next()) {
            int kind = edge.currentSegment(at);
            if (kind == java.awt.geom.PathIterator.SEG_MOVETO) {
                startX = at[0];
                startY = at[1];
            } else {
                double toX = kind == java.awt.geom.PathIterator.SEG_CLOSE ? startX : at[0];
                double toY = kind == java.awt.geom.PathIterator.SEG_CLOSE ? startY : at[1];
                sum += x * toY - toX * y;
                at[0] = toX;
                at[1] = toY;
            }
            x = at[0];
            y = at[1];
        }
        return Math.abs(sum) / 2;
    }

    @Test
    void a_wheel_of_many_teeth_draws_only_those_near_the_line_of_centres() {
        TracedMesh traced = MeshTrains.traced(MeshTrains.mesh(120, 8, "1.25"), 0, 75e-6);
        Rectangle2D near = GearFace.of(traced.teeth().pair().driver(), traced.wheelTooth())
                .edge()
                .getBounds2D();
        assertThat(near.getMinX()).isGreaterThan(40);
        assertThat(near.getHeight()).isLessThan(60);
    }

    @Test
    void arrow_keys_turn_the_wheel_and_space_sets_it_turning() throws Exception {
        MeshSheet sheet = sheet();
        onEvents(() -> {
            MeshDrawing drawing = new MeshDrawing(sheet);
            press(drawing, "RIGHT");
            assertThat(sheet.turn()).isCloseTo(0.05, within(1e-12));
            press(drawing, "shift LEFT");
            assertThat(sheet.turn()).isCloseTo(0.045, within(1e-12));
            press(drawing, "HOME");
            assertThat(sheet.turn()).isZero();
            press(drawing, "SPACE");
            assertThat(sheet.turning()).isTrue();
            press(drawing, "SPACE");
            assertThat(sheet.turning()).isFalse();
            assertThat(KeyStroke.getKeyStroke(KeyEvent.VK_RIGHT, 0)).isEqualTo(KeyStroke.getKeyStroke("RIGHT"));
        });
    }

    @Test
    void another_phase_is_another_picture_of_gears_and_curve() throws Exception {
        MeshSheet sheet = sheet();
        onEvents(() -> {
            MeshDrawing drawing = new MeshDrawing(sheet);
            TorqueCurve curve = new TorqueCurve(sheet);
            int[] gears = painted(drawing, 330, 240);
            int[] torque = painted(curve, 330, 112);
            assertThat(Arrays.stream(gears).distinct().count()).isGreaterThan(8);
            sheet.turnTo(0.5);
            assertThat(painted(drawing, 330, 240)).isNotEqualTo(gears);
            assertThat(painted(curve, 330, 112)).isNotEqualTo(torque);
        });
    }

    @Test
    void approach_is_told_from_recess_without_colour() throws Exception {
        MeshSheet sheet = sheet();
        onEvents(() -> {
            TorqueCurve curve = new TorqueCurve(sheet);
            int[] pixels = painted(curve, 330, 112);
            Rectangle2D field = curve.field();
            int row = (int) field.getMaxY() - 6;
            assertThat(changes(pixels, row, field.getX() + 4, field.getCenterX() - 10))
                    .isGreaterThan(8);
            assertThat(changes(pixels, row, field.getMaxX() - 40, field.getMaxX() - 4))
                    .isLessThan(3);
        });
    }

    /** How often the paper changes along a row of the picture. */
    private static int changes(int[] pixels, int row, double from, double to) {
        int changes = 0;
        for (int x = (int) from; x < (int) to; x++) {
            changes += pixels[row * 330 + x] == pixels[row * 330 + x + 1] ? 0 : 1;
        }
        return changes;
    }

    @Test
    void the_scale_of_the_curve_holds_all_of_it() {
        MeshSheet sheet = sheet();
        sheet.set(drumfall.ui.presenter.MeshSetting.Dial.FRICTION, 0.6);
        var traced = sheet.state().traced().orElseThrow();
        assertThat(TorqueCurve.scaleEnd(traced)).isLessThan(traced.contact().worstTorque());
    }

    @Test
    void without_a_train_the_sheet_is_paper() throws Exception {
        MeshSheet empty =
                new MeshSheet(turns.workspace(BundledBriefs.demo()), new drumfall.ui.work.LatestDesk(turns, "mesh"));
        onEvents(() -> assertThat(Arrays.stream(painted(new MeshDrawing(empty), 330, 240))
                        .distinct()
                        .count())
                .isEqualTo(1));
    }
}
