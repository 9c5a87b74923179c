// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import drumfall.solver.brief.Brief;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainOrder;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** The oracle: every train of a brief in plain loops, sharing nothing with the search but the rating. */
public final class PlainLoops {
    private final Brief brief;
    private final TrainRater rater;
    private final List<Rating> all = new ArrayList<>();

    private PlainLoops(Brief brief) {
        this.brief = brief;
        this.rater = new TrainRater(brief);
    }

    /** Every train that meets the brief. */
    public static List<Rating> feasible(Brief brief) {
        return all(brief).stream().filter(Rating::feasible).toList();
    }

    /** Every train of the brief's choices, also those that miss a demand. */
    public static List<Rating> all(Brief brief) {
        PlainLoops loops = new PlainLoops(brief);
        loops.run();
        return loops.all;
    }

    /** The non-dominated cells, each with its first train by the stated order, first objective first. */
    public static List<Rating> front(Brief brief) {
        List<Rating> trains = feasible(brief);
        List<Rating> front = new ArrayList<>();
        for (Rating train : trains) {
            boolean beaten = trains.stream().anyMatch(other -> other.cell().dominates(train.cell()));
            boolean stands = trains.stream()
                    .filter(other -> other.cell().equals(train.cell()))
                    .allMatch(other -> new TrainOrder().compare(train, other) <= 0);
            if (!beaten && stands) {
                front.add(train);
            }
        }
        front.sort(Comparator.comparing(
                rating -> rating.cell().numbers().stream()
                        .mapToLong(number -> number)
                        .toArray(),
                Arrays::compare));
        return front;
    }

    private void run() {
        for (int above = brief.train().above().from();
                above <= brief.train().above().to();
                above++) {
            for (int below = brief.train().below().from();
                    below <= brief.train().below().to();
                    below++) {
                meshes(new ArrayList<>(), above, above + below);
            }
        }
    }

    private void meshes(List<Mesh> meshes, int above, int count) {
        if (meshes.size() == count) {
            drums(meshes, above);
            return;
        }
        Brief.Teeth teeth = brief.teeth();
        for (int z = teeth.wheelTeeth().from(); z <= teeth.wheelTeeth().to(); z++) {
            for (int p = teeth.leaves().from(); p <= teeth.leaves().to(); p++) {
                for (Quantity module : teeth.modules()) {
                    meshes.add(Mesh.of(z, p, ToothModule.ofMetres(module.exact())));
                    meshes(meshes, above, count);
                    meshes.remove(meshes.size() - 1);
                }
            }
        }
    }

    private void drums(List<Mesh> meshes, int above) {
        Brief.Steps steps = brief.drum().diameter();
        BigFraction size = steps.from().exact();
        while (size.compareTo(steps.to().exact()) <= 0) {
            for (int falls : brief.line().falls()) {
                Brief.CountSteps teeth = brief.escapement().teeth();
                for (int escape = teeth.from(); escape <= teeth.to(); escape += teeth.step()) {
                    take(new Train(meshes, above, size, Reeving.of(falls).orElseThrow(), escape));
                }
            }
            size = size.add(steps.step().exact());
        }
    }

    private void take(Train train) {
        all.add(rater.rate(train));
    }
}
