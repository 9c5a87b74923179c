// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.brief.Brief;
import drumfall.solver.fitting.Beyond;
import drumfall.solver.layout.size.Gaps;
import drumfall.solver.layout.size.Nanometres;
import drumfall.solver.making.part.Joint;
import drumfall.solver.parts.BobSize;
import drumfall.solver.parts.DrumForm;
import drumfall.solver.parts.HandSize;
import drumfall.solver.parts.SquareSize;
import drumfall.solver.parts.WeightCan;
import drumfall.solver.rating.AxialSizes;

/**
 * Sizes of printed parts that neither brief nor train holds, metres; what they are for stands with each group.
 *
 * @param fit play all round between printed parts that go into each other
 * @param boreAllowance added to a rod's diameter for the drawn bore; may be negative
 * @param escapement pallets
 * @param winding square and key
 * @param weight shell and pulley
 * @param pendulum nut and rod head
 * @param hands hands and pipes
 * @param frame plates and pillars
 */
public record MakingSizes(
        double fit,
        double boreAllowance,
        Escapement escapement,
        Winding winding,
        Weight weight,
        Pendulum pendulum,
        HandSize hands,
        Frame frame) {
    private static final double METRES = 1e-9;

    /**
     * Pallets; of the escape wheel see {@link drumfall.solver.parts.PartStock}.
     *
     * @param arcShare swing the dead faces serve over the arc that is kept
     * @param bossWall material around the pallet arbor
     */
    public record Escapement(double arcShare, double bossWall) {}

    /**
     * Winding square and key; of ratchet and click see {@link drumfall.solver.rating.BriefParts#ratchet}.
     *
     * @param square the square with its collar, as thick as the key's bar and as long as the key's socket is deep
     * @param handle length of the key's bar
     */
    public record Winding(SquareSize square, double handle) {}

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
     * @param bobProportion thickness of the whole bob over its diameter
     * @param bobWall walls of the bob's shell
     * @param nutDiameter of the rating nut
     * @param nutBore of the rating nut
     * @param nutHeight of the rating nut
     * @param pivot diameter of the pivot or its bearing
     * @param screw diameter of the clamp's screws
     */
    public record Pendulum(
            double rod,
            double bobProportion,
            double bobWall,
            double nutDiameter,
            double nutBore,
            double nutHeight,
            double pivot,
            double screw) {}

    /**
     * Plates and pillars.
     *
     * @param screw diameter of the bore through pillars and plates
     * @param pocket depth of the pockets that pillars stand in
     * @param joint dovetails of a plate in several pieces
     */
    public record Frame(double screw, double pocket, Joint joint) {}

    /**
     * How far rods and pillars reach beyond what they carry: for the square with its collar, and for both hands, their collars
     * and the clutch's fingers.
     *
     * @param brief the brief
     */
    public Beyond beyond(Brief brief) {
        return new Beyond(
                Nanometres.of(frame.pocket()),
                Nanometres.of(winding.square().collar() + winding.square().length()),
                Nanometres.of(hands.beyond(
                        winding.square(),
                        METRES * new AxialSizes(brief).gaps().axial(),
                        METRES * new AxialSizes(brief).gaps().spacing(),
                        brief.printer().layer().si())));
    }

    /**
     * Length of the hour wheel's pipe, m: see {@link HandSize#hourPipe}.
     *
     * @param brief the brief
     */
    public double hourPipe(Brief brief) {
        Gaps gaps = new AxialSizes(brief).gaps();
        return hands.hourPipe(
                winding.square(),
                METRES * gaps.axial(),
                METRES * gaps.spacing(),
                brief.printer().layer().si());
    }

    /**
     * From the end of the hour wheel's pipe to the minute hand, m, so that the hour wheel is free between the two.
     *
     * @param brief the brief
     */
    public double handsApart(Brief brief) {
        return METRES * new AxialSizes(brief).gaps().axial();
    }

    /** Sizes in common use for printed clocks of wall size; common practice, no source. */
    public static MakingSizes customary() {
        return new MakingSizes(
                DrumForm.PLAY,
                0,
                new Escapement(1.5, 0.003),
                new Winding(SquareSize.CUSTOMARY, 0.08),
                new Weight(WeightCan.CUSTOMARY, 0.01),
                new Pendulum(0.006, BobSize.PROPORTION, 0.0016, 0.03, 0.006, 0.008, 0.01, 0.003),
                HandSize.CUSTOMARY,
                new Frame(0.0042, 0.003, new Joint(0.008, 0.008, 0.012, 0.06)));
    }
}
