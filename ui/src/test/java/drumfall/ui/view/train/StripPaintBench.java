// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import com.formdev.flatlaf.FlatLightLaf;
import drumfall.ui.presenter.TrainStripContent;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;

/** Times planning and painting of strip and drawing; a frame of 60 a second may take 16.7 ms. */
final class StripPaintBench {
    private static final int WARM_UP = 200;
    private static final int ROUNDS = 300;

    private StripPaintBench() {}

    /**
     * Prints milliseconds a frame.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            FlatLightLaf.setup();
            for (int scale = 1; scale <= 2; scale++) {
                strip(1440, scale);
                strip(2600, scale);
                drawing(scale);
            }
        });
    }

    private static void strip(int width, int scale) {
        TrainStrip strip = new TrainStrip(new StripPictures.NoActions());
        strip.setSize(width, 262);
        TrainStripContent content = SampleTrains.content(SampleTrains.of(5));
        time("strip %d px, %dx, plan and paint".formatted(width, scale), strip, scale, () -> strip.show(content));
        time("strip %d px, %dx, paint".formatted(width, scale), strip, scale, () -> {});
    }

    private static void drawing(int scale) {
        TrainDrawing drawing = new TrainDrawing(arbor -> {});
        drawing.setSize(1100, 600);
        TrainStripContent content = SampleTrains.content(SampleTrains.of(5));
        drawing.show(content.rating(), content.brief(), content.highlight(), content.units());
        time("drawing 1100 px, %dx".formatted(scale), drawing, scale, () -> {});
    }

    private static void time(String what, JComponent component, int scale, Runnable before) {
        BufferedImage image = new BufferedImage(
                component.getWidth() * scale, component.getHeight() * scale, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.scale(scale, scale);
        long start = 0;
        for (int i = 0; i < WARM_UP + ROUNDS; i++) {
            if (i == WARM_UP) {
                start = System.nanoTime();
            }
            before.run();
            component.paint(graphics);
        }
        graphics.dispose();
        System.out.printf("%-40s %6.2f ms%n", what, (System.nanoTime() - start) / 1e6 / ROUNDS);
    }
}
