// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

/**
 * A figure of the strip that follows from the others and can be asked where it comes from, but not set.
 *
 * @param kind what it says
 * @param arbor number of the arbor it speaks of, 0 for the drum arbor and for the whole train
 */
public record StripReading(Kind kind, int arbor) {
    /** What a reading says. */
    public enum Kind {
        /** Duration of a full fall. */
        RUN,
        /** Recommended weight. */
        WEIGHT,
        /** Seconds of one beat. */
        BEAT,
        /** Beats in an hour. */
        BEATS_PER_HOUR,
        /** Length of the simple pendulum that keeps the beat. */
        PENDULUM,
        /** Torque that the wheel of an arbor hands on. */
        TORQUE,
        /** Power that the wheel of an arbor hands on. */
        POWER
    }

    static StripReading of(Kind kind) {
        return new StripReading(kind, 0);
    }
}
