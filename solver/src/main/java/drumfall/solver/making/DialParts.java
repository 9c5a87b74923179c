// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.layout.size.Face;
import drumfall.solver.making.part.CannonPinion;
import drumfall.solver.making.part.Crossings;
import drumfall.solver.making.part.GearCut;
import drumfall.solver.making.part.Hand;
import drumfall.solver.making.part.PinCircle;
import drumfall.solver.making.part.PipedWheel;
import drumfall.solver.making.part.Spacer;
import drumfall.solver.making.part.WheelPart;
import drumfall.solver.making.part.WheelWithPinion;
import drumfall.solver.parts.HandSize;
import drumfall.solver.teeth.form.ToothForm;
import drumfall.solver.train.ToothModule;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;

/** The motion work, its clutch and the hands. */
final class DialParts {
    private static final double METRES = 1e-9;

    private final Workshop shop;
    private final MotionTeeth motion;

    DialParts(Workshop shop, MotionTeeth motion) {
        this.shop = shop;
        this.motion = motion;
    }

    private HandSize sizes() {
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

    private double hourPipeDiameter() {
        return hourBore() + 2 * sizes().pipeWall();
    }

    List<MovementPart> parts() {
        GearCut cannon = cut(motion.first().driver(), motion.firstModule());
        GearCut minute = cut(motion.first().follower(), motion.firstModule());
        GearCut minutePinion = cut(motion.second().driver(), motion.secondModule());
        GearCut hour = cut(motion.second().follower(), motion.secondModule());
        double plane = shop.wheelThickness();
        double pipe = shop.sizes().hourPipe(shop.brief());
        int minuteAxis = shop.arbors() + 1;
        Mount onStud = new Mount(OptionalInt.empty(), Face.FRONT, shop.stances(minuteAxis, plane(0, 0)));
        return List.of(
                shop.part("cannon-pinion", 1, cannonPinion(cannon).solid(), toothing(cannon), onCentre(plane(0, 0))),
                shop.part(
                        "minute-wheel-and-pinion",
                        1,
                        new WheelWithPinion(wheel(minute, studBore()), minutePinion, planeToPlane()).solid(),
                        toothing(minute, minutePinion),
                        onStud),
                shop.part("hour-wheel-spacer", spacer().solid(), onCentre(plane(0, plane))),
                shop.part(
                        "hour-wheel",
                        1,
                        new PipedWheel(wheel(hour, hourBore()), hourPipeDiameter(), pipe).solid(),
                        toothing(hour),
                        onCentre(plane(1, 0))),
                shop.part(
                        "minute-hand",
                        hand(sizes().minuteLength(), cannonPipe()).solid(),
                        onCentre(plane(1, plane + pipe + shop.sizes().handsApart(shop.brief())))),
                shop.part(
                        "hour-hand",
                        hand(sizes().hourLength(), hourPipeDiameter()).solid(),
                        onCentre(plane(1, plane + pipe - 2 * sizes().thickness()))));
    }

    private Mount onCentre(ToDoubleFunction<FramePlaces> bed) {
        return shop.mount(shop.train().meshesAbove(), Face.FRONT, bed);
    }

    /** A level at a distance before the rear of a plane of the motion work. */
    private static ToDoubleFunction<FramePlaces> plane(int plane, double before) {
        return known -> known.levels().motion().get(plane) + before;
    }

    /** From the rear of the first plane to that of the second, m. */
    private double planeToPlane() {
        return shop.wheelThickness() + METRES * shop.axial().gaps().spacing();
    }

    /** It keeps the hour wheel in its plane, on the cannon pinion's pipe; what the gap is short of a layer is play. */
    private Spacer spacer() {
        double gap = METRES * shop.axial().gaps().spacing();
        double height =
                Math.floor(gap / shop.print().layer() + 1e-9) * shop.print().layer();
        return new Spacer(hourBore(), hourPipeDiameter(), height, shop.print());
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

    /** The cannon pinion's pipe passes through spacer, hour wheel and pipe and ends with the minute hand. */
    private CannonPinion cannonPinion(GearCut leaves) {
        return new CannonPinion(
                leaves,
                shop.wheelThickness(),
                centreBore(),
                cannonPipe(),
                planeToPlane()
                        + shop.sizes().hourPipe(shop.brief())
                        + shop.sizes().handsApart(shop.brief())
                        + 2 * sizes().thickness(),
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
