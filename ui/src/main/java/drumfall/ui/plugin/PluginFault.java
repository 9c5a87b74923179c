// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import java.util.Objects;

/**
 * One thing that went wrong, named.
 *
 * @param kind what
 * @param plugin whose fault it is: file name of the jar, or id of an exporter that is not there
 * @param sentence for people, one line
 * @param detail for the plugin's author, for example where an exception came from; may be empty
 */
public record PluginFault(FaultKind kind, String plugin, String sentence, String detail) {
    /** Refuses absent parts. */
    public PluginFault {
        Objects.requireNonNull(kind);
        Objects.requireNonNull(plugin);
        Objects.requireNonNull(sentence);
        Objects.requireNonNull(detail);
    }

    /**
     * A fault with the sentence of its kind.
     *
     * @param kind what
     * @param plugin whose
     * @param values what the sentence speaks of after the plugin, in order
     */
    static PluginFault of(FaultKind kind, String plugin, Object... values) {
        return new PluginFault(kind, plugin, FaultText.sentence(kind, plugin, values), "");
    }

    PluginFault withDetail(String lines) {
        return new PluginFault(kind, plugin, sentence, lines);
    }
}
