// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

import drumfall.solver.layout.size.MovementParts;

/** Half of a train, with the motion work, which stands whatever the train. */
public enum Half {
    /** From the drum with its line to the pinion of the centre arbor. */
    ABOVE,
    /** From the wheel of the centre arbor to the pallets. */
    BELOW;

    /**
     * Whether a part belongs to it.
     *
     * @param part a part on an arbor
     * @param parts of the movement
     */
    public boolean holds(Part part, MovementParts parts) {
        int arbor = part.number();
        int centre = parts.centreArbor();
        if (arbor == centre) {
            return switch (part.kind()) {
                case WHEEL, ESCAPE_WHEEL -> this == BELOW;
                case PINION, HUB, DRUM -> this == ABOVE;
                default -> true;
            };
        }
        return arbor > parts.palletArbor() || (this == ABOVE) == (arbor < centre);
    }
}
