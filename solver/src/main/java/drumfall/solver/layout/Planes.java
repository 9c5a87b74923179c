// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

import java.util.List;

/**
 * Where along the arbors each plane lies, every arbor resting towards the back plate.
 *
 * <p>The back plate's inner face is 0. The hub of an arbor fills what lies between the planes of its two gears.
 *
 * @param gears of mesh 0 to the last from the drum, then of escape wheel and pallets
 * @param drum the drum over its flanges
 * @param motion first and second plane of the motion work, the first nearer to the front plate; empty without it
 * @param innerDepth from plate to plate, nm
 * @param depth over plates and motion work, nm; the placer gives what they take, a layout that was written by hand may give
 *     more
 */
public record Planes(List<Span> gears, Span drum, List<Span> motion, long innerDepth, long depth) {
    /**
     * Copies the lists and checks that the two gears of each arbor do not overlap.
     *
     * @throws IllegalArgumentException if the planes of consecutive meshes overlap
     */
    public Planes {
        gears = List.copyOf(gears);
        motion = List.copyOf(motion);
        for (int arbor = 1; arbor < gears.size(); arbor++) {
            if (gears.get(arbor - 1).gapTo(gears.get(arbor)) < 0) {
                throw new IllegalArgumentException(
                        "The planes of pinion and wheel (%s and %s nm) of arbor (%d) must not overlap. Maybe two consecutive meshes were laid level."
                                .formatted(gears.get(arbor - 1), gears.get(arbor), arbor));
            }
        }
    }

    /** The plane of the wheel on an arbor; for the escape arbor that of the escape wheel. */
    public Span ofWheel(int arbor) {
        return gears.get(arbor);
    }

    /** The plane of the pinion on an arbor, 1 at least. */
    public Span ofPinion(int arbor) {
        return gears.get(arbor - 1);
    }

    /** The plane of escape wheel and pallets. */
    public Span ofEscape() {
        return gears.get(gears.size() - 1);
    }

    /** The range of the hub of an arbor, 1 at least. */
    public Span ofHub(int arbor) {
        return ofPinion(arbor).between(ofWheel(arbor));
    }
}
