// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

import drumfall.solver.fit.FitException;
import java.util.ArrayList;
import java.util.List;

/**
 * Everything between the plates along one arbor.
 *
 * @param arbor name of the arbor
 * @param contributions 1 to 100, the frame among them
 */
public record ArborStack(String arbor, List<Contribution> contributions) {
    private static final int MOST_PARTS = 100;

    /**
     * Copies the contributions.
     *
     * @throws FitException if there are none or too many, or nothing opens the frame
     */
    public ArborStack {
        FitException.requireName("an arbor", arbor);
        contributions = List.copyOf(contributions);
        String owner = "the stack of arbor (" + arbor + ")";
        FitException.requireCount("number of parts", owner, contributions.size(), 1, MOST_PARTS);
        if (contributions.stream().noneMatch(part -> part.direction() == Direction.OPENS)) {
            throw FitException.refused("frame gap", "none", owner, "be at least 1 part", "add the pillars");
        }
    }

    /** End shake of nominal parts at the temperature they were measured at, nm; negative if the arbor is jammed. */
    public long nominal() {
        return contributions.stream().mapToLong(Contribution::reach).sum();
    }

    /** End shake if every part is at its worst for freedom, nm. */
    public long least() {
        return nominal()
                + contributions.stream().mapToLong(Contribution::leastError).sum();
    }

    /** End shake if every part is at its worst for looseness, nm. */
    public long most() {
        return nominal()
                + contributions.stream().mapToLong(Contribution::mostError).sum();
    }

    /** Mean end shake, nm: the middle between least and most, since every error is symmetric about its middle. */
    public double mean() {
        return (least() + most()) / 2.0;
    }

    /** What a kelvin does to the end shake, nm/K: {@code Σ ± α L}; positive if a warm clock is looser. */
    public double drift() {
        return contributions.stream().mapToDouble(Contribution::drift).sum();
    }

    /** The root-sum-square of all tolerances and what it covers. */
    public RootSumSquare rootSumSquare() {
        return RootSumSquare.of(mean(), contributions);
    }

    /** The stack with layers put on one part or taken off. */
    ArborStack withLayers(int part, int layers) {
        List<Contribution> changed = new ArrayList<>(contributions);
        changed.set(part, changed.get(part).withLayers(layers));
        return new ArborStack(arbor, changed);
    }
}
