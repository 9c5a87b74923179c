// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import drumfall.ui.presenter.StripFigure;
import drumfall.ui.presenter.TrainStripActions;
import java.awt.Cursor;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.SwingUtilities;

/** Mouse and keyboard of the strip. */
final class StripInput extends MouseAdapter implements FocusListener {
    private final TrainStrip strip;
    private final TrainStripActions actions;
    private Optional<StripFigure> hovered = Optional.empty();

    private StripInput(TrainStrip strip, TrainStripActions actions) {
        this.strip = strip;
        this.actions = actions;
    }

    static void install(TrainStrip strip, TrainStripActions actions) {
        StripInput input = new StripInput(strip, actions);
        strip.addMouseListener(input);
        strip.addMouseMotionListener(input);
        strip.addFocusListener(input);
        strip.addKeyListener(input.keys());
    }

    @Override
    public void mousePressed(MouseEvent event) {
        strip.requestFocusInWindow();
        if (SwingUtilities.isLeftMouseButton(event)) {
            spotAt(event).ifPresent(this::pressed);
        }
    }

    private void pressed(StripSpot spot) {
        strip.focusOn(spot);
        spot.figure().ifPresentOrElse(actions::toggleLock, () -> strip.askWhereFrom(spot));
    }

    @Override
    public void mouseMoved(MouseEvent event) {
        Optional<StripSpot> spot = spotAt(event);
        strip.setCursor(Cursor.getPredefinedCursor(spot.isPresent() ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
        hover(spot.flatMap(StripSpot::figure));
    }

    @Override
    public void mouseExited(MouseEvent event) {
        hover(Optional.empty());
    }

    private void hover(Optional<StripFigure> figure) {
        if (!figure.equals(hovered)) {
            hovered = figure;
            actions.hover(figure);
        }
    }

    private Optional<StripSpot> spotAt(MouseEvent event) {
        return strip.plan().flatMap(plan -> plan.at(event.getX(), event.getY()));
    }

    @Override
    public void focusGained(FocusEvent event) {
        strip.repaint();
    }

    @Override
    public void focusLost(FocusEvent event) {
        strip.repaint();
    }

    private KeyAdapter keys() {
        return new KeyAdapter() {
            @Override
            public void keyPressed(KeyEvent event) {
                if (command(event.getKeyCode())) {
                    event.consume();
                }
            }

            @Override
            public void keyTyped(KeyEvent event) {
                if (!event.isControlDown() && !event.isAltDown() && !event.isMetaDown()) {
                    typed(event.getKeyChar());
                }
            }
        };
    }

    private boolean command(int key) {
        switch (key) {
            case KeyEvent.VK_RIGHT -> step(1);
            case KeyEvent.VK_LEFT -> step(-1);
            case KeyEvent.VK_HOME -> step(-spots().size());
            case KeyEvent.VK_END -> step(spots().size());
            case KeyEvent.VK_UP -> strip.focus().upright(spots(), false).ifPresent(strip::focusOn);
            case KeyEvent.VK_DOWN -> strip.focus().upright(spots(), true).ifPresent(strip::focusOn);
            case KeyEvent.VK_SPACE -> strip.focused().ifPresent(this::pressed);
            case KeyEvent.VK_F1 -> strip.focused().ifPresent(strip::askWhereFrom);
            case KeyEvent.VK_F2 ->
                strip.focused().ifPresent(spot -> strip.edit(spot, spot.shown().text()));
            case KeyEvent.VK_ENTER -> whenTried(actions::acceptTrial);
            // With nothing tried the key is the window's, where it stops what is being searched.
            case KeyEvent.VK_ESCAPE -> {
                return whenTried(actions::dropTrial);
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    private boolean whenTried(Runnable action) {
        boolean tried = strip.content().flatMap(shown -> shown.trial()).isPresent();
        if (tried) {
            action.run();
        }
        return tried;
    }

    private void step(int steps) {
        strip.focus().stepped(spots(), steps).ifPresent(strip::focusOn);
    }

    private List<StripSpot> spots() {
        return strip.plan().map(StripPlan::spots).orElseGet(List::of);
    }

    private void typed(char c) {
        if (c >= '0' && c <= '9') {
            strip.focused().ifPresent(spot -> strip.edit(spot, String.valueOf(c)));
        }
    }
}
