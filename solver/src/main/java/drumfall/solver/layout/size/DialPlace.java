// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.size;

import java.util.OptionalLong;

/**
 * Where the dial centre must stand in the frame; a way left open is chosen with the layout.
 *
 * @param fromLeft from the frame's left edge, nm, not negative
 * @param fromBottom from the frame's lower edge, nm, not negative
 */
public record DialPlace(OptionalLong fromLeft, OptionalLong fromBottom) {
    /** Anywhere in the frame. */
    public static final DialPlace ANYWHERE = new DialPlace(OptionalLong.empty(), OptionalLong.empty());

    /**
     * Checks the lengths.
     *
     * @throws IllegalArgumentException if a length is out of range
     */
    public DialPlace {
        fromLeft.ifPresent(length -> Nanometres.notNegative("dial centre from the left", length));
        fromBottom.ifPresent(length -> Nanometres.notNegative("dial centre from the bottom", length));
    }

    /**
     * A fixed place.
     *
     * @param fromLeft from the frame's left edge, nm
     * @param fromBottom from the frame's lower edge, nm
     */
    public static DialPlace at(long fromLeft, long fromBottom) {
        return new DialPlace(OptionalLong.of(fromLeft), OptionalLong.of(fromBottom));
    }

    /**
     * On a vertical, at any height.
     *
     * @param fromLeft from the frame's left edge, nm
     */
    public static DialPlace onVertical(long fromLeft) {
        return new DialPlace(OptionalLong.of(fromLeft), OptionalLong.empty());
    }

    /**
     * A fixed place as shares of the frame's width and height.
     *
     * @param width nm
     * @param height nm
     * @param acrossShare from the left, 0 to 1
     * @param upShare from the bottom, 0 to 1
     */
    public static DialPlace share(long width, long height, double acrossShare, double upShare) {
        return at(Math.round(width * acrossShare), Math.round(height * upShare));
    }
}
