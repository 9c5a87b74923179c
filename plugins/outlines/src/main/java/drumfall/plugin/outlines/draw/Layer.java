// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines.draw;

import java.util.regex.Pattern;

/**
 * A layer, named after what it holds.
 *
 * @param name capitals, digits and hyphens, at most 31 characters, as release 12 of DXF allows
 * @param line how its lines are drawn
 * @param colour number of its colour in a DXF file, 1 to 255
 */
public record Layer(String name, LineKind line, int colour) {
    private static final Pattern NAME = Pattern.compile("[A-Z0-9][A-Z0-9-]{0,30}");
    private static final int MOST_COLOURS = 255;

    /**
     * Checks name and colour.
     *
     * @throws IllegalArgumentException if a file could not hold them
     */
    public Layer {
        if (!NAME.matcher(name).matches() || colour < 1 || colour > MOST_COLOURS) {
            throw new IllegalArgumentException("The name (" + name + ") of a layer must be 1 to 31 capitals, digits and"
                    + " hyphens and its colour (" + colour + ") from 1 to 255. Maybe shorten it.");
        }
    }
}
