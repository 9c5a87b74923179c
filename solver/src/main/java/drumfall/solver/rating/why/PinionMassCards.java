// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import static drumfall.solver.rating.why.PartCards.kilograms;
import static drumfall.solver.rating.why.PartCards.whole;

import drumfall.solver.layout.size.Nanometres;
import drumfall.solver.parts.PartStock;
import drumfall.solver.parts.Shrouds;
import drumfall.solver.power.Movement;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.teeth.GearFigures;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.util.List;

/** Cards of the masses of the pinions. */
final class PinionMassCards {
    private static final double METRES = 1e-9;

    private final CardShelf shelf;
    private final Train train;
    private final Movement movement;
    private final PartStock parts;
    private final MassInputs inputs;

    PinionMassCards(CardShelf shelf, TrainRater rater, Train train) {
        this.shelf = shelf;
        this.train = train;
        this.movement = rater.movement();
        this.parts = movement.parts();
        this.inputs = new MassInputs(shelf, rater);
    }

    /** The pinion of a mesh, or what is printed of a lantern. */
    Card printed(int i) {
        return parts.shrouds().isPresent() ? lantern(i) : pinion(i);
    }

    private Card pinion(int i) {
        Mesh mesh = train.meshes().get(i);
        GearFigures pinion = movement.pinion(mesh);
        Card tip = inputs.drawn("pinion", "tip", "r_t", i, pinion.tipRadius());
        return shelf.figure(
                "pinion-mass-%d".formatted(i + 1),
                "m_p%d".formatted(i + 1),
                kilograms(movement.printedPinionMass(mesh)),
                "kg",
                "m_p = ρ (l_p (m² A_1 − m t (r_t² − r_0²)) + b A_f)",
                in -> whole(in[0] * (in[1] * MassInputs.thinned(in[3], in[4], in[5], in[6], in[7]) + in[2] * in[8])),
                MassInputs.MADE,
                inputs.density(),
                inputs.leaves(),
                inputs.thickness(),
                RunCards.module(shelf, train, i),
                inputs.thinning(),
                inputs.drawn("pinion", "disc", "A_1", i, pinion.disc()),
                tip,
                inputs.drawn("pinion", "root", "r_0", i, pinion.rootRadius()),
                foot(i, pinion.tipRadius() * mesh.module().metres(), 0, tip));
    }

    /** What a pinion fills of the windows of the wheel it stands on; a shroud reaches beyond the pins. */
    private Card foot(int i, double radius, double beyond, Card tip) {
        return shelf.figure(
                "pinion-foot-%d".formatted(i + 1),
                "A_f",
                parts.crossing().filled(radius + beyond),
                "m²",
                beyond == 0
                        ? "A_f = A(m r_t) − A(r_h), nought on the hub; A as of a wheel's windows"
                        : "A_f = A(m r_t + 2 e + play/2) − A(r_h), nought on the hub; A as of a wheel's windows",
                in -> MassInputs.crossing(2, in)
                        .filled(in[0] * in[1] + (beyond == 0 ? 0 : 2 * in[2] + Shrouds.PIN_PLAY / 2)),
                MassInputs.CROSSED,
                MassInputs.with(List.of(RunCards.module(shelf, train, i), tip), inputs.hub()));
    }

    private Card lantern(int i) {
        Mesh mesh = train.meshes().get(i);
        GearFigures pinion = movement.pinion(mesh);
        Shrouds discs = parts.shrouds().orElseThrow();
        double around = pinion.tipRadius() * mesh.module().metres();
        Card tip = inputs.drawn("pinion", "tip", "r_t", i, pinion.tipRadius());
        Card count = RunCards.leafCount(shelf, train, i);
        Card printed = shelf.figure(
                "shroud-mass-%d".formatted(i + 1),
                "m_s%d".formatted(i + 1),
                kilograms(movement.printedPinionMass(mesh)),
                "kg",
                "m_s = ρ b (π ((m r_t + 2 e + play/2)² − p (m (2 r_t − p) + play)²/4) + A_f), play = 0.15 mm",
                in -> whole(in[0]
                        * (new Shrouds(shroud(in[1]), 2 * in[5])
                                        .volume((int) in[4], in[2] * (2 * in[3] - in[4]), in[2] * in[3])
                                + in[1] * in[6])),
                "two shrouds half as thick as a wheel, and what they fill of the wheel's windows; our own geometry",
                inputs.density(),
                inputs.thickness(),
                RunCards.module(shelf, train, i),
                tip,
                count,
                inputs.nozzle(),
                foot(i, around, discs.radius(around) - around, tip));
        Card pins = shelf.figure(
                "pins-mass-%d".formatted(i + 1),
                "m_n%d".formatted(i + 1),
                kilograms(movement.pinionMass(mesh) - movement.printedPinionMass(mesh)),
                "kg",
                "m_n = 7750 kg/m³ · p π (m (2 r_t − p))²/4 · l_p",
                in -> whole(Shrouds.pinMass((int) in[3], in[1] * (2 * in[2] - in[3]), in[0])),
                "steel: Beckett 1903, p. 53",
                inputs.leaves(),
                RunCards.module(shelf, train, i),
                tip,
                count);
        shelf.figure(
                "pinion-mass-%d".formatted(i + 1),
                "m_p%d".formatted(i + 1),
                kilograms(movement.pinionMass(mesh)),
                "kg",
                "m_p = m_s + m_n",
                in -> in[0] + in[1],
                "shrouds and pins",
                printed,
                pins);
        return printed;
    }

    /** Half as thick as a wheel, in whole nanometres. */
    private static double shroud(double wheel) {
        long half = Nanometres.of(wheel) / 2;
        return METRES * half;
    }
}
