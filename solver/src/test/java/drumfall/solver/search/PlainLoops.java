// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import drumfall.solver.brief.Brief;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.rating.Cell;
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
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The oracle: every train of a brief in plain loops, sharing nothing with the search but the rating.
 *
 * <p>Trains are rated on all processors; whether a brief has any is kept, as many tests look for briefs without, and so are
 * the trains of the brief last asked for, as many tests ask for them more than once.
 */
public final class PlainLoops {
    private static final Map<Brief, Boolean> NONE = new ConcurrentHashMap<>();
    private static final AtomicReference<Rated> LAST = new AtomicReference<>();

    private record Rated(Brief brief, List<Rating> ratings) {}

    private final Brief brief;
    private final List<Train> trains = new ArrayList<>();

    private PlainLoops(Brief brief) {
        this.brief = brief;
    }

    /** Every train that meets the brief. */
    public static List<Rating> feasible(Brief brief) {
        return all(brief).stream().filter(Rating::feasible).toList();
    }

    /** Whether no train meets the brief. */
    public static boolean none(Brief brief) {
        return NONE.computeIfAbsent(brief, asked -> rated(asked).noneMatch(Rating::feasible));
    }

    /** Every train of the brief's choices, also those that miss a demand. */
    public static List<Rating> all(Brief brief) {
        Rated last = LAST.get();
        if (last == null || !last.brief().equals(brief)) {
            last = new Rated(brief, rated(brief).toList());
            LAST.set(last);
        }
        return last.ratings();
    }

    private static Stream<Rating> rated(Brief brief) {
        PlainLoops loops = new PlainLoops(brief);
        loops.run();
        TrainRater rater = new TrainRater(brief);
        return loops.trains.parallelStream().map(rater::rate);
    }

    /** The non-dominated cells, each with its first train by the stated order, first objective first. */
    public static List<Rating> front(Brief brief) {
        return front(feasible(brief));
    }

    /** The non-dominated cells of some trains, each with its first train by the stated order, first objective first. */
    static List<Rating> front(List<Rating> trains) {
        Map<Cell, Rating> first = trains.stream()
                .collect(Collectors.toMap(Rating::cell, train -> train, BinaryOperator.minBy(new TrainOrder())));
        return first.values().stream()
                .filter(train -> first.keySet().stream().noneMatch(other -> other.dominates(train.cell())))
                .sorted(Comparator.comparing(
                        rating -> rating.cell().numbers().stream()
                                .mapToLong(number -> number)
                                .toArray(),
                        Arrays::compare))
                .toList();
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
                    trains.add(new Train(meshes, above, size, Reeving.of(falls).orElseThrow(), escape));
                }
            }
            size = size.add(steps.step().exact());
        }
    }
}
