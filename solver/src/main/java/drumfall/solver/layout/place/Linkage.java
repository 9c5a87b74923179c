// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.AngleGrid;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.size.MovementParts;
import drumfall.solver.layout.size.Nanometres;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The steps that one joint may take, under the locks on it and on the arbors beyond it. */
final class Linkage {
    private static final double TOLERANCE = Nanometres.PER_MICROMETRE;

    private final Joint joint;
    private final Place settled;
    private final Place locked;
    private final Place[] grid;
    /** The next locked arbor beyond this one, or null. */
    private final Place target;

    private final List<Long> chain = new ArrayList<>();

    Linkage(LayoutNeed need, Joint joint, int stride) {
        this.joint = joint;
        this.settled = joint.settledStep(need);
        this.locked = joint.arbor() <= need.parts().escapeArbor()
                ? need.locks().placeOf(joint.arbor()).orElse(null)
                : null;
        this.target = locked == null ? chainToLock(need) : null;
        this.grid = gridSteps(need.grid(), stride);
    }

    private Place chainToLock(LayoutNeed need) {
        MovementParts parts = need.parts();
        if (joint.mesh() < 0 || joint.mesh() == parts.meshes().size()) {
            return null;
        }
        int way = joint.towardsDrum() ? -1 : 1;
        for (int arbor = joint.arbor() + way; arbor >= 0 && arbor <= parts.escapeArbor(); arbor += way) {
            chain.add(need.centreDistance(way < 0 ? arbor : arbor - 1));
            if (need.locks().placeOf(arbor).isPresent()) {
                return need.locks().placeOf(arbor).orElseThrow();
            }
        }
        return null;
    }

    /** The grid's steps, those along the usual way first: the drum below the dial centre, the escape wheel above it. */
    private Place[] gridSteps(AngleGrid angles, int stride) {
        List<Place> circle = angles.circle(joint.distance());
        List<Place> chosen = new ArrayList<>();
        for (int step = 0; step < circle.size(); step += stride) {
            chosen.add(circle.get(step));
        }
        int sign = joint.towardsDrum() ? 1 : -1;
        chosen.sort(Comparator.<Place>comparingLong(step -> sign * step.y()).thenComparing(Place::x));
        return chosen.toArray(Place[]::new);
    }

    /** The steps to try from where the anchor stands. */
    Place[] steps(long anchorX, long anchorY) {
        if (locked != null) {
            return new Place[] {new Place(locked.x() - anchorX, locked.y() - anchorY)};
        }
        if (settled != null) {
            return new Place[] {settled};
        }
        return target != null && chain.size() == 1 ? elbows(anchorX, anchorY) : grid;
    }

    /** The two points at this joint's distance from the anchor and at the next one's from the locked arbor. */
    private Place[] elbows(long anchorX, long anchorY) {
        double across = target.x() - anchorX;
        double up = target.y() - anchorY;
        double apart = Math.hypot(across, up);
        double near = joint.distance();
        double far = chain.get(0);
        if (apart == 0 || apart > near + far + TOLERANCE || apart < Math.abs(near - far) - TOLERANCE) {
            return new Place[0];
        }
        double along = (apart * apart + near * near - far * far) / (2 * apart);
        double off = Math.sqrt(Math.max(0, near * near - along * along));
        double ux = across / apart;
        double uy = up / apart;
        return new Place[] {
            new Place(Math.round(along * ux - off * uy), Math.round(along * uy + off * ux)),
            new Place(Math.round(along * ux + off * uy), Math.round(along * uy - off * ux))
        };
    }

    /** How far anchor and locked arbor are from any elbow between them, nm. */
    long elbowGap(long anchorX, long anchorY) {
        double apart = Math.hypot((double) (target.x() - anchorX), (double) (target.y() - anchorY));
        double far = chain.get(0);
        return (long) Math.ceil(Math.max(apart - joint.distance() - far, Math.abs(joint.distance() - far) - apart));
    }

    /** How far a step misses the joint's distance or locked direction beyond a micrometre, nm; 0 if it does not. */
    long miss(Place step) {
        double off = Math.abs(Math.hypot((double) step.x(), (double) step.y()) - joint.distance());
        if (settled != null) {
            off = Math.max(off, step.distance(settled));
        }
        return off > TOLERANCE ? (long) Math.ceil(off) : 0;
    }

    /** How far the next locked arbor is out of reach of a point, nm; 0 or less if the arbors between can be set. */
    long outOfReach(long x, long y) {
        if (target == null) {
            return 0;
        }
        double apart = Math.hypot((double) (target.x() - x), (double) (target.y() - y));
        long most = chain.stream().mapToLong(Long::longValue).sum();
        long longest = chain.stream().mapToLong(Long::longValue).max().orElse(0);
        double excess = Math.max(apart - most, 2 * longest - most - apart);
        return excess > TOLERANCE ? (long) Math.ceil(excess) : 0;
    }
}
