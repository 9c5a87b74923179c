// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import com.formdev.flatlaf.FlatClientProperties;
import drumfall.ui.presenter.StripFigure;
import drumfall.ui.presenter.TrainStripActions;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;

/** The small field in which another value is typed, right on the figure: Enter tries it, Esc drops it. */
final class StripEditor {
    private static final double WIDTH = 68;
    private static final double HEIGHT = 26;
    private static final String DROP = "drop";

    private final TrainStrip strip;
    private final TrainStripActions actions;
    private final JTextField field = new JTextField();
    private Optional<StripFigure> figure = Optional.empty();

    StripEditor(TrainStrip strip, TrainStripActions actions) {
        this.strip = strip;
        this.actions = actions;
        field.setHorizontalAlignment(JTextField.CENTER);
        field.setName("stripEditor");
        // The digit that opened the field must not be taken for a selection and typed over.
        field.putClientProperty(FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY, "never");
        field.addActionListener(event -> tryTyped());
        field.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), DROP);
        field.getActionMap().put(DROP, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                close();
            }
        });
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                close();
            }
        });
    }

    void refresh() {
        SwingUtilities.updateComponentTreeUI(field);
    }

    /** Opens the field; a key typed before it has the focus is added to what stands there. */
    void open(StripFigure wanted, StripSpot spot, String typed) {
        if (figure.filter(wanted::equals).isPresent()) {
            field.setText(field.getText() + typed);
            return;
        }
        figure = Optional.of(wanted);
        Rectangle2D box = spot.box();
        double width = Math.max(WIDTH * strip.unit(), box.getWidth() + 12 * strip.unit());
        double height = HEIGHT * strip.unit();
        double left = Math.max(0, Math.min(strip.getWidth() - width, box.getCenterX() - width / 2));
        field.setBounds((int) left, (int) (box.getCenterY() - height / 2), (int) width, (int) height);
        field.setText(typed);
        if (typed.equals(spot.shown().text())) {
            field.selectAll();
        }
        field.getAccessibleContext().setAccessibleName(TrainText.of("edit.name", spot.name()));
        strip.add(field);
        field.requestFocusInWindow();
        strip.repaint();
    }

    private void tryTyped() {
        String typed = field.getText().strip();
        Optional<StripFigure> wanted = figure;
        close();
        if (!typed.isEmpty()) {
            wanted.ifPresent(found -> actions.tryCount(found, typed));
        }
    }

    private void close() {
        if (figure.isEmpty()) {
            return;
        }
        figure = Optional.empty();
        boolean hadFocus = field.isFocusOwner();
        strip.remove(field);
        strip.repaint();
        if (hadFocus) {
            strip.requestFocusInWindow();
        }
    }
}
