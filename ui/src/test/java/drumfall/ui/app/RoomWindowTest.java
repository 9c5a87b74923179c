// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.ui.plugin.PluginFolder;
import drumfall.ui.presenter.FrontColumn;
import drumfall.ui.presenter.SmallBriefs;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JComboBox;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The room wanted small, switched on and off in the open window. */
@NeedsDisplay
class RoomWindowTest {
    @TempDir
    Path home;

    private static List<String> columns(OpenWindow window) {
        JTable table = window.named("front.table", JTable.class);
        return OpenWindow.on(() -> IntStream.range(0, table.getColumnCount())
                .mapToObj(table::getColumnName)
                .toList());
    }

    private static void choose(OpenWindow window, int index) {
        JComboBox<?> box = window.named("/frame/least/figure", JComboBox.class);
        OpenWindow.on(() -> {
            box.setSelectedIndex(index);
            return null;
        });
        window.untilSolved();
    }

    @Test
    void switched_on_it_has_a_column_with_a_figure_for_each_train_and_off_it_has_none() {
        try (OpenWindow window = new OpenWindow(
                SmallBriefs.small(),
                home,
                List.of(new PluginFolder(PluginFolder.Origin.USER, home.resolve("plugins"))))) {
            window.untilSolved();
            String height = FrontColumn.MOVEMENT_HEIGHT.title();
            assertThat(columns(window)).doesNotContain(height);

            choose(window, 1);

            assertThat(columns(window)).contains(height);
            JTextField resolution = window.named("/frame/least/resolution", JTextField.class);
            assertThat(OpenWindow.<String>on(resolution::getText)).isEqualTo("10 mm");
            assertThat(SpokenNames.lackingIn(window)).isEmpty();
            JTable table = window.named("front.table", JTable.class);
            int column = columns(window).indexOf(height);
            window.until(
                    "every train has its height",
                    shown -> IntStream.range(0, table.getRowCount())
                            .allMatch(row -> Double.isFinite((Double) table.getValueAt(row, column))));

            choose(window, 0);

            assertThat(columns(window)).doesNotContain(height);
            assertThat(OpenWindow.<String>on(resolution::getText)).isEmpty();
        }
    }
}
