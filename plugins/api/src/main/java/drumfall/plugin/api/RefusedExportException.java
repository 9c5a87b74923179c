// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.api;

import drumfall.plugin.api.Stability.Level;

/**
 * Thrown by an exporter that cannot write this train for a reason that the maker can put right, in the brief or among the
 * exporter's settings; the program shows the sentence and does not call the plugin broken.
 *
 * @since 1.1
 */
@Stability(level = Level.STABLE, since = "1.1")
public final class RefusedExportException extends RuntimeException {
    private static final long serialVersionUID = 1;

    /**
     * A refusal.
     *
     * @param sentence one line for the maker: what, which value, which rule, what to try; ends with a full stop
     */
    public RefusedExportException(String sentence) {
        super(sentence);
    }
}
