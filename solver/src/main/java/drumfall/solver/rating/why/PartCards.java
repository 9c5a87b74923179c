// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.brief.Brief;
import drumfall.solver.parts.PartStock;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.List;

/** Cards of the masses of printed parts; all are whole micrograms. */
final class PartCards {
    private static final String SOLID =
            "discs and cylinders at their pitch radii, crossings as a share; our own simplification";
    private static final double MICROGRAMS = 1e9;

    private final CardShelf shelf;
    private final Brief brief;
    private final Rating rating;
    private final PartStock parts;

    PartCards(CardShelf shelf, TrainRater rater, Rating rating) {
        this.shelf = shelf;
        this.brief = rater.brief();
        this.rating = rating;
        this.parts = rater.movement().parts();
    }

    void make() {
        Train train = rating.train();
        List<Card> masses = new ArrayList<>();
        for (int i = 0; i < train.meshes().size(); i++) {
            masses.add(wheel(train, i));
            masses.add(pinion(train, i));
        }
        masses.add(escapeWheel());
        masses.add(drum(train));
        shelf.figure(
                "filament",
                "m_f",
                rating.filamentMass(),
                "kg",
                "m_f = ∑ m",
                in -> java.util.Arrays.stream(in).sum(),
                "wheels, pinions, escape wheel and drum",
                masses.toArray(Card[]::new));
    }

    private Card density() {
        return shelf.brief("ρ", "/material/density", brief.material().density());
    }

    private static double whole(double kilograms) {
        return Math.rint(kilograms * MICROGRAMS) / MICROGRAMS;
    }

    private Card wheel(Train train, int i) {
        Mesh mesh = train.meshes().get(i);
        return shelf.figure(
                "wheel-mass-%d".formatted(i + 1),
                "m_w%d".formatted(i + 1),
                parts.wheelMass(mesh.module().metres() * mesh.toothCount() / 2) / MICROGRAMS,
                "kg",
                "m_w = ρ b s π (m z / 2)²",
                in -> whole(in[0] * in[1] * in[2] * Math.PI * Math.pow(in[3] * in[4] / 2, 2)),
                SOLID,
                density(),
                thickness(),
                share(),
                RunCards.module(shelf, train, i),
                RunCards.toothCount(shelf, train, i));
    }

    private Card thickness() {
        return shelf.brief("b", "/parts/wheelThickness", brief.parts().wheelThickness());
    }

    private Card share() {
        return shelf.brief("s", "/parts/solidShare", brief.parts().solidShare());
    }

    private Card pinion(Train train, int i) {
        Mesh mesh = train.meshes().get(i);
        return shelf.figure(
                "pinion-mass-%d".formatted(i + 1),
                "m_p%d".formatted(i + 1),
                parts.pinionMass(mesh.module().metres() * mesh.leafCount() / 2) / MICROGRAMS,
                "kg",
                "m_p = ρ l π (m p / 2)²",
                in -> whole(in[0] * in[1] * Math.PI * Math.pow(in[2] * in[3] / 2, 2)),
                SOLID,
                density(),
                shelf.brief("l", "/parts/pinionLength", brief.parts().pinionLength()),
                RunCards.module(shelf, train, i),
                RunCards.leafCount(shelf, train, i));
    }

    private Card escapeWheel() {
        return shelf.figure(
                "escape-wheel-mass",
                "m_e",
                parts.escapeWheelMass() / MICROGRAMS,
                "kg",
                "m_e = ρ b s π r_w²",
                in -> whole(in[0] * in[1] * in[2] * Math.PI * in[3] * in[3]),
                SOLID,
                density(),
                thickness(),
                share(),
                shelf.brief("r_w", "/escapement/wheelRadius", brief.escapement().wheelRadius()));
    }

    private Card drum(Train train) {
        double diameter = train.drumDiameter().doubleValue();
        Card size = shelf.train("drum-diameter", "D", diameter, "m");
        Card flange = shelf.figure(
                "drum-flange",
                "r_f",
                parts.drumFlangeRadius(diameter),
                "m",
                "r_f = D/2 + 3 u",
                in -> in[0] / 2 + 3 * in[1],
                "three lines above the bare drum; common practice, no source",
                size,
                shelf.brief("u", "/line/diameter", brief.line().diameter()));
        return shelf.figure(
                "drum-mass",
                "m_d",
                parts.drumMass(diameter) / MICROGRAMS,
                "kg",
                "m_d = ρ π ((D²/4 − (D/2 − w)²) l_d + 2 r_f² w)",
                in -> {
                    double outer = in[1] / 2;
                    double inner = Math.max(0, outer - in[2]);
                    double tube = (outer * outer - inner * inner) * in[3];
                    return whole(in[0] * Math.PI * (tube + 2 * in[4] * in[4] * in[2]));
                },
                "a tube closed by two flanges",
                density(),
                size,
                shelf.brief("w", "/drum/wall", brief.drum().wall()),
                shelf.brief("l_d", "/drum/length", brief.drum().length()),
                flange);
    }
}
