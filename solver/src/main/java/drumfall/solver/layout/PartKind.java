// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

/** Kinds of parts that need room. */
public enum PartKind {
    /** The drum over its flanges. */
    DRUM("drum"),
    /** A wheel of the going train. */
    WHEEL("wheel"),
    /** A pinion of the going train. */
    PINION("pinion"),
    /** The escape wheel. */
    ESCAPE_WHEEL("escape wheel"),
    /** The pallets in any of their positions. */
    PALLETS("pallets"),
    /** The rod of an arbor, or the stud of the minute arbor. */
    ROD("rod"),
    /** The hub between the planes of an arbor's pinion and wheel. */
    HUB("hub"),
    /** The cannon pinion. */
    CANNON_PINION("cannon pinion"),
    /** The minute wheel. */
    MINUTE_WHEEL("minute wheel"),
    /** The minute pinion. */
    MINUTE_PINION("minute pinion"),
    /** The hour wheel. */
    HOUR_WHEEL("hour wheel"),
    /** The line on its way down from the drum. */
    LINE("line"),
    /** The weight with its pulley, wherever it hangs. */
    WEIGHT("weight"),
    /** A pillar of the frame. */
    PILLAR("pillar");

    private final String words;

    PartKind(String words) {
        this.words = words;
    }

    @Override
    public String toString() {
        return words;
    }
}
