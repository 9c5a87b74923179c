// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fitting;

import drumfall.solver.brief.Brief.ArborBuild;
import drumfall.solver.fit.shake.EndShake;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.size.Face;
import java.util.Optional;

/**
 * An arbor with its rod, its holes in the plates and what stands on it.
 *
 * @param name such as {@code arbor 2}
 * @param build how it is built
 * @param place where it stands in the elevation
 * @param length of its rod, nm
 * @param front what carries it in the front plate, if anything
 * @param back what carries it in the back plate, if anything
 * @param standing what stands on it between the plates; empty for pallets and minute wheel
 */
public record FittedArbor(
        String name,
        ArborBuild build,
        Place place,
        long length,
        Optional<PlateHole> front,
        Optional<PlateHole> back,
        Optional<Standing> standing) {
    /**
     * What stands on an arbor between the plates, in whole layers, resting towards the back plate.
     *
     * @param parts height of wheel and pinion, or of great wheel, ratchet and drum, nm
     * @param between from the wheel to the far end of its pinion, nm: the length of the leaves, or of shrouds and pins; on
     *     the drum arbor from the great wheel to the drum: the height of the ratchet
     * @param toward which way pinion or drum stand, seen from the wheel
     * @param backSpacer height of the spacer behind them, nm; 0 for none
     * @param frontSpacer height of the spacer before them, nm; 0 for none
     * @param shake the end shake that this gives
     */
    public record Standing(long parts, long between, Face toward, long backSpacer, long frontSpacer, EndShake shake) {}
}
