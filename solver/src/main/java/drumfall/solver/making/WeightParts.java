// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.making.part.Pulley;
import drumfall.solver.making.part.WeightShell;
import drumfall.solver.parts.WeightCan;
import drumfall.solver.train.Reeving;
import java.util.ArrayList;
import java.util.List;

/** The weight's shell and its pulley. */
final class WeightParts {
    private final Workshop shop;
    private final double weight;

    /**
     * Parts for a weight.
     *
     * @param weight kg of shot, finite
     */
    WeightParts(Workshop shop, double weight) {
        this.shop = shop;
        this.weight = weight;
    }

    /** The shell, as wide as the layout leaves room for, whose chamber below the lid's spigot holds the shot. */
    private WeightShell shell() {
        WeightCan can = shop.sizes().weight().can();
        double diameter = shop.brief().weight().width().si();
        double height = can.tubeHeight(weight, diameter, shop.print().layer());
        return new WeightShell(diameter, height, can.wall(), can.rod(), shop.print());
    }

    List<MovementPart> parts() {
        List<MovementPart> parts = new ArrayList<>();
        WeightShell shell = shell();
        parts.add(shop.part("weight-shell", shell.solid()));
        parts.add(shop.part("weight-lid", shell.lid()));
        if (shop.train().reeving() == Reeving.DOUBLE) {
            parts.add(shop.part("weight-pulley", pulley().solid()));
        }
        return parts;
    }

    private Pulley pulley() {
        MakingSizes.Weight sizes = shop.sizes().weight();
        double line = shop.brief().line().diameter().si();
        return new Pulley(
                shop.brief().line().pulley().si(),
                2 * line,
                line,
                2 * shop.print().wall(),
                sizes.pulleyBore(),
                shop.print());
    }
}
