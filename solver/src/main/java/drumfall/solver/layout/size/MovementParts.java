// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.size;

import java.util.List;
import java.util.Optional;

/**
 * The parts of a movement that a layout places.
 *
 * <p>Arbors are numbered from 0, the drum arbor, to {@code n}, the escape arbor; mesh {@code i} is driven by the wheel on
 * arbor {@code i} and turns the pinion on arbor {@code i + 1}. The pallet arbor follows as {@code n + 1} and the minute
 * arbor of the motion work, if there is one, as {@code n + 2}.
 *
 * @param centreArbor the arbor that carries the minute hand, 0 to {@code n}
 * @param arbors the going train's arbors, one more than meshes
 * @param meshes from the drum, 1 to 7
 * @param drum beside the great wheel
 * @param escape escape wheel and pallets
 * @param motion the motion work around the centre arbor
 */
public record MovementParts(
        int centreArbor,
        List<ArborSize> arbors,
        List<MeshSpacing> meshes,
        DrumSize drum,
        EscapeSize escape,
        Optional<MotionSize> motion) {
    private static final int MOST_MESHES = 7;

    /**
     * Copies the lists and checks their lengths.
     *
     * @throws IllegalArgumentException if the numbers of arbors and meshes do not fit each other
     */
    public MovementParts {
        arbors = List.copyOf(arbors);
        meshes = List.copyOf(meshes);
        if (meshes.isEmpty() || meshes.size() > MOST_MESHES) {
            throw new IllegalArgumentException("The meshes (%d) must be from 1 to %d. Maybe use larger ratios."
                    .formatted(meshes.size(), MOST_MESHES));
        }
        if (arbors.size() != meshes.size() + 1) {
            throw new IllegalArgumentException(
                    "The arbors (%d) must be one more than the meshes (%d). Maybe the pallet arbor was counted."
                            .formatted(arbors.size(), meshes.size()));
        }
        if (centreArbor < 0 || centreArbor > meshes.size()) {
            throw new IllegalArgumentException(
                    "The centre arbor (%d) must be from 0 to %d. Maybe arbors were counted from 1."
                            .formatted(centreArbor, meshes.size()));
        }
    }

    /** The number of the escape arbor. */
    public int escapeArbor() {
        return meshes.size();
    }

    /** The number of the pallet arbor. */
    public int palletArbor() {
        return meshes.size() + 1;
    }

    /** The number that the minute arbor has if there is motion work. */
    public int minuteArbor() {
        return meshes.size() + 2;
    }

    /** How many arbors have a place: the going train's, the pallet arbor and the minute arbor if there is one. */
    public int placeCount() {
        return meshes.size() + (motion.isPresent() ? 3 : 2);
    }

    /** These parts as seen in a mirror: the pallet arbor leans the other way. */
    public MovementParts mirrored() {
        EscapeSize other = new EscapeSize(
                escape.wheelTipRadius(),
                escape.thickness(),
                escape.palletDistance(),
                Math.PI - escape.palletDirection(),
                escape.palletRadius(),
                escape.palletRodRadius());
        return new MovementParts(centreArbor, arbors, meshes, drum, other, motion);
    }
}
