// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

import drumfall.solver.teeth.GearFigures;
import java.util.Optional;

/**
 * Sizes and density that all printed parts of a movement share, and the masses that follow.
 *
 * <p>Masses are whole micrograms, so that a sum of parts does not depend on the order in which it is taken. Wheels and pinions
 * are weighed as if they had no bores: whose rod a pinion stands on is open until the number of meshes is chosen. What bores take
 * off is a figure of the arbor, which its supports count.
 *
 * @param wheelThickness thickness of a wheel, m, positive
 * @param leafLength length of a pinion from the face of its wheel, m, positive
 * @param thinning taken off each tooth along the pitch circle, m
 * @param crossing how wheels are crossed out
 * @param shrouds of lantern pinions; empty if pinions have leaves
 * @param density density of the printed material, kg/m&sup3;, positive
 * @param escapeTeeth teeth of the escape wheel
 * @param escapeWheelRadius radius of the escape wheel to its tips, m, positive
 * @param drum what stands on the drum's arbor
 */
public record PartStock(
        double wheelThickness,
        double leafLength,
        double thinning,
        Crossing crossing,
        Optional<Shrouds> shrouds,
        double density,
        EscapeToothSize escapeTeeth,
        double escapeWheelRadius,
        DrumForm drum) {
    private static final double MICROGRAMS_PER_KILOGRAM = 1e9;

    /**
     * Mass of a wheel in µg: its toothed disc less its windows.
     *
     * @param wheel its teeth
     * @param module m
     */
    public long wheelMass(GearFigures wheel, double module) {
        double windows = crossing.opened(module * wheel.rootRadius(), crossing.rim(module));
        return micrograms(wheelThickness * (area(wheel, module) - windows));
    }

    /**
     * Mass of what is printed of a pinion in µg: leaves, or both shrouds, and what it fills of the windows of the wheel it
     * stands on. The thin tube between some shrouds is left out.
     *
     * @param leaves how many
     * @param pinion its teeth
     * @param module m
     */
    public long pinionMass(int leaves, GearFigures pinion, double module) {
        double tip = module * pinion.tipRadius();
        double above = shrouds.map(discs -> discs.volume(leaves, pin(leaves, pinion, module), tip))
                .orElseGet(() -> leafLength * area(pinion, module));
        double foot = shrouds.map(discs -> discs.radius(tip)).orElse(tip);
        return micrograms(above + wheelThickness * crossing.filled(foot));
    }

    /**
     * Mass of the steel pins of a lantern pinion, µg; 0 for a pinion with leaves.
     *
     * @param leaves how many
     * @param pinion its teeth
     * @param module m
     */
    public long pinMass(int leaves, GearFigures pinion, double module) {
        return shrouds.map(discs -> Math.round(
                        MICROGRAMS_PER_KILOGRAM * Shrouds.pinMass(leaves, pin(leaves, pinion, module), leafLength)))
                .orElse(0L);
    }

    /** Diameter of a pin, m: twice what stands out beyond the pitch circle. */
    private static double pin(int leaves, GearFigures pinion, double module) {
        return module * (2 * pinion.tipRadius() - leaves);
    }

    private double area(GearFigures gear, double module) {
        return module * module * gear.area(thinning / module);
    }

    /** Mass of the escape wheel in µg, crossed out like the others. */
    public long escapeWheelMass() {
        double windows = crossing.opened(escapeTeeth.root(escapeWheelRadius), crossing.escapeRim());
        return micrograms(wheelThickness * (escapeTeeth.area(escapeWheelRadius) - windows));
    }

    /**
     * Mass of what stands on the drum's arbor besides the great wheel, µg: drum, ratchet with click, winding square.
     *
     * @param diameter bare diameter, m
     */
    public long drumMass(double diameter) {
        return barrelMass(diameter) + ratchetMass(diameter) + groundMass(diameter) + squareMass();
    }

    /**
     * Mass of the drum with both flanges, µg.
     *
     * @param diameter bare diameter, m
     */
    public long barrelMass(double diameter) {
        return micrograms(drum.barrel(diameter));
    }

    /**
     * Mass of the ratchet with its click, µg.
     *
     * @param diameter bare diameter of the drum, m
     */
    public long ratchetMass(double diameter) {
        return micrograms(drum.ratchetAndClick(diameter));
    }

    /**
     * Mass of what the click's ground fills of the great wheel's windows, µg.
     *
     * @param diameter bare diameter of the drum, m
     */
    public long groundMass(double diameter) {
        return micrograms(wheelThickness * crossing.filled(drum.clickGround(diameter)));
    }

    /** Mass of the winding square with its collar, µg. */
    public long squareMass() {
        return micrograms(drum.windingSquare());
    }

    /**
     * Radius of the drum's flanges, m.
     *
     * @param diameter bare diameter, m
     */
    public double drumFlangeRadius(double diameter) {
        return drum.flangeRadius(diameter);
    }

    /** Diameter of the line, m. */
    public double lineDiameter() {
        return drum.line();
    }

    /** Mass of a printed volume in µg. */
    private long micrograms(double volume) {
        return Math.round(density * volume * MICROGRAMS_PER_KILOGRAM);
    }
}
