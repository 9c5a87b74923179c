// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.MeshPlace;
import java.util.Objects;
import java.util.Optional;

/**
 * One figure of a train that can be held; those of the train strip can be pointed at and tried, too.
 *
 * @param kind what it counts or sizes
 * @param place the mesh it belongs to; present exactly where {@link Kind#placed} says so
 */
public record StripFigure(Kind kind, Optional<MeshPlace> place) {
    /** What a figure of the strip counts or sizes. */
    public enum Kind {
        /** Teeth of a wheel. */
        WHEEL(true),
        /** Leaves of a pinion. */
        LEAVES(true),
        /** Module of a mesh. */
        MODULE(true),
        /** Centre distance of a mesh. */
        DISTANCE(true),
        /** Direction of a mesh in the elevation, from the wheel's arbor to the pinion's. */
        DIRECTION(true),
        /** Direction of the motion work in the elevation, from the centre arbor to the minute arbor. */
        MOTION_DIRECTION(false),
        /** Distance of the minute arbor from the centre arbor. */
        MOTION_DISTANCE(false),
        /** Distance of the pallet arbor from the escape arbor. */
        PALLET_DISTANCE(false),
        /** Diameter of the bare drum. */
        DRUM(false),
        /** Falls of line that carry the weight. */
        FALLS(false),
        /** Teeth of the escape wheel. */
        ESCAPE_TEETH(false),
        /** Meshes from the drum arbor to the centre arbor. */
        MESHES_ABOVE(false),
        /** Meshes from the centre arbor to the escape arbor. */
        MESHES_BELOW(false);

        private final boolean placed;

        Kind(boolean placed) {
            this.placed = placed;
        }

        /** Whether a figure of this kind belongs to one mesh. */
        public boolean placed() {
            return placed;
        }
    }

    /**
     * Checks that the place suits the kind.
     *
     * @throws IllegalArgumentException if a figure of a mesh has no place, or a figure of the whole train has one
     */
    public StripFigure {
        Objects.requireNonNull(kind);
        if (kind.placed() != place.isPresent()) {
            throw new IllegalArgumentException(
                    "The place (%s) of the figure (%s) must be given exactly for figures of a mesh. Maybe use of(kind)."
                            .formatted(place, kind));
        }
    }

    /** A figure of the whole train. */
    public static StripFigure of(Kind kind) {
        return new StripFigure(kind, Optional.empty());
    }

    /** A figure of one mesh. */
    public static StripFigure of(Kind kind, MeshPlace place) {
        return new StripFigure(kind, Optional.of(place));
    }
}
