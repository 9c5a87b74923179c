// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.contact;

import drumfall.solver.teeth.flank.ArcPiece;
import drumfall.solver.teeth.flank.FlankPiece;
import drumfall.solver.teeth.flank.ToothLimitException;
import drumfall.solver.teeth.flank.TrochoidPiece;
import drumfall.solver.teeth.form.LanternPinion;
import drumfall.solver.teeth.form.MeshPair;
import drumfall.solver.teeth.form.ToothForm;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Follows a pair of gears through one pitch of the driver. */
public final class MeshTracer {
    private static final int MOST_CHANGES = 12;
    private static final int HALVINGS = 40;
    private static final int REACH_ANGLES = 512;
    private static final double WITHIN_REACH = 0.999;

    private final MeshPair pair;
    private final MeshConditions conditions;
    private final Sampling sampling;
    private final Envelope envelope;
    private final double pitch;
    private final double nudge;

    private MeshTracer(MeshPair pair, MeshConditions conditions, Sampling sampling) {
        this.pair = pair;
        this.conditions = conditions;
        this.sampling = sampling;
        envelope = new Envelope(pair, conditions, sampling.nodes());
        pitch = envelope.driverPitch();
        nudge = sampling.tolerance() * pitch;
    }

    /**
     * The path of contact over one pitch.
     *
     * @param pair the gears, the first driving
     * @param conditions how the mesh departs from its drawing
     * @param sampling how finely to look
     * @throws ToothLimitException if the centre error makes the gears lose touch
     * @throws IllegalArgumentException if they are out of reach as drawn
     */
    public static ContactPath trace(MeshPair pair, MeshConditions conditions, Sampling sampling) {
        return new MeshTracer(pair, conditions, sampling).trace();
    }

    private ContactPath trace() {
        List<List<Contact>> looks = new ArrayList<>();
        for (int i = 0; i <= sampling.scan(); i++) {
            looks.add(envelope.all(pitch * i / sampling.scan()));
        }
        List<List<Contact>> scan =
                looks.stream().map(this::present).map(Envelope::leading).toList();
        List<Double> changes = changes(looks, scan);
        double start = pitchStart(changes);
        List<Stretch> stretches = stretches(start, changes);
        List<Stretch.Node> samples = new ArrayList<>();
        double step = pitch / sampling.samples();
        for (int i = 0; i < sampling.samples(); i++) {
            double angle = start + (i + 0.5) * step;
            samples.add(new Stretch.Node(angle, step, carrying(angle)));
        }
        return new ContactPath(pair, conditions, start, samples, stretches, clearances(scan, samples));
    }

    private List<Contact> carrying(double angle) {
        return present(envelope.carrying(angle));
    }

    private List<Contact> present(List<Contact> contacts) {
        if (contacts.isEmpty()) {
            throw refusal();
        }
        return contacts;
    }

    /** Names the centre error nearest to the one asked for at which the teeth reach each other all through the pitch. */
    private IllegalArgumentException refusal() {
        double error = conditions.centreError();
        if (!reaches(0)) {
            return new IllegalArgumentException("The centreDistance (" + pair.centreDistance()
                    + ") of a mesh must let the teeth reach each other, in modules. Maybe check its unit.");
        }
        double works = 0;
        double fails = error;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (works + fails) / 2;
            if (reaches(middle)) {
                works = middle;
            } else {
                fails = middle;
            }
        }
        // Touch is tried at single angles; a thousandth less leaves no gap between them.
        works *= WITHIN_REACH;
        return error > 0
                ? ToothLimitException.above("centreError of a mesh", error, works, "modules")
                : ToothLimitException.below("centreError of a mesh", error, works, "modules");
    }

    private boolean reaches(double error) {
        Envelope there = new Envelope(pair, MeshConditions.centreOff(error), sampling.nodes());
        return IntStream.range(0, REACH_ANGLES)
                .noneMatch(i -> there.all(pitch * i / REACH_ANGLES).isEmpty());
    }

    private List<Double> changes(List<List<Contact>> looks, List<List<Contact>> scan) {
        Overtaking overtaking = new Overtaking(envelope);
        List<Double> changes = new ArrayList<>();
        double step = pitch / sampling.scan();
        for (int i = 0; i < sampling.scan(); i++) {
            double low = i * step;
            double high = (i + 1) * step;
            if (continues(scan.get(i), scan.get(i + 1))) {
                double between =
                        sampling.spells() ? overtaking.between(low, looks.get(i), high, looks.get(i + 1)) : Double.NaN;
                if (!Double.isNaN(between)) {
                    addChanges(changes, low, scan.get(i), between, carrying(between));
                    addChanges(changes, between, carrying(between), high, scan.get(i + 1));
                }
            } else {
                addChanges(changes, low, scan.get(i), high, scan.get(i + 1));
            }
        }
        return changes;
    }

    private void addChanges(List<Double> changes, double from, List<Contact> first, double to, List<Contact> last) {
        double low = from;
        List<Contact> left = first;
        for (int n = 0; n < MOST_CHANGES && !continues(left, last); n++) {
            low = changeAfter(left, low, to);
            changes.add(low);
            left = carrying(low);
        }
    }

    /** The first known angle past the change; one nudge before it the contact is still as it was. */
    private double changeAfter(List<Contact> left, double from, double to) {
        double low = from;
        double high = to;
        while (high - low > nudge) {
            double middle = (low + high) / 2;
            if (continues(left, carrying(middle))) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private static boolean continues(List<Contact> left, List<Contact> right) {
        if (left.size() != right.size()) {
            return false;
        }
        for (int i = 0; i < left.size(); i++) {
            if (!left.get(i).continues(right.get(i))) {
                return false;
            }
        }
        return true;
    }

    /** The driver angle at which a new tooth takes up the load. */
    private double pitchStart(List<Double> changes) {
        for (double change : changes) {
            if (lastTooth(change) > lastTooth(change - nudge)) {
                return change;
            }
        }
        return 0;
    }

    private int lastTooth(double angle) {
        List<Contact> contacts = carrying(angle);
        return contacts.get(contacts.size() - 1).tooth();
    }

    private List<Stretch> stretches(double start, List<Double> changes) {
        GaussRule rule = new GaussRule(sampling.quadrature());
        List<Stretch> stretches = new ArrayList<>();
        double from = start;
        for (double end : ends(start, changes)) {
            stretches.add(stretch(from, end, rule));
            from = end;
        }
        return stretches;
    }

    /** The ends of the stretches in order; changes too close together to tell apart count as one. */
    private List<Double> ends(double start, List<Double> changes) {
        List<Double> ends = new ArrayList<>();
        double last = start;
        for (double change :
                changes.stream().map(c -> c < start ? c + pitch : c).sorted().toList()) {
            if (change - last > 4 * nudge && start + pitch - change > 4 * nudge) {
                ends.add(change);
                last = change;
            }
        }
        ends.add(start + pitch);
        return ends;
    }

    private Stretch stretch(double from, double to, GaussRule rule) {
        List<Stretch.Node> nodes = new ArrayList<>();
        nodes.add(new Stretch.Node(from, 0, carrying(from)));
        double part = (to - from) / sampling.stretches();
        for (int i = 0; i < sampling.stretches(); i++) {
            for (int k = 0; k < rule.order(); k++) {
                double angle = from + (i + rule.point(k)) * part;
                nodes.add(new Stretch.Node(angle, rule.weight(k) * part, carrying(angle)));
            }
        }
        nodes.add(new Stretch.Node(to, 0, carrying(to - nudge)));
        return new Stretch(from, to, nodes);
    }

    private Clearances clearances(List<List<Contact>> scan, List<Stretch.Node> samples) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= sampling.scan(); i++) {
            // Mirrored, the trailing flanks of the tooth ahead drive from the other end of the pitch.
            double ahead = scan.get(i).get(0).followerAngle();
            double mirrored = scan.get(sampling.scan() - i).get(0).followerAngle();
            double play = 2 * envelope.followerPitch() - ahead - mirrored;
            least = Math.min(least, play);
            most = Math.max(most, play);
        }
        double a = pair.centreDistance() + conditions.centreError();
        double radius = pair.follower().pitchRadius();
        return new Clearances(
                a - pair.driver().flank().tipRadius() - rootRadius(pair.follower()),
                a - pair.follower().flank().tipRadius() - rootRadius(pair.driver()),
                least * radius,
                most * radius,
                rootTouched(samples));
    }

    /** A lantern has no root circle; the wheel's teeth reach in between its pins, down to the arbor at its centre. */
    private static double rootRadius(ToothForm form) {
        return form instanceof LanternPinion ? 0 : form.flank().rootRadius();
    }

    private boolean rootTouched(List<Stretch.Node> samples) {
        List<FlankPiece> driver = pair.driver().flank().pieces();
        List<FlankPiece> follower = pair.follower().flank().pieces();
        return samples.stream()
                .flatMap(node -> node.contacts().stream())
                .anyMatch(c -> isRoot(driver.get(c.driverPiece())) || isRoot(follower.get(c.followerPiece())));
    }

    private static boolean isRoot(FlankPiece piece) {
        return piece instanceof TrochoidPiece || (piece instanceof ArcPiece arc && arc.hollow());
    }
}
