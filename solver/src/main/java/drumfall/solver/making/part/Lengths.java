// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

/** From the metres of the records to the millimetres of the solids. */
final class Lengths {
    private Lengths() {}

    /** Metres as millimetres. */
    static double mm(double metres) {
        return 1e3 * metres;
    }
}
