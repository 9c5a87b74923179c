// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import static drumfall.solver.rating.why.PartCards.kilograms;
import static drumfall.solver.rating.why.PartCards.whole;

import drumfall.solver.brief.Brief;
import drumfall.solver.layout.size.Nanometres;
import drumfall.solver.parts.Crossing;
import drumfall.solver.parts.EscapeToothSize;
import drumfall.solver.parts.PartStock;
import drumfall.solver.parts.Shrouds;
import drumfall.solver.power.Movement;
import drumfall.solver.rating.AxialSizes;
import drumfall.solver.rating.BriefParts;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.teeth.GearFigures;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Cards of the masses of wheels, pinions and the escape wheel. */
final class GearMassCards {
    private static final String MADE = "parts as they are made, without their bores; our own geometry";
    private static final String CROSSED = "straight arms with round corners; common practice, no source";
    private static final String DRAWN = "the drawn teeth at module 1, before thinning";
    private static final double METRES = 1e-9;

    private final CardShelf shelf;
    private final Brief brief;
    private final Train train;
    private final Movement movement;
    private final PartStock parts;

    GearMassCards(CardShelf shelf, TrainRater rater, Train train) {
        this.shelf = shelf;
        this.brief = rater.brief();
        this.train = train;
        this.movement = rater.movement();
        this.parts = movement.parts();
    }

    /** Makes the cards, and hands back those of what is printed. */
    List<Card> printed() {
        List<Card> masses = new ArrayList<>();
        for (int i = 0; i < train.meshes().size(); i++) {
            masses.add(wheel(i));
            masses.add(parts.shrouds().isPresent() ? lantern(i) : pinion(i));
        }
        masses.add(escapeWheel());
        return masses;
    }

    private Card wheel(int i) {
        Mesh mesh = train.meshes().get(i);
        GearFigures wheel = movement.wheel(mesh);
        double module = mesh.module().metres();
        Card root = drawn("wheel", "root", "r_0", i, wheel.rootRadius());
        Card windows = shelf.figure(
                "wheel-windows-%d".formatted(i + 1),
                "A_o",
                parts.crossing()
                        .opened(module * wheel.rootRadius(), parts.crossing().rim(module)),
                "m²",
                "A_o = A(m r_0 − max(2.5 m, 2 e)) − A(r_h), A: a disc less four arms d_p + 4 e wide, corners rounded by"
                        + " 2 mm; nought below a height of 6 mm",
                in -> crossing(2, in).opened(in[0] * in[1], crossing(2, in).rim(in[0])),
                CROSSED,
                with(List.of(RunCards.module(shelf, train, i), root), hub()));
        return shelf.figure(
                "wheel-mass-%d".formatted(i + 1),
                "m_w%d".formatted(i + 1),
                kilograms(movement.wheelMass(mesh)),
                "kg",
                "m_w = ρ b (m² A_1 − m t (r_t² − r_0²) − A_o)",
                in -> whole(in[0] * in[1] * (thinned(in[2], in[3], in[4], in[5], in[6]) - in[7])),
                MADE,
                density(),
                thickness(),
                RunCards.module(shelf, train, i),
                thinning(),
                drawn("wheel", "disc", "A_1", i, wheel.disc()),
                drawn("wheel", "tip", "r_t", i, wheel.tipRadius()),
                root,
                windows);
    }

    private Card pinion(int i) {
        Mesh mesh = train.meshes().get(i);
        GearFigures pinion = movement.pinion(mesh);
        Card tip = drawn("pinion", "tip", "r_t", i, pinion.tipRadius());
        return shelf.figure(
                "pinion-mass-%d".formatted(i + 1),
                "m_p%d".formatted(i + 1),
                kilograms(movement.printedPinionMass(mesh)),
                "kg",
                "m_p = ρ (l_p (m² A_1 − m t (r_t² − r_0²)) + b A_f)",
                in -> whole(in[0] * (in[1] * thinned(in[3], in[4], in[5], in[6], in[7]) + in[2] * in[8])),
                MADE,
                density(),
                leaves(),
                thickness(),
                RunCards.module(shelf, train, i),
                thinning(),
                drawn("pinion", "disc", "A_1", i, pinion.disc()),
                tip,
                drawn("pinion", "root", "r_0", i, pinion.rootRadius()),
                foot(i, pinion.tipRadius() * mesh.module().metres(), 0, tip));
    }

    /** What a pinion fills of the windows of the wheel it stands on; a shroud reaches beyond the pins. */
    private Card foot(int i, double radius, double beyond, Card tip) {
        return shelf.figure(
                "pinion-foot-%d".formatted(i + 1),
                "A_f",
                parts.crossing().filled(radius + beyond),
                "m²",
                beyond == 0
                        ? "A_f = A(m r_t) − A(r_h), nought on the hub; A as of a wheel's windows"
                        : "A_f = A(m r_t + 2 e + play/2) − A(r_h), nought on the hub; A as of a wheel's windows",
                in -> crossing(2, in).filled(in[0] * in[1] + (beyond == 0 ? 0 : 2 * in[2] + Shrouds.PIN_PLAY / 2)),
                CROSSED,
                with(List.of(RunCards.module(shelf, train, i), tip), hub()));
    }

    private Card lantern(int i) {
        Mesh mesh = train.meshes().get(i);
        GearFigures pinion = movement.pinion(mesh);
        double around = pinion.tipRadius() * mesh.module().metres();
        Card tip = drawn("pinion", "tip", "r_t", i, pinion.tipRadius());
        Card count = RunCards.leafCount(shelf, train, i);
        Card printed = shelf.figure(
                "shroud-mass-%d".formatted(i + 1),
                "m_s%d".formatted(i + 1),
                kilograms(movement.printedPinionMass(mesh)),
                "kg",
                "m_s = ρ b (π ((m r_t + 2 e + play/2)² − p (m (2 r_t − p) + play)²/4) + A_f), play = 0.15 mm",
                in -> whole(in[0]
                        * (new Shrouds(METRES * (Nanometres.of(in[1]) / 2), 2 * in[5])
                                        .volume((int) in[4], in[2] * (2 * in[3] - in[4]), in[2] * in[3])
                                + in[1] * in[6])),
                "two shrouds half as thick as a wheel, and what they fill of the wheel's windows; our own geometry",
                density(),
                thickness(),
                RunCards.module(shelf, train, i),
                tip,
                count,
                nozzle(),
                foot(i, around, new AxialSizes(brief).shrouds().radius(around) - around, tip));
        Card pins = shelf.figure(
                "pins-mass-%d".formatted(i + 1),
                "m_n%d".formatted(i + 1),
                kilograms(movement.pinionMass(mesh) - movement.printedPinionMass(mesh)),
                "kg",
                "m_n = 7750 kg/m³ · p π (m (2 r_t − p))²/4 · l_p",
                in -> whole(Shrouds.pinMass((int) in[3], in[1] * (2 * in[2] - in[3]), in[0])),
                "steel: Beckett 1903, p. 53",
                leaves(),
                RunCards.module(shelf, train, i),
                tip,
                count);
        shelf.figure(
                "pinion-mass-%d".formatted(i + 1),
                "m_p%d".formatted(i + 1),
                kilograms(movement.pinionMass(mesh)),
                "kg",
                "m_p = m_s + m_n",
                in -> in[0] + in[1],
                "shrouds and pins",
                printed,
                pins);
        return printed;
    }

    private Card escapeWheel() {
        Card radius =
                shelf.brief("r_w", "/escapement/wheelRadius", brief.escapement().wheelRadius());
        EscapeToothSize teeth = parts.escapeTeeth();
        Card windows = shelf.figure(
                "escape-wheel-windows",
                "A_o",
                parts.crossing()
                        .opened(
                                teeth.root(parts.escapeWheelRadius()),
                                parts.crossing().escapeRim()),
                "m²",
                "A_o = A(0.78 r_w − 6 e) − A(r_h); A as of a wheel's windows",
                in -> crossing(1, in).opened(teeth.root(in[0]), crossing(1, in).escapeRim()),
                CROSSED,
                with(List.of(radius), hub()));
        return shelf.figure(
                "escape-wheel-mass",
                "m_e",
                kilograms(parts.escapeWheelMass()),
                "kg",
                "m_e = ρ b (π r_0 (r_0 + 0.65 (r_w − r_0)) − A_o), r_0 = 0.78 r_w",
                in -> whole(in[0] * in[1] * (teeth.area(in[2]) - in[3])),
                MADE,
                density(),
                thickness(),
                radius,
                windows);
    }

    private static double thinned(double module, double thinning, double disc, double tip, double root) {
        return module * module * new GearFigures(tip, 0, 0, root, disc).area(thinning / module);
    }

    private Card density() {
        return shelf.brief("ρ", "/material/density", brief.material().density());
    }

    private Card thickness() {
        return shelf.brief("b", "/parts/wheelThickness", brief.parts().wheelThickness());
    }

    private Card nozzle() {
        return shelf.brief("e", "/printer/nozzle", brief.printer().nozzle());
    }

    private Card drawn(String gear, String what, String symbol, int mesh, double value) {
        return shelf.given("drawn-%s-%s-%d".formatted(gear, what, mesh + 1), symbol, value, "1", DRAWN);
    }

    private Card thinning() {
        return made("thinning")
                ? shelf.get("thinning")
                : shelf.figure(
                        "thinning",
                        "t",
                        BriefParts.thinning(brief),
                        "m",
                        "t = (t_low + t_high) / 2",
                        in -> (in[0] + in[1]) / 2,
                        "the middle of the band",
                        shelf.brief(
                                "t_low",
                                "/teeth/thinning/low",
                                brief.teeth().thinning().low()),
                        shelf.brief(
                                "t_high",
                                "/teeth/thinning/high",
                                brief.teeth().thinning().high()));
    }

    /** From the face of a wheel to the far end of its pinion in the next plane. */
    private Card leaves() {
        if (made("leaf-length")) {
            return shelf.get("leaf-length");
        }
        boolean lantern = parts.shrouds().isPresent();
        return shelf.figure(
                "leaf-length",
                "l_p",
                parts.leafLength(),
                "m",
                lantern
                        ? "l_p = (l_o − b)/2 + gap + shake + l_o, l_o = max(l, b + 2 (gap + shake)) + b"
                        : "l_p = (max(b, l) − b)/2 + gap + shake + l",
                in -> METRES * leaves(lantern, in),
                "the pinion's plane next to the wheel's",
                shelf.brief("l", "/parts/pinionLength", brief.parts().pinionLength()),
                thickness(),
                shelf.brief("gap", "/parts/axialGap", brief.parts().axialGap()),
                shelf.brief(
                        "shake", "/fit/endShake/high", brief.fit().endShake().high()));
    }

    private static long leaves(boolean lantern, double... in) {
        long wheel = Nanometres.of(in[1]);
        long spacing = Nanometres.of(in[2]) + Nanometres.of(in[3]);
        long length = Nanometres.of(in[0]);
        long over = lantern ? Math.max(length, wheel + 2 * spacing) + wheel / 2 * 2 : length;
        return (Math.max(wheel, over) - wheel) / 2 + spacing + over;
    }

    private boolean made(String card) {
        return shelf.cards().containsKey(card);
    }

    /** What the hub and the arms of all wheels follow from, and the hub itself. */
    private List<Card> hub() {
        List<Card> inputs = List.of(
                nozzle(),
                shelf.given(
                        "ratchet-pin",
                        "d_p",
                        BriefParts.ratchet(brief).pin(),
                        "m",
                        "customary size for wall clocks; common practice, no source"),
                rod("drum", brief.arbors().drum()),
                rod("centre", brief.arbors().centre()),
                rod("intermediate", brief.arbors().intermediate()),
                rod("escape", brief.arbors().escape()),
                shelf.brief("w_h", "/parts/hubWall", brief.parts().hubWall()));
        if (!made("wheel-hub")) {
            shelf.figure(
                    "wheel-hub",
                    "r_h",
                    parts.crossing().hubRadius(),
                    "m",
                    "r_h = max(d/2 + max(w_h, 2 e), (d_p/2 + 2 e + 2 mm) / sin(π/4) − 2 mm), d: the thickest rod",
                    in -> crossing(0, in).hubRadius(),
                    CROSSED,
                    inputs.toArray(Card[]::new));
        }
        return inputs;
    }

    private Card rod(String role, Brief.ArborBuild build) {
        return shelf.brief("d_" + role, "/arbors/" + role + "/diameter", build.diameter());
    }

    private static Card[] with(List<Card> first, List<Card> more) {
        return Stream.concat(first.stream(), more.stream()).toArray(Card[]::new);
    }

    /** The crossings of nozzle, pin, four rods and hub wall, in that order from an input on. */
    private static Crossing crossing(int from, double... in) {
        double rod = Math.max(Math.max(in[from + 2], in[from + 3]), Math.max(in[from + 4], in[from + 5]));
        return Crossing.of(2 * in[from], in[from + 1], rod, in[from + 6]);
    }
}
