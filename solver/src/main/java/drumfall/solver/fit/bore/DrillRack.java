// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.bore;

import drumfall.solver.fit.FitException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The drills a maker chooses from, smallest first.
 *
 * @param drills at least one, in any order; of equal diameters the one named first comes first
 */
public record DrillRack(List<Drill> drills) {
    /**
     * Sorts the drills.
     *
     * @throws FitException if there is none
     */
    public DrillRack {
        drills = drills.stream()
                .sorted(Comparator.comparingLong(Drill::diameter))
                .toList();
        FitException.requireCount("number of drills", "the rack", drills.size(), 1, Integer.MAX_VALUE);
    }

    /**
     * All drills of whole series.
     *
     * @param series at least one; where sizes coincide (12.7 mm is 1/2 in) the series named first is preferred
     */
    public static DrillRack of(DrillSeries... series) {
        return new DrillRack(
                Arrays.stream(series).flatMap(one -> one.drills().stream()).toList());
    }

    /**
     * The smallest drill not below a diameter, or none.
     *
     * @param diameter nm
     */
    public Optional<Drill> nearestAtLeast(long diameter) {
        return drills.stream().filter(drill -> drill.diameter() >= diameter).findFirst();
    }

    /** The largest drill. */
    public Drill largest() {
        return drills.get(drills.size() - 1);
    }
}
