// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import java.time.Duration;

/**
 * How long a plugin may take before it is left behind.
 *
 * @param loading for each exporter: constructor, id and title together; positive
 * @param exporting for one export; positive
 */
public record PluginLimits(Duration loading, Duration exporting) {
    /** Ten seconds to load, a minute to export; both far beyond what honest exporters take. */
    public static final PluginLimits ORDINARY = new PluginLimits(Duration.ofSeconds(10), Duration.ofSeconds(60));

    /**
     * Checks the limits.
     *
     * @throws IllegalArgumentException if one is not positive
     */
    public PluginLimits {
        requirePositive("loading", loading);
        requirePositive("exporting", exporting);
    }

    static void requirePositive(String name, Duration limit) {
        if (limit.isZero() || limit.isNegative()) {
            throw new IllegalArgumentException(
                    "The limit (%s) for %s must be more than 0 s. Maybe 60 s.".formatted(limit, name));
        }
    }

    /** A limit as people read it, seconds without trailing zeros. */
    static String seconds(Duration limit) {
        return java.math.BigDecimal.valueOf(limit.toMillis(), 3)
                .stripTrailingZeros()
                .toPlainString();
    }
}
