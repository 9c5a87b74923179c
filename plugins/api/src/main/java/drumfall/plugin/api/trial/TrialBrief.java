// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.api.trial;

import static drumfall.solver.quantity.Dimension.ANGLE;
import static drumfall.solver.quantity.Dimension.DENSITY;
import static drumfall.solver.quantity.Dimension.FORCE;
import static drumfall.solver.quantity.Dimension.LENGTH;
import static drumfall.solver.quantity.Dimension.MASS;
import static drumfall.solver.quantity.Dimension.NUMBER;
import static drumfall.solver.quantity.Dimension.STRESS;
import static drumfall.solver.quantity.Dimension.TIME;
import static drumfall.solver.quantity.Dimension.TORQUE;

import drumfall.solver.brief.Arrangement;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Drills;
import drumfall.solver.brief.DrumSide;
import drumfall.solver.brief.Fit;
import drumfall.solver.brief.FramePillars;
import drumfall.solver.brief.Locks;
import drumfall.solver.brief.Objective;
import drumfall.solver.brief.ObjectiveFigure;
import drumfall.solver.power.escape.EscapementKind;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import java.util.List;
import java.util.Optional;

/** The demands on an eight-day clock with a seconds pendulum, group by group. */
final class TrialBrief {
    private TrialBrief() {}

    static Brief eightDays() {
        return new Brief(
                "Eight days, seconds pendulum",
                new Brief.Run(q(TIME, "8 d"), q(TIME, "8 d"), q(TIME, "9 d")),
                new Brief.Fall(q(LENGTH, "1.4 m"), q(LENGTH, "200 mm"), q(LENGTH, "150 mm")),
                new Brief.Weight(
                        q(MASS, "12 kg"), q(NUMBER, "0.5"), q(NUMBER, "0.1"), q(LENGTH, "90 mm"), Optional.empty()),
                line(),
                drum(),
                beat(),
                new Brief.PendulumParts(
                        q(MASS, "1.2 kg"),
                        q(MASS, "150 g"),
                        new Brief.QualityBand(q(NUMBER, "300"), q(NUMBER, "600")),
                        Optional.empty()),
                escapement(),
                teeth(),
                new Brief.Meshes(new Brief.MeshRange(1, 2), new Brief.MeshRange(2, 2)),
                arbors(),
                new Brief.Parts(
                        q(LENGTH, "6 mm"),
                        q(LENGTH, "12 mm"),
                        q(LENGTH, "1 mm"),
                        q(LENGTH, "1 mm"),
                        q(LENGTH, "0.9 mm")),
                frame(),
                fit(),
                new Brief.Printer(q(LENGTH, "220 mm"), q(LENGTH, "220 mm"), q(LENGTH, "0.4 mm"), q(LENGTH, "0.2 mm")),
                new Brief.Material("PLA", q(DENSITY, "1240 kg/m3"), q(STRESS, "8 MPa")),
                friction(),
                new Brief.Hands(q(TORQUE, "0.002 N m"), true),
                List.of(
                        new Objective(ObjectiveFigure.RECOMMENDED_WEIGHT, Optional.of(q(NUMBER, "1 %"))),
                        new Objective(ObjectiveFigure.FILAMENT_MASS, Optional.of(q(MASS, "5 g"))),
                        new Objective(ObjectiveFigure.MESHES, Optional.empty())),
                Locks.NONE);
    }

    private static Brief.Line line() {
        return new Brief.Line(
                q(LENGTH, "1.5 mm"),
                q(FORCE, "1200 N"),
                q(NUMBER, "6"),
                List.of(1, 2),
                q(NUMBER, "0.95"),
                q(LENGTH, "22 mm"));
    }

    private static Brief.Drum drum() {
        return new Brief.Drum(
                new Brief.Steps(q(LENGTH, "30 mm"), q(LENGTH, "60 mm"), q(LENGTH, "2 mm")),
                q(LENGTH, "45 mm"),
                q(LENGTH, "4 mm"),
                q(NUMBER, "1.1"),
                q(LENGTH, "6 mm"),
                DrumSide.BEFORE,
                Optional.empty());
    }

    private static Brief.Beat beat() {
        return new Brief.Beat(
                Optional.of(new Brief.LengthRange(q(LENGTH, "900 mm"), q(LENGTH, "1.1 m"))),
                Optional.of(new Brief.NumberRange(q(NUMBER, "3600"), q(NUMBER, "3600"))),
                true);
    }

    private static Brief.Escapement escapement() {
        return new Brief.Escapement(
                EscapementKind.DEADBEAT,
                new Brief.CountSteps(30, 30, 1),
                q(LENGTH, "30 mm"),
                q(ANGLE, "100 deg"),
                q(ANGLE, "2 deg"),
                q(ANGLE, "0.5 deg"),
                q(ANGLE, "1.5 deg"),
                q(ANGLE, "0.5 deg"),
                q(TORQUE, "0.00005 N m"),
                q(NUMBER, "0.1"));
    }

    private static Brief.Teeth teeth() {
        return new Brief.Teeth(
                Brief.ToothForm.INVOLUTE,
                Optional.of(q(ANGLE, "20 deg")),
                Optional.empty(),
                new Brief.ThinningBand(q(LENGTH, "0.05 mm"), q(LENGTH, "0.1 mm")),
                q(LENGTH, "0.1 mm"),
                new Brief.WheelRange(40, 120),
                new Brief.LeafRange(8, 16),
                List.of(q(LENGTH, "1 mm"), q(LENGTH, "1.25 mm"), q(LENGTH, "1.5 mm")));
    }

    private static Brief.Arbors arbors() {
        return new Brief.Arbors(
                build("6 mm", Brief.BearingPlaces.BOTH),
                build("4 mm", Brief.BearingPlaces.BOTH),
                build("3 mm", Brief.BearingPlaces.BOTH),
                build("3 mm", Brief.BearingPlaces.BOTH),
                new Brief.Bearing(q(NUMBER, "0.0015"), q(TORQUE, "0.00005 N m")));
    }

    private static Brief.ArborBuild build(String diameter, Brief.BearingPlaces bearings) {
        return new Brief.ArborBuild(Brief.ArborKind.TURNING, q(LENGTH, diameter), bearings, Optional.empty());
    }

    private static Brief.Frame frame() {
        return new Brief.Frame(
                q(LENGTH, "220 mm"),
                q(LENGTH, "320 mm"),
                q(LENGTH, "100 mm"),
                q(LENGTH, "6 mm"),
                Optional.of(new FramePillars(q(LENGTH, "14 mm"), q(LENGTH, "12 mm"), q(LENGTH, "12 mm"))),
                Optional.empty(),
                Optional.empty(),
                Arrangement.UPRIGHT,
                Optional.empty());
    }

    private static Fit fit() {
        return new Fit(
                Drills.METRIC,
                q(LENGTH, "0.1 mm"),
                q(LENGTH, "0 mm"),
                q(LENGTH, "0.15 mm"),
                q(LENGTH, "0.1 mm"),
                new Fit.ShakeBand(q(LENGTH, "0.2 mm"), q(LENGTH, "0.8 mm")),
                q(LENGTH, "0.1 mm"),
                q(LENGTH, "0.2 mm"),
                q(LENGTH, "1 m"),
                q(LENGTH, "1 mm"),
                1);
    }

    private static Brief.Friction friction() {
        return new Brief.Friction(band("0.15", "0.25"), band("0.15", "0.25"), band("0.1", "0.2"), q(NUMBER, "1.2"));
    }

    private static Brief.FrictionBand band(String low, String high) {
        return new Brief.FrictionBand(q(NUMBER, low), q(NUMBER, high));
    }

    private static Quantity q(Dimension dimension, String typed) {
        return Quantity.parse(dimension, typed);
    }
}
