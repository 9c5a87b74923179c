// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
/**
 * State and commands of the window, without a single component.
 *
 * <p>One shared state holds brief, front, choice, locks and what is pointed at; every place of the window shows a part of
 * it and asks for changes through commands that can be undone. May depend on the solver's records and on the design file;
 * never on Swing components, so that all of it is tested without a display.
 *
 * <p>Rejected: a presenter for each place with its own copy of the choice. Four copies need to be kept alike, and the tests
 * would be about that instead of about the work.
 */
package drumfall.ui.presenter;
