// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
/**
 * The sheet of the power: its way from the weight to the pendulum, the arc against the weight, dials, savings and chance.
 *
 * <p>Each place where power goes is a row that draws its own part of the thinning band, so that what is read, pointed at
 * and reached by keyboard is one component. May depend on the presenter, on the look and on the inks and pens of the
 * drawings; knows neither threads nor the solver's walk.
 *
 * <p>Rejected: a band across with losses falling off it. Fifteen losses do not find room for their names side by side, and
 * the smallest, which are most of them, would be told by colour alone.
 */
package drumfall.ui.view.power;
