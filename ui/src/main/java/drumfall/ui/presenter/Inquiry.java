// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

/** How far a question is that is answered in the background, answer by answer. */
public enum Inquiry {
    /** Nothing was asked. */
    UNASKED,
    /** Answers come in. */
    BUSY,
    /** It ended early; what was known until then stays. */
    STOPPED,
    /** It broke down; what was known until then stays. */
    FAILED,
    /** Every answer is there. */
    DONE
}
