// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Cards of the masses of printed parts as they are made; all are whole micrograms. */
final class PartCards {
    private static final double MICROGRAMS = 1e9;

    private final CardShelf shelf;
    private final TrainRater rater;
    private final Rating rating;

    PartCards(CardShelf shelf, TrainRater rater, Rating rating) {
        this.shelf = shelf;
        this.rater = rater;
        this.rating = rating;
    }

    void make() {
        WheelMassCards wheels = new WheelMassCards(shelf, rater, rating.train());
        PinionMassCards pinions = new PinionMassCards(shelf, rater, rating.train());
        List<Card> masses = new ArrayList<>();
        for (int i = 0; i < rating.train().meshes().size(); i++) {
            masses.add(wheels.wheel(i));
            masses.add(pinions.printed(i));
        }
        masses.add(wheels.escapeWheel());
        masses.add(new DrumMassCards(shelf, rater, rating.train()).drum());
        shelf.figure(
                "filament",
                "m_f",
                rating.filamentMass(),
                "kg",
                "m_f = ∑ m",
                in -> Arrays.stream(in).sum(),
                "wheels, pinions, escape wheel, and what stands on the drum's arbor",
                masses.toArray(Card[]::new));
    }

    /** A mass in whole micrograms, kg. */
    static double whole(double kilograms) {
        return Math.rint(kilograms * MICROGRAMS) / MICROGRAMS;
    }

    /** A mass told in micrograms, kg. */
    static double kilograms(long micrograms) {
        return micrograms / MICROGRAMS;
    }
}
