// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.util.Arrays;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WrappedRowTest {
    private static final int GAP = 10;

    private static JPanel box(int width, int height) {
        JPanel box = new JPanel();
        box.setPreferredSize(new Dimension(width, height));
        return box;
    }

    private static WrappedRow row(Component... parts) {
        WrappedRow row = new WrappedRow(GAP);
        Arrays.stream(parts).forEach(row::add);
        return row;
    }

    private static void laid(WrappedRow row, int width) {
        row.setSize(width, 1);
        row.setSize(width, row.getPreferredSize().height);
        row.doLayout();
    }

    /** Three boxes of 100 and two gaps of 10 take 320. */
    @ParameterizedTest
    @CsvSource({"400, 20", "320, 20", "319, 50", "210, 50", "209, 80", "100, 80"})
    void as_many_rows_as_the_width_makes_necessary(int width, int height) {
        GuiActionRunner.execute(() -> {
            WrappedRow row = row(box(100, 20), box(100, 20), box(100, 20));

            laid(row, width);

            assertThat(row.getHeight()).isEqualTo(height);
            assertThat(row.getComponents())
                    .allSatisfy(part -> assertThat(
                                    new Rectangle(0, 0, row.getWidth(), row.getHeight()).contains(part.getBounds()))
                            .isTrue());
        });
    }

    @Test
    void what_is_hidden_takes_no_room() {
        GuiActionRunner.execute(() -> {
            JPanel hidden = box(100, 20);
            hidden.setVisible(false);
            WrappedRow row = row(hidden, box(100, 20), box(100, 20));

            laid(row, 210);

            assertThat(row.getHeight()).isEqualTo(20);
        });
    }

    @Test
    void text_fills_the_row_and_puts_what_follows_at_its_end() {
        GuiActionRunner.execute(() -> {
            JTextArea text = new JTextArea("");
            WrappedRow row = row(box(100, 20), text, box(100, 20));

            laid(row, 400);

            assertThat(row.getComponent(2).getBounds()).isEqualTo(new Rectangle(300, 0, 100, 20));
            assertThat(text.getWidth()).isEqualTo(180);
        });
    }

    /** It wraps within a form, which learns the height after the width. */
    @Test
    void a_form_gives_it_the_height_that_its_width_takes() {
        GuiActionRunner.execute(() -> {
            WrappedRow row = row(box(100, 20), box(100, 20), box(100, 20));
            JPanel form = new JPanel(new MigLayout("insets 0, gap 0, wrap 1", "[grow,fill,0:0:]", "[][grow,fill]"));
            form.add(row, "growx, wmin 0");
            form.add(new JPanel(), "grow");

            for (int width : new int[] {400, 250, 400}) {
                form.setSize(width, 300);
                form.doLayout();
                // As the window does once the row has asked for it.
                form.invalidate();
                form.doLayout();
                assertThat(row.getHeight()).isEqualTo(width == 250 ? 50 : 20);
            }
        });
    }
}
