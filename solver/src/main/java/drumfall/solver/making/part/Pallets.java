// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static drumfall.solver.making.part.Lengths.mm;

import drumfall.solver.making.shape.Rings;
import drumfall.solver.making.solid.Region;
import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.making.solid.Solid;
import drumfall.solver.power.escape.Deadbeat;
import drumfall.solver.teeth.outline.ArcSegment;
import drumfall.solver.teeth.outline.LineSegment;
import drumfall.solver.teeth.outline.Outline;
import drumfall.solver.teeth.outline.OutlineSegment;
import drumfall.solver.teeth.outline.Point;
import drumfall.solver.teeth.outline.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * The pallets of a deadbeat escapement with their arms, in one piece.
 *
 * @param escapement the escapement
 * @param semiArc swing that the dead faces must serve, to one side, rad, positive
 * @param boss diameter around the bore, m
 * @param bore diameter of the bore as drawn, m
 * @param thickness m
 * @param clockwise whether the escape wheel turns clockwise, both seen as they lie on the bed
 * @param print what the printer can do
 */
public record Pallets(
        Deadbeat escapement,
        double semiArc,
        double boss,
        double bore,
        double thickness,
        boolean clockwise,
        PrintSizes print)
        implements PrintedShape {
    /**
     * Checks the sizes against each other.
     *
     * @throws SizeLimitException if a size cannot be made
     * @throws IllegalArgumentException if there is no such escapement or its arms would lie behind its boss
     */
    public Pallets {
        if (!escapement.exists()) {
            throw new IllegalArgumentException("The escapement (" + escapement.teeth()
                    + " teeth) of pallets must embrace a tooth and leave the wheel some turn to work with. Maybe lower"
                    + " its drop or raise its span.");
        }
        print.requireHeight("thickness of pallets", thickness);
        print.requireWall("bore of pallets", bore);
        PalletShape shape = new PalletShape(escapement);
        String subject = " of pallets for " + escapement.teeth();
        print.requireWall("entry pallet" + subject, shape.deadRadius() - shape.entryRadius());
        print.requireWall("exit pallet" + subject, shape.exitRadius() - shape.deadRadius());
        SizeLimitException.atLeast(
                "boss" + subject, boss, bore + 2 * print.wall(), "two extrusion widths around the bore");
        SizeLimitException.atMost(
                "boss" + subject,
                boss,
                2
                        * Math.min(
                                shape.entryRadius(),
                                shape.centreDistance() - escapement.form().wheelRadius()),
                "so that it clears the wheel");
        double room = escapement.halfSpan() - sweep(escapement, semiArc, print);
        if (!(room > 0)) {
            throw new IllegalArgumentException("The dead faces (" + (escapement.halfSpan() - room)
                    + " rad) of pallets must turn less than half their span, " + escapement.halfSpan()
                    + " rad. Maybe ask for a smaller swing.");
        }
    }

    /** Turn of a pallet from its corner to where its arm begins: the swing both ways, the lift, and a wall. */
    private static double sweep(Deadbeat escapement, double semiArc, PrintSizes print) {
        return 2 * semiArc + escapement.form().lift() + print.wall() / escapement.palletRadius();
    }

    /** How deep the pallets reach below the wheel's tips at the end of the swing, m. */
    public double reach() {
        return new PalletShape(escapement).reach(semiArc);
    }

    /** Distance from the wheel's centre to the pallet arbor, m. */
    public double centreDistance() {
        return new PalletShape(escapement).centreDistance();
    }

    @Override
    public Solid solid() {
        Ring drawn = ring();
        Ring ring = clockwise ? drawn : Mirror.of(drawn).turned(Math.PI);
        return Solid.of(mm(thickness), Region.of(new Outline(ring, List.of(Rings.hole(mm(bore) / 2)))));
    }

    /** Anticlockwise from the exit pallet's leaving corner, for a wheel that turns clockwise below the pallets. */
    private Ring ring() {
        PalletShape shape = new PalletShape(escapement);
        double sweep = sweep(escapement, semiArc, print);
        double dead = mm(shape.deadRadius());
        double in = mm(shape.entryRadius());
        double out = mm(shape.exitRadius());
        double round = mm(boss) / 2;
        double exitArm = shape.exitLocking() + sweep;
        double entryArm = shape.entryLocking() - sweep;
        Point exit = inMillimetres(shape.exitLeaving());
        Point entry = inMillimetres(shape.entryLeaving());

        List<OutlineSegment> ring = new ArrayList<>();
        ring.add(ArcSegment.about(out, Math.atan2(exit.y(), exit.x()), exitArm));
        ArcSegment top = ArcSegment.about(round, exitArm + Math.acos(round / out), entryArm - Math.acos(round / dead));
        ArcSegment locking = ArcSegment.about(dead, entryArm, shape.entryLocking());
        ring.add(line(ring, top.start()));
        ring.add(top);
        ring.add(line(ring, locking.start()));
        ring.add(locking);
        ring.add(line(ring, entry));
        ring.add(ArcSegment.about(in, turns(Math.atan2(entry.y(), entry.x())), entryArm));
        under(ring, entryArm + Math.acos(round / in), exitArm - Math.acos(round / dead), round);
        ArcSegment inner = ArcSegment.about(dead, exitArm, shape.exitLocking());
        ring.add(line(ring, inner.start()));
        ring.add(inner);
        ring.add(line(ring, ring.get(0).start()));
        return new Ring(ring);
    }

    /** The underside of the boss between the arms: round, or a crotch where the arms' tangents meet before it. */
    private static void under(List<OutlineSegment> ring, double fromEntry, double fromExit, double round) {
        double to = fromExit + 2 * Math.PI;
        if (fromEntry < to) {
            ArcSegment belly = ArcSegment.about(round, fromEntry, to);
            ring.add(line(ring, belly.start()));
            ring.add(belly);
        } else {
            // Two tangents of one circle meet on the bisector of their points, at the radius over the cosine.
            double half = (fromEntry - to) / 2;
            ring.add(line(ring, Point.polar(round / Math.cos(half), (fromEntry + to) / 2)));
        }
    }

    private static LineSegment line(List<OutlineSegment> ring, Point end) {
        return new LineSegment(ring.get(ring.size() - 1).end(), end);
    }

    private static double turns(double angle) {
        return angle < 0 ? angle + 2 * Math.PI : angle;
    }

    private static Point inMillimetres(Point metres) {
        return new Point(mm(metres.x()), mm(metres.y()));
    }
}
