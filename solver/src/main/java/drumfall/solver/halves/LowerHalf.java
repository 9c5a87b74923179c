// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.power.escape.EscapeNeed;
import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;

/** The part of a train from the centre arbor's wheel to the escape wheel. */
public final class LowerHalf implements Comparable<LowerHalf> {
    final List<MeshChoice> meshes;
    final int escapeTeeth;
    final EscapeNeed need;
    final double runningLoad;
    final double bindingLoad;
    /** Torque on the centre arbor that its teeth bear, N m. */
    final double borne;

    final PartSums sums;
    /** Whether it is part of a train without a place for its arbors, see {@link drumfall.solver.rating.Refused}. */
    final boolean distrusted;

    /** What it brings to overlaps. */
    final LowerReach reach;

    private final long[] key;

    LowerHalf(
            List<MeshChoice> meshes,
            int escapeTeeth,
            EscapeNeed need,
            double runningLoad,
            double bindingLoad,
            double borne,
            PartSums sums,
            boolean distrusted,
            LowerReach reach) {
        this.meshes = List.copyOf(meshes);
        this.escapeTeeth = escapeTeeth;
        this.need = need;
        this.runningLoad = runningLoad;
        this.bindingLoad = bindingLoad;
        this.borne = borne;
        this.sums = sums;
        this.distrusted = distrusted;
        this.reach = reach;
        this.key = LongStream.concat(
                        meshes.stream()
                                .flatMapToLong(choice -> LongStream.of(
                                        choice.teeth,
                                        choice.leaves,
                                        choice.mesh.module().nanometres())),
                        LongStream.of(escapeTeeth))
                .toArray();
    }

    /** The same half, distrusted or not. */
    LowerHalf distrusted(boolean so) {
        return so == distrusted
                ? this
                : new LowerHalf(meshes, escapeTeeth, need, runningLoad, bindingLoad, borne, sums, so, reach);
    }

    /** The meshes from the centre arbor. */
    public List<MeshChoice> meshes() {
        return meshes;
    }

    /** Teeth of the escape wheel. */
    public int escapeTeeth() {
        return escapeTeeth;
    }

    double centreWheelTip() {
        return meshes.get(0).tipRadius;
    }

    /** Compares by counts alone, see {@link drumfall.solver.rating.TrainOrder}. */
    @Override
    public int compareTo(LowerHalf other) {
        return Arrays.compare(key, other.key);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof LowerHalf half && Arrays.equals(key, half.key);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(key);
    }
}
