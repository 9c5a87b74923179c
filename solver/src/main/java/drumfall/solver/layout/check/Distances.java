// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.check;

/** Exact comparison of distances that are known by their squares. */
final class Distances {
    private Distances() {}

    static boolean less(long squaredDistance, long length) {
        return length > 0 && squaredDistance < Math.multiplyExact(length, length);
    }

    static long floorRoot(long square) {
        long root = (long) Math.sqrt((double) square);
        while (root * root > square) {
            root--;
        }
        return root;
    }
}
