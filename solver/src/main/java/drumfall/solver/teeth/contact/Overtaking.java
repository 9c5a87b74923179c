// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.contact;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Short spells between two looks in which another pair of teeth takes the load and gives it back.
 *
 * <p>The leading pair's margin over another falls or grows with the difference of their speed ratios. Where it falls at
 * one look and grows at the next, its least value lies between and is searched by golden section.
 */
final class Overtaking {
    private static final int STEPS = 24;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final Envelope envelope;

    Overtaking(Envelope envelope) {
        this.envelope = envelope;
    }

    /** An angle between two looks, led by the same pair, at which another leads; NaN if there is none. */
    double between(double low, List<Contact> left, double high, List<Contact> right) {
        Contact leader = Envelope.leading(left).get(0);
        for (Contact other : left) {
            if (other.tooth() != leader.tooth()) {
                double angle = spell(leader.tooth(), other.tooth(), low, left, high, right);
                if (!Double.isNaN(angle)) {
                    return angle;
                }
            }
        }
        return Double.NaN;
    }

    private double spell(int leader, int other, double low, List<Contact> left, double high, List<Contact> right) {
        double before = margin(left, leader, other);
        double after = margin(right, leader, other);
        double closing = slope(left, leader, other);
        double opening = slope(right, leader, other);
        if (!(closing < 0 && opening > 0 && before > Envelope.TIE && after > Envelope.TIE)) {
            return Double.NaN;
        }
        return search(leader, other, low, high);
    }

    private double search(int leader, int other, double low, double high) {
        double a = low;
        double b = high;
        double c = b - GOLDEN * (b - a);
        double d = a + GOLDEN * (b - a);
        double atC = margin(envelope.all(c), leader, other);
        double atD = margin(envelope.all(d), leader, other);
        for (int i = 0; i < STEPS; i++) {
            if (atC < -Envelope.TIE || atD < -Envelope.TIE) {
                return atC < atD ? c : d;
            }
            if (atC < atD) {
                b = d;
                d = c;
                atD = atC;
                c = b - GOLDEN * (b - a);
                atC = margin(envelope.all(c), leader, other);
            } else {
                a = c;
                c = d;
                atC = atD;
                d = a + GOLDEN * (b - a);
                atD = margin(envelope.all(d), leader, other);
            }
        }
        return Double.NaN;
    }

    private static double margin(List<Contact> contacts, int leader, int other) {
        return difference(contacts, leader, other, Contact::followerAngle);
    }

    private static double slope(List<Contact> contacts, int leader, int other) {
        return difference(contacts, leader, other, Contact::speedRatio);
    }

    /** The leader's figure less the other's; NaN where one of them is out of reach. */
    private static double difference(List<Contact> contacts, int leader, int other, ToDoubleFunction<Contact> figure) {
        double first = Double.NaN;
        double second = Double.NaN;
        for (Contact contact : contacts) {
            if (contact.tooth() == leader) {
                first = figure.applyAsDouble(contact);
            } else if (contact.tooth() == other) {
                second = figure.applyAsDouble(contact);
            }
        }
        return first - second;
    }
}
