// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import drumfall.plugin.api.ExportSetting;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An exporter that can be used.
 *
 * @param id its id
 * @param title its title
 * @param settings what can be set about its exports, in the order in which it is shown
 */
public record ExporterEntry(String id, String title, List<ExportSetting<?>> settings) {
    /** Copies the list. */
    public ExporterEntry {
        settings = List.copyOf(settings);
    }

    /**
     * What is wrong with a typed value, if anything.
     *
     * @param setting id of one of the settings
     * @param typed what was typed
     */
    public Optional<PluginFault> fault(String setting, String typed) {
        return SettingReading.of(this, Map.of(setting, typed)).fault();
    }
}
