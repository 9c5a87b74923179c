// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.api;

import drumfall.plugin.api.Stability.Level;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A version of this api; a plugin states in its jar's manifest which one it was written for.
 *
 * <p>The manifest attribute is {@value #MANIFEST_ATTRIBUTE}, its value for example {@code 1.1}. The program reads it
 * before it loads any class of the jar.
 *
 * @param major changes when something a plugin may rely on goes or changes; at least 1
 * @param minor changes when something is added; at least 0
 * @since 1.0
 */
@Stability(level = Level.STABLE, since = "1.0")
public record ApiVersion(int major, int minor) {
    /** The version of the api in this jar. */
    public static final ApiVersion CURRENT = new ApiVersion(1, 1);

    /** Name of the manifest attribute. */
    public static final String MANIFEST_ATTRIBUTE = "Drumfall-Api";

    private static final Pattern TEXT = Pattern.compile("([1-9][0-9]{0,5})\\.(0|[1-9][0-9]{0,5})");

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if the major number is below 1 or the minor number below 0
     */
    public ApiVersion {
        if (major < 1 || minor < 0) {
            throw new IllegalArgumentException(
                    "The api version (%d.%d) must be at least 1.0. Maybe write 1.0.".formatted(major, minor));
        }
    }

    /**
     * Reads a version.
     *
     * @param text two whole numbers of at most six digits with a full stop between, for example {@code "1.0"}
     * @throws IllegalArgumentException if the text is anything else
     */
    public static ApiVersion parse(String text) {
        Matcher matcher = TEXT.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException(
                    "The api version (%s) must be two whole numbers with a full stop between. Maybe write %s."
                            .formatted(text, CURRENT));
        }
        return new ApiVersion(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)));
    }

    /**
     * Whether a program with this api serves a plugin written for another: the same major number, no larger minor one.
     *
     * @param asked what the plugin was written for
     */
    public boolean serves(ApiVersion asked) {
        return asked.major == major && asked.minor <= minor;
    }

    /** The version as it is written, for example {@code 1.0}. */
    @Override
    public String toString() {
        return major + "." + minor;
    }
}
