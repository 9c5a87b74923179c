// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.layout.size.Face;
import drumfall.solver.making.part.Crossings;
import drumfall.solver.making.part.EscapeWheel;
import drumfall.solver.making.part.Pallets;
import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.parts.EscapeToothSize;
import drumfall.solver.power.escape.Deadbeat;
import java.util.List;
import java.util.OptionalInt;

/** The escape wheel and its pallets, each drawn as it turns seen from above the bed; the pallets' upper side faces the dial. */
final class EscapementParts {
    private static final double METRES = 1e-9;

    private final Workshop shop;

    EscapementParts(Workshop shop) {
        this.shop = shop;
    }

    private Deadbeat deadbeat() {
        return shop.movement().escapement().with(shop.train().escapeTeeth());
    }

    /** Whether the escape wheel turns clockwise seen from the dial. */
    private boolean clockwise() {
        return shop.train().going().clockwise(shop.arbors() - 1);
    }

    /**
     * The escape wheel.
     *
     * @param crossings what is cut out of it
     */
    EscapeWheel wheel(Crossings crossings) {
        EscapeToothSize size = shop.movement().parts().escapeTeeth();
        double radius = shop.movement().escapement().wheelRadius();
        int teeth = shop.train().escapeTeeth();
        double tip = shop.print().extrusion();
        EscapeWheel.Tooth tooth = new EscapeWheel.Tooth(
                teeth, radius, size.depth() * radius, tip, size.frontLean(), size.foot(radius, teeth, tip));
        boolean onBed = Mount.clockwiseOnBed(clockwise(), shop.toward(shop.arbors() - 1));
        return new EscapeWheel(
                tooth, crossings, shop.wheelThickness(), shop.bore(shop.arbors() - 1), onBed, shop.print());
    }

    private Pallets pallets() {
        MakingSizes.Escapement sizes = shop.sizes().escapement();
        double arc = shop.movement().heldArc(shop.train().escapeTeeth()).arc();
        double bore = shop.bore(shop.arbors() - 1);
        return new Pallets(
                deadbeat(),
                sizes.arcShare() * arc,
                bore + 2 * sizes.bossWall(),
                bore,
                METRES * shop.axial().pallets(),
                clockwise(),
                shop.print());
    }

    List<MovementPart> parts() {
        Pallets pallets = pallets();
        EscapeWheel wheel = wheel(Crossings.NONE);
        SizeLimitException.atLeast(
                "tooth depth of an escape wheel",
                wheel.tooth().depth(),
                pallets.reach() + shop.print().wall(),
                "two extrusion widths beyond the pallets' reach");
        SizeLimitException.atMost(
                "tooth tip of an escape wheel",
                wheel.tooth().land(),
                shop.movement().escapement().drop() * wheel.tooth().radius(),
                "the way of the drop, so that a tooth clears the pallet it has left");
        Mount mount = new Mount(
                OptionalInt.empty(),
                Face.FRONT,
                shop.stances(shop.arbors(), known -> known.levels().pallets()));
        return List.of(shop.part("pallets", pallets.solid(), mount));
    }
}
