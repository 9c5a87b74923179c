// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.layer;

/**
 * A height as asked for and as printed.
 *
 * @param asked nm
 * @param layers whole layers, the first one counted
 * @param height what these layers measure, nm
 * @param rounding which way the asked height was to go
 */
public record LayerHeight(long asked, int layers, long height, LayerRounding rounding) {
    /** How much higher than asked the part is printed, nm; negative if lower, 0 if the asked height is whole. */
    public long difference() {
        return height - asked;
    }
}
