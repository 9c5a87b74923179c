// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import drumfall.plugin.api.ExportSetting;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** What an id, a title and a list of settings must look like. */
final class ExporterRules {
    private static final Pattern ID = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");
    private static final int LONGEST_ID = 40;
    private static final int LONGEST_TITLE = 80;
    private static final int MOST_SETTINGS = 40;

    private ExporterRules() {}

    /**
     * The first rule that is broken.
     *
     * @param settings what the exporter named, entries and all as it gave them
     */
    static Optional<PluginFault> fault(String jar, String id, String title, List<ExportSetting<?>> settings) {
        return textFault(jar, id, title)
                .or(() -> settingsFault(settings).map(why -> PluginFault.of(FaultKind.BAD_SETTINGS, jar, id, why)));
    }

    private static Optional<String> settingsFault(List<ExportSetting<?>> settings) {
        if (settings == null || settings.contains(null)) {
            return Optional.of(FaultText.word("settings.absent"));
        }
        if (settings.size() > MOST_SETTINGS) {
            return Optional.of(FaultText.word("settings.many"));
        }
        Set<String> ids = new HashSet<>();
        return settings.stream()
                .map(ExportSetting::id)
                .filter(id -> !ids.add(id))
                .findFirst()
                .map(id -> FaultText.phrase("settings.twice", id));
    }

    private static Optional<PluginFault> textFault(String jar, String id, String title) {
        if (id == null || id.length() > LONGEST_ID || !ID.matcher(id).matches() || FileNames.isDevice(id)) {
            return Optional.of(PluginFault.of(FaultKind.BAD_ID, jar, id));
        }
        if (title == null
                || title.isBlank()
                || title.length() > LONGEST_TITLE
                || !FaultText.oneLine(title).equals(title)) {
            return Optional.of(PluginFault.of(FaultKind.BAD_TITLE, jar, id, title));
        }
        return Optional.empty();
    }
}
