// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import static drumfall.solver.quantity.Dimension.LENGTH;
import static drumfall.solver.quantity.Dimension.MASS;
import static drumfall.solver.quantity.Dimension.NUMBER;
import static drumfall.solver.quantity.Dimension.TIME;

import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.Measure;
import java.util.Optional;

/**
 * Something to be made small, and how finely it is told apart.
 *
 * @param figure what is made small
 * @param resolution size of a cell; a share ("1 %") makes cells that grow with the figure; absent for whole counts
 */
public record Objective(
        ObjectiveFigure figure,

        @Measure(value = NUMBER, over = "0", to = "100 %")
        @Measure(value = MASS, over = "0 g")
        @Measure(value = LENGTH, over = "0 mm")
        @Measure(value = TIME, over = "0 h")
        Optional<Quantity> resolution) {
    /**
     * The same figure told apart in larger steps; whole counts stay as they are.
     *
     * @param times how many times as large, at least 1
     */
    public Objective inSteps(int times) {
        return new Objective(
                figure,
                resolution.map(
                        step -> Quantity.of(step.dimension(), step.exact().multiply(times))));
    }
}
