// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.plugin.api.ExportSetting;
import drumfall.ui.plugin.ExporterEntry;
import drumfall.ui.plugin.PluginFault;
import drumfall.ui.plugin.SettingTexts;
import drumfall.ui.plugin.SettingWords;
import java.util.List;
import java.util.Optional;

/**
 * Which exporters take part and what is set about them, as typed; remembered like units and size, since paper and printer are
 * the maker's and not the clock's. What is wrong stays as it was typed, is told beside it, and keeps an export from beginning.
 */
public final class ExportSettings {
    private static final String PREFIX = "export.";

    private final Settings remembered;

    /**
     * Export settings among all that is remembered.
     *
     * @param remembered keeps them
     */
    public ExportSettings(Settings remembered) {
        this.remembered = remembered;
    }

    /** Whether an exporter takes part when several export together; it does until it is left out. */
    public boolean takesPart(ExporterEntry exporter) {
        return remembered.get(PREFIX + exporter.id()).filter("no"::equals).isEmpty();
    }

    /** Lets an exporter take part, or leaves it out. */
    public void setTakesPart(ExporterEntry exporter, boolean part) {
        if (part) {
            remembered.forget(PREFIX + exporter.id());
        } else {
            remembered.put(PREFIX + exporter.id(), "no");
        }
    }

    private static String key(ExporterEntry exporter, ExportSetting<?> setting) {
        return PREFIX + exporter.id() + "." + setting.id();
    }

    /** What stands in a setting. */
    public String text(ExporterEntry exporter, ExportSetting<?> setting) {
        return remembered.get(key(exporter, setting)).orElseGet(() -> SettingWords.usual(setting));
    }

    /** Whether a setting stands as it usually does. */
    public boolean isUsual(ExporterEntry exporter, ExportSetting<?> setting) {
        return remembered.get(key(exporter, setting)).isEmpty();
    }

    /** Types a setting. */
    public void set(ExporterEntry exporter, ExportSetting<?> setting, String typed) {
        if (typed.strip().equals(SettingWords.usual(setting))) {
            reset(exporter, setting);
        } else {
            remembered.put(key(exporter, setting), typed.strip());
        }
    }

    /** Puts a setting back to its usual value. */
    public void reset(ExporterEntry exporter, ExportSetting<?> setting) {
        remembered.forget(key(exporter, setting));
    }

    /** What is wrong with a setting, if anything. */
    public Optional<PluginFault> fault(ExporterEntry exporter, ExportSetting<?> setting) {
        return exporter.fault(setting.id(), text(exporter, setting));
    }

    /** Whether nothing is wrong with the settings of an exporter. */
    public boolean sound(ExporterEntry exporter) {
        return exporter.settings().stream()
                .allMatch(setting -> fault(exporter, setting).isEmpty());
    }

    /** What is set about some exporters. */
    SettingTexts texts(List<ExporterEntry> exporters) {
        SettingTexts texts = SettingTexts.NONE;
        for (ExporterEntry exporter : exporters) {
            for (ExportSetting<?> setting : exporter.settings()) {
                if (!isUsual(exporter, setting)) {
                    texts = texts.with(exporter.id(), setting.id(), text(exporter, setting));
                }
            }
        }
        return texts;
    }
}
