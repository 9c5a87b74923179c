// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

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

    private static final class Entry<T> {
        final double[] point;
        final T content;

        Entry(double[] point, T content) {
            this.point = point;
            this.content = content;
        }
    }

    private static final class Box<T> {
        final double[] smallest;
        final double[] largest;
        List<Entry<T>> entries = new ArrayList<>();
        Box<T> left;
        Box<T> right;

        Box(int dimensions) {
            smallest = new double[dimensions];
            largest = new double[dimensions];
            Arrays.fill(smallest, Double.POSITIVE_INFINITY);
            Arrays.fill(largest, Double.NEGATIVE_INFINITY);
        }

        void stretch(double[] point) {
            for (int i = 0; i < point.length; i++) {
                smallest[i] = Math.min(smallest[i], point[i]);
                largest[i] = Math.max(largest[i], point[i]);
            }
        }
    }

    private final Box<T> root;
    private int size;
    /** Neighbours tend to be covered by the same entry, so the last that did is asked first. */
    private Entry<T> recent;

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
        box.entries.add(new Entry<>(point, content));
        size++;
        if (box.entries.size() > LEAF) {
            split(box);
        }
    }

    /** Whether some entry is nowhere larger than the point asked about and may replace it. */
    boolean covers(double[] asked, Precedence<T> precedence) {
        return size > 0 && ((recent != null && covers(recent, asked, precedence)) || covers(root, asked, precedence));
    }

    private boolean covers(Box<T> box, double[] asked, Precedence<T> precedence) {
        if (!nowhereLarger(box.smallest, asked)) {
            return false;
        }
        if (box.left != null) {
            return covers(box.left, asked, precedence) || covers(box.right, asked, precedence);
        }
        for (Entry<T> entry : box.entries) {
            if (covers(entry, asked, precedence)) {
                recent = entry;
                return true;
            }
        }
        return false;
    }

    private boolean covers(Entry<T> entry, double[] asked, Precedence<T> precedence) {
        return nowhereLarger(entry.point, asked) && precedence.mayReplace(entry.point, entry.content, asked);
    }

    private void split(Box<T> box) {
        int axis = widestAxis(box);
        box.entries.sort((a, b) -> Double.compare(a.point[axis], b.point[axis]));
        int half = box.entries.size() / 2;
        box.left = part(box, 0, half);
        box.right = part(box, half, box.entries.size());
        box.entries = null;
    }

    private static <T> Box<T> part(Box<T> box, int from, int to) {
        Box<T> part = new Box<>(box.smallest.length);
        for (Entry<T> entry : box.entries.subList(from, to)) {
            part.entries.add(entry);
            part.stretch(entry.point);
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

    private static boolean nowhereLarger(double[] point, double[] asked) {
        for (int i = 0; i < point.length; i++) {
            if (point[i] > asked[i]) {
                return false;
            }
        }
        return true;
    }
}
