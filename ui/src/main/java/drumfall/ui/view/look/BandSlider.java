// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.look;

import drumfall.ui.presenter.MeshSetting.Travel;
import drumfall.ui.view.train.Role;
import java.awt.Graphics;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import javax.swing.JSlider;
import javax.swing.plaf.basic.BasicSliderUI;

/** A slider over a range of values, with the band that the brief expects drawn along it between two ticks. */
public final class BandSlider extends JSlider {
    private static final int STEPS = 400;

    private transient Optional<Travel> travel = Optional.empty();
    private transient boolean following;

    /**
     * A slider without a range.
     *
     * @param moved is told each value that the maker moves it to
     */
    public BandSlider(DoubleConsumer moved) {
        super(0, STEPS, 0);
        setOpaque(false);
        setExtent(0);
        addChangeListener(event -> {
            if (!following) {
                travel.ifPresent(range -> moved.accept(value(range, getValue())));
            }
        });
    }

    static double value(Travel range, int step) {
        return range.least() + (range.most() - range.least()) * step / STEPS;
    }

    static int step(Travel range, double value) {
        return (int) Math.round((value - range.least()) / (range.most() - range.least()) * STEPS);
    }

    /**
     * Shows a value that was set elsewhere.
     *
     * @param range how far it goes; empty if there is nothing to set
     * @param value SI
     */
    public void show(Optional<Travel> range, double value) {
        travel = range;
        following = true;
        setEnabled(range.isPresent());
        range.ifPresent(known -> setValue(step(known, value)));
        following = false;
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        travel.ifPresent(range -> band(graphics, range));
        super.paintComponent(graphics);
    }

    private void band(Graphics graphics, Travel range) {
        int from = x(step(range, range.low()));
        int to = x(step(range, range.high()));
        int middle = getHeight() / 2;
        int half = Look.scaled(7);
        graphics.setColor(Ink.wash(Role.HELD));
        graphics.fillRect(from, middle - half, to - from, 2 * half);
        graphics.setColor(Ink.of(Role.HELD));
        graphics.fillRect(from, middle - half, Look.scaled(1), 2 * half);
        graphics.fillRect(to, middle - half, Look.scaled(1), 2 * half);
    }

    /** The look knows which value stands at a place, not where a value stands; so the place is found by halving. */
    int x(int step) {
        BasicSliderUI look = (BasicSliderUI) getUI();
        int low = 0;
        int high = getWidth();
        while (low < high) {
            int middle = (low + high) / 2;
            if (look.valueForXPosition(middle) < step) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
