// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Stream;

/** The sentences about plugins, from the bundle. */
final class FaultText {
    static final String BUNDLE = "drumfall.ui.plugin.faults";

    private static final int LONGEST_VALUE = 240;

    private FaultText() {}

    static String sentence(FaultKind kind, String plugin, Object... values) {
        Object[] shown = Stream.concat(Stream.of(plugin), Stream.of(values))
                .map(value -> oneLine(String.valueOf(value)))
                .toArray();
        return new MessageFormat(bundle().getString(kind.name()), Locale.ROOT).format(shown);
    }

    /** Words with values put in. */
    static String phrase(String key, Object... values) {
        return new MessageFormat(bundle().getString(key), Locale.ROOT).format(values);
    }

    static String word(String key) {
        return bundle().getString(key);
    }

    /** What strangers wrote may hold line breaks or terminal controls, or be endless. */
    static String oneLine(String text) {
        String cut = text.length() > LONGEST_VALUE ? text.substring(0, LONGEST_VALUE) + "…" : text;
        return cut.replaceAll("[\\p{Cntrl}\\p{Cf}\\u2028\\u2029]+", " ").strip();
    }

    private static ResourceBundle bundle() {
        return ResourceBundle.getBundle(BUNDLE);
    }
}
