// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.Box;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.size.HangingLine;
import drumfall.solver.layout.size.MovementParts;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What stands at each level of the search, and how far it reaches; nm from the dial centre. */
final class Elevation {
    private final List<Joint> joints;
    private final Contacts contacts;
    private final HangingLine line;
    private final int palletArbor;
    private final int[] levelOf;
    private final long[] x;
    private final long[] y;
    private final long[][] extent;
    private final long[][] spread;

    Elevation(Contacts contacts, MovementParts parts, HangingLine line) {
        this.joints = contacts.joints();
        this.contacts = contacts;
        this.line = line;
        this.palletArbor = parts.palletArbor();
        int levels = joints.size();
        this.x = new long[levels];
        this.y = new long[levels];
        this.extent = new long[levels + 1][4];
        this.spread = new long[levels + 1][2];
        this.levelOf = new int[parts.placeCount()];
        Arrays.fill(levelOf, levels);
        for (int level = 0; level < levels; level++) {
            levelOf[joints.get(level).arbor()] = level;
        }
    }

    void set(int level, long atX, long atY) {
        x[level] = atX;
        y[level] = atY;
        int arbor = joints.get(level).arbor();
        long radius = contacts.largest(arbor).radius();
        long[] box = extent[level + 1];
        box[0] = Math.min(extent[level][0], atX - radius);
        box[1] = Math.min(extent[level][1], atY - radius);
        box[2] = Math.max(extent[level][2], atX + radius);
        box[3] = Math.max(extent[level][3], atY + radius);
        if (arbor == 0) {
            widen(box, atX + line.firstFall());
            widen(box, atX + line.lastFall());
        }
        boolean counts = arbor <= palletArbor;
        spread[level + 1][0] = counts ? Math.min(spread[level][0], atX) : spread[level][0];
        spread[level + 1][1] = counts ? Math.max(spread[level][1], atX) : spread[level][1];
    }

    private void widen(long[] box, long fall) {
        long half = (line.diameter() + 1) / 2;
        box[0] = Math.min(box[0], fall - half);
        box[2] = Math.max(box[2], fall + half);
    }

    /** Where an arbor comes; after all others if it is not placed. */
    int levelOf(int arbor) {
        return levelOf[arbor];
    }

    long x(int level) {
        return x[level];
    }

    long y(int level) {
        return y[level];
    }

    long left(int levels) {
        return extent[levels][0];
    }

    long bottom(int levels) {
        return extent[levels][1];
    }

    long right(int levels) {
        return extent[levels][2];
    }

    long top(int levels) {
        return extent[levels][3];
    }

    Box box(int levels) {
        return new Box(left(levels), bottom(levels), right(levels), top(levels));
    }

    long spread(int levels) {
        return spread[levels][1] - spread[levels][0];
    }

    Place place(int level) {
        return new Place(x[level], y[level]);
    }

    /** All places by the number of the arbor. */
    List<Place> byArbor() {
        List<Place> places = new ArrayList<>();
        for (int level : levelOf) {
            places.add(new Place(x[level], y[level]));
        }
        return places;
    }
}
