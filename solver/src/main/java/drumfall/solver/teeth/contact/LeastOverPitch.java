// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.contact;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The least value of a figure over a pitch and where it stands.
 *
 * <p>Ends of smooth stretches are looked at themselves; inside a stretch the parabola through the least point and its
 * neighbours is followed to its foot.
 *
 * @param value the least value
 * @param angle the driver angle, rad
 */
record LeastOverPitch(double value, double angle) {
    private static final LeastOverPitch NONE = new LeastOverPitch(Double.POSITIVE_INFINITY, 0);

    static LeastOverPitch of(ContactPath path, ToDoubleFunction<Contact> figure) {
        LeastOverPitch least = NONE;
        for (Stretch stretch : path.stretches()) {
            for (Stretch.Node node : stretch.nodes()) {
                for (Contact contact : node.contacts()) {
                    least = least.or(new LeastOverPitch(figure.applyAsDouble(contact), node.angle()));
                }
            }
            for (Contact pair : stretch.middle().contacts()) {
                least = least.or(within(stretch.nodes(), pair, figure));
            }
        }
        return least;
    }

    private LeastOverPitch or(LeastOverPitch other) {
        return other.value < value ? other : this;
    }

    private static LeastOverPitch within(List<Stretch.Node> nodes, Contact pair, ToDoubleFunction<Contact> figure) {
        int last = nodes.size() - 1;
        double[] values = new double[nodes.size()];
        int at = 0;
        for (int i = 0; i <= last; i++) {
            values[i] = valueAt(nodes.get(i), pair, figure);
            at = values[i] < values[at] ? i : at;
        }
        return at == 0 || at == last || Double.isInfinite(values[at - 1] + values[at + 1])
                ? new LeastOverPitch(values[at], nodes.get(at).angle())
                : foot(nodes, values, at);
    }

    /** The figure of the same pair at a node; infinite where it does not carry, as at an end shared with another. */
    private static double valueAt(Stretch.Node node, Contact pair, ToDoubleFunction<Contact> figure) {
        for (Contact contact : node.contacts()) {
            if (contact.continues(pair)) {
                return figure.applyAsDouble(contact);
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    private static LeastOverPitch foot(List<Stretch.Node> nodes, double[] values, int at) {
        double middle = nodes.get(at).angle();
        double left = nodes.get(at - 1).angle() - middle;
        double right = nodes.get(at + 1).angle() - middle;
        double leftSlope = (values[at - 1] - values[at]) / left;
        double rightSlope = (values[at + 1] - values[at]) / right;
        double curve = (rightSlope - leftSlope) / (right - left);
        if (!(curve > 0)) {
            return new LeastOverPitch(values[at], middle);
        }
        double slope = leftSlope - curve * left;
        double step = -slope / (2 * curve);
        return new LeastOverPitch(values[at] + step * (slope + curve * step), middle + step);
    }
}
