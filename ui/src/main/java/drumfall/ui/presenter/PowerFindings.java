// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.rating.answers.Change;
import drumfall.solver.rating.answers.WeightChance;
import java.util.List;
import java.util.Optional;

/** What is known of savings and of the chance that a weight runs. */
public sealed interface PowerFindings {
    /** The findings, if there are any. */
    default Optional<Found> found() {
        return Optional.empty();
    }

    /** Nothing was asked for. */
    record Unasked() implements PowerFindings {}

    /** Being reckoned. */
    record Busy() implements PowerFindings {}

    /** The maker stopped it. */
    record Stopped() implements PowerFindings {}

    /** It broke down. */
    record Failed() implements PowerFindings {}

    /**
     * Reckoned in the middle of every band.
     *
     * @param changes changes of the clock, the one that saves most first
     * @param chance the weights that builders need
     */
    record Found(List<Change> changes, WeightChance chance) implements PowerFindings {
        /** Copies the list. */
        public Found {
            changes = List.copyOf(changes);
        }

        @Override
        public Optional<Found> found() {
            return Optional.of(this);
        }
    }
}
