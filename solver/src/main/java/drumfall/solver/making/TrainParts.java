// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.layout.size.Face;
import drumfall.solver.making.part.Crossings;
import drumfall.solver.making.part.EscapeWheel;
import drumfall.solver.making.part.GearCut;
import drumfall.solver.making.part.PinCircle;
import drumfall.solver.making.part.PlateWheel;
import drumfall.solver.making.part.WheelPart;
import drumfall.solver.making.part.WheelWithLantern;
import drumfall.solver.making.part.WheelWithPinion;
import drumfall.solver.parts.Crossing;
import drumfall.solver.parts.PartStock;
import drumfall.solver.parts.Shrouds;
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
            parts.addAll(parts(arbor));
        }
        return parts;
    }

    private MovementPart greatWheel() {
        WheelPart wheel = wheel(0, winding.clickGround(), winding.clickPivot());
        return shop.part(
                Workshop.arbor(0) + "-wheel",
                1,
                wheel.solid(),
                List.of(toothing(wheel.teeth())),
                shop.between(0, 0, shop.toward(0)));
    }

    /**
     * The parts of one arbor.
     *
     * @param arbor its number, from 1 after the drum's
     * @throws drumfall.solver.fit.FitException if a hub has no room for a bearing, or no drill serves
     */
    List<MovementPart> parts(int arbor) {
        boolean last = arbor == shop.arbors() - 1;
        Mesh driven = shop.pinionMesh(arbor);
        ToothForm form = pair(driven).follower();
        double foot = footRadius(form, driven);
        PlateWheel wheel = last ? escapeWheel(foot) : wheel(arbor, foot, PinCircle.NONE);
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
            double shroud = shop.wheelThickness() + leaves - lantern.shroud();
            return List.of(
                    shop.part(name, 1, seats.below(arbor, up, lantern.solid()), teeth, shop.between(arbor, 0, up)),
                    shop.part(
                            Workshop.arbor(arbor) + "-upper-shroud",
                            seats.above(arbor, up, lantern.upperShroud()),
                            shop.between(arbor, shroud, up)));
        }
        WheelWithPinion both = new WheelWithPinion(wheel, cut(form, driven), leaves);
        return List.of(shop.part(name, 1, seats.in(arbor, up, both.solid()), teeth, shop.between(arbor, 0, up)));
    }

    /** Radius that a pinion needs to stand on. */
    private double footRadius(ToothForm form, Mesh mesh) {
        double tip = shop.movement().pinionTipRadius(mesh);
        return form instanceof LanternPinion ? shop.axial().shroudRadius(tip) : tip;
    }

    private EscapeWheel escapeWheel(double foot) {
        PartStock stock = shop.movement().parts();
        return escapement.wheel(crossings(
                shop.arbors() - 1,
                stock.escapeTeeth().root(stock.escapeWheelRadius()),
                stock.crossing().escapeRim(),
                foot));
    }

    /** The tube between the shrouds stays clear of the wheel's tips by the least distance of parts, or is left out. */
    private WheelWithLantern lantern(PlateWheel wheel, LanternPinion pins, Mesh mesh, double leaves) {
        double shroud = METRES * shop.axial().shroud();
        double tips = shop.movement().wheelTipRadius(mesh);
        double room =
                2 * (mesh.centreDistance() - tips - shop.brief().parts().gap().si());
        double least = wheel.bore() + 2 * shop.print().wall();
        return new WheelWithLantern(
                wheel, pins, mesh.module(), shroud, room >= least ? least : 0, leaves - 2 * shroud, Shrouds.PIN_PLAY);
    }

    private WheelPart wheel(int arbor, double foot, PinCircle pins) {
        Mesh mesh = shop.wheelMesh(arbor);
        GearCut teeth = cut(pair(mesh).driver(), mesh);
        double rim = shop.movement().parts().crossing().rim(mesh.module().metres());
        return new WheelPart(
                teeth,
                crossings(arbor, teeth.rootRadius(), rim, foot),
                shop.wheelThickness(),
                shop.bore(arbor),
                pins,
                shop.print());
    }

    /** Whether a wheel is crossed out is its own affair, but for windows that what stands on it closes altogether. */
    private Crossings crossings(int arbor, double root, double rim, double foot) {
        Crossing crossing = shop.movement().parts().crossing();
        double seat = seats.wheelBore(arbor) / 2 + shop.print().wall();
        double hub = Math.max(crossing.hubRadius(), Math.max(foot, seat));
        double corner = crossing.cornerWithin(root - rim - hub);
        return crossing.crossed(root, rim) && corner > 0
                ? new Crossings(2 * hub, rim, crossing.arms(), crossing.armWidth(), corner)
                : Crossings.NONE;
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
