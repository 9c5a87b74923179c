// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.plugin.api.Handover;
import drumfall.solver.brief.Brief;
import drumfall.solver.power.Movement;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.teeth.MeshTeeth;
import drumfall.solver.teeth.form.ToothForm;
import drumfall.solver.teeth.outline.Point;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.List;

/** The drawings of a train: a sheet for each wheel and pinion from the drum downwards, and the overview. */
final class TrainDrawings {
    /** Passes of the nozzle around a bore at least; common practice, no source. */
    private static final int PASSES = 2;

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
            drawings.add(sheet(i, "wheel", wheel(i), "teeth"));
            drawings.add(sheet(i + 1, "pinion", pinion(i), "leaves"));
        }
        drawings.add(overview());
        return drawings;
    }

    private Drawing sheet(int arbor, String kind, Gear gear, String counted) {
        String title = "Arbor " + (arbor + 1) + ", " + kind + ": " + gear.count() + " " + counted + ", module "
                + Numbers.text(gear.module()) + " mm";
        return Drawing.of("arbor-" + (arbor + 1) + "-" + kind, title, gear);
    }

    private Gear wheel(int index) {
        return gear(index, teeth(index).pair().driver(), index);
    }

    private Gear pinion(int index) {
        return gear(index, teeth(index).pair().follower(), index + 1);
    }

    private Gear gear(int index, ToothForm form, int arbor) {
        Brief.ThinningBand thinning = brief.teeth().thinning();
        return new Gear(
                form,
                train.meshes().get(index).module().millimetres(),
                500 * (thinning.low().si() + thinning.high().si()),
                bore(arbor),
                PASSES * 1000 * brief.printer().nozzle().si());
    }

    private MeshTeeth teeth(int index) {
        Mesh mesh = train.meshes().get(index);
        return movement.teeth(mesh)
                .orElseThrow(() -> new IllegalStateException(
                        "The teeth (%s) of mesh %s must print and run to be drawn. Maybe raise its module in the brief."
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
            Gear pinion = pinion(index - 1);
            shapes.addAll(Drawing.gear(pinion, Math.PI + Math.PI / pinion.count(), centre));
            limits.add(new Shape.Circle(Layer.TIP, centre, pinion.tipRadius()));
        }
        if (index < train.meshes().size()) {
            Gear wheel = wheel(index);
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
