// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import drumfall.solver.rating.Rating;
import java.util.Optional;

/**
 * What is known of whether any train meets a brief.
 *
 * @param train a train that does, rated as it was asked for; absent if none was found
 * @param searched whether everything was searched, so that an absent train means that there is none
 */
public record Existence(Optional<Rating> train, boolean searched) {
    /** Cut short with nothing found. */
    public static final Existence UNKNOWN = new Existence(Optional.empty(), false);

    /** Everything was searched and nothing found. */
    public static final Existence NONE = new Existence(Optional.empty(), true);

    /**
     * A train was found.
     *
     * @param train the train
     */
    public static Existence of(Rating train) {
        return new Existence(Optional.of(train), false);
    }

    /** Whether a train is known. */
    public boolean some() {
        return train.isPresent();
    }

    /** Whether it is proved that there is none. */
    public boolean none() {
        return train.isEmpty() && searched;
    }
}
