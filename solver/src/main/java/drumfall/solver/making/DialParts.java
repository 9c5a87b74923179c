// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.making.part.CannonPinion;
import drumfall.solver.making.part.Crossings;
import drumfall.solver.making.part.GearCut;
import drumfall.solver.making.part.Hand;
import drumfall.solver.making.part.PinCircle;
import drumfall.solver.making.part.PipedWheel;
import drumfall.solver.making.part.WheelPart;
import drumfall.solver.making.part.WheelWithPinion;
import drumfall.solver.teeth.form.ToothForm;
import drumfall.solver.train.ToothModule;
import java.util.Arrays;
import java.util.List;

/** The motion work, its clutch and the hands. */
final class DialParts {
    private final Workshop shop;
    private final MotionTeeth motion;

    DialParts(Workshop shop, MotionTeeth motion) {
        this.shop = shop;
        this.motion = motion;
    }

    private MakingSizes.Hands sizes() {
        return shop.sizes().hands();
    }

    private GearCut cut(ToothForm form, ToothModule module) {
        return new GearCut(form, module, shop.thinning());
    }

    private double centreBore() {
        return shop.bore(shop.train().meshesAbove());
    }

    private double cannonPipe() {
        return centreBore() + 2 * shop.brief().parts().hubWall().si();
    }

    private double hourBore() {
        return cannonPipe() + 2 * shop.print().fit();
    }

    private double hourPipe() {
        return hourBore() + 2 * sizes().pipeWall();
    }

    List<MovementPart> parts() {
        GearCut cannon = cut(motion.first().driver(), motion.firstModule());
        GearCut minute = cut(motion.first().follower(), motion.firstModule());
        GearCut minutePinion = cut(motion.second().driver(), motion.secondModule());
        GearCut hour = cut(motion.second().follower(), motion.secondModule());
        return List.of(
                shop.part("cannon-pinion", 1, cannonPinion(cannon).solid(), toothing(cannon)),
                shop.part(
                        "minute-wheel-and-pinion",
                        1,
                        new WheelWithPinion(wheel(minute, studBore()), minutePinion, shop.wheelThickness()).solid(),
                        toothing(minute, minutePinion)),
                shop.part(
                        "hour-wheel",
                        1,
                        new PipedWheel(wheel(hour, hourBore()), hourPipe(), sizes().pipeLength()).solid(),
                        toothing(hour)),
                shop.part(
                        "minute-hand",
                        hand(sizes().minuteLength(), cannonPipe()).solid()),
                shop.part("hour-hand", hand(sizes().hourLength(), hourPipe()).solid()));
    }

    private static List<MovementPart.Toothing> toothing(GearCut... cuts) {
        return Arrays.stream(cuts)
                .map(cut -> new MovementPart.Toothing(cut.count(), cut.module()))
                .toList();
    }

    /** The minute wheel turns on a stud of an intermediate arbor's rod. */
    private double studBore() {
        return shop.brief().arbors().intermediate().diameter().si()
                + shop.sizes().boreAllowance();
    }

    private WheelPart wheel(GearCut teeth, double bore) {
        return new WheelPart(teeth, Crossings.NONE, shop.wheelThickness(), bore, PinCircle.NONE, shop.print());
    }

    /** The cannon pinion's pipe passes through hour wheel and pipe and ends a hand's height above them. */
    private CannonPinion cannonPinion(GearCut leaves) {
        return new CannonPinion(
                leaves,
                shop.wheelThickness(),
                centreBore(),
                cannonPipe(),
                shop.wheelThickness() + sizes().pipeLength() + 2 * sizes().thickness(),
                sizes().fingers(),
                sizes().grip(),
                shop.print().extrusion(),
                shop.print());
    }

    private Hand hand(double length, double pipe) {
        double boss = pipe + 2 * sizes().pipeWall() + 2 * shop.print().wall();
        return new Hand(length, boss, sizes().tip(), pipe, sizes().thickness(), sizes().thickness(), shop.print());
    }
}
