// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
/**
 * From a brief and a train to the places of its arbors.
 *
 * <p>What a layout needs to know of parts, frame and line is taken from the brief and from the teeth that the rating uses,
 * so that a train is placed with the very sizes it is rated with. May depend on rating and layout and what stands before
 * them. Demands that are waived widen what is asked: without the frame's demand the plates are as large as a layout can
 * have them, without the demand for clearance nothing needs to be placed.
 * What settles the holes of a placed train's plates can be held, so that other trains are sought for the same plates.
 *
 * <p>Rejected: the layout as a part of the rating. A rating takes microseconds and is asked for by the hundred thousand; a
 * layout takes milliseconds and is asked for where a train may be shown.
 */
package drumfall.solver.rating.placing;
