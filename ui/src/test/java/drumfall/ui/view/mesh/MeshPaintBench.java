// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.mesh;

import com.formdev.flatlaf.FlatLightLaf;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.Train;
import drumfall.ui.presenter.MeshSetting.Dial;
import drumfall.ui.presenter.MeshSheet;
import drumfall.ui.presenter.MeshTrains;
import drumfall.ui.presenter.Turns;
import drumfall.ui.presenter.Workspace;
import drumfall.ui.work.LatestDesk;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.apache.commons.numbers.fraction.BigFraction;

/** Times a frame of the turning mesh, gears and curve, offscreen; one of 60 a second may take 16.7 ms. Prints a line a figure. */
public final class MeshPaintBench {
    private static final int WARM_UP = 200;
    private static final int ROUNDS = 600;
    private static final double NINETY_FIVE = 0.95;

    private MeshPaintBench() {}

    /**
     * Prints milliseconds a frame.
     *
     * @param arguments none
     * @throws Exception if the event thread fails
     */
    public static void main(String[] arguments) throws Exception {
        Turns turns = new Turns();
        for (Mesh mesh : List.of(MeshTrains.mesh(60, 8, "1.25"), MeshTrains.mesh(120, 8, "1.25"))) {
            Workspace workspace = turns.workspace(BundledBriefs.demo());
            workspace.choose(new Train(
                    List.of(MeshTrains.mesh(85, 10, "1.5"), mesh), 1, BigFraction.of(36, 1000), Reeving.DOUBLE, 30));
            MeshSheet sheet = new MeshSheet(workspace, new LatestDesk(turns, "mesh"));
            turns.until(() -> sheet.state().traced().isPresent());
            SwingUtilities.invokeAndWait(() -> measure(mesh, sheet));
        }
        System.exit(0);
    }

    private static void measure(Mesh mesh, MeshSheet sheet) {
        FlatLightLaf.setup();
        for (int scale = 1; scale <= 2; scale++) {
            MeshDrawing drawing = new MeshDrawing(sheet);
            TorqueCurve curve = new TorqueCurve(sheet);
            drawing.setSize(700, 480);
            curve.setSize(700, 160);
            frames(mesh + ", " + scale + "x, gears and curve", sheet, scale, drawing, curve);
        }
        long start = System.nanoTime();
        for (int i = 0; i < ROUNDS; i++) {
            sheet.set(Dial.FRICTION, 0.1 + i * 1e-4);
        }
        System.out.printf("%-40s %6.2f ms%n", mesh + ", friction dial", (System.nanoTime() - start) / 1e6 / ROUNDS);
    }

    private static void frames(String what, MeshSheet sheet, int scale, JComponent... components) {
        BufferedImage image = new BufferedImage(700 * scale, 480 * scale, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.scale(scale, scale);
        double[] times = new double[ROUNDS];
        for (int i = 0; i < WARM_UP + ROUNDS; i++) {
            sheet.turnBy(1.0 / 300);
            long start = System.nanoTime();
            for (JComponent component : components) {
                component.paint(graphics);
            }
            times[Math.max(0, i - WARM_UP)] = (System.nanoTime() - start) / 1e6;
        }
        graphics.dispose();
        Arrays.sort(times);
        System.out.printf(
                "%-40s %6.2f ms, 95 %% below %.2f ms%n", what, times[ROUNDS / 2], times[(int) (ROUNDS * NINETY_FIVE)]);
    }
}
