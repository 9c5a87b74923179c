// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.size;

/**
 * The escape wheel and the pallets that it drives.
 *
 * @param wheelTipRadius nm, positive
 * @param thickness of the plane that escape wheel and pallets share: that of the pallets, in whose middle the wheel stands, nm,
 *     positive
 * @param palletDistance from escape arbor to pallet arbor, nm, positive
 * @param palletDirection from escape arbor to pallet arbor, rad anticlockwise from the right; {@link #ABOVE} is upright
 * @param palletRadius reach of the pallets from their arbor in any of their positions, nm, positive
 * @param palletRodRadius nm, positive
 */
public record EscapeSize(
        long wheelTipRadius,
        long thickness,
        long palletDistance,
        double palletDirection,
        long palletRadius,
        long palletRodRadius) {
    /** The pallet arbor stands on the vertical over the escape arbor. */
    public static final double ABOVE = Math.PI / 2;

    /**
     * Checks the lengths and the direction.
     *
     * @throws IllegalArgumentException if a length is out of range or the direction does not point upwards
     */
    public EscapeSize {
        Nanometres.positive("escape wheel tip radius", wheelTipRadius);
        Nanometres.positive("escape wheel thickness", thickness);
        Nanometres.positive("pallet distance", palletDistance);
        Nanometres.positive("pallet radius", palletRadius);
        Nanometres.positive("pallet rod radius", palletRodRadius);
        if (!(palletDirection > 0 && palletDirection < Math.PI)) {
            throw new IllegalArgumentException(
                    "The pallet direction (%s rad) must be between 0 rad and pi rad, above the escape arbor. Maybe it was given in degrees."
                            .formatted(palletDirection));
        }
    }
}
