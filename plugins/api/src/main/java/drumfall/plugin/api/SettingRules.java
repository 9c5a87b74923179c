// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.api;

import java.util.Objects;
import java.util.regex.Pattern;

/** What the declaration of a setting must look like. */
final class SettingRules {
    private static final Pattern ID = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");
    private static final Pattern VALUE_ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final Pattern BREAKS = Pattern.compile("[\\p{Cntrl}\\p{Cf}\\u2028\\u2029]");
    private static final int LONGEST_ID = 40;
    private static final int LONGEST_TITLE = 60;
    private static final int LONGEST_HELP = 200;

    private SettingRules() {}

    static void requireTexts(String id, String title, String help) {
        Objects.requireNonNull(id, "id");
        boolean named = id.length() <= LONGEST_ID && ID.matcher(id).matches();
        require(
                named,
                id,
                "id",
                id,
                "have lower-case letters, digits and single hyphens, a letter first, at most 40 characters");
        require(isShown(title, LONGEST_TITLE), id, "title", title, "be one line of 1 to 60 characters");
        require(isShown(help, LONGEST_HELP), id, "help", help, "be one line of 1 to 200 characters");
    }

    static void requireValue(String id, String title) {
        Objects.requireNonNull(id, "id");
        boolean named = id.length() <= LONGEST_ID && VALUE_ID.matcher(id).matches();
        requireOf(
                "value (" + id + ")",
                named,
                "id",
                id,
                "have lower-case letters, digits and single hyphens, at most 40 characters");
        requireOf(
                "value (" + id + ")",
                isShown(title, LONGEST_TITLE),
                "title",
                title,
                "be one line of 1 to 60 characters");
    }

    private static boolean isShown(String text, int longest) {
        return text != null && !text.isBlank() && isLine(text, longest);
    }

    /** Whether a text is one line without control characters. */
    static boolean isLine(String text, int longest) {
        return text.length() <= longest && !BREAKS.matcher(text).find();
    }

    static void requireUsual(String id, Object value, boolean holds, String rule) {
        require(holds, id, "usual value", value, rule);
    }

    static void require(boolean holds, String id, String subject, Object value, String rule) {
        requireOf("setting (" + id + ")", holds, subject, value, rule);
    }

    private static void requireOf(String owner, boolean holds, String subject, Object value, String rule) {
        if (!holds) {
            throw new IllegalArgumentException("The %s (%s) of the %s must %s. Maybe change the declaration."
                    .formatted(subject, value, owner, rule));
        }
    }
}
