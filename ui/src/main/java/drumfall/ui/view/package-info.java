// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
/**
 * The window: its four places, its menus and its pages.
 *
 * <p>Every place shows a part of the one shared state and listens for changes of it; what the maker does goes to the state and
 * comes back from there, never from place to place. May depend on the presenter, on the drawings of the train and on the look;
 * it knows no threads and no files.
 *
 * <p>Rejected: dialogs for the brief and for questions. The maker goes back and forth between demand and train, and every step
 * can be undone, so nothing needs to be confirmed.
 */
package drumfall.ui.view;
