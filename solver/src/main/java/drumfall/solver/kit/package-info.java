// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
/**
 * What a builder needs for one clock or several: printed parts, rods and how to cut them, holes and drills, bearings, line,
 * weight, screws and filament; and the same train built with fewer or more rolling bearings.
 *
 * <p>Lists only; every size comes from the fitted movement, the parts or the rating. May depend on everything down to
 * {@code making}. Rejected: lists made by each exporter for itself. The sheet, the lists and the outlines name the same rods
 * and holes, and would disagree the first time one of them changed.
 */
package drumfall.solver.kit;
