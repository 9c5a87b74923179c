// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.bore;

import drumfall.solver.fit.FitException;
import drumfall.solver.fit.Nanometres;

/**
 * How far play at its two pivots lets an arbor stray at one gear.
 *
 * @param arbor name of the arbor
 * @param frontPlay play on the diameter at the front pivot, nm, 0 to 5 mm
 * @param backPlay play on the diameter at the back pivot, nm, 0 to 5 mm
 * @param position of the gear from the front pivot over the distance of the pivots; outside 0 to 1 it overhangs, −10 to 10
 */
public record SideShake(String arbor, long frontPlay, long backPlay, double position) {
    private static final long LOOSEST = 5 * Nanometres.MILLIMETRE;
    private static final double FARTHEST = 10;

    /**
     * Checks plays and position.
     *
     * @throws FitException if one is out of range
     */
    public SideShake {
        String owner = "arbor (" + arbor + ")";
        FitException.requireLength("frontPlay", owner, frontPlay, 0, LOOSEST);
        FitException.requireLength("backPlay", owner, backPlay, 0, LOOSEST);
        FitException.requireNumber("position", owner, position, -FARTHEST, FARTHEST, "of the pivots' distance");
    }

    /**
     * Farthest that the gear's centre gets from where it is drawn, nm: {@code |1 − t| p₁/2 + |t| p₂/2}.
     *
     * <p>Each pivot strays by half its play to any side; the arbor is straight between them.
     */
    public double farthest() {
        return (Math.abs(1 - position) * frontPlay + Math.abs(position) * backPlay) / 2;
    }
}
