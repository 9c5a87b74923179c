// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import java.nio.file.Path;
import java.util.List;

/**
 * What became of one file in a plugin folder.
 *
 * @param file the jar; for a folder that cannot be read, the folder
 * @param folder where it was found
 * @param name implementation title by its manifest, or else its file name
 * @param version implementation version by its manifest, or else empty
 * @param exporters those that can be used, in the jar's order
 * @param faults everything that is wrong; a jar may have both exporters and faults
 */
public record LoadedPlugin(
        Path file,
        PluginFolder folder,
        String name,
        String version,
        List<ExporterEntry> exporters,
        List<PluginFault> faults) {
    /** Copies the lists. */
    public LoadedPlugin {
        exporters = List.copyOf(exporters);
        faults = List.copyOf(faults);
    }
}
