// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.look;

import drumfall.ui.view.train.Role;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import javax.swing.Icon;

/**
 * The sign of a role, so that colour is never the only one: a cross for what is missed, a bar at a stop for a limit reached,
 * a closed shackle for what is held.
 *
 * @param sign which
 */
public record SignIcon(Sign sign) implements Icon {
    /** The signs. */
    public enum Sign {
        /** Missed or wrong. */
        CROSS(Role.MISSED),
        /** At the limit. */
        STOP(Role.CHOSEN),
        /** Held fast. */
        SHACKLE(Role.HELD);

        private final Role role;

        Sign(Role role) {
            this.role = role;
        }

        /** The role it stands for. */
        public Role role() {
            return role;
        }
    }

    private static final int SIZE = 10;

    @Override
    public void paintIcon(Component component, Graphics graphics, int x, int y) {
        Graphics2D pen = (Graphics2D) graphics.create();
        Digits.smooth(pen);
        pen.translate(x, y);
        double unit = Look.scaled(SIZE) / (double) SIZE;
        pen.scale(unit, unit);
        pen.setColor(Ink.of(sign.role()));
        pen.setStroke(new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        switch (sign) {
            case CROSS -> {
                pen.draw(new Line2D.Double(2, 2, 8, 8));
                pen.draw(new Line2D.Double(8, 2, 2, 8));
            }
            case STOP -> {
                pen.draw(new Line2D.Double(1, 5, 6.5, 5));
                pen.draw(new Line2D.Double(4, 2.5, 6.5, 5));
                pen.draw(new Line2D.Double(4, 7.5, 6.5, 5));
                pen.draw(new Line2D.Double(9, 1, 9, 9));
            }
            case SHACKLE -> {
                pen.draw(new java.awt.geom.Arc2D.Double(3, 1, 4, 6, 0, 180, java.awt.geom.Arc2D.OPEN));
                pen.fill(new RoundRectangle2D.Double(1.5, 4.5, 7, 5, 1.5, 1.5));
            }
        }
        pen.dispose();
    }

    @Override
    public int getIconWidth() {
        return Look.scaled(SIZE);
    }

    @Override
    public int getIconHeight() {
        return Look.scaled(SIZE);
    }
}
