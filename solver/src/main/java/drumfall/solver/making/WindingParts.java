// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.making.part.Click;
import drumfall.solver.making.part.Drum;
import drumfall.solver.making.part.PinCircle;
import drumfall.solver.making.part.Ratchet;
import drumfall.solver.making.part.WindingKey;
import drumfall.solver.making.part.WindingSquare;
import drumfall.solver.parts.PartStock;
import drumfall.solver.parts.RatchetForm;
import drumfall.solver.rating.BriefParts;
import java.util.List;

/** The drum, the ratchet between it and the great wheel, and what winds it. */
final class WindingParts {
    private static final int PINS = 3;

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

    private RatchetForm form() {
        return new RatchetForm(
                BriefParts.ratchet(shop.brief()),
                bore(),
                shop.movement().parts().drumWall(),
                shop.print().wall());
    }

    /** The ratchet's pins stand in the drum's chamber, just outside its inner tube. */
    private PinCircle pins() {
        return new PinCircle(PINS, form().pinRadius(), form().size().pin());
    }

    private Ratchet ratchet() {
        RatchetForm form = form();
        // The line pulls the drum the way it turns as the clock runs, and the click keeps it from running ahead.
        boolean anticlockwise = !shop.train().going().clockwise(0);
        return new Ratchet(
                form.size().teeth(),
                form.tipRadius(),
                form.size().toothDepth(),
                form.size().thickness(),
                bore(),
                pins(),
                anticlockwise,
                shop.print());
    }

    private double clickBoss() {
        return form().size().pin() + 4 * shop.print().wall();
    }

    /** Where the click's pivot stands in the great wheel: its boss clears the ratchet's tips by the parts' gap. */
    PinCircle clickPivot() {
        double clear = shop.brief().parts().gap().si();
        return new PinCircle(
                1, form().tipRadius() + clickBoss() / 2 + clear, form().size().pin());
    }

    private Click click() {
        RatchetForm form = form();
        // The nose rests on a tooth's root while the arm runs square to the ratchet's radius there.
        double reach = form.contactRadius();
        double pivot = clickPivot().radius();
        return new Click(
                Math.sqrt(pivot * pivot - reach * reach),
                clickBoss(),
                form.nose(),
                form.size().pin(),
                form.size().thickness(),
                shop.print());
    }

    private Drum drum() {
        PartStock stock = shop.movement().parts();
        double diameter = shop.train().drumDiameter().doubleValue();
        return new Drum(
                diameter,
                stock.drumLength(),
                stock.drumWall(),
                stock.drumFlangeRadius(diameter),
                stock.lineDiameter(),
                bore(),
                pins(),
                shop.print());
    }

    List<MovementPart> parts() {
        Drum drum = drum();
        String arbor = Workshop.arbor(0);
        double side = bore() + 2 * sizes().square();
        WindingSquare square =
                new WindingSquare(side, sizes().squareLength(), sizes().thickness(), bore(), shop.print());
        double width = side * Math.sqrt(2) + 6 * shop.print().wall();
        WindingKey key = new WindingKey(
                side, sizes().squareLength(), sizes().handle(), width, sizes().thickness(), shop.print());
        return List.of(
                shop.part(arbor + "-drum", drum.solid()),
                shop.part(arbor + "-drum-flange", drum.flange()),
                shop.part(arbor + "-ratchet", ratchet().solid()),
                shop.part(arbor + "-click", click().solid()),
                shop.part(arbor + "-winding-square", square.solid()),
                shop.part("winding-key", key.solid()));
    }
}
