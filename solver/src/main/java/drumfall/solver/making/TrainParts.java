// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.layout.size.Face;
import drumfall.solver.making.part.Crossings;
import drumfall.solver.making.part.GearCut;
import drumfall.solver.making.part.PinCircle;
import drumfall.solver.making.part.PlateWheel;
import drumfall.solver.making.part.WheelPart;
import drumfall.solver.making.part.WheelWithLantern;
import drumfall.solver.making.part.WheelWithPinion;
import drumfall.solver.rating.AxialSizes;
import drumfall.solver.teeth.form.LanternPinion;
import drumfall.solver.teeth.form.MeshPair;
import drumfall.solver.teeth.form.ToothForm;
import drumfall.solver.train.Mesh;
import java.util.ArrayList;
import java.util.List;

/** The wheels and pinions of the going train, one part for each arbor, and a second shroud for each lantern pinion. */
final class TrainParts {
    private static final double METRES = 1e-9;

    private final Workshop shop;
    private final HubSeats seats;
    private final WindingParts winding;
    private final EscapementParts escapement;

    TrainParts(Workshop shop, WindingParts winding, EscapementParts escapement) {
        this.shop = shop;
        this.seats = new HubSeats(shop);
        this.winding = winding;
        this.escapement = escapement;
    }

    List<MovementPart> parts() {
        List<MovementPart> parts = new ArrayList<>();
        parts.add(greatWheel());
        for (int arbor = 1; arbor < shop.arbors(); arbor++) {
            addTopped(arbor, parts);
        }
        return parts;
    }

    private MovementPart greatWheel() {
        PinCircle pivot = winding.clickPivot();
        double hub = 2
                * (pivot.radius() + pivot.diameter() / 2 + shop.sizes().wheels().hubWall());
        WheelPart wheel = wheel(0, hub, pivot);
        return shop.part(
                Workshop.arbor(0) + "-wheel",
                1,
                wheel.solid(),
                List.of(toothing(wheel.teeth())),
                shop.between(0, 0, shop.toward(0)));
    }

    private void addTopped(int arbor, List<MovementPart> parts) {
        boolean last = arbor == shop.arbors() - 1;
        Mesh driven = shop.pinionMesh(arbor);
        ToothForm form = pair(driven).follower();
        PlateWheel wheel = last ? escapement.wheel() : wheel(arbor, hubUnder(form, driven), PinCircle.NONE);
        String name = Workshop.arbor(arbor) + (last ? "-escape-wheel" : "-wheel") + "-and-pinion";
        List<MovementPart.Toothing> teeth = new ArrayList<>();
        if (!last) {
            teeth.add(new MovementPart.Toothing(
                    shop.wheelMesh(arbor).toothCount(), shop.wheelMesh(arbor).module()));
        }
        teeth.add(new MovementPart.Toothing(driven.leafCount(), driven.module()));
        // The pinion stands up from the wheel on the bed, and in the clock the way the planes ask for.
        Face up = shop.toward(arbor);
        double leaves = shop.between(arbor);
        if (form instanceof LanternPinion pins) {
            WheelWithLantern lantern = lantern(wheel, pins, driven, leaves);
            parts.add(shop.part(name, 1, seats.below(arbor, up, lantern.solid()), teeth, shop.between(arbor, 0, up)));
            double shroud = shop.wheelThickness() + leaves - lantern.shroud();
            parts.add(shop.part(
                    Workshop.arbor(arbor) + "-upper-shroud",
                    seats.above(arbor, up, lantern.upperShroud()),
                    shop.between(arbor, shroud, up)));
        } else {
            WheelWithPinion both = new WheelWithPinion(wheel, cut(form, driven), leaves);
            parts.add(shop.part(name, 1, seats.in(arbor, up, both.solid()), teeth, shop.between(arbor, 0, up)));
        }
    }

    private double hubUnder(ToothForm form, Mesh mesh) {
        double top = form.flank().tipRadius() * mesh.module().metres();
        return 2 * (top + shop.sizes().wheels().hubWall());
    }

    /** The tube between the shrouds stays clear of the wheel's tips by the least distance of parts, or is left out. */
    private WheelWithLantern lantern(PlateWheel wheel, LanternPinion pins, Mesh mesh, double leaves) {
        double shroud = METRES * shop.axial().shroud();
        double tips = shop.movement().wheelTipRadius(mesh);
        double room =
                2 * (mesh.centreDistance() - tips - shop.brief().parts().gap().si());
        double least = wheel.bore() + 2 * shop.print().wall();
        return new WheelWithLantern(
                wheel,
                pins,
                mesh.module(),
                shroud,
                room >= least ? least : 0,
                leaves - 2 * shroud,
                AxialSizes.PIN_PLAY);
    }

    private WheelPart wheel(int arbor, double hub, PinCircle pins) {
        Mesh mesh = shop.wheelMesh(arbor);
        GearCut teeth = cut(pair(mesh).driver(), mesh);
        return new WheelPart(
                teeth,
                crossings(
                        teeth,
                        Math.max(
                                hub,
                                seats.wheelBore(arbor)
                                        + 2 * shop.sizes().wheels().hubWall())),
                shop.wheelThickness(),
                shop.bore(arbor),
                pins,
                shop.print());
    }

    private Crossings crossings(GearCut teeth, double hub) {
        MakingSizes.Wheels sizes = shop.sizes().wheels();
        double rim = Math.max(
                shop.print().wall(), sizes.rimModules() * teeth.module().metres());
        double window = teeth.rootRadius() - rim - hub / 2;
        double most = 2 * ((hub / 2 + sizes.corner()) * Math.sin(Math.PI / sizes.arms()) - sizes.corner());
        return window < sizes.window()
                ? Crossings.NONE
                : new Crossings(hub, rim, sizes.arms(), Math.min(rim, most), sizes.corner());
    }

    private GearCut cut(ToothForm form, Mesh mesh) {
        return new GearCut(form, mesh.module(), shop.thinning());
    }

    private static MovementPart.Toothing toothing(GearCut teeth) {
        return new MovementPart.Toothing(teeth.count(), teeth.module());
    }

    private MeshPair pair(Mesh mesh) {
        return shop.movement()
                .teeth(mesh)
                .map(teeth -> teeth.pair())
                .orElseThrow(() -> new IllegalArgumentException("The teeth (none) of mesh " + mesh
                        + " must be ones that can be printed. Maybe take a larger module or a smaller nozzle."));
    }
}
