// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import static drumfall.solver.quantity.Dimension.AREA;
import static drumfall.solver.quantity.Dimension.LENGTH;

import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.Measure;
import java.math.BigInteger;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The room that a movement takes, to be made small beside the objectives: the least that any layout of a train takes within
 * the frame.
 *
 * @param figure what of it is made small
 * @param resolution steps in which it is told apart
 * @param enough a movement as small as this is as good as any smaller one; every size counts if it is absent
 */
public record LeastRoom(
        RoomFigure figure,

        @Measure(value = LENGTH, from = "0.01 mm", to = "1 m") @Measure(value = AREA, from = "0.01 cm2", to = "1 m2")
        Quantity resolution,

        @Measure(value = LENGTH, over = "0 mm", to = "1 m") @Measure(value = AREA, over = "0 cm2", to = "1 m2")
        Optional<Quantity> enough) {
    /**
     * The room of so many steps, m or m&sup2;.
     *
     * @param steps their number
     */
    public BigFraction size(long steps) {
        return resolution.exact().multiply(BigInteger.valueOf(steps));
    }
}
