// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.contact;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What a mesh hands on over one pitch, with friction.
 *
 * <p>Immutable; made by {@link ContactPath#withFriction}.
 */
public final class MeshContact {
    private static final double MOST_FRICTION = 1;

    private final ContactPath path;
    private final double friction;
    private final List<ContactSample> samples;
    private final LeastOverPitch efficiency;
    private final LeastOverPitch torque;
    private final double mean;

    MeshContact(ContactPath path, double friction) {
        if (!(friction >= 0 && friction <= MOST_FRICTION)) {
            throw new IllegalArgumentException("The friction (" + friction
                    + ") of a mesh must be a coefficient between 0 and 1. Maybe it was given in percent.");
        }
        this.path = path;
        this.friction = friction;
        samples = path.samples().stream()
                .map(node -> ContactSample.of(node, path.start(), friction))
                .toList();
        efficiency = LeastOverPitch.of(path, c -> c.efficiency(friction));
        torque = LeastOverPitch.of(
                path, c -> c.torqueRatio(friction) * path.pair().ratio());
        mean = integral(c -> c.efficiency(friction)) / path.driverPitch();
    }

    /** The geometry it stands on. */
    public ContactPath path() {
        return path;
    }

    /** The coefficient of friction. */
    public double friction() {
        return friction;
    }

    /** The curve over one pitch at equally spaced driver angles, each in the middle of its share of the pitch. */
    public List<ContactSample> samples() {
        return samples;
    }

    /** The least efficiency of any carrying pair at any phase; negative where the mesh binds. */
    public double worst() {
        return efficiency.value();
    }

    /** The driver's turn since the start of the pitch at which the efficiency is least, rad. */
    public double worstAngle() {
        return efficiency.angle() - path.start();
    }

    /** The least torque ratio at any phase, as a share of the nominal one; negative where the mesh binds. */
    public double worstTorque() {
        return torque.value();
    }

    /** The driver's turn since the start of the pitch at which the torque ratio is least, rad. */
    public double worstTorqueAngle() {
        return torque.angle() - path.start();
    }

    /** The work mean of the efficiency over the pitch. */
    public double mean() {
        return mean;
    }

    /** Whether some phase of the mesh binds at this friction. */
    public boolean binds() {
        return friction >= path.bindingFriction();
    }

    /** How far friction may rise before the mesh binds: binding friction less this one; negative when it binds. */
    public double bindingReserve() {
        return path.bindingFriction() - friction;
    }

    /** The integral over the driver's pitch of a figure averaged over the pairs that carry together. */
    double integral(ToDoubleFunction<Contact> figure) {
        double sum = 0;
        for (Stretch stretch : path.stretches()) {
            for (Stretch.Node node : stretch.nodes()) {
                double here = 0;
                for (Contact contact : node.contacts()) {
                    here += figure.applyAsDouble(contact);
                }
                sum += node.weight() * here / node.contacts().size();
            }
        }
        return sum;
    }
}
