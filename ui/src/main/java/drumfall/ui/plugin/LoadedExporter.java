// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import drumfall.plugin.api.Exporter;

/**
 * An exporter in hand.
 *
 * @param entry its id and title, asked once
 * @param exporter the plugin's own object; called only through {@link GuardedCall}
 * @param jar file name of its jar
 */
record LoadedExporter(ExporterEntry entry, Exporter exporter, String jar) {
    ClassLoader loader() {
        return exporter.getClass().getClassLoader();
    }
}
