// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.quantity.Quantity;
import java.util.Optional;

/**
 * Something to be made small, and how finely it is told apart.
 *
 * @param figure what is made small
 * @param resolution size of a cell; a share ("1 %") makes cells that grow with the figure; absent for whole counts
 */
public record Objective(ObjectiveFigure figure, Optional<Quantity> resolution) {}
