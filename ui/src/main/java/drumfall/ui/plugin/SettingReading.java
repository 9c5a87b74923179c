// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import drumfall.plugin.api.ExportSetting;
import drumfall.plugin.api.ExportSetting.Choice;
import drumfall.plugin.api.ExportSetting.Count;
import drumfall.plugin.api.ExportSetting.Length;
import drumfall.plugin.api.ExportSetting.Text;
import drumfall.plugin.api.ExportSetting.YesNo;
import drumfall.plugin.api.SettingValues;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.QuantityFormatException;
import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What an exporter's typed settings come to.
 *
 * @param values those that are right; the rest has its usual value
 * @param fault the first that is wrong, if any
 */
record SettingReading(SettingValues values, Optional<PluginFault> fault) {
    private static final String WHOLE = "[+-]?[0-9]{1,20}";

    /**
     * Reads typed settings.
     *
     * @param exporter whose
     * @param typed by the settings' ids
     */
    static SettingReading of(ExporterEntry exporter, Map<String, String> typed) {
        SettingReading reading = new SettingReading(SettingValues.USUAL, Optional.empty());
        for (Map.Entry<String, String> text : new TreeMap<>(typed).entrySet()) {
            Optional<ExportSetting<?>> setting = exporter.settings().stream()
                    .filter(candidate -> candidate.id().equals(text.getKey()))
                    .findFirst();
            SettingReading before = reading;
            reading = setting.map(known -> before.with(exporter, known, text.getValue()))
                    .orElseGet(() -> before.refused(unknown(exporter, text.getKey())));
        }
        return reading;
    }

    private static PluginFault unknown(ExporterEntry exporter, String setting) {
        List<ExportSetting<?>> known = exporter.settings();
        return known.isEmpty()
                ? PluginFault.of(FaultKind.NO_SETTINGS, exporter.id(), setting)
                : PluginFault.of(
                        FaultKind.UNKNOWN_SETTING,
                        exporter.id(),
                        setting,
                        known.stream().map(ExportSetting::id).collect(Collectors.joining(", ")));
    }

    private SettingReading refused(PluginFault next) {
        return new SettingReading(values, fault.or(() -> Optional.of(next)));
    }

    private SettingReading with(ExporterEntry exporter, ExportSetting<?> setting, String typed) {
        if (setting instanceof Length length) {
            return with(exporter, length, typed);
        }
        if (setting instanceof Count count) {
            return with(exporter, count, typed);
        }
        if (setting instanceof YesNo yesNo) {
            return with(exporter, yesNo, typed);
        }
        return setting instanceof Choice choice
                ? withText(exporter, choice, typed)
                : withText(exporter, (Text) setting, typed);
    }

    private SettingReading with(ExporterEntry exporter, YesNo yesNo, String typed) {
        boolean yes = typed.equals(SettingWords.text(true));
        return yes || typed.equals(SettingWords.text(false))
                ? set(yesNo, yes)
                : refused(bad(exporter, yesNo, typed, SettingWords.usual(yesNo)));
    }

    private SettingReading with(ExporterEntry exporter, Length length, String typed) {
        try {
            Quantity read = Quantity.parse(Dimension.LENGTH, typed);
            Quantity nearest = read.compareTo(length.least()) < 0 ? length.least() : length.most();
            return length.allows(read)
                    ? set(length, read)
                    : refused(bad(exporter, length, typed, SettingWords.text(nearest)));
        } catch (QuantityFormatException unreadable) {
            return refused(PluginFault.of(
                    FaultKind.UNREADABLE_SETTING,
                    exporter.id(),
                    length.id(),
                    unreadable.getMessage().replaceFirst("\\.$", "")));
        }
    }

    private SettingReading with(ExporterEntry exporter, Count count, String typed) {
        if (!typed.matches(WHOLE)) {
            return refused(bad(exporter, count, typed, SettingWords.usual(count)));
        }
        BigInteger read = new BigInteger(typed);
        BigInteger nearest = read.max(BigInteger.valueOf(count.least())).min(BigInteger.valueOf(count.most()));
        return read.equals(nearest)
                ? set(count, read.intValueExact())
                : refused(bad(exporter, count, typed, nearest.toString()));
    }

    private SettingReading withText(ExporterEntry exporter, ExportSetting<String> setting, String typed) {
        return setting.allows(typed) ? set(setting, typed) : refused(bad(exporter, setting, typed, setting.usual()));
    }

    private <T> SettingReading set(ExportSetting<T> setting, T value) {
        return new SettingReading(values.with(setting, value), fault);
    }

    private static PluginFault bad(ExporterEntry exporter, ExportSetting<?> setting, String typed, String instead) {
        return PluginFault.of(
                FaultKind.BAD_SETTING, exporter.id(), setting.id(), typed, SettingWords.allowed(setting), instead);
    }
}
