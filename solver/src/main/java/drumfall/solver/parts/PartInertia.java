// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

import drumfall.solver.teeth.GearFigures;

/**
 * Moments of inertia of what turns with an arbor, about its axis, kg m²: the shapes that are made, as they are weighed.
 *
 * <p>Left out are bores, rods and spacers, which are too near to the axis to count: the fourth power of a millimetre beside that
 * of some ten.
 *
 * @param stock sizes and density of the parts
 */
public record PartInertia(PartStock stock) {
    /**
     * A wheel with what stands on it standing in solid ground.
     *
     * @param wheel its teeth
     * @param polar second moment of the disc with its teeth before they are thinned, modules to the fourth
     * @param module m
     * @param foot radius of what stands on it, m
     */
    public double wheel(GearFigures wheel, double polar, double module, double foot) {
        Crossing crossing = stock.crossing();
        double windows = crossing.windowsPolar(module * wheel.rootRadius(), crossing.rim(module), foot);
        return stock.density() * stock.wheelThickness() * (toothed(wheel, polar, module, stock.thinning()) - windows);
    }

    /**
     * The escape wheel with its pinion standing in solid ground: teeth as they are drawn, their tips an extrusion wide.
     *
     * @param teeth how many
     * @param foot radius of the pinion, m
     */
    public double escapeWheel(int teeth, double foot) {
        Crossing crossing = stock.crossing();
        double radius = stock.escapeWheelRadius();
        double tip = crossing.wall() / 2;
        double windows = crossing.windowsPolar(stock.escapeTeeth().root(radius), crossing.escapeRim(), foot);
        return stock.density() * stock.wheelThickness() * (stock.escapeTeeth().polar(radius, teeth, tip) - windows);
    }

    /**
     * A pinion from the face of its wheel: leaves, or both shrouds and the steel pins.
     *
     * @param leaves how many
     * @param pinion its teeth
     * @param polar second moment of the disc with its teeth before they are thinned, modules to the fourth; of leaves alone
     * @param module m
     */
    public double pinion(int leaves, GearFigures pinion, double polar, double module) {
        return stock.shrouds()
                .map(discs -> lantern(discs, stock.density(), stock.leafLength(), leaves, pinion, module))
                .orElseGet(
                        () -> stock.density() * stock.leafLength() * toothed(pinion, polar, module, stock.thinning()));
    }

    /**
     * A lantern pinion.
     *
     * @param discs its shrouds
     * @param density of the printed material, kg/m³
     * @param length from the face of its wheel to its far end, m
     * @param leaves how many pins
     * @param pinion its pins
     * @param module m
     */
    public static double lantern(
            Shrouds discs, double density, double length, int leaves, GearFigures pinion, double module) {
        double pin = module * (2 * pinion.tipRadius() - leaves);
        double circle = module * leaves / 2.0;
        double steel = Shrouds.pinMass(leaves, pin, length);
        return density * discs.polar(leaves, pin, module * pinion.tipRadius(), circle)
                + steel * (circle * circle + pin * pin / 8);
    }

    /**
     * Radius that a pinion fills of the wheel it stands on, m.
     *
     * @param pinion its teeth
     * @param module m
     */
    public double foot(GearFigures pinion, double module) {
        double tip = module * pinion.tipRadius();
        return stock.shrouds().map(discs -> discs.radius(tip)).orElse(tip);
    }

    /**
     * What stands on the drum's arbor besides the great wheel: drum, ratchet with click, winding square.
     *
     * @param diameter bare diameter, m
     */
    public double drum(double diameter) {
        return stock.density() * stock.drum().polar(diameter);
    }

    /**
     * Second moment of a disc with thinned teeth, m⁴: both flanks of each of the {@code z} teeth are turned by {@code t / z}
     * towards each other, which takes {@code t (r_tip⁴ − r_root⁴) / 2} off all.
     *
     * @param gear its teeth
     * @param polar before they are thinned, modules to the fourth
     * @param module m
     * @param thinning taken off each tooth along the pitch circle, m
     */
    public static double toothed(GearFigures gear, double polar, double module, double thinning) {
        double taken = thinning / module * (fourth(gear.tipRadius()) - fourth(gear.rootRadius())) / 2;
        return fourth(module) * (polar - taken);
    }

    static double fourth(double length) {
        return length * length * length * length;
    }
}
