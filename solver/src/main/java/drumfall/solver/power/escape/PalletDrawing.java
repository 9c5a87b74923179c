// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

import drumfall.solver.teeth.outline.Point;

/**
 * Pallets and escape wheel as they are drawn: both locking faces on one circle about the pallet arbor, tangent to the wheel.
 *
 * <p>The wheel's centre is the origin, the pallet arbor above it at {@code r_w / cos β} (Beckett, <i>A Rudimentary Treatise
 * on Clocks, Watches and Bells</i>, 8th ed. 1903, p. 97). The wheel turns clockwise, so that its teeth come to the entry
 * pallet on the left towards the arbor and leave the exit pallet on the right away from it. Lengths in m.
 *
 * @param escapement what is drawn; must exist
 */
public record PalletDrawing(Deadbeat escapement) {
    /**
     * Checks that there is something to draw.
     *
     * @throws IllegalArgumentException if the escapement does not exist
     */
    public PalletDrawing {
        if (!escapement.exists()) {
            throw new IllegalArgumentException(
                    "The escapement of %d teeth cannot be drawn: its pallets must embrace a tooth and leave the wheel a turn to work with. Maybe widen the span or lessen the drop."
                            .formatted(escapement.teeth()));
        }
    }

    /** Tooth spaces between the locking corners, half-odd. */
    public double spacesEmbraced() {
        return escapement.wholeSpaces() + 0.5;
    }

    /** Distance of the pallet arbor from the wheel's, {@code r_w / cos β}, m. */
    public double centreDistance() {
        return escapement.form().wheelRadius() / Math.cos(escapement.halfSpan());
    }

    /** The pallet on which a tooth drops moving towards the pallet arbor. */
    public Pallet entry() {
        return new Pallet(this, Pallet.Side.ENTRY);
    }

    /** The pallet on which a tooth drops moving away from the pallet arbor. */
    public Pallet exit() {
        return new Pallet(this, Pallet.Side.EXIT);
    }

    /** The pallet arbor, m. */
    public Point palletArbor() {
        return new Point(0, centreDistance());
    }

    /** How far the pallets reach from their arbor however they swing, m: the outermost corner of the two. */
    public double radius() {
        return Math.max(escapement.palletRadius(), Math.max(entry().dischargingRadius(), exit().dischargingRadius()));
    }

    /**
     * How deep a pallet reaches into the wheel at the end of the swing, m: the least depth of its tooth spaces.
     *
     * @param semiArc rad, at least the escape angle
     */
    public double reach(double semiArc) {
        return Math.max(entry().reach(semiArc), exit().reach(semiArc));
    }
}
