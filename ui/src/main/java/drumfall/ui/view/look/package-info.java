// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
/**
 * How the window looks: papers, inks, letters and sizes, light and dark.
 *
 * <p>Colours come from two property files that the look and feel reads, and the four roles from the drawings of the train, so
 * that every place uses the same. May depend on Swing, the look and feel and the drawings' roles; knows no state.
 *
 * <p>Rejected: colours as constants in the components. Switching between light and dark while the window is open would mean to
 * build it anew.
 */
package drumfall.ui.view.look;
