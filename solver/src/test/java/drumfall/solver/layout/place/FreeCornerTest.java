// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.layout.Box;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Free points of a box, against every point of the box one by one. */
class FreeCornerTest {
    private static final int CASES = "full".equals(System.getProperty("drumfall.samples")) ? 5000 : 500;
    private static final int SIDE = 60;

    /**
     * A free region without any lattice point, or of less than a lattice cell, may be missed by rounding; a free point
     * whose eight neighbours are free too may not.
     */
    @Test
    void a_point_is_found_wherever_a_whole_neighbourhood_is_free_and_every_point_found_is_free() {
        Random random = new Random(3);
        int full = 0;
        int cornersOnly = 0;
        for (int i = 0; i < CASES; i++) {
            List<Obstacle> obstacles = obstacles(random);
            Box box = new Box(0, 0, SIDE, SIDE);
            Optional<Place> found = new FreeCorner(box, obstacles).find();
            found.ifPresent(
                    place -> assertThat(obstacles).noneMatch(obstacle -> obstacle.blocks(place.x(), place.y())));
            boolean roomy = hasFreeNeighbourhood(obstacles);
            assertThat(found.isPresent() || !roomy).isTrue();
            full += found.isPresent() ? 0 : 1;
            cornersOnly += found.isPresent() && !found.get().equals(new Place(SIDE / 2, SIDE / 2)) ? 1 : 0;
        }
        assertThat(full).isGreaterThan(CASES / 20);
        assertThat(cornersOnly).isGreaterThan(CASES / 20);
    }

    /** Both rings are over 0.9 m in radius; they cross beside the box and again 1.8 m below it, where no place can be. */
    @Test
    void edges_that_cross_again_further_away_than_a_place_can_be_do_not_matter() {
        Part part = new Part(PartKind.WHEEL, 0);
        Part pillar = new Part(PartKind.PILLAR, 0);
        long down = -900_000_000;
        long across = 100_000_000;
        long radius = Math.round(Math.hypot((double) across, down - 10.0));
        List<Obstacle> obstacles = List.of(
                new Obstacle(part, pillar, 0, 0, down, 10 - down, false),
                new Obstacle(part, pillar, across, 0, down, radius, false));
        assertThat(new FreeCorner(new Box(-SIDE, -SIDE, SIDE, SIDE), obstacles).find())
                .hasValueSatisfying(
                        place -> assertThat(obstacles).noneMatch(obstacle -> obstacle.blocks(place.x(), place.y())));
    }

    private static List<Obstacle> obstacles(Random random) {
        List<Obstacle> obstacles = new ArrayList<>();
        Part part = new Part(PartKind.WHEEL, 0);
        Part pillar = new Part(PartKind.PILLAR, 0);
        int count = 3 + random.nextInt(30);
        for (int i = 0; i < count; i++) {
            boolean strip = random.nextInt(4) == 0;
            int half = strip ? random.nextInt(6) : 0;
            obstacles.add(new Obstacle(
                    part,
                    pillar,
                    random.nextInt(SIDE + 1),
                    half,
                    random.nextInt(SIDE + 1),
                    5 + random.nextInt(18),
                    strip));
        }
        return obstacles;
    }

    private static boolean hasFreeNeighbourhood(List<Obstacle> obstacles) {
        for (int x = 1; x < SIDE; x++) {
            for (int y = 1; y < SIDE; y++) {
                if (isFreeAround(obstacles, x, y)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean isFreeAround(List<Obstacle> obstacles, int x, int y) {
        for (int dx = -1; dx <= 1; dx++) {
            for (int dy = -1; dy <= 1; dy++) {
                long atX = (long) x + dx;
                long atY = (long) y + dy;
                if (obstacles.stream().anyMatch(obstacle -> obstacle.blocks(atX, atY))) {
                    return false;
                }
            }
        }
        return true;
    }
}
