// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.api;

import drumfall.plugin.api.Stability.Level;

/**
 * How far an export is, and whether anyone still wants it.
 *
 * @since 1.0
 */
@Stability(level = Level.STABLE, since = "1.0")
public interface ExportProgress {
    /**
     * Says how far the work is.
     *
     * @param share done, from 0 to 1; anything else counts as not known
     * @param doing what is done now, a few words for people, for example {@code "arbor-2-pinion.svg"}
     */
    void at(double share, String doing);

    /** Whether the export is no longer wanted; then return or throw as soon as is convenient, what was written is discarded. */
    boolean cancelled();

    /** A progress that nobody watches and nobody cancels. */
    static ExportProgress unwatched() {
        return new ExportProgress() {
            @Override
            public void at(double share, String doing) {}

            @Override
            public boolean cancelled() {
                return false;
            }
        };
    }
}
