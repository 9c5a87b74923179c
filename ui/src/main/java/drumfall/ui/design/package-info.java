// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
/**
 * The design as a document: what is saved, opened again and kept safe from a crash.
 *
 * <p>A design is a brief as typed, refused entries included, with its locks, and the train that was chosen; its name is the
 * brief's name. The front is not kept: it follows from the brief and would be one more thing that could disagree with it. Files
 * are written whole or not at all, carry a version, and are refused by name when they come from a newer program. May depend on
 * the solver's sheets, briefs and trains; knows nothing of windows.
 *
 * <p>Rejected: keeping the accepted brief record alone. A maker who saves in the middle of an entry would find it gone.
 */
package drumfall.ui.design;
