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

    private void addModules(int z, int p, Optional<MeshLock> lock, List<MeshChoice> choices) {
        List<ToothModule> modules = rater.choices().modules();
        for (int i = 0; i < modules.size(); i++) {
            Mesh mesh = Mesh.of(z, p, modules.get(i));
            if (held(mesh, lock) && allowed(mesh)) {
                choices.add(new MeshChoice(mesh, i, rater.walk()));
            }
        }
    }

    private boolean allowed(Mesh mesh) {
        TrainLimits limits = rater.limits();
        return limits.stepsUp(mesh.counts())
                && limits.toothPrints(mesh.module())
                && limits.fitsBed(mesh)
                && limits.fitsFrame(mesh);
    }

    private static boolean held(Mesh mesh, Optional<MeshLock> lock) {
        return lock.isEmpty()
                || (lock.get().wheel().map(held -> held == mesh.toothCount()).orElse(true)
                        && lock.get()
                                .leaves()
                                .map(held -> held == mesh.leafCount())
                                .orElse(true)
                        && lock.get()
                                .module()
                                .map(held -> ToothModule.ofMetres(held.exact()).equals(mesh.module()))
                                .orElse(true));
    }
}
