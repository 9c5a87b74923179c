// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static drumfall.solver.making.part.Lengths.mm;

import drumfall.solver.making.shape.Rings;
import drumfall.solver.making.solid.Region;
import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.making.solid.Solid;
import drumfall.solver.teeth.form.LanternPinion;
import drumfall.solver.teeth.outline.GearOutline;
import drumfall.solver.teeth.outline.Outline;
import drumfall.solver.teeth.outline.WheelBody;
import drumfall.solver.train.ToothModule;

/**
 * A wheel and the lower shroud of a lantern pinion as one part, and the upper shroud by itself; the pins are steel wire.
 *
 * @param wheel the wheel
 * @param pins the pinion at module 1
 * @param module its module
 * @param shroud thickness of a shroud, m
 * @param core diameter of the tube between the shrouds, m; 0 leaves it out
 * @param length between the shrouds, m
 * @param allowance added to each pin's hole, m
 */
public record WheelWithLantern(
        PlateWheel wheel,
        LanternPinion pins,
        ToothModule module,
        double shroud,
        double core,
        double length,
        double allowance)
        implements PrintedShape {
    /**
     * Checks the sizes against each other.
     *
     * @throws SizeLimitException if a shroud is too thin, or would hang over a window, or the core meets the pins
     * @throws drumfall.solver.teeth.flank.ToothLimitException if the bore reaches the pins, or these each other
     */
    public WheelWithLantern {
        PrintSizes print = wheel.print();
        print.requireHeight("shroud of a lantern pinion", shroud);
        print.requireHeight("length of a lantern pinion", length);
        double pitch = pins.pitchRadius() * module.metres();
        double pin = pins.pinDiameter() * module.metres() / 2 + allowance / 2;
        SizeLimitException.atLeast(
                "hub of a wheel under a lantern pinion",
                2 * wheel.solidRadius(),
                2 * (pitch + pin + print.wall()),
                "so that no shroud hangs over a window");
        if (core != 0) {
            SizeLimitException.atLeast(
                    "core of a lantern pinion",
                    core,
                    wheel.bore() + 2 * print.wall(),
                    "two extrusion widths around the bore");
            SizeLimitException.atMost(
                    "core of a lantern pinion", core, 2 * (pitch - pin), "so that it clears the pins");
        }
        disc(wheel, pins, module, allowance);
    }

    private static Outline disc(PlateWheel wheel, LanternPinion pins, ToothModule module, double allowance) {
        WheelBody body = WheelBody.solid(mm(wheel.bore()), mm(wheel.print().wall()));
        return GearOutline.shroud(pins, body, module.millimetres(), mm(allowance));
    }

    /** The wheel, the lower shroud and the core. */
    @Override
    public Solid solid() {
        Solid lower = wheel.solid().topped(mm(shroud), Region.of(disc(wheel, pins, module, allowance)));
        return core == 0
                ? lower
                : lower.topped(mm(length), Region.of(Rings.circle(mm(core) / 2), Rings.hole(mm(wheel.bore()) / 2)));
    }

    /** The upper shroud. */
    public Solid upperShroud() {
        return Solid.of(mm(shroud), Region.of(disc(wheel, pins, module, allowance)));
    }
}
