// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.record;

import drumfall.plugin.api.Handover;
import drumfall.solver.brief.Brief;
import drumfall.solver.parts.PartStock;
import drumfall.solver.parts.SquareSize;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Movement;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** The printed parts of a train that depend on it: drum, wheels, pinions and escape wheel, from the drum downwards. */
final class PartList {
    private final Brief brief;
    private final Train train;
    private final PartStock stock;
    private final Movement movement;

    private PartList(Handover handover) {
        this.brief = handover.brief();
        this.train = handover.rating().train();
        this.movement = new TrainRater(brief).movement();
        this.stock = movement.parts();
    }

    static List<Part> of(Handover handover) {
        return new PartList(handover).parts();
    }

    private List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        parts.add(drum());
        parts.add(ratchet());
        parts.add(square());
        for (int i = 0; i < train.meshes().size(); i++) {
            parts.add(wheel(i));
            parts.add(pinion(i));
        }
        parts.add(escapeWheel());
        return parts;
    }

    private Part drum() {
        return new Part(
                "arbor-1-drum",
                1,
                1,
                OptionalInt.empty(),
                Optional.empty(),
                Optional.empty(),
                Decimals.millimetres(2 * stock.drumFlangeRadius(drumDiameter())),
                bore(0),
                Decimals.millimetres(stock.drum().length() + 2 * stock.drum().wall()),
                Decimals.grams(stock.barrelMass(drumDiameter())));
    }

    private double drumDiameter() {
        return train.drumDiameter().doubleValue();
    }

    /** The ratchet, its mass with the click's. */
    private Part ratchet() {
        return new Part(
                "arbor-1-ratchet-and-click",
                1,
                1,
                OptionalInt.of(stock.drum().ratchet().teeth()),
                Optional.empty(),
                Optional.empty(),
                Decimals.millimetres(2 * stock.drum().ratchet(drumDiameter()).tipRadius()),
                bore(0),
                Decimals.millimetres(stock.drum().room()),
                Decimals.grams(stock.ratchetMass(drumDiameter())));
    }

    private Part square() {
        SquareSize size = stock.drum().square();
        double bore = stock.drum().bore();
        return new Part(
                "arbor-1-winding-square",
                1,
                1,
                OptionalInt.empty(),
                Optional.empty(),
                Optional.empty(),
                Decimals.millimetres(2 * size.collarRadius(bore, stock.drum().printWall())),
                bore(0),
                Decimals.millimetres(size.collar() + size.length()),
                Decimals.grams(stock.squareMass()));
    }

    /** A wheel; the great wheel with the ground that its click stands on. */
    private Part wheel(int index) {
        Mesh mesh = train.meshes().get(index);
        int count = mesh.toothCount();
        return gear(
                index,
                "wheel",
                mesh,
                count,
                2 * movement.wheelTipRadius(mesh),
                stock.wheelThickness(),
                movement.wheelMass(mesh) + (index == 0 ? stock.groundMass(drumDiameter()) : 0));
    }

    private Part pinion(int index) {
        Mesh mesh = train.meshes().get(index);
        int count = mesh.leafCount();
        return gear(
                index + 1,
                "pinion",
                mesh,
                count,
                2 * movement.pinionTipRadius(mesh),
                stock.leafLength(),
                movement.printedPinionMass(mesh));
    }

    private Part gear(int arbor, String kind, Mesh mesh, int count, double tip, double width, long mass) {
        BigDecimal module = new BigDecimal(mesh.module().toString());
        return new Part(
                name(arbor, kind),
                1,
                arbor + 1,
                OptionalInt.of(count),
                Optional.of(module),
                Optional.of(Decimals.plain(module.multiply(BigDecimal.valueOf(count)))),
                Decimals.millimetres(tip),
                bore(arbor),
                Decimals.millimetres(width),
                Decimals.grams(mass));
    }

    private Part escapeWheel() {
        int arbor = train.meshes().size();
        return new Part(
                name(arbor, "escape-wheel"),
                1,
                arbor + 1,
                OptionalInt.of(train.escapeTeeth()),
                Optional.empty(),
                Optional.empty(),
                Decimals.millimetres(2 * stock.escapeWheelRadius()),
                bore(arbor),
                Decimals.millimetres(stock.wheelThickness()),
                Decimals.grams(stock.escapeWheelMass()));
    }

    /** Joined without a formatter, which would write digits as the locale does. */
    private static String name(int arbor, String kind) {
        return "arbor-" + (arbor + 1) + "-" + kind;
    }

    private BigDecimal bore(int arbor) {
        return Decimals.millimetres(
                rod(WeightWalk.role(train, arbor)).diameter().si());
    }

    private Brief.ArborBuild rod(ArborRole role) {
        return switch (role) {
            case DRUM -> brief.arbors().drum();
            case CENTRE -> brief.arbors().centre();
            case INTERMEDIATE -> brief.arbors().intermediate();
            case ESCAPE -> brief.arbors().escape();
        };
    }
}
