// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Brief;
import drumfall.solver.layout.size.Nanometres;
import drumfall.solver.power.Movement;
import drumfall.solver.power.escape.Deadbeat;
import drumfall.solver.power.escape.PalletDrawing;
import drumfall.solver.quantity.Quantity;
import java.util.Optional;

/**
 * Holes that a brief holds and the train does not settle: the minute arbor's, which the motion work settles, and the pallet
 * arbor's, which the escapement does with the escape wheel's count. Whoever changes those parts of a brief would move these
 * holes; held, no train is found then. Compared to the nanometre, as holes are laid out.
 */
final class HeldHoles {
    private final Movement movement;
    private final Optional<Quantity> heldMotion;
    private final Optional<Quantity> heldPallets;
    private final double motionDistance;

    /**
     * The holes of a brief.
     *
     * @param brief the brief
     * @param movement its movement
     * @param loads what its arbors carry, the motion work among it
     */
    HeldHoles(Brief brief, Movement movement, ArborLoads loads) {
        this.movement = movement;
        this.heldMotion = brief.locks().motionDistance();
        this.heldPallets = brief.locks().palletDistance();
        this.motionDistance = loads.motionDistance();
    }

    /** Distance of the minute arbor from the centre arbor, m; 0 without a motion work that can be made. */
    double motionDistance() {
        return motionDistance;
    }

    /**
     * Distance of the pallet arbor from the escape arbor, m; 0 if there is no such escapement.
     *
     * @param escapeTeeth teeth of the escape wheel
     */
    double palletDistance(int escapeTeeth) {
        Deadbeat escapement = movement.escapement().with(escapeTeeth);
        return escapement.exists() ? new PalletDrawing(escapement).centreDistance() : 0;
    }

    /** Whether the minute arbor's hole is where it is held. */
    boolean motionKept() {
        return heldMotion.isEmpty() || same(heldMotion.get(), motionDistance);
    }

    /**
     * Whether the pallet arbor's hole is where it is held.
     *
     * @param escapeTeeth teeth of the escape wheel
     */
    boolean palletsKept(int escapeTeeth) {
        return heldPallets.isEmpty() || same(heldPallets.get(), palletDistance(escapeTeeth));
    }

    private static boolean same(Quantity held, double distance) {
        return Nanometres.of(held.si()) == Nanometres.of(distance);
    }
}
