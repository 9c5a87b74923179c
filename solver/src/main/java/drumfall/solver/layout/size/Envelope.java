// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.size;

import java.util.Optional;

/**
 * The frame that everything must stand in; parts may touch it.
 *
 * @param width nm, positive
 * @param height nm, positive
 * @param depth over both plates and the motion work, nm, positive
 * @param plateThickness of each of the two plates, nm, positive
 * @param pillars between the plates
 * @param dialPlace where the dial centre must be
 */
public record Envelope(
        long width, long height, long depth, long plateThickness, Optional<Pillars> pillars, DialPlace dialPlace) {
    /**
     * Checks the lengths, and that dial centre and pillars lie in the frame.
     *
     * @throws IllegalArgumentException if a length is out of range or something stands out of the frame
     */
    public Envelope {
        Nanometres.positive("envelope width", width);
        Nanometres.positive("envelope height", height);
        Nanometres.positive("envelope depth", depth);
        Nanometres.positive("plate thickness", plateThickness);
        atMost("dial centre from the left", dialPlace.fromLeft().orElse(0), "envelope width", width);
        atMost("dial centre from the bottom", dialPlace.fromBottom().orElse(0), "envelope height", height);
        pillars.ifPresent(four -> {
            atMost("pillars' width", 2 * (four.sideInset() + four.radius()), "envelope width", width);
            atMost("pillars' height", 2 * (four.endInset() + four.radius()), "envelope height", height);
        });
    }

    private static void atMost(String subject, long length, String limit, long most) {
        if (length > most) {
            throw new IllegalArgumentException(
                    "The %s (%d nm) must be at most the %s (%d nm). Maybe make the frame larger."
                            .formatted(subject, length, limit, most));
        }
    }
}
