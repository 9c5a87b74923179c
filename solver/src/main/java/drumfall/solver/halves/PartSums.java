// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

/**
 * What a half adds to the objectives that are made of parts.
 *
 * @param filament µg
 * @param largestTip tip radius of the largest wheel, m
 * @param centreDistances half nanometres
 * @param moduleBits one bit for each module used
 */
record PartSums(long filament, double largestTip, long centreDistances, long moduleBits) {
    static final PartSums NONE = new PartSums(0, 0, 0, 0);

    PartSums with(MeshChoice choice) {
        return new PartSums(
                filament + choice.filament,
                Math.max(largestTip, choice.tipRadius),
                centreDistances + choice.centreDistance,
                moduleBits | 1L << choice.moduleNumber);
    }

    PartSums with(PartSums other) {
        return new PartSums(
                filament + other.filament,
                Math.max(largestTip, other.largestTip),
                centreDistances + other.centreDistances,
                moduleBits | other.moduleBits);
    }

    PartSums withMass(long micrograms) {
        return new PartSums(filament + micrograms, largestTip, centreDistances, moduleBits);
    }

    /** The least of these and others, each on its own; only modules of both count. */
    PartSums least(PartSums other) {
        return new PartSums(
                Math.min(filament, other.filament),
                Math.min(largestTip, other.largestTip),
                Math.min(centreDistances, other.centreDistances),
                moduleBits & other.moduleBits);
    }
}
