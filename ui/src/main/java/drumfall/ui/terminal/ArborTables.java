// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.power.ArborNeed;
import drumfall.solver.power.PowerPath;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.rating.Rating;
import drumfall.solver.train.GoingTrain;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import drumfall.ui.wording.FigureWording;
import drumfall.ui.wording.PlaceWording;

/** The tables of one train's meshes and arbors; arbors are numbered from the drum, which is arbor 1. */
final class ArborTables {
    private final FigureWording figures;

    ArborTables(FigureWording figures) {
        this.figures = figures;
    }

    /** Exact ratios, centre distances and what each mesh lets through. */
    TextTable meshes(Rating rating) {
        Train train = rating.train();
        PowerPath running = rating.weight().running();
        PowerPath binding = rating.weight().binding();
        TextTable table = TextTable.of("rate.meshes.columns");
        for (int i = 0; i < train.meshes().size(); i++) {
            Mesh mesh = train.meshes().get(i);
            table.row(
                    PlaceWording.of(MeshPlace.of(i, train.meshesAbove())),
                    mesh.toString(),
                    FigureWording.exact(mesh.counts().ratio()),
                    Phrases.phrase(mesh.counts().hunts() ? "yes" : "no"),
                    figures.figure(Dimension.LENGTH, mesh.centreDistance()),
                    FigureWording.percent(running.arbors().get(i).passed()),
                    FigureWording.percent(binding.arbors().get(i).passed()));
        }
        return table;
    }

    /** How fast and which way each arbor turns, seen from the dial. */
    TextTable turning(Train train) {
        GoingTrain going = train.going();
        TextTable table = TextTable.of("rate.arbors.columns");
        for (int arbor = 0; arbor <= going.escapeArbor(); arbor++) {
            table.row(
                    arbor + 1,
                    role(train, arbor),
                    FigureWording.exact(going.hoursPerTurn(arbor)),
                    FigureWording.exact(going.turns(going.timeBase().arbor(), arbor)),
                    Phrases.phrase(going.clockwise(arbor) ? "clockwise" : "anticlockwise"));
        }
        return table;
    }

    /** The walk of torques under both criteria, and the line and weight they lead to. */
    TextTable torques(Rating rating) {
        PowerPath running = rating.weight().running();
        PowerPath binding = rating.weight().binding();
        TextTable table = TextTable.of("rate.torques.columns");
        for (int arbor = 0; arbor < running.arbors().size(); arbor++) {
            ArborNeed run = running.arbors().get(arbor);
            ArborNeed bind = binding.arbors().get(arbor);
            table.row(
                    Phrases.phrase("rate.torques.arbor", arbor + 1, role(rating.train(), arbor)),
                    torque(run.out()),
                    torque(run.load()),
                    torque(bind.out()),
                    torque(bind.load()));
        }
        table.row(Phrases.phrase("rate.torques.line"), "", force(running), "", force(binding));
        return table.row(Phrases.phrase("rate.torques.weight"), "", mass(running), "", mass(binding));
    }

    private String torque(double newtonMetres) {
        return figures.figure(Dimension.TORQUE, newtonMetres);
    }

    private String force(PowerPath path) {
        return figures.figure(Dimension.FORCE, path.tension());
    }

    private String mass(PowerPath path) {
        return figures.figure(Dimension.MASS, path.weight());
    }

    /** An hourly drum arbor is the centre arbor too; it is named after the drum it carries. */
    private static String role(Train train, int arbor) {
        return Phrases.phrase("role." + WeightWalk.role(train, arbor).name());
    }
}
