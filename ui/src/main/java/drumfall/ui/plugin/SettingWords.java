// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import drumfall.plugin.api.ExportSetting;
import drumfall.plugin.api.ExportSetting.Choice;
import drumfall.plugin.api.ExportSetting.Count;
import drumfall.plugin.api.ExportSetting.Length;
import drumfall.plugin.api.ExportSetting.Text;
import drumfall.solver.quantity.Quantity;
import java.util.stream.Collectors;

/** Settings in words: what they may be, and their values as they are typed. */
public final class SettingWords {
    private SettingWords() {}

    /**
     * What a setting may be, such as {@code a length from 0.001 mm to 1 mm}.
     *
     * @param setting the setting
     */
    public static String allowed(ExportSetting<?> setting) {
        if (setting instanceof Length length) {
            return FaultText.phrase("setting.length", length.least(), length.most());
        }
        if (setting instanceof Count count) {
            return FaultText.phrase("setting.count", text(count.least()), text(count.most()));
        }
        if (setting instanceof Choice choice) {
            return FaultText.phrase(
                    "setting.choice",
                    choice.values().stream().map(Choice.Value::id).collect(Collectors.joining(", ")));
        }
        return setting instanceof Text line
                ? FaultText.phrase("setting.text", text(line.longest()))
                : FaultText.phrase("setting.yesno");
    }

    /**
     * The usual value as it would be typed.
     *
     * @param setting the setting
     */
    public static String usual(ExportSetting<?> setting) {
        return text(setting.usual());
    }

    /**
     * A value as it would be typed.
     *
     * @param value of a setting
     */
    public static String text(Object value) {
        if (value instanceof Boolean yes) {
            return FaultText.word(yes ? "setting.yes" : "setting.no");
        }
        return value instanceof Quantity quantity ? quantity.text() : String.valueOf(value);
    }
}
