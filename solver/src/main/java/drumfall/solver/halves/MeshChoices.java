// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.MeshLock;
import drumfall.solver.brief.MeshPlace;
import drumfall.solver.rating.TrainLimits;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.ToothModule;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Everything that may stand at a place by the demands on one mesh alone. */
public final class MeshChoices {
    private final TrainRater rater;

    /**
     * The choices of a brief.
     *
     * @param rater rates against the brief
     */
    public MeshChoices(TrainRater rater) {
        this.rater = rater;
    }

    /**
     * The choices at a place, lowest ratio first.
     *
     * @param place the place; locks on it are kept
     */
    public List<MeshChoice> at(MeshPlace place) {
        Optional<MeshLock> lock = rater.brief().locks().at(place);
        Brief.Teeth teeth = rater.brief().teeth();
        List<MeshChoice> choices = new ArrayList<>();
        tabulate(teeth, lock);
        for (int z = teeth.wheelTeeth().from(); z <= teeth.wheelTeeth().to(); z++) {
            for (int p = teeth.leaves().from(); p <= teeth.leaves().to(); p++) {
                addModules(z, p, lock, choices);
            }
        }
        choices.sort(Comparator.<MeshChoice>comparingDouble(choice -> choice.ratio)
                .thenComparingInt(choice -> choice.teeth)
                .thenComparingInt(choice -> choice.moduleNumber));
        return choices;
    }

    /** Finds the teeth of all pairs on all processors; what is found is kept by the teeth themselves. */
    private void tabulate(Brief.Teeth teeth, Optional<MeshLock> lock) {
        List<ToothModule> modules = rater.choices().modules();
        ToothModule largest = modules.get(modules.size() - 1);
        IntStream.rangeClosed(teeth.wheelTeeth().from(), teeth.wheelTeeth().to())
                .boxed()
                .flatMap(z -> IntStream.rangeClosed(
                                teeth.leaves().from(), teeth.leaves().to())
                        .mapToObj(p -> Mesh.of(z, p, largest)))
                .filter(mesh -> rater.limits().stepsUp(mesh.counts()) && heldAtSomeModule(mesh, modules, lock))
                .toList()
                .parallelStream()
                .forEach(mesh -> rater.limits().teeth().print(mesh));
    }

    private void addModules(int z, int p, Optional<MeshLock> lock, List<MeshChoice> choices) {
        List<ToothModule> modules = rater.choices().modules();
        for (int i = 0; i < modules.size(); i++) {
            Mesh mesh = Mesh.of(z, p, modules.get(i));
            if (held(mesh, lock) && allowed(mesh)) {
                choices.add(new MeshChoice(mesh, i, rater));
            }
        }
    }

    private boolean allowed(Mesh mesh) {
        TrainLimits limits = rater.limits();
        return limits.stepsUp(mesh.counts())
                && limits.teeth().print(mesh)
                && limits.fitsBed(mesh)
                && limits.fitsFrame(mesh);
    }

    /** No module of the brief puts most pairs on a distance that is held: their teeth need not be found. */
    private static boolean heldAtSomeModule(Mesh mesh, List<ToothModule> modules, Optional<MeshLock> lock) {
        return heldCounts(mesh, lock)
                && modules.stream().anyMatch(module -> held(new Mesh(mesh.counts(), module), lock));
    }

    private static boolean held(Mesh mesh, Optional<MeshLock> lock) {
        return heldCounts(mesh, lock)
                && lock.flatMap(MeshLock::module)
                        .map(held -> ToothModule.ofMetres(held.exact()).equals(mesh.module()))
                        .orElse(true)
                && lock.map(held -> held.distanceMetBy(mesh)).orElse(true);
    }

    private static boolean heldCounts(Mesh mesh, Optional<MeshLock> lock) {
        return lock.flatMap(MeshLock::wheel)
                        .map(held -> held == mesh.toothCount())
                        .orElse(true)
                && lock.flatMap(MeshLock::leaves)
                        .map(held -> held == mesh.leafCount())
                        .orElse(true);
    }
}
