// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

import java.util.List;

/**
 * What the centre arbor carries before the front plate: cannon pinion, hour wheel with its spacer, both hands. Minute wheel and
 * pinion turn on a stud of their own.
 *
 * <p>Bores are as wide as what they sit on, so nothing is heavier than it says here.
 *
 * @param size hands, pipes and clutch
 * @param square the winding square with its collar
 * @param bore diameter of the centre arbor's rod, m, positive
 * @param hubWall material around a rod, m, positive
 * @param wheel thickness of a wheel and length of the cannon pinion, m, positive
 * @param gap least gap along the arbors, m, not negative
 * @param spacing from one wheel's plane to the next, m, not negative
 * @param layer height of a printed layer, m, positive
 * @param extrusion width of an extrusion, m, positive
 * @param cannon area of the cannon pinion with its leaves, m²
 * @param hour area of the hour wheel with its teeth, m²
 * @param density of the printed material, kg/m³, positive
 */
public record DialForm(
        HandSize size,
        SquareSize square,
        double bore,
        double hubWall,
        double wheel,
        double gap,
        double spacing,
        double layer,
        double extrusion,
        double cannon,
        double hour,
        double density) {
    /** Fingers of the clutch; common practice, no source. */
    public static final int FINGERS = 3;

    /** A gap just short of a whole layer is one, in layers. */
    private static final double ROUNDING = 1e-9;

    /** A prism: its volume, m³, and the level of its middle before the rear of the cannon pinion, m. */
    private record Prism(double volume, double middle) {
        static Prism of(double area, double from, double height) {
            return new Prism(area * height, from + height / 2);
        }
    }

    /** Mass of all of it, kg. */
    public double mass() {
        return density * prisms().stream().mapToDouble(Prism::volume).sum();
    }

    /** Level of the middle of its mass before the rear of the cannon pinion, m. */
    public double middle() {
        double moment = prisms().stream()
                .mapToDouble(prism -> prism.volume() * prism.middle())
                .sum();
        return density * moment / mass();
    }

    /** Outer diameter of the cannon pinion's pipe, m. */
    public double cannonPipe() {
        return bore + 2 * hubWall;
    }

    /** Diameter of the hour wheel's bore, m: it turns on the cannon pinion's pipe. */
    public double hourBore() {
        return cannonPipe() + 2 * DrumForm.PLAY;
    }

    /** Outer diameter of the hour wheel's pipe, m. */
    public double hourPipe() {
        return hourBore() + 2 * size.pipeWall();
    }

    private List<Prism> prisms() {
        double pipe = size.hourPipe(square, gap, spacing, layer);
        double front = 2 * wheel + spacing + pipe;
        double end = front + gap + 2 * size.thickness();
        double spacer = Math.floor(spacing / layer + ROUNDING) * layer;
        return List.of(
                Prism.of(cannon - disc(bore), 0, wheel),
                Prism.of(disc(cannonPipe()) - disc(bore), wheel, end - wheel),
                Prism.of(fingers(), end, size.fingers()),
                Prism.of(disc(hourPipe()) - disc(hourBore()), wheel, spacer),
                Prism.of(hour - disc(hourBore()), wheel + spacing, wheel),
                Prism.of(disc(hourPipe()) - disc(hourBore()), 2 * wheel + spacing, pipe),
                Prism.of(hand(size.minuteLength(), cannonPipe()), front + gap, size.thickness()),
                Prism.of(collar(cannonPipe()), front + gap + size.thickness(), size.thickness()),
                Prism.of(hand(size.hourLength(), hourPipe()), front - 2 * size.thickness(), size.thickness()),
                Prism.of(collar(hourPipe()), front - size.thickness(), size.thickness()));
    }

    private static double disc(double diameter) {
        return Math.PI * diameter * diameter / 4;
    }

    /** A tube with a slit beside each finger, an extrusion wide at the narrowed bore. */
    private double fingers() {
        double inner = bore / 2 - size.grip();
        double slits = FINGERS * Math.asin(extrusion / 2 / inner) / Math.PI;
        return (disc(cannonPipe()) - disc(2 * inner)) * (1 - slits);
    }

    private double boss(double pipe) {
        return pipe + 2 * size.pipeWall() + 4 * extrusion;
    }

    private double collar(double pipe) {
        return disc(boss(pipe)) - disc(pipe);
    }

    /** Two circles and what lies between the lines that touch both, bored for its pipe. */
    private double hand(double length, double pipe) {
        double large = boss(pipe) / 2;
        double small = size.tip() / 2;
        double apart = length - small;
        double lean = Math.asin((large - small) / apart);
        return (large + small) * apart * Math.cos(lean)
                + large * large * (Math.PI / 2 + lean)
                + small * small * (Math.PI / 2 - lean)
                - disc(pipe);
    }
}
