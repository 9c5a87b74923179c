// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
/**
 * A placed movement fitted: rods, the holes that carry them, what stands on them between the plates and how much it shakes.
 *
 * <p>Here the lengths of the brief and of a layout meet the rules of {@code fit}, which knows neither. Lengths are whole
 * nanometres, as in both. May depend on everything down to {@code rating.placing}. Rejected: fitting inside {@code making}.
 * The printed parts follow from the fitted heights, and the lists and the sheet ask for rods and drills without any part
 * being drawn.
 */
package drumfall.solver.fitting;
