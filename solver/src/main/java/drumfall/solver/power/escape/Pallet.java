// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

import drumfall.solver.teeth.outline.ArcSegment;
import drumfall.solver.teeth.outline.LineSegment;
import drumfall.solver.teeth.outline.Point;

/**
 * One drawn pallet: a locking face, an arc about the pallet arbor, and a straight impulse face from its corner.
 *
 * <p>Angles of the pallets are counted from the pendulum's zero line, positive as this pallet lifts out of the wheel. A
 * tooth tip stands {@code ψ} from the line of centres; on the locking face {@code ψ = β}. From the pallet arbor it is seen
 * at a bearing {@code χ} from that line, {@code tan χ = r_w sin ψ / (D - r_w cos ψ)}. A place on the pallet touched at
 * pallet angle {@code θ} has the bearing {@code χ - θ} on the pallet at rest: the locking corner is touched at {@code -(e -
 * ℓ)}, the discharging corner at {@code e}, when the wheel has turned {@code δ}.
 *
 * @param drawing the whole
 * @param side which of the two pallets
 */
public record Pallet(PalletDrawing drawing, Side side) {
    /** The two pallets. */
    public enum Side {
        /** Its teeth move towards the pallet arbor. */
        ENTRY(-1),
        /** Its teeth move away from the pallet arbor. */
        EXIT(1);

        private final int sense;

        Side(int sense) {
            this.sense = sense;
        }
    }

    /** Radius about the pallet arbor of its locking face, {@code r_p}, m. */
    public double lockingRadius() {
        return drawing.escapement().palletRadius();
    }

    /** Radius about the pallet arbor of its discharging corner, m. */
    public double dischargingRadius() {
        return tipDistance(drawing.escapement().workingTurn());
    }

    /** Thickness of the pallet between its two corners, m. */
    public double thickness() {
        return Math.abs(dischargingRadius() - lockingRadius());
    }

    /** The corner between locking and impulse face, pendulum at rest, m. */
    public Point lockingCorner() {
        return place(lockingRadius(), lockingBearing());
    }

    /** The corner from which the tooth drops, pendulum at rest, m. */
    public Point dischargingCorner() {
        return place(dischargingRadius(), dischargingBearing());
    }

    /** The impulse face from the locking to the discharging corner, pendulum at rest. */
    public LineSegment impulseFace() {
        return new LineSegment(lockingCorner(), dischargingCorner());
    }

    /**
     * The locking face from its corner as far as an arc rubs it, pendulum at rest.
     *
     * @param semiArc rad, at least the escape angle
     */
    public ArcSegment lockingFace(double semiArc) {
        Point end = place(lockingRadius(), tipBearing(0) + semiArc);
        return ArcSegment.between(lockingCorner(), end, drawing.palletArbor(), side == Side.EXIT);
    }

    /** Angle of the impulse face to the circle about the pallet arbor at the locking corner, rad: the wedge as drawn. */
    public double wedge() {
        Point corner = lockingCorner();
        Point end = dischargingCorner();
        double alongX = end.x() - corner.x();
        double alongY = end.y() - corner.y();
        double armX = (corner.x() - drawing.palletArbor().x()) / lockingRadius();
        double armY = (corner.y() - drawing.palletArbor().y()) / lockingRadius();
        double radial = Math.abs(alongX * armX + alongY * armY);
        double around = Math.abs(alongX * armY - alongY * armX);
        return Math.atan2(around, radial);
    }

    double reach(double semiArc) {
        double wheel = drawing.escapement().form().wheelRadius();
        return wheel
                - Math.min(
                        fromWheel(lockingRadius(), lockingBearing() - semiArc),
                        fromWheel(dischargingRadius(), dischargingBearing() - semiArc));
    }

    private double fromWheel(double radius, double bearing) {
        return Math.hypot(radius * Math.sin(bearing), drawing.centreDistance() - radius * Math.cos(bearing));
    }

    double lockingBearing() {
        DeadbeatForm form = drawing.escapement().form();
        return tipBearing(0) + form.escapeAngle() - form.lock();
    }

    double dischargingBearing() {
        return tipBearing(drawing.escapement().workingTurn())
                - drawing.escapement().form().escapeAngle();
    }

    /** Angle of the tooth's tip from the line of centres when the wheel has turned so far from the locking face. */
    private double tipAngle(double wheelTurn) {
        return drawing.escapement().halfSpan() + side.sense * wheelTurn;
    }

    /** Distance of the tooth's tip from the pallet arbor, m. */
    double tipDistance(double wheelTurn) {
        double wheel = drawing.escapement().form().wheelRadius();
        double psi = tipAngle(wheelTurn);
        return Math.hypot(wheel * Math.sin(psi), drawing.centreDistance() - wheel * Math.cos(psi));
    }

    /** Bearing of the tooth's tip seen from the pallet arbor, rad from the line of centres. */
    double tipBearing(double wheelTurn) {
        double wheel = drawing.escapement().form().wheelRadius();
        double psi = tipAngle(wheelTurn);
        return Math.atan2(wheel * Math.sin(psi), drawing.centreDistance() - wheel * Math.cos(psi));
    }

    /** Movement of the tooth's tip for each turn of the wheel, outwards and towards the wheel's centre, m/rad. */
    Point tipSpeed(double wheelTurn) {
        double wheel = side.sense * drawing.escapement().form().wheelRadius();
        double psi = tipAngle(wheelTurn);
        return new Point(wheel * Math.cos(psi), wheel * Math.sin(psi));
    }

    /** A place seen from the pallet arbor, on this pallet's side of the line of centres. */
    private Point place(double radius, double bearing) {
        double out = radius * Math.sin(bearing);
        return new Point(side.sense * out, drawing.centreDistance() - radius * Math.cos(bearing));
    }
}
