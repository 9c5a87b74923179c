// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

import java.util.List;

/**
 * Which of the possible layouts is preferred.
 *
 * @param wishes in order of importance, each at most once; none asks for any layout
 * @param manner how several wishes are weighed
 */
public record Preference(List<WeightedWish> wishes, Manner manner) {
    /** Any layout will do. */
    public static final Preference ANY = new Preference(List.of(), Manner.IN_ORDER);

    /** How several wishes are weighed against each other. */
    public enum Manner {
        /** A later wish counts only between layouts that are equal in all earlier ones; weights play no part. */
        IN_ORDER,
        /** The sum of each wish's nanometres times its weight is made least. */
        SUMMED
    }

    /**
     * A wish with its weight.
     *
     * @param wish what is wished
     * @param weight how much a nanometre counts, 1 to 1000
     */
    public record WeightedWish(Wish wish, int weight) {
        private static final int MOST = 1000;

        /**
         * Checks the weight.
         *
         * @throws IllegalArgumentException if the weight is out of range
         */
        public WeightedWish {
            if (weight < 1 || weight > MOST) {
                throw new IllegalArgumentException(
                        "The weight (%d) of wish (%s) must be from 1 to %d. Maybe leave the wish out."
                                .formatted(weight, wish, MOST));
            }
        }
    }

    /**
     * Copies the list and checks that no wish stands twice and that only lengths are added up.
     *
     * @throws IllegalArgumentException if a wish stands twice or an area is to be added to lengths
     */
    public Preference {
        wishes = List.copyOf(wishes);
        if (wishes.stream().map(WeightedWish::wish).distinct().count() < wishes.size()) {
            throw new IllegalArgumentException(
                    "The wishes (%s) must differ from each other. Maybe add their weights.".formatted(wishes));
        }
        if (manner == Manner.SUMMED && wishes.stream().anyMatch(wish -> wish.wish() == Wish.SMALL_PLATE)) {
            throw new IllegalArgumentException(
                    "The wishes (%s) must be lengths to be added up. Maybe put them in order.".formatted(wishes));
        }
    }

    /** Wishes in order of importance. */
    public static Preference inOrder(Wish... wishes) {
        return new Preference(
                List.of(wishes).stream().map(wish -> new WeightedWish(wish, 1)).toList(), Manner.IN_ORDER);
    }

    /** Wishes with weights, added up. */
    public static Preference summed(WeightedWish... wishes) {
        return new Preference(List.of(wishes), Manner.SUMMED);
    }
}
