// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import static drumfall.solver.rating.why.PartCards.kilograms;
import static drumfall.solver.rating.why.PartCards.whole;

import drumfall.solver.parts.EscapeToothSize;
import drumfall.solver.parts.PartStock;
import drumfall.solver.power.Movement;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.teeth.GearFigures;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.util.List;

/** Cards of the masses of the wheels and of the escape wheel. */
final class WheelMassCards {
    private final CardShelf shelf;
    private final Train train;
    private final Movement movement;
    private final PartStock parts;
    private final MassInputs inputs;

    WheelMassCards(CardShelf shelf, TrainRater rater, Train train) {
        this.shelf = shelf;
        this.train = train;
        this.movement = rater.movement();
        this.parts = movement.parts();
        this.inputs = new MassInputs(shelf, rater);
    }

    Card wheel(int i) {
        Mesh mesh = train.meshes().get(i);
        GearFigures wheel = movement.wheel(mesh);
        double module = mesh.module().metres();
        Card root = inputs.drawn("wheel", "root", "r_0", i, wheel.rootRadius());
        Card windows = shelf.figure(
                "wheel-windows-%d".formatted(i + 1),
                "A_o",
                parts.crossing()
                        .opened(module * wheel.rootRadius(), parts.crossing().rim(module)),
                "m²",
                "A_o = A(m r_0 − max(2.5 m, 2 e)) − A(r_h), A: a disc less four arms 12 e wide, corners rounded by"
                        + " 2 mm; nought below a height of 6 mm",
                in -> MassInputs.crossing(2, in)
                        .opened(in[0] * in[1], MassInputs.crossing(2, in).rim(in[0])),
                MassInputs.CROSSED,
                MassInputs.with(List.of(RunCards.module(shelf, train, i), root), inputs.hub()));
        return shelf.figure(
                "wheel-mass-%d".formatted(i + 1),
                "m_w%d".formatted(i + 1),
                kilograms(movement.wheelMass(mesh)),
                "kg",
                "m_w = ρ b (m² A_1 − m t (r_t² − r_0²) − A_o)",
                in -> whole(in[0] * in[1] * (MassInputs.thinned(in[2], in[3], in[4], in[5], in[6]) - in[7])),
                MassInputs.MADE,
                inputs.density(),
                inputs.thickness(),
                RunCards.module(shelf, train, i),
                inputs.thinning(),
                inputs.drawn("wheel", "disc", "A_1", i, wheel.disc()),
                inputs.drawn("wheel", "tip", "r_t", i, wheel.tipRadius()),
                root,
                windows);
    }

    Card escapeWheel() {
        Card radius = inputs.escapeRadius();
        EscapeToothSize teeth = parts.escapeTeeth();
        Card windows = shelf.figure(
                "escape-wheel-windows",
                "A_o",
                parts.crossing()
                        .opened(
                                teeth.root(parts.escapeWheelRadius()),
                                parts.crossing().escapeRim()),
                "m²",
                "A_o = A(0.78 r_w − 6 e) − A(r_h); A as of a wheel's windows",
                in -> MassInputs.crossing(1, in)
                        .opened(teeth.root(in[0]), MassInputs.crossing(1, in).escapeRim()),
                MassInputs.CROSSED,
                MassInputs.with(List.of(radius), inputs.hub()));
        return shelf.figure(
                "escape-wheel-mass",
                "m_e",
                kilograms(parts.escapeWheelMass()),
                "kg",
                "m_e = ρ b (π r_0 (r_0 + 0.65 (r_w − r_0)) − A_o), r_0 = 0.78 r_w",
                in -> whole(in[0] * in[1] * (teeth.area(in[2]) - in[3])),
                MassInputs.MADE,
                inputs.density(),
                inputs.thickness(),
                radius,
                windows);
    }
}
