// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import drumfall.plugin.api.ExportSetting;
import drumfall.plugin.api.SettingValues;
import java.util.List;

/**
 * An exporter that is to export, and with which settings.
 *
 * @param exporter the exporter
 * @param values the values of its settings
 */
record ExportOrder(LoadedExporter exporter, SettingValues values) {
    String id() {
        return exporter.entry().id();
    }

    /** Every setting with its value, as they are typed in the terminal. */
    List<String> lines() {
        return exporter.entry().settings().stream().map(this::line).toList();
    }

    private String line(ExportSetting<?> setting) {
        return id() + "." + setting.id() + "=" + SettingWords.text(values.of(setting));
    }
}
