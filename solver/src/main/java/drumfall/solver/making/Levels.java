// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.fitting.FittedArbor.Standing;
import drumfall.solver.fitting.FittedMovement;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.size.Face;
import java.util.List;

/**
 * Where parts stand along the arbors, metres before the back plate's inner face, every arbor resting towards the back.
 *
 * @param stands what stands on each arbor of the train
 * @param pallets the rear of the pallets
 * @param motion the rear of both planes of the motion work; empty without it
 * @param front where winding square and hands begin
 */
public record Levels(List<Stand> stands, double pallets, List<Double> motion, double front) {
    private static final double METRES = 1e-9;

    /** Copies the lists. */
    public Levels {
        stands = List.copyOf(stands);
        motion = List.copyOf(motion);
    }

    /**
     * What stands on an arbor between the plates.
     *
     * @param rear its rear end
     * @param height of all of it
     * @param between from the wheel to the far end of its pinion, or from the great wheel to the drum
     * @param toward which way pinion or drum stand, seen from the wheel
     */
    public record Stand(double rear, double height, double between, Face toward) {
        static Stand of(Standing standing) {
            return new Stand(
                    METRES * standing.backSpacer(),
                    METRES * standing.parts(),
                    METRES * standing.between(),
                    standing.toward());
        }

        /**
         * The place at a distance from the wheel's outer face towards pinion or drum.
         *
         * @param distance m
         */
        double along(double distance) {
            return toward == Face.FRONT ? rear + distance : rear + height - distance;
        }
    }

    /**
     * The levels of a fitted movement, which may be deeper than its layout by less than a layer.
     *
     * @param layout where everything stands
     * @param fitted its fitting
     */
    static Levels of(Layout layout, FittedMovement fitted) {
        long deeper = fitted.depth() - layout.planes().innerDepth();
        long plate = layout.need().envelope().plateThickness();
        return new Levels(
                fitted.arbors().stream()
                        .flatMap(arbor -> arbor.standing().stream())
                        .map(Stand::of)
                        .toList(),
                METRES * layout.planes().ofEscape().from(),
                layout.planes().motion().stream()
                        .map(plane -> METRES * (plane.from() + deeper))
                        .toList(),
                METRES * Math.max(layout.planes().depth() - plate + deeper, fitted.depth() + plate));
    }
}
