// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.layout.size.Face;
import drumfall.solver.making.part.Click;
import drumfall.solver.making.part.Drum;
import drumfall.solver.making.part.PinCircle;
import drumfall.solver.making.part.Ratchet;
import drumfall.solver.making.part.WindingKey;
import drumfall.solver.making.part.WindingSquare;
import drumfall.solver.parts.DrumForm;
import drumfall.solver.parts.RatchetForm;
import drumfall.solver.parts.SquareSize;
import drumfall.solver.rating.BriefParts;
import java.util.List;

/** The drum, the ratchet between it and the great wheel, and what winds it. */
final class WindingParts {
    private final Workshop shop;

    WindingParts(Workshop shop) {
        this.shop = shop;
    }

    private MakingSizes.Winding sizes() {
        return shop.sizes().winding();
    }

    private double bore() {
        return shop.bore(0);
    }

    private double diameter() {
        return shop.train().drumDiameter().doubleValue();
    }

    private RatchetForm form() {
        return new RatchetForm(
                BriefParts.ratchet(shop.brief()),
                bore(),
                diameter(),
                shop.movement().parts().drum().wall(),
                shop.print().wall());
    }

    private PinCircle pins() {
        return new PinCircle(DrumForm.PINS, form().pinRadius(), form().size().pin());
    }

    /** As high as the room between great wheel and drum, its teeth as thick as the click that lies on the great wheel. */
    private Ratchet ratchet() {
        RatchetForm form = form();
        // The line pulls the drum the way it turns as the clock runs, and the click keeps it from running ahead.
        boolean clockwise = shop.train().going().clockwise(0);
        return new Ratchet(
                form.size().teeth(),
                form.tipRadius(),
                form.size().toothDepth(),
                form.size().thickness(),
                shop.between(0) - form.size().thickness(),
                bore(),
                pins(),
                !Mount.clockwiseOnBed(clockwise, shop.toward(0)),
                shop.print());
    }

    /** Where the click's pivot stands in the great wheel: its boss clears the ratchet's tips by the parts' gap. */
    PinCircle clickPivot() {
        return new PinCircle(
                1,
                form().clickPivot(shop.brief().parts().gap().si()),
                form().size().pin());
    }

    /** Radius of the ground that the click needs on the great wheel. */
    double clickGround() {
        return form().reach(shop.brief().parts().gap().si());
    }

    private Click click() {
        RatchetForm form = form();
        // The nose rests on a tooth's root while the arm runs square to the ratchet's radius there.
        double reach = form.contactRadius();
        double pivot = clickPivot().radius();
        return new Click(
                Math.sqrt(pivot * pivot - reach * reach),
                form.clickBoss(),
                form.nose(),
                form.size().pin(),
                form.size().thickness(),
                shop.print());
    }

    private Drum drum() {
        DrumForm form = shop.movement().parts().drum();
        return new Drum(
                diameter(),
                form.length(),
                form.wall(),
                form.flangeRadius(diameter()),
                form.line(),
                bore(),
                pins(),
                shop.print());
    }

    List<MovementPart> parts() {
        Drum drum = drum();
        String arbor = Workshop.arbor(0);
        SquareSize size = sizes().square();
        double side = size.side(bore());
        double width = side * Math.sqrt(2) + 6 * shop.print().wall();
        WindingKey key = new WindingKey(side, size.length(), sizes().handle(), width, size.collar(), shop.print());
        // Counted from the great wheel's outer face: ratchet and click stand on its inner one, the drum on the ratchet.
        Face up = shop.toward(0);
        double ratchet = shop.wheelThickness();
        double near = ratchet + shop.between(0);
        double far = near + drum.length() + 2 * drum.wall();
        return List.of(
                shop.part(arbor + "-drum", drum.solid(), shop.between(0, near, up)),
                shop.part(arbor + "-drum-flange", drum.flange(), shop.between(0, far, other(up))),
                shop.part(arbor + "-ratchet", ratchet().solid(), shop.between(0, ratchet, up)),
                shop.part(arbor + "-click", click().solid(), clickMount(up, ratchet)),
                square(),
                shop.part("winding-key", key.solid(), Mount.LOOSE));
    }

    /** The square with its collar, before motion work or front plate. */
    MovementPart square() {
        SquareSize size = sizes().square();
        WindingSquare square = new WindingSquare(size.side(bore()), size.length(), size.collar(), bore(), shop.print());
        return shop.part(
                Workshop.arbor(0) + "-winding-square",
                square.solid(),
                shop.mount(0, Face.FRONT, known -> known.levels().front()));
    }

    private static Face other(Face face) {
        return face == Face.FRONT ? Face.REAR : Face.FRONT;
    }

    /** The click turns about its pivot, which is the first hole of the great wheel. */
    private Mount clickMount(Face up, double distance) {
        double aside = up == Face.FRONT ? clickPivot().radius() : -clickPivot().radius();
        Mount onArbor = shop.between(0, distance, up);
        return new Mount(
                onArbor.arbor(),
                up,
                onArbor.stances().stream()
                        .map(stance -> new Mount.Stance(stance.x() + aside, stance.y(), stance.bed()))
                        .toList());
    }
}
