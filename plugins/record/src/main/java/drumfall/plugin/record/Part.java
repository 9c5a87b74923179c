// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.record;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One printed part.
 *
 * @param name named after its place, for example {@code arbor-2-pinion}
 * @param count how many of it
 * @param arbor number of its arbor from 1, the drum arbor
 * @param teeth teeth or leaves; absent for the drum
 * @param module in mm, exact; absent for drum and escape wheel
 * @param pitchDiameter mm; absent for drum and escape wheel
 * @param tipDiameter mm; for the drum over its flanges
 * @param bore diameter of the arbor's rod, mm
 * @param width along the arbor, mm
 * @param mass g
 */
record Part(
        String name,
        int count,
        int arbor,
        OptionalInt teeth,
        Optional<BigDecimal> module,
        Optional<BigDecimal> pitchDiameter,
        BigDecimal tipDiameter,
        BigDecimal bore,
        BigDecimal width,
        BigDecimal mass) {}
