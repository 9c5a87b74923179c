// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.api;

import drumfall.plugin.api.Stability.Level;
import java.util.HashMap;
import java.util.Map;

/**
 * The values of an exporter's settings, all within their bounds; one that was not set has its usual value.
 *
 * @since 1.1
 */
@Stability(level = Level.STABLE, since = "1.1")
public final class SettingValues {
    /** Nothing set: every setting has its usual value. */
    public static final SettingValues USUAL = new SettingValues(Map.of());

    private final Map<ExportSetting<?>, Object> values;

    private SettingValues(Map<ExportSetting<?>, Object> values) {
        this.values = Map.copyOf(values);
    }

    /**
     * These values with one more, or another one.
     *
     * @param setting what is set
     * @param value its value
     * @param <T> of the value
     * @throws IllegalArgumentException if the value is out of the setting's bounds
     */
    public <T> SettingValues with(ExportSetting<T> setting, T value) {
        SettingRules.require(setting.allows(value), setting.id(), "value", value, "keep its bounds");
        Map<ExportSetting<?>, Object> more = new HashMap<>(values);
        more.put(setting, value);
        return new SettingValues(more);
    }

    /**
     * The value of a setting.
     *
     * @param setting as it was declared
     * @param <T> of the value
     */
    @SuppressWarnings("unchecked") // Only with() puts values in, each beside a setting of its own type.
    public <T> T of(ExportSetting<T> setting) {
        return (T) values.getOrDefault(setting, setting.usual());
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof SettingValues other && values.equals(other.values);
    }

    @Override
    public int hashCode() {
        return values.hashCode();
    }

    @Override
    public String toString() {
        return values.toString();
    }
}
