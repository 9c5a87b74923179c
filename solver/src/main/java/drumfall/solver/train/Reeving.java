// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.train;

import java.util.Arrays;
import java.util.Optional;

/** How the line carries the weight. */
public enum Reeving {
    /** The line hangs straight from the drum: the weight falls as far as the line runs. */
    SINGLE(1),
    /** The line passes a pulley at the weight and comes back up to a fixed point: the weight falls half as far. */
    DOUBLE(2);

    private final int falls;

    Reeving(int falls) {
        this.falls = falls;
    }

    /** Falls of line that carry the weight, {@code k}: metres of line for a metre of fall. */
    public int falls() {
        return falls;
    }

    /**
     * The reeving with a given number of falls.
     *
     * @param falls 1 or 2; others give an empty answer
     */
    public static Optional<Reeving> of(int falls) {
        return Arrays.stream(values()).filter(reeving -> reeving.falls == falls).findFirst();
    }
}
