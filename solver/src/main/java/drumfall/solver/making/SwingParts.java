// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.making.part.BobHalf;
import drumfall.solver.making.part.RatingNut;
import drumfall.solver.making.part.RodHead;
import drumfall.solver.parts.BobSize;
import drumfall.solver.rating.BriefParts;
import java.util.List;

/** The pendulum's printed parts. */
final class SwingParts {
    private static final int SCALLOPS = 12;

    private final Workshop shop;

    SwingParts(Workshop shop) {
        this.shop = shop;
    }

    List<MovementPart> parts() {
        MakingSizes.Pendulum sizes = shop.sizes().pendulum();
        BobSize size = BriefParts.bob(shop.brief());
        BobHalf bob = new BobHalf(size.diameter(), size.thickness() / 2, sizes.rod(), shop.print());
        RatingNut nut = new RatingNut(sizes.nutDiameter(), sizes.nutBore(), sizes.nutHeight(), SCALLOPS, shop.print());
        double wall = 2 * shop.print().wall();
        RodHead head = new RodHead(
                sizes.rod() + 2 * sizes.screw() + 4 * wall,
                sizes.pivot() + 3 * sizes.rod() + 5 * wall,
                sizes.rod() / 2 + wall,
                sizes.rod(),
                sizes.pivot(),
                sizes.screw(),
                shop.print());
        return List.of(
                shop.part("pendulum-bob-half", 2, bob.solid(), List.of()),
                shop.part("rating-nut", nut.solid()),
                shop.part("pendulum-rod-head-half", 2, head.solid(), List.of()));
    }
}
