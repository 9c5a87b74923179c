// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

/** What a line of a drawing is. */
enum Layer {
    /** Edge of a part. */
    OUTLINE(7, false),
    /** Hole for the arbor. */
    BORE(5, false),
    /** Pitch circles and lines of centres, chain-dotted (ISO 128: thin long-dashed dotted line). */
    PITCH(1, true),
    /** Tip circles. */
    TIP(3, false),
    /** Root circles. */
    ROOT(4, false);

    private final int colour;
    private final boolean chainDotted;

    Layer(int colour, boolean chainDotted) {
        this.colour = colour;
        this.chainDotted = chainDotted;
    }

    /** Number of the colour in a DXF file. */
    int colour() {
        return colour;
    }

    /** Whether its lines are chain-dotted. */
    boolean chainDotted() {
        return chainDotted;
    }
}
