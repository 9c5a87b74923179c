// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.ui.plugin.SettingTexts;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Option;

/** Settings of exporters on the command line. */
final class SettingChoice {
    private static final Pattern ENTRY = Pattern.compile("([^.=]+)\\.([^.=]+)=(.*)", Pattern.DOTALL);

    @Option(names = "--set", paramLabel = "EXPORTER.SETTING=VALUE", descriptionKey = "option.set")
    private List<String> entries = new ArrayList<>();

    /** What is set. */
    SettingTexts texts() {
        SettingTexts texts = SettingTexts.NONE;
        for (String text : entries) {
            Matcher entry = ENTRY.matcher(text);
            if (!entry.matches()) {
                throw RefusedInput.of("set.form", text);
            }
            String exporter = entry.group(1).strip();
            String setting = entry.group(2).strip();
            if (texts.of(exporter, setting).isPresent()) {
                throw RefusedInput.of(
                        "set.twice",
                        exporter + "." + setting,
                        texts.of(exporter, setting).get());
            }
            texts = texts.with(exporter, setting, entry.group(3).strip());
        }
        return texts;
    }
}
