// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.parts.Crossing;
import drumfall.solver.parts.DrumForm;
import drumfall.solver.parts.EscapeToothSize;
import drumfall.solver.parts.PartInertia;
import drumfall.solver.parts.PartStock;
import drumfall.solver.parts.RatchetSize;
import drumfall.solver.parts.Shrouds;
import drumfall.solver.parts.SquareSize;
import drumfall.solver.power.answers.ArborInertia;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.teeth.GearFigures;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.List;

/** Cards of how wheels, pinions and drum resist being turned, of the sizes that the cards of their masses show. */
final class InertiaCards {
    private static final String MADE = "parts as they are made, bores left out; our own geometry";
    private static final String DRAWN = "the drawn teeth at module 1, before thinning";

    private final CardShelf shelf;
    private final WhereFromBook rated;
    private final Train train;
    private final PartStock parts;
    private final ArborInertia inertia;

    InertiaCards(CardShelf shelf, WhereFromBook rated, LoadedClock clock) {
        this.shelf = shelf;
        this.rated = rated;
        this.train = clock.train();
        this.parts = clock.movement().parts();
        this.inertia = new ArborInertia(clock.movement(), train);
    }

    private Card rated(String name) {
        return rated.card(name)
                .orElseThrow(() -> new IllegalStateException("The rating has no card (%s).".formatted(name)));
    }

    /** Nozzle, rods and hub wall, which all wheels' hubs and arms follow from. */
    private List<Card> hub() {
        return List.of(
                rated("brief.printer.nozzle"),
                rated("brief.arbors.drum.diameter"),
                rated("brief.arbors.centre.diameter"),
                rated("brief.arbors.intermediate.diameter"),
                rated("brief.arbors.escape.diameter"),
                rated("brief.parts.hubWall"));
    }

    /** What stands on a wheel: the click's ground, or the pinion to its tips or its shrouds' edge. */
    private Card foot(int arbor) {
        if (arbor == 0) {
            return rated("click-ground");
        }
        boolean lantern = parts.shrouds().isPresent();
        Card module = rated("train.module-%d".formatted(arbor));
        Card tip = rated("drawn-pinion-tip-%d".formatted(arbor));
        double around = module.value() * tip.value();
        return shelf.figure(
                "foot-radius-%d".formatted(arbor + 1),
                "r_f",
                parts.shrouds().map(discs -> discs.radius(around)).orElse(around),
                "m",
                lantern ? "r_f = m r_t + 2 e + play/2" : "r_f = m r_t",
                in -> in[0] * in[1] + (lantern ? 2 * in[2] + Shrouds.PIN_PLAY / 2 : 0),
                MADE,
                module,
                tip,
                rated("brief.printer.nozzle"));
    }

    /** The wheel of an arbor from 0 at the drum. */
    Card wheel(int arbor) {
        return arbor == train.meshes().size() ? escapeWheel(arbor) : toothedWheel(arbor);
    }

    private Card toothedWheel(int arbor) {
        Mesh mesh = train.meshes().get(arbor);
        return shelf.figure(
                "wheel-inertia-%d".formatted(arbor + 1),
                "I_w",
                inertia.wheel(arbor),
                "kg m²",
                "I_w = ρ b (m⁴ J − m³ t (r_t⁴ − r_0⁴)/2 − J_o), J_o: windows from r_f or the hub to the rim, as of its mass",
                in -> in[0]
                        * in[1]
                        * (toothed(in)
                                - windows(
                                        in[2] * in[6],
                                        MassInputs.crossing(8, in).rim(in[2]),
                                        in[7],
                                        MassInputs.crossing(8, in))),
                MADE,
                MassInputs.with(
                        List.of(
                                rated("brief.material.density"),
                                rated("brief.parts.wheelThickness"),
                                rated("train.module-%d".formatted(arbor + 1)),
                                rated("thinning"),
                                polar("wheel", arbor, inertia.wheelPolar(mesh)),
                                rated("drawn-wheel-tip-%d".formatted(arbor + 1)),
                                rated("drawn-wheel-root-%d".formatted(arbor + 1)),
                                foot(arbor)),
                        hub()));
    }

    private Card polar(String gear, int mesh, double value) {
        return shelf.given("drawn-%s-polar-%d".formatted(gear, mesh + 1), "J", value, "1", DRAWN);
    }

    private static double toothed(double... in) {
        return PartInertia.toothed(new GearFigures(in[5], 0, 0, in[6], 0), in[4], in[2], in[3]);
    }

    private static double windows(double root, double rim, double foot, Crossing crossing) {
        return crossing.windowsPolar(root, rim, foot);
    }

    private Card escapeWheel(int arbor) {
        EscapeToothSize size = parts.escapeTeeth();
        return shelf.figure(
                "escape-wheel-inertia",
                "I_w",
                inertia.wheel(arbor),
                "kg m²",
                "I_w = ρ b (π r_0⁴/2 + N J_z − J_o), r_0 = 0.78 r_w, J_z: a leaning tooth from its foot to its tip, e wide; J_o as"
                        + " of a wheel",
                in -> in[0]
                        * in[1]
                        * (size.polar(in[2], (int) in[3], in[5])
                                - windows(
                                        size.root(in[2]),
                                        MassInputs.crossing(5, in).escapeRim(),
                                        in[4],
                                        MassInputs.crossing(5, in))),
                MADE,
                MassInputs.with(
                        List.of(
                                rated("brief.material.density"),
                                rated("brief.parts.wheelThickness"),
                                rated("brief.escapement.wheelRadius"),
                                rated("train.escape-teeth"),
                                foot(arbor)),
                        hub()));
    }

    /** What drives an arbor: its pinion, or the drum. */
    Card driven(int arbor) {
        if (arbor == 0) {
            return drum();
        }
        return parts.shrouds().isPresent() ? lantern(arbor) : pinion(arbor);
    }

    private Card pinion(int arbor) {
        Mesh mesh = train.meshes().get(arbor - 1);
        return shelf.figure(
                "pinion-inertia-%d".formatted(arbor),
                "I_p",
                inertia.driven(arbor),
                "kg m²",
                "I_p = ρ l_p (m⁴ J − m³ t (r_t⁴ − r_0⁴)/2)",
                in -> in[0] * in[1] * toothed(in),
                MADE,
                rated("brief.material.density"),
                rated("leaf-length"),
                rated("train.module-%d".formatted(arbor)),
                rated("thinning"),
                polar("pinion", arbor - 1, inertia.pinionPolar(mesh)),
                rated("drawn-pinion-tip-%d".formatted(arbor)),
                rated("drawn-pinion-root-%d".formatted(arbor)));
    }

    private Card lantern(int arbor) {
        double shroud = parts.shrouds().orElseThrow().thickness();
        return shelf.figure(
                "pinion-inertia-%d".formatted(arbor),
                "I_p",
                inertia.driven(arbor),
                "kg m²",
                "I_p: two shrouds of ρ, a wall around the holes for the pins, and p steel pins on the pitch circle",
                in -> lanternInertia(shroud, in),
                MADE,
                rated("brief.material.density"),
                rated("leaf-length"),
                rated("train.module-%d".formatted(arbor)),
                rated("train.pinion-%d".formatted(arbor)),
                rated("drawn-pinion-tip-%d".formatted(arbor)),
                rated("brief.printer.nozzle"));
    }

    private static double lanternInertia(double shroud, double... in) {
        GearFigures pins = new GearFigures(in[4], 0, 0, 0, 0);
        return PartInertia.lantern(new Shrouds(shroud, 2 * in[5]), in[0], in[1], (int) in[3], pins, in[2]);
    }

    private Card drum() {
        List<Card> sizes = new ArrayList<>();
        for (String name : List.of(
                "brief.material.density",
                "train.drum-diameter",
                "brief.drum.length",
                "brief.drum.wall",
                "brief.line.diameter",
                "brief.arbors.drum.diameter",
                "made-ratchet-teeth",
                "made-ratchet-depth",
                "made-ratchet-thickness",
                "made-ratchet-pin",
                "ratchet-room",
                "brief.parts.gap",
                "brief.printer.nozzle")) {
            sizes.add(rated(name));
        }
        return shelf.figure(
                "drum-inertia",
                "I_p",
                inertia.driven(0),
                "kg m²",
                "I_p = ρ ∑ l J of flanges, tubes and spigot, ratchet, boss and click, square and collar, as of their masses",
                in -> drumInertia(in),
                "parts as they are made; our own geometry",
                sizes.toArray(Card[]::new));
    }

    private static double drumInertia(double... in) {
        DrumForm form = new DrumForm(
                in[2],
                in[3],
                in[4],
                in[5],
                new RatchetSize((int) in[6], in[7], in[8], in[9]),
                in[10],
                in[11],
                SquareSize.CUSTOMARY,
                2 * in[12]);
        return in[0] * form.polar(in[1]);
    }
}
