// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
/**
 * The sheet of easing: what each figure of the brief would save in weight if it were eased, and why the tried train is not
 * on the front.
 *
 * <p>May depend on the presenter and on the look. Rejected: the same answers in a dialog. The maker goes back and forth
 * between an answer and the train it speaks of, and takes an answer into the brief as a step that can be undone.
 */
package drumfall.ui.view.easing;
