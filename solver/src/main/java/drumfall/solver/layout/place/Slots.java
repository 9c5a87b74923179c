// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.Planes;
import drumfall.solver.layout.Span;

/**
 * Ranges along the arbors by number: 0 the drum, then one for each mesh and one for the escape wheel, then one for each
 * hub. Where those lie depends on the order of the planes; what never moves has a negative number.
 */
final class Slots {
    static final int DRUM = 0;
    /** A rod between the plates. */
    static final int ROD = -1;
    /** A rod that goes on through the motion work. */
    static final int LONG_ROD = -2;
    /** The minute arbor's stud, from the front plate forwards. */
    static final int STUD = -3;

    static final int FIRST_MOTION = -4;
    static final int SECOND_MOTION = -5;

    /** Two parts that meet in every order of the planes. */
    static final int ALWAYS = -1;
    /** Two parts that meet in none. */
    static final int NEVER = -2;

    private final int meshCount;

    Slots(int meshCount) {
        this.meshCount = meshCount;
    }

    int count() {
        return 2 * meshCount + 2;
    }

    /** The plane of a mesh, or of the escape wheel if the number is that of the meshes. */
    int plane(int mesh) {
        return 1 + mesh;
    }

    int hub(int arbor) {
        return 1 + meshCount + arbor;
    }

    /** Where every slot lies in an order of the planes, by its number. */
    Span[] spans(Planes planes) {
        Span[] spans = new Span[count()];
        spans[DRUM] = planes.drum();
        for (int mesh = 0; mesh < planes.gears().size(); mesh++) {
            spans[plane(mesh)] = planes.gears().get(mesh);
        }
        for (int arbor = 1; arbor < planes.gears().size(); arbor++) {
            spans[hub(arbor)] = planes.ofHub(arbor);
        }
        return spans;
    }

    int pairCount() {
        return count() * count();
    }

    /** {@link #ALWAYS}, {@link #NEVER} or the number of the pair that the order of the planes decides on. */
    int meeting(int slot, int other) {
        if (slot >= 0 && other >= 0) {
            return slot == other ? ALWAYS : Math.min(slot, other) * count() + Math.max(slot, other);
        }
        return slot < other ? fixed(slot, other) : fixed(other, slot);
    }

    private static int fixed(int low, int high) {
        return switch (low) {
            case FIRST_MOTION, SECOND_MOTION -> high == low || high == STUD || high == LONG_ROD ? ALWAYS : NEVER;
            case STUD -> high == STUD || high == LONG_ROD || high == ROD ? ALWAYS : NEVER;
            default -> ALWAYS;
        };
    }
}
