// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.Box;
import drumfall.solver.layout.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds a point of a box outside all obstacles.
 *
 * <p>If there is one, there is one where two edges of box and obstacles cross: walking to the left, and then down, inside
 * the free region never ends on an arc, since obstacles are round towards the region.
 */
final class FreeCorner {
    private final Box box;
    private final List<Obstacle> obstacles;
    private final List<Double> uprights = new ArrayList<>();
    private final List<Double> levels = new ArrayList<>();
    private final List<Obstacle> rings = new ArrayList<>();
    /** The obstacles that reach into the box; the others say nothing of its points. */
    private List<Obstacle> near = List.of();

    private Place nearest;
    private double least = Double.POSITIVE_INFINITY;

    FreeCorner(Box box, List<Obstacle> obstacles) {
        this.box = box;
        this.obstacles = obstacles;
    }

    Optional<Place> find() {
        Place middle = middle();
        if (isFree(middle.x(), middle.y())) {
            return Optional.of(middle);
        }
        near = obstacles.stream().filter(obstacle -> obstacle.touches(box)).toList();
        if (near.stream().anyMatch(obstacle -> obstacle.covers(box))) {
            return Optional.empty();
        }
        gatherEdges();
        for (double x : uprights) {
            for (double y : levels) {
                consider(x, y);
            }
        }
        for (int i = 0; i < rings.size(); i++) {
            crossLines(rings.get(i));
            for (int j = 0; j < i; j++) {
                crossRings(rings.get(i), rings.get(j));
            }
        }
        return Optional.ofNullable(nearest);
    }

    boolean isFree(long x, long y) {
        return isInside(x, y) && obstacles.stream().noneMatch(obstacle -> obstacle.blocks(x, y));
    }

    private boolean isInside(long x, long y) {
        return x >= box.left() && x <= box.right() && y >= box.bottom() && y <= box.top();
    }

    /** The obstacle that covers the middle of the box deepest. */
    Obstacle worst() {
        Place middle = middle();
        return obstacles.stream()
                .max(Comparator.comparingLong(obstacle -> obstacle.lacks(middle.x(), middle.y())))
                .orElseThrow();
    }

    Place middle() {
        return new Place(Math.floorDiv(box.left() + box.right(), 2), Math.floorDiv(box.bottom() + box.top(), 2));
    }

    private void gatherEdges() {
        uprights.addAll(List.of((double) box.left(), (double) box.right()));
        levels.addAll(List.of((double) box.bottom(), (double) box.top()));
        for (Obstacle obstacle : obstacles) {
            if (obstacle.strip()) {
                addUpright(obstacle.x() - obstacle.half() - obstacle.radius());
                addUpright(obstacle.x() + obstacle.half() + obstacle.radius());
                addLevel(obstacle.y() + obstacle.radius());
                addRing(obstacle, -obstacle.half());
            }
            addRing(obstacle, obstacle.half());
        }
    }

    private void addUpright(long x) {
        if (x >= box.left() && x <= box.right()) {
            uprights.add((double) x);
        }
    }

    private void addLevel(long y) {
        if (y >= box.bottom() && y <= box.top()) {
            levels.add((double) y);
        }
    }

    private void addRing(Obstacle obstacle, long across) {
        Obstacle ring = ring(obstacle, across);
        if (ring.touches(box)) {
            rings.add(ring);
        }
    }

    private static Obstacle ring(Obstacle obstacle, long across) {
        return new Obstacle(
                obstacle.part(), obstacle.pillar(), obstacle.x() + across, 0, obstacle.y(), obstacle.radius(), false);
    }

    private void crossLines(Obstacle ring) {
        double radius = ring.radius();
        for (double x : uprights) {
            double off = x - ring.x();
            if (Math.abs(off) <= radius) {
                double up = Math.sqrt(radius * radius - off * off);
                consider(x, ring.y() + up);
                consider(x, ring.y() - up);
            }
        }
        for (double y : levels) {
            double off = y - ring.y();
            if (Math.abs(off) <= radius) {
                double across = Math.sqrt(radius * radius - off * off);
                consider(ring.x() + across, y);
                consider(ring.x() - across, y);
            }
        }
    }

    private void crossRings(Obstacle one, Obstacle other) {
        double across = other.x() - one.x();
        double up = other.y() - one.y();
        double apart = Math.hypot(across, up);
        double first = one.radius();
        double second = other.radius();
        if (apart == 0 || apart > first + second || apart < Math.abs(first - second)) {
            return;
        }
        double along = (apart * apart + first * first - second * second) / (2 * apart);
        double off = Math.sqrt(Math.max(0, first * first - along * along));
        double x = one.x() + along * across / apart;
        double y = one.y() + along * up / apart;
        consider(x - off * up / apart, y + off * across / apart);
        consider(x + off * up / apart, y - off * across / apart);
    }

    private void consider(double x, double y) {
        considerPoint(Math.floor(x), Math.floor(y));
        considerPoint(Math.floor(x), Math.ceil(y));
        considerPoint(Math.ceil(x), Math.floor(y));
        considerPoint(Math.ceil(x), Math.ceil(y));
    }

    private void considerPoint(double x, double y) {
        long atX = (long) x;
        long atY = (long) y;
        if (!isInside(atX, atY)) {
            return;
        }
        Place point = new Place(atX, atY);
        double away = point.distance(middle());
        if (away < least && near.stream().noneMatch(obstacle -> obstacle.blocks(atX, atY))) {
            nearest = point;
            least = away;
        }
    }
}
