// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.books;

import drumfall.solver.power.books.LoadedTrain.ArborTorque;
import java.util.List;
import java.util.stream.Stream;

/**
 * The books of a clock under one weight; everything in watts, averaged over many turns.
 *
 * @param weight kg, the pulley included
 * @param weightPower power of the falling weight, {@code P = W g F / (3600 H)}
 * @param torques torques from the drum to the escape wheel, each mesh at its work mean
 * @param handedOn power that each arbor's wheel hands on, from the drum to the escape wheel
 * @param semiArc arc that the pendulum keeps, rad
 * @param entries where the power goes, from the weight down
 */
public record PowerBooks(
        double weight,
        double weightPower,
        List<ArborTorque> torques,
        List<Double> handedOn,
        double semiArc,
        List<BookEntry> entries) {
    /** Copies the lists. */
    public PowerBooks {
        torques = List.copyOf(torques);
        handedOn = List.copyOf(handedOn);
        entries = List.copyOf(entries);
    }

    /**
     * Share of the weight's power that goes to an entry.
     *
     * @param entry the entry
     */
    public double share(BookEntry entry) {
        return entry.power() / weightPower;
    }

    /**
     * Share of all friction that an entry has.
     *
     * @param entry an entry where parts rub
     */
    public double shareOfFriction(BookEntry entry) {
        return entry.power() / friction();
    }

    /** Power of all places where parts rub, W. */
    public double friction() {
        return total(entries.stream().filter(entry -> entry.place().friction()));
    }

    /**
     * Power that goes to all places of one kind, W.
     *
     * @param place the kind
     */
    public double at(Place place) {
        return total(entries.stream().filter(entry -> entry.place() == place));
    }

    /** What the entries lack of the weight's power, as a share of it; rounding only. */
    public double imbalance() {
        return 1 - total(entries.stream()) / weightPower;
    }

    private static double total(Stream<BookEntry> entries) {
        return entries.mapToDouble(BookEntry::power).sum();
    }
}
