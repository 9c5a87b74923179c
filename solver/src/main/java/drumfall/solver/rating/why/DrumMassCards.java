// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import static drumfall.solver.rating.why.PartCards.kilograms;
import static drumfall.solver.rating.why.PartCards.whole;

import drumfall.solver.brief.Brief;
import drumfall.solver.layout.size.Nanometres;
import drumfall.solver.parts.DrumForm;
import drumfall.solver.parts.PartStock;
import drumfall.solver.parts.RatchetSize;
import drumfall.solver.parts.SquareSize;
import drumfall.solver.rating.AxialSizes;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Train;
import java.util.List;

/** Cards of the mass of what stands on the drum's arbor besides the great wheel. */
final class DrumMassCards {
    private static final String MADE = "parts as they are made; our own geometry";
    private static final String CUSTOMARY = "customary size for wall clocks; common practice, no source";
    private static final double METRES = 1e-9;

    private final CardShelf shelf;
    private final Brief brief;
    private final PartStock parts;
    private final double diameter;
    private final MassInputs inputs;

    DrumMassCards(CardShelf shelf, TrainRater rater, Train train) {
        this.shelf = shelf;
        this.brief = rater.brief();
        this.parts = rater.movement().parts();
        this.diameter = train.drumDiameter().doubleValue();
        this.inputs = new MassInputs(shelf, rater);
    }

    Card drum() {
        Card[] ratchet = ratchetInputs();
        return shelf.figure(
                "drum-mass",
                "m_d",
                kilograms(parts.drumMass(diameter)),
                "kg",
                "m_d = m_b + m_r + m_g + m_q",
                in -> in[0] + in[1] + in[2] + in[3],
                "drum, ratchet with click, the click's ground in the great wheel, winding square",
                barrel(),
                ratchet(ratchet),
                ground(ratchet),
                square());
    }

    private Card size() {
        return shelf.train("drum-diameter", "D", diameter, "m");
    }

    private Card density() {
        return inputs.density();
    }

    private Card bore() {
        return shelf.brief("d", "/arbors/drum/diameter", brief.arbors().drum().diameter());
    }

    private Card wall() {
        return shelf.brief("w_d", "/drum/wall", brief.drum().wall());
    }

    private Card nozzle() {
        return inputs.nozzle();
    }

    private Card barrel() {
        Card flange = shelf.figure(
                "drum-flange",
                "r_f",
                parts.drumFlangeRadius(diameter),
                "m",
                "r_f = D/2 + 3 u",
                in -> in[0] / 2 + 3 * in[1],
                "three lines above the bare drum; common practice, no source",
                size(),
                shelf.brief("u", "/line/diameter", brief.line().diameter()));
        return shelf.figure(
                "barrel-mass",
                "m_b",
                kilograms(parts.barrelMass(diameter)),
                "kg",
                "m_b = ρ (2 w_d π (r_f² − d²/4) + l_d A + w_d A_s − 3 w_d π d_p²/4), A: tubes w_d thick at D/2 and"
                        + " around d, A_s: the spigot; a small drum is solid but for its pins' holes",
                in -> whole(in[0] * barrel(in)),
                MADE,
                density(),
                size(),
                flange,
                wall(),
                shelf.brief("l_d", "/drum/length", brief.drum().length()),
                bore(),
                nozzle(),
                pin());
    }

    private Card pin() {
        RatchetSize size = parts.drum().ratchet();
        return shelf.given("made-ratchet-pin", "d_p", size.pin(), "m", CUSTOMARY);
    }

    /** A drum whose line is what its flange says. */
    private static double barrel(double... in) {
        double line = (in[2] - in[1] / 2) / 3;
        return new DrumForm(
                        in[4],
                        in[3],
                        line,
                        in[5],
                        new RatchetSize(RatchetSize.CUSTOMARY.teeth(), 1, 1, in[7]),
                        1,
                        0,
                        SquareSize.CUSTOMARY,
                        2 * in[6])
                .barrel(in[1]);
    }

    /** Density, and what the ratchet of a drum follows from. */
    private Card[] ratchetInputs() {
        RatchetSize size = parts.drum().ratchet();
        String source = brief.drum().ratchet().isPresent() ? "the brief" : CUSTOMARY;
        Card room = shelf.figure(
                "ratchet-room",
                "l_r",
                parts.drum().room(),
                "m",
                "l_r = (max(b, l) − b)/2 + click space; l over a lantern's shrouds",
                in -> METRES * room(Nanometres.of(in[0]), Nanometres.of(in[1]), Nanometres.of(in[2])),
                "the ratchet fills it with its boss",
                plane(),
                inputs.thickness(),
                shelf.brief("click space", "/drum/clickSpace", brief.drum().clickSpace()));
        return new Card[] {
            density(),
            size(),
            bore(),
            wall(),
            nozzle(),
            room,
            shelf.brief("gap", "/parts/gap", brief.parts().gap()),
            shelf.given("made-ratchet-teeth", "n", size.teeth(), "1", source),
            shelf.given("made-ratchet-depth", "h", size.toothDepth(), "m", source),
            shelf.given("made-ratchet-thickness", "t", size.thickness(), "m", source),
            pin()
        };
    }

    private Card ratchet(Card... sizes) {
        return shelf.figure(
                "ratchet-mass",
                "m_r",
                kilograms(parts.ratchetMass(diameter)),
                "kg",
                "m_r = ρ (t n r_0 (r_0 + h) sin(2π/n)/2 + (l_r − t) π (r_0 − e/2)² − l_r π (d² + 3 d_p²)/4 + t A_k),"
                        + " A_k: the click, two circles and what joins them",
                in -> whole(in[0] * form(in).ratchetAndClick(in[1])),
                MADE,
                sizes);
    }

    private static long room(long plane, long wheel, long clickSpace) {
        return (plane - wheel) / 2 + clickSpace;
    }

    /** What is filled of the great wheel's windows so that the click's pivot stands in solid ground. */
    private Card ground(Card... sizes) {
        Card reach = shelf.figure(
                "click-ground",
                "r_k",
                parts.drum().clickGround(diameter),
                "m",
                "r_k = r_0 + h + d_p + 8 e + gap",
                in -> form(in).clickGround(in[1]),
                "as far as the eye around the click's pivot reaches; our own geometry",
                sizes);
        return shelf.figure(
                "ground-mass",
                "m_g",
                kilograms(parts.groundMass(diameter)),
                "kg",
                "m_g = ρ b (A(r_k) − A(r_h)), nought within the hub; A as of a wheel's windows",
                in -> whole(in[0] * in[1] * MassInputs.crossing(3, in).filled(in[2])),
                MADE,
                MassInputs.with(List.of(density(), inputs.thickness(), reach), inputs.hub()));
    }

    private static DrumForm form(double... in) {
        return new DrumForm(
                in[5],
                in[3],
                0,
                in[2],
                new RatchetSize((int) in[7], in[8], in[9], in[10]),
                in[5],
                in[6],
                SquareSize.CUSTOMARY,
                2 * in[4]);
    }

    /** The plane of a mesh, which a pinion fills. */
    private Card plane() {
        return shelf.given(
                "mesh-plane",
                "l",
                METRES * new AxialSizes(brief).mesh(),
                "m",
                "the thicker of wheel and pinion, as the layout takes it");
    }

    private Card square() {
        return shelf.figure(
                "winding-square-mass",
                "m_q",
                kilograms(parts.squareMass()),
                "kg",
                "m_q = ρ ((π (s/√2 + 2 e)² − π d²/4) 5 mm + (s² − π d²/4) 12 mm), s = d + 6 mm",
                in -> whole(in[0] * SquareSize.CUSTOMARY.volume(in[1], 2 * in[2])),
                CUSTOMARY,
                density(),
                bore(),
                nozzle());
    }
}
