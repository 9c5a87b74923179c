// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

/** What upper halves are compared by; of several halves, each figure as good as that of any of them. */
final class UpperFigures {
    /** Weight as lines of the torque at the centre, see {@link UpperLines}. */
    final double[] lines;

    /** Room beside the arbor before the centre, m. */
    final double clearance;

    /** Torque on the centre arbor that the teeth bear, N m. */
    final double borne;

    /** Torque on the centre arbor for each newton of the weight if nothing rubs, m. */
    final double centrePull;

    /** The heaviest weight that ratchet and line carry, kg. */
    final double carried;

    /** As an objective; 0 if it is not asked. */
    final double durationError;

    /** What the parts add up to. */
    final PartSums sums;

    UpperFigures(
            double[] lines,
            double clearance,
            double borne,
            double centrePull,
            double carried,
            double durationError,
            PartSums sums) {
        this.lines = lines;
        this.clearance = clearance;
        this.borne = borne;
        this.centrePull = centrePull;
        this.carried = carried;
        this.durationError = durationError;
        this.sums = sums;
    }
}
