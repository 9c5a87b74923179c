// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Points kept in a tree of boxes, to tell quickly whether one of them is nowhere larger than a given point.
 *
 * <p>The idea is that of Jaszkiewicz and Lust, "ND-Tree-Based Update: A Fast Algorithm for the Dynamic Nondominance
 * Problem", IEEE Transactions on Evolutionary Computation 22 (2018): a box whose largest corner is nowhere larger answers
 * yes at once, one whose smallest corner is larger somewhere is passed over.
 *
 * @param <T> what stands at a point
 */
final class DominanceTree<T> {
    private static final int LEAF = 16;

    /** Whether an entry may stand in for the one asked about although it is nowhere larger; settles ties. */
    interface Precedence<T> {
        boolean mayReplace(double[] point, T entry, double[] asked);
    }

    /** A leaf holds its points row by row in one array, so that going through them stays in the processor's cache. */
    private static final class Box<T> {
        final double[] smallest;
        final double[] largest;
        double[] points;
        List<T> contents = new ArrayList<>();
        Box<T> left;
        Box<T> right;

        Box(int dimensions) {
            smallest = new double[dimensions];
            largest = new double[dimensions];
            points = new double[dimensions * (LEAF + 1)];
            Arrays.fill(smallest, Double.POSITIVE_INFINITY);
            Arrays.fill(largest, Double.NEGATIVE_INFINITY);
        }

        void stretch(double[] point) {
            for (int i = 0; i < point.length; i++) {
                smallest[i] = Math.min(smallest[i], point[i]);
                largest[i] = Math.max(largest[i], point[i]);
            }
        }

        void put(double[] point, T content) {
            System.arraycopy(point, 0, points, contents.size() * point.length, point.length);
            contents.add(content);
        }

        double[] point(int index) {
            return Arrays.copyOfRange(points, index * smallest.length, (index + 1) * smallest.length);
        }
    }

    private final Box<T> root;
    private int size;
    /** Neighbours tend to be covered by the same entry, so the last that did is asked first. */
    private double[] recentPoint;

    private T recent;

    DominanceTree(int dimensions) {
        this.root = new Box<>(dimensions);
    }

    int size() {
        return size;
    }

    /** Adds an entry; whatever it replaces stays until the list is next culled. */
    void add(double[] point, T content) {
        Box<T> box = root;
        box.stretch(point);
        while (box.left != null) {
            box = growth(box.left, point) <= growth(box.right, point) ? box.left : box.right;
            box.stretch(point);
        }
        box.put(point, content);
        size++;
        if (box.contents.size() > LEAF) {
            split(box);
        }
    }

    /** Whether some entry is nowhere larger than the point asked about and may replace it. */
    boolean covers(double[] asked, Precedence<T> precedence) {
        return size > 0
                && ((recent != null
                                && nowhereLarger(recentPoint, 0, asked)
                                && precedence.mayReplace(recentPoint, recent, asked))
                        || covers(root, asked, precedence));
    }

    private boolean covers(Box<T> box, double[] asked, Precedence<T> precedence) {
        if (!nowhereLarger(box.smallest, 0, asked)) {
            return false;
        }
        if (box.left != null) {
            return covers(box.left, asked, precedence) || covers(box.right, asked, precedence);
        }
        for (int i = 0; i < box.contents.size(); i++) {
            if (nowhereLarger(box.points, i * asked.length, asked)) {
                double[] point = box.point(i);
                if (precedence.mayReplace(point, box.contents.get(i), asked)) {
                    recentPoint = point;
                    recent = box.contents.get(i);
                    return true;
                }
            }
        }
        return false;
    }

    private void split(Box<T> box) {
        int axis = widestAxis(box);
        int dimensions = box.smallest.length;
        List<Integer> order = IntStream.range(0, box.contents.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> box.points[i * dimensions + axis]))
                .toList();
        int half = order.size() / 2;
        box.left = part(box, order.subList(0, half));
        box.right = part(box, order.subList(half, order.size()));
        box.points = null;
        box.contents = null;
    }

    private static <T> Box<T> part(Box<T> box, List<Integer> indices) {
        Box<T> part = new Box<>(box.smallest.length);
        for (int index : indices) {
            double[] point = box.point(index);
            part.put(point, box.contents.get(index));
            part.stretch(point);
        }
        return part;
    }

    private int widestAxis(Box<T> box) {
        int widest = 0;
        double width = -1;
        for (int i = 0; i < box.smallest.length; i++) {
            double share = share(box.largest[i] - box.smallest[i], i);
            if (share > width) {
                width = share;
                widest = i;
            }
        }
        return widest;
    }

    /** How much further a box must stretch for a point, each axis as a share of the whole tree's extent. */
    private double growth(Box<T> box, double[] point) {
        double growth = 0;
        for (int i = 0; i < point.length; i++) {
            double beyond = Math.max(0, Math.max(box.smallest[i] - point[i], point[i] - box.largest[i]));
            growth += share(beyond, i);
        }
        return growth;
    }

    private double share(double length, int axis) {
        double extent = root.largest[axis] - root.smallest[axis];
        return extent > 0 ? length / extent : 0;
    }

    /** From the last axis on, where points tend to differ most. */
    private static boolean nowhereLarger(double[] points, int from, double[] asked) {
        for (int i = asked.length - 1; i >= 0; i--) {
            if (points[from + i] > asked[i]) {
                return false;
            }
        }
        return true;
    }
}
