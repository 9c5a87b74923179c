// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.making.part.Pulley;
import drumfall.solver.making.part.WeightShell;
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
        MakingSizes.Weight sizes = shop.sizes().weight();
        double diameter = shop.brief().weight().width().si();
        double layers = Math.ceil(height(diameter) / shop.print().layer() - 1e-9);
        return new WeightShell(diameter, layers * shop.print().layer(), sizes.wall(), sizes.rod(), shop.print());
    }

    /** Height of a chamber of a shell's diameter, m. */
    private double height(double diameter) {
        MakingSizes.Weight sizes = shop.sizes().weight();
        double outer = diameter / 2 - sizes.wall();
        double inner = sizes.rod() / 2 + sizes.wall();
        return weight / sizes.shotDensity() / (Math.PI * (outer * outer - inner * inner)) + sizes.wall();
    }

    List<MovementPart> parts() {
        List<MovementPart> parts = new ArrayList<>();
        WeightShell shell = shell();
        parts.add(shop.part("weight-shell", shell.solid(), Mount.LOOSE));
        parts.add(shop.part("weight-lid", shell.lid(), Mount.LOOSE));
        if (shop.train().reeving() == Reeving.DOUBLE) {
            parts.add(shop.part("weight-pulley", pulley().solid(), Mount.LOOSE));
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
