// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.brief.Brief;
import drumfall.solver.layout.size.Nanometres;
import drumfall.solver.parts.Crossing;
import drumfall.solver.parts.PartStock;
import drumfall.solver.rating.BriefParts;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.teeth.GearFigures;
import java.util.List;
import java.util.stream.Stream;

/** Cards that the masses of wheels and pinions share: sizes of the brief, the drawn teeth, hub and arms. */
final class MassInputs {
    static final String MADE = "parts as they are made, bores counted with the arbor; our own geometry";
    static final String CROSSED = "straight arms with round corners; common practice, no source";
    private static final String DRAWN = "the drawn teeth at module 1, before thinning";
    private static final double METRES = 1e-9;

    private final CardShelf shelf;
    private final Brief brief;
    private final PartStock parts;

    MassInputs(CardShelf shelf, TrainRater rater) {
        this.shelf = shelf;
        this.brief = rater.brief();
        this.parts = rater.movement().parts();
    }

    static double thinned(double module, double thinning, double disc, double tip, double root) {
        return module * module * new GearFigures(tip, 0, 0, root, disc).area(thinning / module);
    }

    Card density() {
        return shelf.brief("ρ", "/material/density", brief.material().density());
    }

    Card thickness() {
        return shelf.brief("b", "/parts/wheelThickness", brief.parts().wheelThickness());
    }

    Card escapeRadius() {
        return shelf.brief("r_w", "/escapement/wheelRadius", brief.escapement().wheelRadius());
    }

    Card nozzle() {
        return shelf.brief("e", "/printer/nozzle", brief.printer().nozzle());
    }

    Card drawn(String gear, String what, String symbol, int mesh, double value) {
        return shelf.given("drawn-%s-%s-%d".formatted(gear, what, mesh + 1), symbol, value, "1", DRAWN);
    }

    Card thinning() {
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
    Card leaves() {
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
    List<Card> hub() {
        List<Card> inputs = List.of(
                nozzle(),
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
                    "r_h = max(d/2 + max(w_h, 2 e), (7 e + 2 mm) / sin(π/4) − 2 mm), d: the thickest rod, or bearing in a hub",
                    in -> crossing(0, in).hubRadius(),
                    CROSSED,
                    inputs.toArray(Card[]::new));
        }
        return inputs;
    }

    private Card rod(String role, Brief.ArborBuild build) {
        String what = BriefParts.seatsInHub(build) ? "/bearing/outer" : "/diameter";
        return shelf.brief("d_" + role, "/arbors/" + role + what, BriefParts.inHub(build));
    }

    static Card[] with(List<Card> first, List<Card> more) {
        return Stream.concat(first.stream(), more.stream()).toArray(Card[]::new);
    }

    /** The crossings of nozzle, four rods or bearings in hubs and hub wall, in that order from an input on. */
    static Crossing crossing(int from, double... in) {
        double rod = Math.max(Math.max(in[from + 1], in[from + 2]), Math.max(in[from + 3], in[from + 4]));
        return Crossing.of(2 * in[from], rod, in[from + 5]);
    }
}
