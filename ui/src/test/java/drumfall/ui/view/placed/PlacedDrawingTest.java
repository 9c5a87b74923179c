// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.placed;

import static org.assertj.core.api.Assertions.assertThat;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLightLaf;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.layout.Place;
import drumfall.ui.presenter.PlacedSheet;
import drumfall.ui.presenter.PlacedTrains;
import drumfall.ui.presenter.Turns;
import drumfall.ui.presenter.Workspace;
import drumfall.ui.view.train.Inks;
import drumfall.ui.view.train.Role;
import java.awt.Graphics2D;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlacedDrawingTest {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 520;
    private final Turns turns = new Turns();
    private final Workspace workspace = turns.workspace(BundledBriefs.demo());
    private PlacedSheet sheet;

    @BeforeEach
    void place() {
        sheet = PlacedTrains.sheet(turns, workspace);
    }

    private static void onEvents(boolean dark, Runnable action) throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            if (dark) {
                FlatDarkLaf.setup();
            } else {
                FlatLightLaf.setup();
            }
            action.run();
        });
    }

    private static BufferedImage painted(JComponent component) {
        component.setSize(WIDTH, HEIGHT);
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        component.paint(graphics);
        graphics.dispose();
        return image;
    }

    private static long count(BufferedImage image, java.awt.Color ink) {
        int[] pixels = image.getRGB(0, 0, WIDTH, HEIGHT, null, 0, WIDTH);
        return Arrays.stream(pixels).filter(pixel -> pixel == ink.getRGB()).count();
    }

    private static void press(JComponent component, String key) {
        Object action = component.getInputMap().get(KeyStroke.getKeyStroke(key));
        component.getActionMap().get(action).actionPerformed(null);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void the_frame_is_drawn_where_the_plan_puts_it(boolean dark) throws Exception {
        onEvents(dark, () -> {
            ElevationDrawing drawing = new ElevationDrawing(sheet);
            BufferedImage image = painted(drawing);
            ElevationPlan plan = drawing.plan().orElseThrow();
            SheetScale scale = drawing.scale(plan);
            int x = (int) scale.x(plan.frame().getMinX() + 40);
            int y = (int) scale.y(plan.frame().getMaxY());
            int darkest = 0;
            int paper = Inks.current().paper().getRGB();
            for (int row = y - 2; row <= y + 2; row++) {
                darkest = Math.max(darkest, apart(image.getRGB(x, row), paper));
            }
            // The pen is 1.3 px wide, so that one row is covered by more than half; hairlines and washes are fainter.
            assertThat(darkest).isGreaterThan(apart(Inks.current().line().getRGB(), paper) / 2);
            assertThat(image.getRGB(2, 2)).isEqualTo(paper);
        });
    }

    private static int apart(int one, int other) {
        return Math.abs((one >> 16 & 255) - (other >> 16 & 255))
                + Math.abs((one >> 8 & 255) - (other >> 8 & 255))
                + Math.abs((one & 255) - (other & 255));
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void a_clash_is_marked_while_an_arbor_is_drawn_and_gone_after(boolean dark) throws Exception {
        onEvents(dark, () -> {
            ElevationDrawing drawing = new ElevationDrawing(sheet);
            Place at = sheet.seen().orElseThrow().layout().place(3);
            java.awt.Color missed = Inks.current().role(Role.MISSED);
            assertThat(count(painted(drawing), missed)).isZero();
            sheet.drawTo(3, new Place(-at.x(), -at.y()));
            assertThat(count(painted(drawing), missed)).isGreaterThan(200);
            press(drawing, "ESCAPE");
            assertThat(count(painted(drawing), missed)).isZero();
        });
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void the_arbor_pointed_at_stands_out_in_both_sheets(boolean dark) throws Exception {
        onEvents(dark, () -> {
            java.awt.Color chosen = Inks.current().role(Role.CHOSEN);
            for (PlacedCanvas canvas : new PlacedCanvas[] {new ElevationDrawing(sheet), new SectionDrawing(sheet)}) {
                workspace.pointAtArbor(Optional.empty());
                assertThat(count(painted(canvas), chosen)).isZero();
                workspace.pointAtArbor(Optional.of(1));
                assertThat(count(painted(canvas), chosen)).isGreaterThan(100);
            }
        });
    }

    @Test
    void dragging_an_arbor_draws_it_and_dragging_the_paper_moves_the_sheet() throws Exception {
        onEvents(false, () -> {
            ElevationDrawing drawing = new ElevationDrawing(sheet);
            painted(drawing);
            ElevationPlan plan = drawing.plan().orElseThrow();
            SheetScale scale = drawing.scale(plan);
            Point2D at = plan.arbors().get(4);
            int x = (int) scale.x(at.getX());
            int y = (int) scale.y(at.getY());
            send(drawing, MouseEvent.MOUSE_PRESSED, x, y);
            send(drawing, MouseEvent.MOUSE_DRAGGED, x + 12, y);
            assertThat(sheet.drag().orElseThrow().drag().arbor()).isEqualTo(4);
            press(drawing, "ESCAPE");
            send(drawing, MouseEvent.MOUSE_PRESSED, 3, 3);
            send(drawing, MouseEvent.MOUSE_DRAGGED, 13, 3);
            assertThat(sheet.drag()).isEmpty();
            assertThat(drawing.view().right()).isEqualTo(10);
            press(drawing, "typed 0");
            assertThat(drawing.view().right()).isZero();
        });
    }

    private static void send(JComponent to, int kind, int x, int y) {
        to.dispatchEvent(new MouseEvent(to, kind, 0, MouseEvent.BUTTON1_DOWN_MASK, x, y, 1, false, MouseEvent.BUTTON1));
    }

    @Test
    void every_arbor_is_spoken_with_its_place() throws Exception {
        onEvents(false, () -> {
            ElevationDrawing drawing = new ElevationDrawing(sheet);
            var context = drawing.getAccessibleContext();
            assertThat(context.getAccessibleChildrenCount()).isEqualTo(7);
            var drum = context.getAccessibleChild(0).getAccessibleContext();
            assertThat(drum.getAccessibleName()).startsWith("drum arbor: ").endsWith("from the dial centre");
            assertThat(drum.getAccessibleAction().doAccessibleAction(0)).isTrue();
            assertThat(sheet.selected()).contains(0);
        });
    }

    @Test
    void a_turned_train_is_another_picture() throws Exception {
        onEvents(false, () -> {
            ElevationDrawing drawing = new ElevationDrawing(sheet);
            java.awt.Color mark = Inks.current().role(Role.COMPARED);
            assertThat(count(painted(drawing), mark)).isZero();
            sheet.setTurning(true);
            sheet.pass(1);
            assertThat(count(painted(drawing), mark)).isGreaterThan(40);
        });
    }

    @Test
    void the_pane_reads_out_what_is_pointed_at_and_what_clashes() throws Exception {
        onEvents(false, () -> {
            PlacedPane pane = PlacedPane.elevation(sheet, (beside, card) -> {});
            assertThat(reading(pane)).startsWith("Drag an arbor along its arc");
            workspace.pointAtArbor(Optional.of(2));
            assertThat(reading(pane)).isEqualTo("3  centre arbor: stays at the dial centre");
            workspace.pointAtArbor(Optional.empty());
            Place at = sheet.seen().orElseThrow().layout().place(3);
            sheet.drawTo(3, new Place(-at.x(), -at.y()));
            assertThat(reading(pane)).contains("Enter puts it here", "arbor 4", " mm");
            sheet.giveUp();
            assertThat(reading(pane)).startsWith("Drag an arbor along its arc");
        });
    }

    @Test
    void the_section_reads_out_and_speaks_the_hands_and_the_room_for_a_dial() throws Exception {
        onEvents(false, () -> {
            PlacedPane pane = PlacedPane.section(sheet, (beside, card) -> {});
            SectionDrawing drawing = (SectionDrawing) named(pane, "placed.section");
            painted(drawing);
            SectionPlan plan = drawing.plan().orElseThrow();
            SheetScale scale = drawing.scale(plan);
            SectionPlan.Before hand = plan.front().stream()
                    .filter(slab -> slab.piece().name().equals("minute-hand"))
                    .reduce((narrower, wider) -> wider)
                    .orElseThrow();

            move(drawing, scale.x(hand.box().getMinX() + 1), scale.y(hand.box().getCenterY()));
            assertThat(reading(pane, "placed.section.reading"))
                    .startsWith("3  centre arbor: stays at the dial centre\nminute hand: 100 mm long, ");

            SectionPlan.Dial dial = plan.dial().orElseThrow();
            move(drawing, scale.x(dial.box().getMinX() + 1), scale.y(dial.box().getCenterY()));
            assertThat(reading(pane, "placed.section.reading")).contains("\nroom for a dial: ");

            move(drawing, 3, 3);
            assertThat(reading(pane, "placed.section.reading")).doesNotContain("dial: ", "hand: ");

            var context = drawing.getAccessibleContext();
            assertThat(java.util.stream.IntStream.range(0, context.getAccessibleChildrenCount())
                            .mapToObj(child -> context.getAccessibleChild(child)
                                    .getAccessibleContext()
                                    .getAccessibleName()))
                    .anyMatch(name -> name.startsWith("drum arbor: "))
                    .anyMatch(name -> name.startsWith("hour hand: 70 mm long, "))
                    .anyMatch(name -> name.startsWith("room for a dial: "));
        });
    }

    /** All that is fitted keeps clear of the numbers below and of the upper edge. */
    @ParameterizedTest
    @ValueSource(ints = {120, 200, 520})
    void a_fitted_section_lies_within_its_sheet(int height) throws Exception {
        onEvents(false, () -> {
            SectionDrawing drawing = new SectionDrawing(sheet);
            drawing.setSize(WIDTH, height);
            SectionPlan plan = drawing.plan().orElseThrow();
            SheetScale scale = drawing.scale(plan);
            double unit = drawing.unit();

            assertThat(scale.y(plan.bounds().getMaxY())).isGreaterThanOrEqualTo(14 * unit - 1e-6);
            assertThat(scale.y(plan.bounds().getMinY())).isLessThanOrEqualTo(height - 30 * unit + 1e-6);
            assertThat(scale.x(plan.bounds().getMinX())).isGreaterThanOrEqualTo(100 * unit - 1e-6);
        });
    }

    private static void move(JComponent to, double x, double y) {
        to.dispatchEvent(new MouseEvent(
                to, MouseEvent.MOUSE_MOVED, 0, 0, (int) Math.round(x), (int) Math.round(y), 0, false, 0));
    }

    private static java.awt.Component named(java.awt.Container in, String name) {
        return Arrays.stream(in.getComponents())
                .flatMap(part -> java.util.stream.Stream.concat(
                        java.util.stream.Stream.of(part),
                        part instanceof java.awt.Container inner
                                ? java.util.stream.Stream.ofNullable(named(inner, name))
                                : java.util.stream.Stream.empty()))
                .filter(part -> name.equals(part.getName()))
                .findFirst()
                .orElse(null);
    }

    private static String reading(PlacedPane pane) {
        return reading(pane, "placed.elevation.reading");
    }

    private static String reading(PlacedPane pane, String name) {
        return ((javax.swing.JTextArea) named(pane, name)).getText();
    }

    /** At 160 % on a screen of 1920 px the place of the drawing is some 630 px wide; letters are about 21 px there. */
    @ParameterizedTest
    @ValueSource(ints = {400, 630, 1200})
    void no_figure_of_the_head_is_cut_off_in_a_narrow_place(int width) throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            drumfall.ui.view.look.Look.apply(false, 160);
            try {
                PlacedPane pane = PlacedPane.elevation(sheet, (beside, card) -> {});
                pane.setSize(width, 600);
                pane.doLayout();
                pane.invalidate();
                pane.doLayout();
                java.awt.Container head =
                        named(pane, "figure.placed.elevation.least").getParent();
                head.doLayout();
                assertThat(head.getComponents())
                        .filteredOn(java.awt.Component::isVisible)
                        .allSatisfy(part -> assertThat(part.getX() >= 0
                                        && part.getX() + part.getWidth() <= head.getWidth()
                                        && part.getY() + part.getHeight() <= head.getHeight())
                                .isTrue());
            } finally {
                drumfall.ui.view.look.Look.apply(false, 100);
            }
        });
    }

    @Test
    void a_hidden_train_stops_turning() throws Exception {
        onEvents(false, () -> {
            PlacedPane pane = PlacedPane.elevation(sheet, (beside, card) -> {});
            sheet.setTurning(true);
            pane.dispatchEvent(new java.awt.event.HierarchyEvent(
                    pane,
                    java.awt.event.HierarchyEvent.HIERARCHY_CHANGED,
                    pane,
                    null,
                    java.awt.event.HierarchyEvent.SHOWING_CHANGED));
            assertThat(sheet.turning()).isFalse();
        });
    }
}
