// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Settings of exports as typed; what is not typed has its usual value.
 *
 * @param typed by exporter's id and setting's id
 */
public record SettingTexts(Map<String, Map<String, String>> typed) {
    /** Nothing typed. */
    public static final SettingTexts NONE = new SettingTexts(Map.of());

    /** Copies the maps. */
    public SettingTexts {
        Map<String, Map<String, String>> copy = new TreeMap<>();
        typed.forEach((exporter, texts) -> copy.put(exporter, Map.copyOf(texts)));
        typed = copy;
    }

    /**
     * What is typed for an exporter.
     *
     * @param exporter its id
     */
    public Map<String, String> of(String exporter) {
        return typed.getOrDefault(exporter, Map.of());
    }

    /**
     * What is typed for a setting, if anything is.
     *
     * @param exporter the exporter's id
     * @param setting the setting's id
     */
    public Optional<String> of(String exporter, String setting) {
        return Optional.ofNullable(of(exporter).get(setting));
    }

    /**
     * The same with a setting typed.
     *
     * @param exporter the exporter's id
     * @param setting the setting's id
     * @param text what is typed
     */
    public SettingTexts with(String exporter, String setting, String text) {
        Map<String, String> texts = new TreeMap<>(of(exporter));
        texts.put(setting, text);
        Map<String, Map<String, String>> more = new TreeMap<>(typed);
        more.put(exporter, texts);
        return new SettingTexts(more);
    }
}
