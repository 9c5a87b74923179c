// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.form;

import java.util.List;

/** The preferred modules of ISO 54, millimetres. */
public final class ModuleSeries {
    /** Series I, to be preferred. */
    public static final List<Double> FIRST =
            List.of(1.0, 1.25, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 16.0, 20.0, 25.0, 32.0, 40.0, 50.0);

    /** Series II; the standard asks that 6.5 be avoided (from memory). */
    public static final List<Double> SECOND = List.of(
            1.125, 1.375, 1.75, 2.25, 2.75, 3.5, 4.5, 5.5, 6.5, 7.0, 9.0, 11.0, 14.0, 18.0, 22.0, 28.0, 36.0, 45.0);

    private ModuleSeries() {}
}
