// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.layout.Locks;
import drumfall.solver.train.Train;
import java.util.Objects;

/**
 * What the maker has locked in the layout of one train; another train begins without.
 *
 * @param train whose layout
 * @param locks places and directions
 */
record PlacedLocks(Train train, Locks locks) {
    PlacedLocks {
        Objects.requireNonNull(train);
        Objects.requireNonNull(locks);
    }
}
