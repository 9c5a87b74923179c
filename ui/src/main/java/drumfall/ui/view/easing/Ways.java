// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.easing;

import drumfall.solver.train.Train;
import java.util.function.Consumer;

/**
 * Where the links of the sheet of easing lead.
 *
 * @param toBrief goes to a place of the brief, a JSON pointer
 * @param choose chooses a train of the front
 */
public record Ways(Consumer<String> toBrief, Consumer<Train> choose) {}
