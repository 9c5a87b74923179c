// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.layout.size.Face;
import drumfall.solver.making.part.Plate;
import drumfall.solver.making.part.PlateHole;
import drumfall.solver.making.part.Spacer;
import drumfall.solver.making.solid.Solid;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;

/** Plates, pillars and spacers. Plates lie with their inner side up, where the seats for bearings and pillars are. */
final class FrameParts {
    private final Workshop shop;
    private final FramePlaces places;

    FrameParts(Workshop shop, FramePlaces places) {
        this.shop = shop;
        this.places = places;
    }

    private MakingSizes.Frame sizes() {
        return shop.sizes().frame();
    }

    List<MovementPart> parts() {
        List<MovementPart> parts = new ArrayList<>();
        // The front plate's inner side is its back: what the dial sees on the right lies on the left of the bed.
        double plate = shop.brief().frame().plate().si();
        addPlate("front-plate", onAxis(Face.REAR, places.depth() + plate), FramePlaces.Arbor::front, parts);
        addPlate("back-plate", onAxis(Face.FRONT, -plate), FramePlaces.Arbor::back, parts);
        if (!places.pillars().isEmpty()) {
            double length = places.depth() + 2 * sizes().pocket();
            Spacer pillar = new Spacer(sizes().screw(), pillar(), length, shop.print());
            parts.add(shop.part("pillar", places.pillars().size(), pillar.solid(), List.of(), pillarMount()));
        }
        places.spacers().forEach(ring -> parts.add(spacer(ring)));
        return parts;
    }

    private Mount pillarMount() {
        return new Mount(
                OptionalInt.empty(),
                Face.FRONT,
                places.pillars().stream()
                        .map(pillar -> new Mount.Stance(pillar.x(), pillar.y(), -sizes().pocket()))
                        .toList());
    }

    private double pillar() {
        return shop.brief()
                .frame()
                .pillars()
                .orElseThrow(
                        () -> new IllegalArgumentException("The pillars (none) of the brief must be there where pillars"
                                + " stand. Maybe add them to the frame."))
                .diameter()
                .si();
    }

    private MovementPart spacer(FramePlaces.Ring ring) {
        double outer =
                shop.rod(ring.arbor()) + 2 * shop.brief().parts().hubWall().si();
        Spacer spacer = new Spacer(
                shop.rod(ring.arbor()) + shop.brief().fit().clearance().si(), outer, ring.height(), shop.print());
        return shop.part(
                Workshop.arbor(ring.arbor()) + "-spacer-" + Math.round(1e6 * ring.height()) + "-um",
                ring.rears().size(),
                spacer.solid(),
                List.of(),
                new Mount(
                        OptionalInt.of(ring.arbor()),
                        Face.FRONT,
                        ring.rears().stream()
                                .flatMap(rear -> shop.stances(ring.arbor(), known -> rear).stream())
                                .toList()));
    }

    private static Mount onAxis(Face up, double bed) {
        return new Mount(OptionalInt.empty(), up, List.of(new Mount.Stance(0, 0, bed)));
    }

    private void addPlate(
            String name,
            Mount mount,
            Function<FramePlaces.Arbor, FramePlaces.Support> support,
            List<MovementPart> parts) {
        int side = mount.up() == Face.FRONT ? 1 : -1;
        List<PlateHole> holes = new ArrayList<>();
        for (FramePlaces.Arbor arbor : places.arbors()) {
            FramePlaces.Support in = support.apply(arbor);
            if (in.hole() > 0) {
                holes.add(new PlateHole(arbor.name(), side * arbor.x(), arbor.y(), in.hole(), in.seat(), in.depth()));
            }
        }
        double pocket =
                places.pillars().isEmpty() ? 0 : pillar() + 2 * shop.print().fit();
        for (int i = 0; i < places.pillars().size(); i++) {
            FramePlaces.Pillar pillar = places.pillars().get(i);
            holes.add(new PlateHole(
                    "pillar " + (i + 1), side * pillar.x(), pillar.y(), sizes().screw(), pocket, sizes().pocket()));
        }
        double thickness = shop.brief().frame().plate().si();
        Plate plate =
                new Plate(name.replace('-', ' '), places.width(), places.height(), thickness, holes, shop.print());
        List<Solid> pieces = plate.pieces(
                shop.brief().printer().bedWidth().si(),
                shop.brief().printer().bedDepth().si(),
                sizes().joint());
        for (int i = 0; i < pieces.size(); i++) {
            String of = pieces.size() == 1 ? name : name + "-" + (i + 1) + "-of-" + pieces.size();
            parts.add(shop.part(of, pieces.get(i), mount));
        }
    }
}
