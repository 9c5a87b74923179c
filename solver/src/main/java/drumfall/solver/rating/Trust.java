// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

/** What is known of a half, see {@link Refused}. */
public enum Trust {
    /** Nothing speaks against it: it may stand in place of other halves. */
    TRUSTED,
    /** It may stand in trains, but not in place of other halves. */
    DISTRUSTED,
    /** No train with it can be built. */
    HOPELESS
}
