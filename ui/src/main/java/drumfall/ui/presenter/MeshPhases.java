// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.teeth.contact.Contact;
import drumfall.solver.teeth.contact.ContactSample;
import drumfall.solver.teeth.contact.MeshContact;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A traced mesh at any phase of the pitch, between the phases that were traced.
 *
 * <p>Between two neighbouring phases in which the same teeth touch in the same way, place, normal and angles of a contact go
 * on in a straight line; where a tooth takes up the load or lets go, they go on from the nearer phase. Torques of the contact
 * found are the solver's.
 */
public final class MeshPhases {
    private final MeshContact mesh;
    private final List<ContactSample> samples;
    private final double pitch;
    private final double followerPitch;

    /**
     * The phases of a traced mesh.
     *
     * @param mesh the mesh with friction
     */
    public MeshPhases(MeshContact mesh) {
        this.mesh = mesh;
        this.samples = mesh.samples();
        this.pitch = mesh.path().driverPitch();
        this.followerPitch = mesh.path().pair().follower().pitchAngle();
    }

    /**
     * One phase.
     *
     * @param wheelAngle of the wheel's foremost tooth from the line of centres, rad
     * @param pinionAngle of the leaf it drives, from the line of centres, rad
     * @param contacts the pairs that carry
     * @param torqueShare torque of the pinion as a share of that without friction
     */
    public record Phase(double wheelAngle, double pinionAngle, List<Contact> contacts, double torqueShare) {
        /** Copies the list. */
        public Phase {
            contacts = List.copyOf(contacts);
        }

        /** Whether the newest pair has yet to pass the pitch point. */
        public boolean isApproach() {
            return contacts.get(contacts.size() - 1).isApproach();
        }
    }

    /**
     * A part of the pitch in which the same teeth touch in the same way.
     *
     * @param from share of the pitch
     * @param to share of the pitch
     * @param approach whether the newest pair has yet to pass the pitch point
     * @param points phases and torque shares from end to end
     */
    public record Stretch(double from, double to, boolean approach, List<Point> points) {
        /** Copies the list. */
        public Stretch {
            points = List.copyOf(points);
        }
    }

    /**
     * A point of the curve.
     *
     * @param phase share of the pitch, 0 to 1
     * @param torqueShare torque of the pinion as a share of that without friction
     * @param least the same of the pair that passes least where several carry
     */
    public record Point(double phase, double torqueShare, double least) {
        private Point onTo(double end, Point from) {
            double on = from.phase == phase ? 0 : (end - phase) / (phase - from.phase);
            return new Point(
                    end, torqueShare + on * (torqueShare - from.torqueShare), least + on * (least - from.least));
        }
    }

    /** The mesh with friction. */
    public MeshContact mesh() {
        return mesh;
    }

    /** The share of the pitch at which the torque is least. */
    public double worstPhase() {
        return mesh.worstTorqueAngle() / pitch;
    }

    /**
     * A phase.
     *
     * @param share share of the pitch since a new tooth took up the load; whole pitches are left out
     */
    public Phase at(double share) {
        double within = share - Math.floor(share);
        double place = within * samples.size() - 0.5;
        int nearer = (int) Math.rint(place);
        int other = place < nearer ? nearer - 1 : nearer + 1;
        List<Contact> contacts = new ArrayList<>();
        for (Contact contact : contacts(nearer)) {
            contacts.add(moved(contact, nearer, other, place));
        }
        double angle = mesh.path().start() + within * pitch;
        double torque = contacts.stream()
                .mapToDouble(contact -> contact.torqueRatio(mesh.friction()))
                .average()
                .orElseThrow();
        double nominal = mesh.path().pair().ratio();
        return new Phase(angle, contacts.get(0).followerAngle(), contacts, torque * nominal);
    }

    private Contact moved(Contact contact, int nearer, int other, double place) {
        Optional<Contact> there = same(contact, contacts(other));
        if (there.isPresent()) {
            return between(contact, there.get(), Math.abs(place - nearer));
        }
        int behind = 2 * nearer - other;
        return same(contact, contacts(behind))
                .map(found -> between(contact, found, -Math.abs(place - nearer)))
                .orElse(contact);
    }

    private static Optional<Contact> same(Contact contact, List<Contact> others) {
        return others.stream()
                .filter(other -> other.tooth() == contact.tooth()
                        && other.touch() == contact.touch()
                        && other.isApproach() == contact.isApproach())
                .findFirst();
    }

    /** Contacts of a traced phase; before the first and after the last the neighbouring pitch goes on. */
    private List<Contact> contacts(int index) {
        int pitches = Math.floorDiv(index, samples.size());
        List<Contact> contacts =
                samples.get(Math.floorMod(index, samples.size())).contacts();
        return pitches == 0
                ? contacts
                : contacts.stream().map(contact -> turned(contact, pitches)).toList();
    }

    private Contact turned(Contact contact, int pitches) {
        return new Contact(
                contact.tooth() + pitches,
                contact.driverAngle() + pitches * pitch,
                contact.followerAngle() + pitches * followerPitch,
                contact.x(),
                contact.y(),
                contact.normalX(),
                contact.normalY(),
                contact.centreDistance(),
                contact.touch(),
                contact.driverPiece(),
                contact.followerPiece());
    }

    private static Contact between(Contact a, Contact b, double share) {
        double normalX = mixed(a.normalX(), b.normalX(), share);
        double normalY = mixed(a.normalY(), b.normalY(), share);
        double length = Math.hypot(normalX, normalY);
        return new Contact(
                a.tooth(),
                mixed(a.driverAngle(), b.driverAngle(), share),
                mixed(a.followerAngle(), b.followerAngle(), share),
                mixed(a.x(), b.x(), share),
                mixed(a.y(), b.y(), share),
                normalX / length,
                normalY / length,
                a.centreDistance(),
                a.touch(),
                a.driverPiece(),
                a.followerPiece());
    }

    private static double mixed(double a, double b, double share) {
        return a + share * (b - a);
    }

    /** The curve over one pitch, broken where the teeth in touch change. */
    public List<Stretch> curve() {
        List<Stretch> curve = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= samples.size(); i++) {
            if (i == samples.size() || !continues(samples.get(i - 1), samples.get(i))) {
                curve.add(stretch(first, i));
                first = i;
            }
        }
        return curve;
    }

    private static boolean continues(ContactSample one, ContactSample next) {
        List<Contact> before = one.contacts();
        return before.size() == next.contacts().size()
                && before.stream()
                        .allMatch(contact -> same(contact, next.contacts()).isPresent());
    }

    private Stretch stretch(int first, int end) {
        double step = 1.0 / samples.size();
        List<Point> points = new ArrayList<>();
        for (int i = first; i < end; i++) {
            points.add(new Point((i + 0.5) * step, share(i), least(i)));
        }
        int last = points.size() - 1;
        Point before = points.get(0).onTo(first * step, points.get(Math.min(1, last)));
        Point after = points.get(last).onTo(end * step, points.get(Math.max(0, last - 1)));
        points.add(0, before);
        points.add(after);
        return new Stretch(first * step, end * step, samples.get(first).isApproach(), points);
    }

    private double least(int index) {
        return samples.get(index).contacts().stream()
                        .mapToDouble(contact -> contact.torqueRatio(mesh.friction()))
                        .min()
                        .orElseThrow()
                * mesh.path().pair().ratio();
    }

    private double share(int index) {
        return samples.get(index).torqueRatio() * mesh.path().pair().ratio();
    }
}
