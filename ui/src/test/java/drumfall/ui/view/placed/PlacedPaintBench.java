// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.placed;

import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutOutcome;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.drag.Drag;
import drumfall.ui.presenter.PlacedSheet;
import drumfall.ui.presenter.PlacedTrains;
import drumfall.ui.presenter.Turns;
import drumfall.ui.view.look.Look;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;

/**
 * Times a redraw of elevation and section at 2560 × 1440, offscreen, and placing anew after a drag; prints a line a figure.
 *
 * <p>With a folder as argument it also leaves pictures there.
 */
public final class PlacedPaintBench {
    private static final int WARM_UP = 60;
    private static final int ROUNDS = 200;
    private static final double NINETY_FIVE = 0.95;

    private PlacedPaintBench() {}

    /**
     * Prints milliseconds.
     *
     * @param arguments a folder for pictures, or nothing
     * @throws Exception if the event thread fails or a picture cannot be written
     */
    public static void main(String[] arguments) throws Exception {
        Turns turns = new Turns();
        PlacedSheet sheet = PlacedTrains.sheet(turns, turns.workspace(BundledBriefs.demo()));
        SwingUtilities.invokeAndWait(() -> {
            Look.apply(false, 100);
            frames("elevation", new ElevationDrawing(sheet));
            frames("section", new SectionDrawing(sheet));
            sheet.setTurning(true);
            frames("elevation, turning", new ElevationDrawing(sheet));
            sheet.setTurning(false);
        });
        resolve(sheet.seen().orElseThrow().layout());
        if (arguments.length > 0) {
            File folder = new File(arguments[0]);
            SwingUtilities.invokeAndWait(() -> pictures(folder, sheet));
        }
        System.exit(0);
    }

    private static void frames(String what, JComponent component) {
        BufferedImage image = new BufferedImage(2560, 1440, BufferedImage.TYPE_INT_RGB);
        component.setSize(2560, 1440);
        Graphics2D graphics = image.createGraphics();
        double[] times = new double[ROUNDS];
        for (int i = 0; i < WARM_UP + ROUNDS; i++) {
            long start = System.nanoTime();
            component.paint(graphics);
            times[Math.max(0, i - WARM_UP)] = (System.nanoTime() - start) / 1e6;
        }
        graphics.dispose();
        print(what, times);
    }

    private static void resolve(Layout layout) {
        Random random = new Random(7);
        double[] times = new double[ROUNDS];
        int placed = 0;
        for (int i = 0; i < ROUNDS; i++) {
            int arbor = new int[] {0, 1, 3, 4, 6}[i % 5];
            Place wished = layout.place(arbor)
                    .plus(new Place(random.nextInt(60_000_000) - 30_000_000, random.nextInt(60_000_000) - 30_000_000));
            long start = System.nanoTime();
            Optional<LayoutOutcome> outcome =
                    Drag.towards(layout, arbor, wished).map(drag -> drag.resolve(() -> false));
            times[i] = (System.nanoTime() - start) / 1e6;
            placed += outcome.filter(LayoutOutcome.Placed.class::isInstance).isPresent() ? 1 : 0;
        }
        print("placing anew after a drag, " + placed + " placed", times);
    }

    private static void print(String what, double[] times) {
        Arrays.sort(times);
        System.out.printf(
                "%-45s %7.2f ms, 95 %% below %.2f ms, most %.2f ms%n",
                what, times[ROUNDS / 2], times[(int) (ROUNDS * NINETY_FIVE)], times[ROUNDS - 1]);
    }

    private static void pictures(File folder, PlacedSheet sheet) {
        for (boolean dark : new boolean[] {false, true}) {
            Look.apply(dark, 100);
            String look = dark ? "dark" : "light";
            sheet.select(Optional.of(4));
            picture(new File(folder, "elevation-" + look + ".png"), new ElevationDrawing(sheet));
            picture(new File(folder, "section-" + look + ".png"), new SectionDrawing(sheet));
        }
        Place at = sheet.seen().orElseThrow().layout().place(3);
        sheet.setTurning(true);
        sheet.pass(4);
        sheet.drawTo(3, new Place(-at.x(), -at.y()));
        PlacedPane pane = PlacedPane.elevation(sheet, (beside, card) -> {});
        pane.setSize(560, 640);
        lay(pane);
        picture(new File(folder, "drag.png"), pane);
    }

    private static void lay(java.awt.Container container) {
        container.doLayout();
        for (java.awt.Component part : container.getComponents()) {
            if (part instanceof java.awt.Container inner) {
                lay(inner);
            }
        }
    }

    private static void picture(File file, JComponent component) {
        if (component.getWidth() == 0) {
            component.setSize(1000, 800);
        }
        BufferedImage image =
                new BufferedImage(component.getWidth(), component.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        component.paint(graphics);
        graphics.dispose();
        try {
            ImageIO.write(image, "png", file);
        } catch (java.io.IOException fault) {
            throw new java.io.UncheckedIOException(fault);
        }
    }
}
