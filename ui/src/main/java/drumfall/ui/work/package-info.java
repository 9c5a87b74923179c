// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
/**
 * Work that must not hold up the window: searching, answering long questions, and keeping unsaved designs safe.
 *
 * <p>Each desk owns its thread; only immutable records cross back, through an executor that the caller chooses, so that tests
 * run without an event thread. May depend on the solver's search and on the design files; knows neither state nor components.
 *
 * <p>Rejected: SwingWorker. It ties the search to Swing, delivers growing fronts in batches of every step, and cannot be told
 * that a newer search has made its answer stale.
 */
package drumfall.ui.work;
