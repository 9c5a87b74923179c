// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.samples;

import drumfall.solver.train.Train;

/** A train that meets the demonstration brief. */
public final class DemoTrain {
    private DemoTrain() {}

    /** The train. */
    public static Train train() {
        return Trains.of("68/8 m1 | 58/9 m1 · 45/10 m1 · 48/8 m1 · E21", "36", 2);
    }
}
