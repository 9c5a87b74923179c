// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import java.util.Optional;
import java.util.regex.Pattern;

/** What an id and a title must look like. */
final class ExporterRules {
    private static final Pattern ID = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");
    private static final int LONGEST_ID = 40;
    private static final int LONGEST_TITLE = 80;

    private ExporterRules() {}

    static Optional<PluginFault> fault(String jar, String id, String title) {
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
