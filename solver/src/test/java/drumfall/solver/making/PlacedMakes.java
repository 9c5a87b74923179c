// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.layout.Layout;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.Train;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Trains that are placed and made: one of each bundled brief's front, and others that stand differently. */
record PlacedMakes(String name, Brief brief, Train train, Layout layout, List<MovementPart> parts) {
    private static final Train WEEKLY = Trains.of("85/10 m1.5 | 66/12 m1.5 · 83/12 m1 · 55/12 m1 · E21", "36", 2);
    private static final Train DESK = Trains.of("78/12 m1.5 | 79/12 m1.25 · 76/12 m1 · 57/9 m1 · E24", "18", 1);
    private static final Train MONTH = Trains.of("129/16 m1.25 · 73/16 m2 | 120/16 m1 · 112/14 m0.8 · E30", "24", 1);

    /** Bearing 682, 2 × 5 × 1.5 mm: ISO 15, from memory. */
    private static final String SEATED = "/arbors/intermediate/bearings = \"both\""
            + " & /arbors/intermediate/bearing = {\"outer\": \"5 mm\", \"width\": \"1.5 mm\"}";

    static Stream<PlacedMakes> all() {
        return Stream.of(
                of("weekly", bundled("weekly-wall-clock"), WEEKLY),
                of("desk", bundled("desk-clock"), DESK),
                of("month", bundled("month-runner"), MONTH),
                of("drum behind", Briefs.demoWith("/drum/side = \"behind\""), WEEKLY),
                of("shallow", Briefs.demoWith("/frame/arrangement = \"shallow\""), WEEKLY),
                of("seats in hubs", Briefs.demoWith(SEATED), WEEKLY),
                of("compact", Briefs.demoWith("/frame/arrangement = \"compact\""), WEEKLY),
                of(
                        "lantern",
                        Briefs.demoWith("/teeth/form = \"lantern\" & /teeth/pressureAngle = remove"
                                + " & /frame/depth = \"140 mm\" & /printer/nozzle = \"0.25 mm\""),
                        Trains.of("68/8 m1.5 | 58/9 m1.5 · 50/10 m1.5 · 48/8 m1.5 · E21", "36", 2)));
    }

    private static Brief bundled(String name) {
        return BundledBriefs.load(name).orElseThrow();
    }

    private static PlacedMakes of(String name, Brief brief, Train train) {
        TrainRater rater = new TrainRater(brief);
        Layout layout =
                new TrainPlacing(rater).place(train, () -> false).found().orElseThrow();
        List<MovementPart> parts =
                MovementParts.of(rater, rater.rate(train), Optional.of(layout)).parts();
        return new PlacedMakes(name, brief, train, layout, parts);
    }

    MovementPart part(String name) {
        return parts.stream()
                .filter(part -> part.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Where its parts stand along the arbors. */
    Levels levels() {
        TrainRater rater = new TrainRater(brief);
        return MovementParts.of(rater, rater.rate(train), Optional.of(layout))
                .places()
                .orElseThrow()
                .levels();
    }

    MovementPart escapeWheel() {
        return part("arbor-" + (train.meshes().size() + 1) + "-escape-wheel-and-pinion");
    }

    @Override
    public String toString() {
        return name;
    }
}
