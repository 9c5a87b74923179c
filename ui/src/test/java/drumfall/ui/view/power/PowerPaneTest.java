// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.power;

import static org.assertj.core.api.Assertions.assertThat;

import com.formdev.flatlaf.FlatLightLaf;
import drumfall.solver.brief.BundledBriefs;
import drumfall.ui.presenter.MeshTrains;
import drumfall.ui.presenter.PowerSetting.Dial;
import drumfall.ui.presenter.PowerSheet;
import drumfall.ui.presenter.PowerStep;
import drumfall.ui.presenter.Turns;
import drumfall.ui.presenter.WhereCard;
import drumfall.ui.presenter.Workspace;
import drumfall.ui.work.LatestDesk;
import java.awt.Graphics2D;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class PowerPaneTest {
    private final Turns turns = new Turns();
    private final Workspace workspace = turns.workspace(BundledBriefs.demo());
    private final List<WhereCard> opened = new ArrayList<>();
    private PowerSheet sheet;

    @BeforeEach
    void look() {
        workspace.choose(MeshTrains.train());
        sheet = new PowerSheet(workspace, new LatestDesk(turns, "power"), new LatestDesk(turns, "savings"));
        sheet.lookAt(true);
        turns.until(() -> sheet.state().picture().isPresent());
    }

    private static void onEvents(Runnable action) throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            FlatLightLaf.setup();
            action.run();
        });
    }

    private PowerFlow flow() {
        PowerFlow flow = new PowerFlow(sheet, (beside, card) -> opened.add(card));
        flow.refresh();
        return flow;
    }

    private List<PowerStep> steps() {
        return sheet.state().picture().orElseThrow().steps();
    }

    private static int[] painted(JComponent component, int width, int height) {
        component.setSize(width, height);
        component.doLayout();
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        component.paint(graphics);
        graphics.dispose();
        return image.getRGB(0, 0, width, height, null, 0, width);
    }

    @Test
    void each_place_has_a_row_that_is_read_with_its_power_and_share() throws Exception {
        onEvents(() -> {
            PowerFlow flow = flow();
            // The first row is the weight itself.
            assertThat(flow.getComponentCount()).isEqualTo(steps().size() + 1);
            FlowRow row = (FlowRow) flow.getComponent(1);
            assertThat(row.getAccessibleContext().getAccessibleName())
                    .contains(steps().get(0).title())
                    .contains("µW")
                    .contains("%");
        });
    }

    @Test
    void pressing_a_row_opens_the_card_of_its_figure() throws Exception {
        onEvents(() -> {
            PowerFlow flow = flow();
            ((FlowRow) flow.getComponent(3)).doClick();
            assertThat(opened)
                    .singleElement()
                    .satisfies(card ->
                            assertThat(card.title()).isEqualTo(steps().get(2).title()));
        });
    }

    @Test
    void rows_of_the_same_places_stay_when_a_dial_moves() throws Exception {
        List<PowerFlow> made = new ArrayList<>();
        onEvents(() -> made.add(flow()));
        JComponent before = (JComponent) made.get(0).getComponent(3);
        String read = before.getAccessibleContext().getAccessibleName();
        sheet.set(Dial.FRICTION, 0.4);
        turns.until(() -> sheet.state().picture().orElseThrow().setting().friction() == 0.4);
        onEvents(() -> {
            made.get(0).refresh();
            assertThat(made.get(0).getComponent(3)).isSameAs(before);
            assertThat(before.getAccessibleContext().getAccessibleName()).isNotEqualTo(read);
        });
    }

    @Test
    void the_band_thins_towards_the_pendulum() throws Exception {
        onEvents(() -> {
            assertThat(FlowRow.x(1)).isGreaterThan(FlowRow.x(0.5));
            assertThat(FlowRow.x(-1e-12)).isEqualTo(FlowRow.x(0));
            int[] first = painted((JComponent) flow().getComponent(1), 300, 17);
            int[] last = painted((JComponent) flow().getComponent(steps().size() - 1), 300, 17);
            assertThat(first).isNotEqualTo(last);
        });
    }

    @Test
    void pressing_the_curve_hangs_the_weight_under_the_pointer() throws Exception {
        onEvents(() -> {
            ArcChart chart = new ArcChart(sheet);
            assertThat(Arrays.stream(painted(chart, 300, 124)).distinct().count())
                    .isGreaterThan(4);
            Rectangle2D field = chart.field();
            int middle = (int) field.getCenterX();
            chart.dispatchEvent(
                    new MouseEvent(chart, MouseEvent.MOUSE_PRESSED, 0, 0, middle, (int) field.getCenterY(), 1, false));
            double most = sheet.travel(Dial.WEIGHT).orElseThrow().most();
            // A pixel of the field.
            assertThat(sheet.setting().orElseThrow().weight())
                    .isBetween(most / 2 - most / field.getWidth(), most / 2 + most / field.getWidth());
        });
    }

    @Test
    void the_curve_is_described_by_what_the_weight_does() throws Exception {
        onEvents(() -> {
            ArcChart chart = new ArcChart(sheet);
            assertThat(chart.getAccessibleContext().getAccessibleDescription()).contains("semi-arc");
        });
    }
}
