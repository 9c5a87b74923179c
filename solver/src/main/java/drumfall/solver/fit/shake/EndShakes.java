// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

import drumfall.solver.fit.FitException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The end shakes of a movement, the arbor likeliest to miss its band first.
 *
 * @param ranked at least one arbor; of equal chances the one given first
 */
public record EndShakes(List<EndShake> ranked) {
    /**
     * Ranks the arbors.
     *
     * @throws FitException if there is none
     */
    public EndShakes {
        FitException.requireCount("number of arbors", "the movement", ranked.size(), 1, Integer.MAX_VALUE);
        ranked = ranked.stream()
                .sorted(Comparator.comparingDouble(
                        (EndShake shake) -> -shake.chance().outside()))
                .toList();
    }

    /**
     * Works out all arbors; an arbor's figures do not depend on the others.
     *
     * @param stacks one for each arbor
     * @param band what is wanted
     * @param temperatures of the room
     * @param sampling how to draw each sample
     */
    public static EndShakes of(List<ArborStack> stacks, ShakeBand band, Temperatures temperatures, Sampling sampling) {
        return new EndShakes(stacks.stream()
                .map(stack -> EndShake.of(stack, band, temperatures, sampling))
                .toList());
    }

    /** The single change of one part that lowers any arbor's chance of missing its band by most. */
    public Optional<LayerChange> bestChange() {
        return ranked.stream()
                .flatMap(shake -> shake.change().stream())
                .max(Comparator.comparingDouble(LayerChange::gain));
    }
}
