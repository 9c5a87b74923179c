// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLightLaf;
import drumfall.solver.brief.MeshPlace;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.Train;
import drumfall.ui.presenter.Highlight;
import drumfall.ui.presenter.StripFigure;
import drumfall.ui.presenter.TrainStripActions;
import drumfall.ui.presenter.TrainStripContent;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import javax.swing.UnsupportedLookAndFeelException;

/** Draws the strip in many states into a folder, to be looked at; needs no display. */
final class StripPictures {
    private final Path folder;

    private StripPictures(Path folder) {
        this.folder = folder;
    }

    /**
     * Draws all pictures.
     *
     * @param arguments the folder
     */
    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        SwingUtilities.invokeAndWait(() -> {
            try {
                new StripPictures(folder).all();
            } catch (IOException | UnsupportedLookAndFeelException fault) {
                throw new IllegalStateException(fault);
            }
        });
    }

    private void all() throws IOException, UnsupportedLookAndFeelException {
        for (boolean dark : new boolean[] {false, true}) {
            UIManager.setLookAndFeel(dark ? new FlatDarkLaf() : new FlatLightLaf());
            String tone = dark ? "dark" : "light";
            for (int meshes : new int[] {4, 5, 6}) {
                strip(tone + "-1440-" + meshes, held(meshes), 1440, 262, 1);
                strip(tone + "-2600-" + meshes, held(meshes), 2600, 262, 1);
            }
            strip(tone + "-1440-trial", trial(), 1440, 262, 1);
            strip(tone + "-1440-trial-2x", trial(), 1440, 262, 2);
            strip(tone + "-900-8", SampleTrains.content(SampleTrains.of(8)), 900, 230, 1);
            strip(tone + "-900-2", SampleTrains.content(SampleTrains.of(2)), 900, 230, 1);
            strip(tone + "-1440-0", SampleTrains.content(SampleTrains.of(0, 3, Reeving.SINGLE)), 1440, 300, 1);
            picture(tone + "-empty", new TrainStrip(new NoActions()), 1440, 262, 1);
            drawings(tone);
        }
    }

    private void drawings(String tone) throws IOException {
        for (int meshes : new int[] {4, 6}) {
            TrainDrawing drawing = new TrainDrawing(arbor -> {});
            TrainStripContent content = SampleTrains.content(SampleTrains.of(meshes));
            drawing.setSize(900, 520);
            drawing.show(
                    content.rating(),
                    content.brief(),
                    new Highlight(Optional.empty(), Optional.of(2)),
                    content.units());
            picture(tone + "-drawing-" + meshes, drawing, 900, 520, 1);
        }
    }

    private static TrainStripContent held(int meshes) {
        TrainStripContent content =
                SampleTrains.content(SampleTrains.of(meshes), SampleTrains.heldBrief(), Optional.empty());
        StripFigure pointed = StripFigure.of(StripFigure.Kind.ESCAPE_TEETH);
        return new TrainStripContent(
                content.rating(),
                content.trial(),
                content.brief(),
                new Highlight(Optional.of(pointed), Optional.of(2)),
                content.units(),
                true);
    }

    private static TrainStripContent trial() {
        Train train = SampleTrains.of(4);
        return SampleTrains.content(train, SampleTrains.heldBrief(), Optional.of(SampleTrains.withWheel(train, 2, 61)));
    }

    private void strip(String name, TrainStripContent content, int width, int height, int scale) throws IOException {
        TrainStrip strip = new TrainStrip(new NoActions());
        strip.setSize(width, height);
        strip.show(content);
        picture(name, strip, width, height, scale);
    }

    private void picture(String name, JComponent component, int width, int height, int scale) throws IOException {
        component.setSize(width, height);
        BufferedImage image = new BufferedImage(width * scale, height * scale, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.scale(scale, scale);
        component.paint(graphics);
        graphics.dispose();
        ImageIO.write(image, "png", folder.resolve(name + ".png").toFile());
    }

    /** Does nothing. */
    static final class NoActions implements TrainStripActions {
        @Override
        public void toggleLock(StripFigure figure) {}

        @Override
        public void tryCount(StripFigure figure, String typed) {}

        @Override
        public void hover(Optional<StripFigure> figure) {}

        @Override
        public void lookInto(MeshPlace place) {}

        @Override
        public void acceptTrial() {}

        @Override
        public void dropTrial() {}
    }
}
