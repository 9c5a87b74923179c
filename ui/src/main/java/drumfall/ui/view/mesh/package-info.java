// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
/**
 * The sheet of one mesh: both gears near their contact to scale, the torque over a pitch, and the dials of its errors.
 *
 * <p>A plan says where the gears stand, outlines are made once for a traced mesh, and a painter turns them; so a frame costs
 * a few fills. May depend on the presenter, on the look and on the inks and pens of the drawings; knows neither threads nor
 * the solver's tracing.
 *
 * <p>Rejected: pictures of the gears turned as images. They blur, and a magnified tooth must stay as sharp as its outline.
 */
package drumfall.ui.view.mesh;
