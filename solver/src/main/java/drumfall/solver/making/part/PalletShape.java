// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import drumfall.solver.power.escape.Deadbeat;
import drumfall.solver.teeth.outline.Point;

/**
 * Where the corners of deadbeat pallets lie, about their own arbor, metres.
 *
 * <p>Drawn for a wheel below them that turns clockwise, in the middle of their swing. The wheel's centre lies at {@code
 * (0, -a)} with {@code a = r_w / cos β}. A tooth waits on the entry pallet's outer face, passes its impulse face while the
 * pallets turn clockwise by the lift {@code λ} and the wheel by {@code δ}, drops, and waits on the exit pallet's inner
 * face; both dead faces have the radius {@code r_p = r_w tan β}, so that both corners lie where the wheel's circle touches
 * theirs (Beckett, <i>A Rudimentary Treatise on Clocks, Watches and Bells</i>, 8th ed. 1903, pp. 96-98). A tooth lands by
 * the lock {@code ℓ} up the face, so that one face releases at a turn of {@code (λ - ℓ) / 2} after the middle, the other as
 * much before.
 *
 * @param escapement the escapement
 */
record PalletShape(Deadbeat escapement) {
    private double wheelRadius() {
        return escapement.form().wheelRadius();
    }

    /** Distance from the wheel's centre to the pallet arbor. */
    double centreDistance() {
        return wheelRadius() / Math.cos(escapement.halfSpan());
    }

    double deadRadius() {
        return escapement.palletRadius();
    }

    /** Radius at which a tooth leaves the entry pallet. */
    double entryRadius() {
        return escapedAt(escapement.halfSpan() - escapement.workingTurn());
    }

    /** Radius at which a tooth leaves the exit pallet. */
    double exitRadius() {
        return escapedAt(escapement.halfSpan() + escapement.workingTurn());
    }

    private double escapedAt(double fromTop) {
        return Math.hypot(tipX(fromTop), tipY(fromTop));
    }

    private double tipX(double fromTop) {
        return wheelRadius() * Math.sin(fromTop);
    }

    private double tipY(double fromTop) {
        return wheelRadius() * Math.cos(fromTop) - centreDistance();
    }

    /** Angle of the tooth's tip seen from the pallet arbor, the tip on the exit side, rad below 0. */
    private double seen(double fromTop) {
        return Math.atan2(tipY(fromTop), tipX(fromTop));
    }

    /** Turn of the pallets in the middle of their swing, counted from where the entry pallet releases. */
    private double middle() {
        return (escapement.form().lock() - escapement.form().lift()) / 2;
    }

    /** Angle of the entry pallet's locking corner. */
    double entryLocking() {
        return Math.PI + escapement.halfSpan() + middle();
    }

    Point entryLeaving() {
        double angle = Math.PI
                - seen(escapement.halfSpan() - escapement.workingTurn())
                + escapement.form().lift()
                + middle();
        return Point.polar(entryRadius(), angle);
    }

    /** Angle of the exit pallet's locking corner. */
    double exitLocking() {
        double release = escapement.form().lock() - escapement.form().lift();
        return -escapement.halfSpan() - release + middle();
    }

    Point exitLeaving() {
        double angle = seen(escapement.halfSpan() + escapement.workingTurn())
                - escapement.form().lock()
                + middle();
        return Point.polar(exitRadius(), angle);
    }

    /**
     * How deep the pallets reach below the wheel's tips at the end of a swing.
     *
     * @param semiArc to one side of the middle, rad
     */
    double reach(double semiArc) {
        double entry = depth(entryLeaving().turned(semiArc));
        double exit = depth(exitLeaving().turned(-semiArc));
        return Math.max(entry, exit);
    }

    private double depth(Point corner) {
        return wheelRadius() - Math.hypot(corner.x(), corner.y() + centreDistance());
    }
}
