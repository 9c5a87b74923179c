// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.power.books.BookEntry;
import drumfall.solver.power.books.Place;
import drumfall.solver.power.books.PowerBooks;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One place on the way from the weight to the pendulum where power goes.
 *
 * @param place the place
 * @param number of the mesh or arbor, both from 0 at the drum; 0 where there is only one such place
 * @param title what it is called
 * @param power that goes there, W
 * @param before share of the weight's power that arrives
 * @param after share that goes on; of the pendulum, where the way ends, what rounding leaves
 * @param arbor number of the arbor it belongs to, if to one alone
 */
public record PowerStep(
        Place place, int number, String title, double power, double before, double after, Optional<Integer> arbor) {
    private static final double MICROWATTS = 1e6;

    /**
     * The way of the power.
     *
     * @param books under a weight
     * @param train the train
     */
    public static List<PowerStep> of(PowerBooks books, Train train) {
        List<PowerStep> steps = new ArrayList<>();
        double left = 1;
        for (BookEntry entry : books.entries()) {
            double after = left - books.share(entry);
            steps.add(new PowerStep(
                    entry.place(),
                    entry.number(),
                    title(entry.place(), entry.number(), train),
                    entry.power(),
                    left,
                    after,
                    arbor(entry, train)));
            left = after;
        }
        return steps;
    }

    static String title(Place place, int number, Train train) {
        return switch (place) {
            case BORES -> Texts.of("powerplace.BORES", Names.arbor(number, train));
            case MESH -> Texts.of("powerplace.MESH", train.meshes().get(number).counts());
            default -> Texts.of("powerplace." + place.name());
        };
    }

    private static Optional<Integer> arbor(BookEntry entry, Train train) {
        return switch (entry.place()) {
            case PULLEY -> Optional.of(0);
            case BORES, HANDS -> Optional.of(entry.number());
            case DROP, IMPULSE, INERTIA, LOCKING, PALLET_ARBOR ->
                Optional.of(train.meshes().size());
            case MESH, PENDULUM -> Optional.empty();
        };
    }

    /** Whether it is the end of the way rather than a loss on it. */
    public boolean arrives() {
        return place == Place.PENDULUM;
    }

    /** Number of the mesh it is, if it is one. */
    public Optional<Integer> mesh() {
        return place == Place.MESH ? Optional.of(number) : Optional.empty();
    }

    /** Share of the weight's power. */
    public double share() {
        return before - after;
    }

    /** Power in microwatts, three significant digits at least. */
    public static ShownFigure microwatts(double watts) {
        double micro = watts * MICROWATTS;
        int decimals = micro < 0.995 ? 3 : micro < 9.995 ? 2 : micro < 99.95 ? 1 : 0;
        return new ShownFigure(String.format(Locale.ROOT, "%." + decimals + "f", micro), "µW");
    }

    /** The same place whatever the figures. */
    public boolean samePlace(PowerStep other) {
        return place == other.place && number == other.number && title.equals(other.title);
    }
}
