// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.form;

import drumfall.solver.teeth.flank.Flank;

/** The teeth of one gear at module 1, whatever their form. */
public sealed interface ToothForm permits CycloidalPinion, CycloidalWheel, InvoluteGear, LanternPinion, LanternWheel {
    /** The number of teeth, leaves or pins. */
    int toothCount();

    /** The flank of one tooth, from the root circle to the tip. */
    Flank flank();

    /** Whether the form may drive; a lantern pinion may not. */
    default boolean mayDrive() {
        return true;
    }

    /** The radius of the pitch circle, modules. */
    default double pitchRadius() {
        return toothCount() / 2.0;
    }

    /** The angle of one pitch, rad. */
    default double pitchAngle() {
        return 2 * Math.PI / toothCount();
    }
}
