// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.fitting.Beyond;
import drumfall.solver.layout.size.Nanometres;
import drumfall.solver.making.part.Joint;
import drumfall.solver.parts.WeightCan;

/**
 * Sizes of printed parts that neither brief nor train holds, metres; what they are for stands with each group.
 *
 * @param fit play all round between printed parts that go into each other
 * @param boreAllowance added to a rod's diameter for the drawn bore; may be negative
 * @param wheels crossings of the wheels
 * @param escapement teeth of the escape wheel, pallets
 * @param winding square and key
 * @param weight shell and pulley
 * @param pendulum nut and rod head
 * @param hands hands and pipes
 * @param frame plates and pillars
 */
public record MakingSizes(
        double fit,
        double boreAllowance,
        Wheels wheels,
        Escapement escapement,
        Winding winding,
        Weight weight,
        Pendulum pendulum,
        Hands hands,
        Frame frame) {
    /**
     * Crossings.
     *
     * @param arms arms of a wheel that is large enough to be crossed out, at least 3
     * @param rimModules rim and arms in modules
     * @param hubWall material around bore or pinion
     * @param corner radius in the windows' corners
     * @param window least height of a window; a wheel with less stays solid
     */
    public record Wheels(int arms, double rimModules, double hubWall, double corner, double window) {}

    /**
     * Escape wheel and pallets.
     *
     * @param toothDepth depth of the escape wheel's teeth over its radius
     * @param frontLean rad
     * @param footShare width of a tooth's foot over the pitch along the root circle
     * @param arcShare swing the dead faces serve over the arc that is kept
     * @param bossWall material around the pallet arbor
     * @param thickness of the pallets over the wheel's, so that a wheel with end shake stays on them
     */
    public record Escapement(
            double toothDepth,
            double frontLean,
            double footShare,
            double arcShare,
            double bossWall,
            double thickness) {}

    /**
     * Winding square and key; of ratchet and click see {@link drumfall.solver.rating.BriefParts#ratchet}.
     *
     * @param thickness of the square's disc and of the key
     * @param square across the flats of the winding square over the wall around its bore
     * @param squareLength length of the square and depth of the key's socket
     * @param handle length of the key's bar
     */
    public record Winding(double thickness, double square, double squareLength, double handle) {}

    /**
     * Weight shell and pulley.
     *
     * @param can the shell
     * @param pulleyBore bore or bearing seat of the pulley
     */
    public record Weight(WeightCan can, double pulleyBore) {}

    /**
     * Nut and rod head; of the bob see {@link drumfall.solver.rating.BriefParts#bob}.
     *
     * @param rod diameter of the pendulum rod
     * @param nutDiameter of the rating nut
     * @param nutBore of the rating nut
     * @param nutHeight of the rating nut
     * @param pivot diameter of the pivot or its bearing
     * @param screw diameter of the clamp's screws
     */
    public record Pendulum(
            double rod, double nutDiameter, double nutBore, double nutHeight, double pivot, double screw) {}

    /**
     * Hands, cannon pinion's pipe and clutch.
     *
     * @param minuteLength length of the minute hand
     * @param hourLength length of the hour hand
     * @param tip width of their tips
     * @param thickness of the hands and their collars
     * @param pipeWall wall of the cannon's and the hour wheel's pipes
     * @param pipeLength length of the hour wheel's pipe
     * @param fingers length of the clutch's fingers
     * @param grip by how much their bore is smaller in radius
     */
    public record Hands(
            double minuteLength,
            double hourLength,
            double tip,
            double thickness,
            double pipeWall,
            double pipeLength,
            double fingers,
            double grip) {}

    /**
     * Plates and pillars.
     *
     * @param screw diameter of the bore through pillars and plates
     * @param pocket depth of the pockets that pillars stand in
     * @param joint dovetails of a plate in several pieces
     */
    public record Frame(double screw, double pocket, Joint joint) {}

    /** How far rods and pillars reach beyond what they carry: for the square, and for both hands and their collars. */
    public Beyond beyond() {
        return new Beyond(
                Nanometres.of(frame.pocket()),
                Nanometres.of(winding.squareLength()),
                Nanometres.of(hands.pipeLength() + 2 * hands.thickness()));
    }

    /** Sizes in common use for printed clocks of wall size; common practice, no source, but for the one named inside. */
    public static MakingSizes customary() {
        return new MakingSizes(
                0.00015,
                0,
                new Wheels(5, 2.5, 0.003, 0.002, 0.006),
                // Tips forward of their feet by 10 degrees, as dead escapements are drawn; from memory.
                new Escapement(0.22, Math.toRadians(10), 0.55, 1.5, 0.003, 1.25),
                new Winding(0.005, 0.003, 0.012, 0.08),
                new Weight(WeightCan.CUSTOMARY, 0.01),
                new Pendulum(0.006, 0.03, 0.006, 0.008, 0.01, 0.003),
                new Hands(0.1, 0.07, 0.003, 0.0024, 0.0012, 0.012, 0.006, 0.0001),
                new Frame(0.0042, 0.003, new Joint(0.008, 0.008, 0.012, 0.06)));
    }
}
