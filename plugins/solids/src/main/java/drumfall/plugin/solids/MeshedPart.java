// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import drumfall.solver.making.MovementPart;

/**
 * A part and its surface.
 *
 * @param part the part
 * @param mesh its surface
 */
record MeshedPart(MovementPart part, Mesh mesh) {}
