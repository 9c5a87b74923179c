// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.contact;

import drumfall.solver.teeth.form.MeshPair;
import java.util.List;
import java.util.stream.Stream;

/**
 * The geometry of contact over one pitch of the driver, before friction.
 *
 * <p>The pitch starts where a new tooth takes up the load. Immutable; made by {@link MeshTracer}.
 */
public final class ContactPath {
    private final MeshPair pair;
    private final MeshConditions conditions;
    private final double start;
    private final List<Stretch.Node> samples;
    private final List<Stretch> stretches;
    private final Clearances clearances;

    ContactPath(
            MeshPair pair,
            MeshConditions conditions,
            double start,
            List<Stretch.Node> samples,
            List<Stretch> stretches,
            Clearances clearances) {
        this.pair = pair;
        this.conditions = conditions;
        this.start = start;
        this.samples = List.copyOf(samples);
        this.stretches = List.copyOf(stretches);
        this.clearances = clearances;
    }

    /**
     * The same contacts with the forces turned by friction.
     *
     * @param friction coefficient of friction, 0 to 1
     * @throws IllegalArgumentException if the coefficient is out of its range
     */
    public MeshContact withFriction(double friction) {
        return new MeshContact(this, friction);
    }

    /** The gears. */
    public MeshPair pair() {
        return pair;
    }

    /** How the mesh departs from its drawing. */
    public MeshConditions conditions() {
        return conditions;
    }

    /** The driver angle at which the pitch starts, from the foremost tooth's centre line on the line of centres, rad. */
    public double start() {
        return start;
    }

    /** The average number of pairs that carry together, at least 1. */
    public double contactRatio() {
        return stretches.stream().mapToDouble(s -> s.length() * s.pairs()).sum() / driverPitch();
    }

    /** The driver's turn, rad, over which a pair touches before the pitch point. */
    public double approachAngle() {
        return stretches.stream().mapToDouble(s -> s.length() * s.approaching()).sum();
    }

    /** The follower's turn, rad, over which a pair touches before the pitch point. */
    public double followerApproachAngle() {
        return stretches.stream().mapToDouble(ContactPath::followerApproach).sum();
    }

    private static double followerApproach(Stretch stretch) {
        return stretch.nodes().stream()
                .mapToDouble(n -> n.weight()
                        * n.contacts().stream()
                                .filter(Contact::isApproach)
                                .mapToDouble(Contact::speedRatio)
                                .sum())
                .sum();
    }

    /** The driver's turn, rad, over which a pair touches after the pitch point. */
    public double recessAngle() {
        return stretches.stream()
                .mapToDouble(s -> s.length() * (s.pairs() - s.approaching()))
                .sum();
    }

    /** The greatest coefficient of friction the mesh can stand before some phase of it binds; infinite without limit. */
    public double bindingFriction() {
        return contacts().mapToDouble(Contact::bindingFriction).min().orElse(Double.POSITIVE_INFINITY);
    }

    /** The greatest departure of the speed ratio from its nominal value, as a share of it; 0 for a conjugate pair. */
    public double ripple() {
        return contacts()
                .mapToDouble(c -> Math.abs(c.speedRatio() / pair.ratio() - 1))
                .max()
                .orElse(0);
    }

    /** The share of the pitch, 0 to 1, in which a corner instead of a flank carries, scraping and wearing. */
    public double cornerShare() {
        return stretches.stream()
                        .filter(s -> s.middle().contacts().stream().anyMatch(c -> c.touch() != Touch.FLANKS))
                        .mapToDouble(Stretch::length)
                        .sum()
                / driverPitch();
    }

    /** The smallest lever of the normal force about the driver's centre, modules. */
    public double leastDriverArm() {
        return contacts().mapToDouble(Contact::driverArm).min().orElseThrow();
    }

    /** The smallest lever of the normal force about the follower's centre, modules. */
    public double leastFollowerArm() {
        return contacts().mapToDouble(Contact::followerArm).min().orElseThrow();
    }

    /** The greatest distance from its centre at which the driver is touched, modules. */
    public double highestOnDriver() {
        return contacts().mapToDouble(Contact::driverRadius).max().orElseThrow();
    }

    /** The greatest distance from its centre at which the follower is touched, modules. */
    public double highestOnFollower() {
        return contacts().mapToDouble(Contact::followerRadius).max().orElseThrow();
    }

    private Stream<Contact> contacts() {
        return stretches.stream().flatMap(s -> s.nodes().stream()).flatMap(n -> n.contacts().stream());
    }

    /** The room left at tips, roots and trailing flanks. */
    public Clearances clearances() {
        return clearances;
    }

    /** The driver angle of one pitch, rad. */
    public double driverPitch() {
        return pair.driver().pitchAngle();
    }

    List<Stretch.Node> samples() {
        return samples;
    }

    List<Stretch> stretches() {
        return stretches;
    }
}
