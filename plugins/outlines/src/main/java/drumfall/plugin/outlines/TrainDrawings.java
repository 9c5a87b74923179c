// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.plugin.api.Handover;
import drumfall.solver.brief.Brief;
import drumfall.solver.power.Movement;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.teeth.form.InvoluteGear;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.List;

/** The drawings of a train: a sheet for each wheel and pinion from the drum downwards, and the overview. */
final class TrainDrawings {
    private final Brief brief;
    private final Train train;
    private final Movement movement;

    TrainDrawings(Handover handover) {
        this.brief = handover.brief();
        this.train = handover.rating().train();
        this.movement = new TrainRater(brief).movement();
    }

    List<Drawing> all() {
        List<Drawing> drawings = new ArrayList<>();
        for (int i = 0; i < train.meshes().size(); i++) {
            Mesh mesh = train.meshes().get(i);
            drawings.add(sheet(i, "wheel", wheel(mesh), "teeth"));
            drawings.add(sheet(i + 1, "pinion", pinion(mesh), "leaves"));
        }
        drawings.add(overview());
        return drawings;
    }

    private Drawing sheet(int arbor, String kind, Gear gear, String counted) {
        String title = "Arbor " + (arbor + 1) + ", " + kind + ": " + gear.count() + " " + counted + ", module "
                + Numbers.text(gear.module()) + " mm";
        return Drawing.of("arbor-" + (arbor + 1) + "-" + kind, title, gear, bore(arbor));
    }

    private Gear wheel(Mesh mesh) {
        return gear(mesh, mesh.toothCount());
    }

    private Gear pinion(Mesh mesh) {
        return gear(mesh, mesh.leafCount());
    }

    private Gear gear(Mesh mesh, int count) {
        return new Gear(count, mesh.module().millimetres(), pressureAngle(mesh));
    }

    /** The pressure angle of the teeth chosen for a mesh; other forms are not drawn yet. */
    private double pressureAngle(Mesh mesh) {
        return movement.teeth(mesh)
                .map(teeth -> teeth.pair().driver())
                .filter(InvoluteGear.class::isInstance)
                .map(driver -> ((InvoluteGear) driver).rack().pressureAngle())
                .orElseThrow(() -> new IllegalStateException(
                        "The form (%s) of mesh %s must be involute to be drawn. Maybe choose involute teeth in the brief."
                                .formatted(movement.teeth().label(), mesh)));
    }

    /** The arbors in one row, each at its centre distance; a wheel's tooth points at a gap of its pinion. */
    private Drawing overview() {
        List<Shape> shapes = new ArrayList<>();
        double x = 0;
        double reach = 0;
        double left = 0;
        double right = 0;
        for (int i = 0; i <= train.meshes().size(); i++) {
            for (Shape.Circle limit : arbor(i, x, shapes)) {
                reach = Math.max(reach, limit.radius());
                left = Math.min(left, x - limit.radius());
                right = Math.max(right, x + limit.radius());
            }
            if (i < train.meshes().size()) {
                double next = x + 1000 * train.meshes().get(i).centreDistance();
                shapes.add(new Shape.Line(Layer.PITCH, new Point(x, 0), new Point(next, 0)));
                x = next;
            }
        }
        reach += Drawing.MARGIN;
        return new Drawing(
                "overview", train.toString(), left - Drawing.MARGIN, -reach, right + Drawing.MARGIN, reach, shapes);
    }

    /** Draws what stands on an arbor, and answers its outermost circles. */
    private List<Shape.Circle> arbor(int index, double x, List<Shape> shapes) {
        Point centre = new Point(x, 0);
        List<Shape.Circle> limits = new ArrayList<>();
        if (index > 0) {
            Gear pinion = pinion(train.meshes().get(index - 1));
            shapes.addAll(Drawing.gear(pinion, Math.PI + Math.PI / pinion.count(), centre));
            limits.add(new Shape.Circle(Layer.TIP, centre, pinion.tipRadius()));
        }
        if (index < train.meshes().size()) {
            Gear wheel = wheel(train.meshes().get(index));
            shapes.addAll(Drawing.gear(wheel, 0, centre));
            limits.add(new Shape.Circle(Layer.TIP, centre, wheel.tipRadius()));
        }
        endPart(index, centre).forEach(circle -> {
            shapes.add(circle);
            limits.add(circle);
        });
        shapes.add(new Shape.Circle(Layer.BORE, centre, bore(index) / 2));
        return limits;
    }

    /** The drum on the first arbor, the escape wheel's tip circle on the last. */
    private List<Shape.Circle> endPart(int index, Point centre) {
        if (index == 0) {
            return List.of(new Shape.Circle(
                    Layer.OUTLINE, centre, 500 * train.drumDiameter().doubleValue()));
        }
        return index == train.meshes().size()
                ? List.of(new Shape.Circle(
                        Layer.TIP,
                        centre,
                        1000 * brief.escapement().wheelRadius().si()))
                : List.of();
    }

    private double bore(int arbor) {
        Brief.Arbors builds = brief.arbors();
        Brief.ArborBuild build = switch (WeightWalk.role(train, arbor)) {
            case DRUM -> builds.drum();
            case CENTRE -> builds.centre();
            case INTERMEDIATE -> builds.intermediate();
            case ESCAPE -> builds.escape();
        };
        return 1000 * build.diameter().si();
    }
}
