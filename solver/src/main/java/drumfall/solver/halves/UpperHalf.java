// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.rating.ToothLimits;
import drumfall.solver.train.Reeving;
import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import org.apache.commons.numbers.fraction.BigFraction;

/** The part of a train from the drum and its line to the centre arbor's pinion. */
public final class UpperHalf implements Comparable<UpperHalf> {
    final List<MeshChoice> meshes;
    final BigFraction drumDiameter;
    final Reeving reeving;
    final PartSums sums;
    final double durationError;
    final double lineArm;
    final long drumMass;
    /** The heaviest weight that the ratchet holds, kg. */
    final double held;

    final double[] hoursPerTurn;
    /** Torque on the centre arbor for each newton of the weight if nothing rubs, m. */
    final double centrePull;

    /** Torque on the centre arbor that its teeth bear, N m. */
    final double borne;

    /** Weight as lines of the torque at the centre, see {@link UpperLines}. */
    final double[] lines;

    /** Whether it is part of a train without a place for its arbors, see {@link drumfall.solver.rating.Refused}. */
    final boolean distrusted;

    /** What it brings to overlaps. */
    final UpperReach reach;

    private long[] key;

    UpperHalf(
            List<MeshChoice> meshes,
            DrumChoice drum,
            PartSums sums,
            double durationError,
            double[] lines,
            ToothLimits teeth,
            boolean distrusted,
            UpperReach reach) {
        this.meshes = List.copyOf(meshes);
        this.drumDiameter = drum.diameter();
        this.reeving = drum.run().reeving();
        this.sums = sums;
        this.distrusted = distrusted;
        this.reach = reach;
        this.durationError = durationError;
        this.lineArm = drum.lineArm();
        this.drumMass = drum.mass();
        this.held = drum.held();
        this.lines = lines;
        this.hoursPerTurn = hours(meshes);
        this.centrePull = teeth.centrePull(lineArm, reeving, hoursPerTurn[0]);
        this.borne = borne(meshes, hoursPerTurn);
    }

    private static double[] hours(List<MeshChoice> meshes) {
        double[] hours = new double[meshes.size()];
        long teeth = 1;
        long leaves = 1;
        for (int i = meshes.size() - 1; i >= 0; i--) {
            teeth *= meshes.get(i).teeth;
            leaves *= meshes.get(i).leaves;
            hours[i] = (double) teeth / leaves;
        }
        return hours;
    }

    /** Torque on the centre arbor that the teeth of meshes from the drum bear, N m. */
    static double borne(List<MeshChoice> meshes) {
        return borne(meshes, hours(meshes));
    }

    private static double borne(List<MeshChoice> meshes, double[] hours) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < hours.length; i++) {
            least = Math.min(least, meshes.get(i).borne / hours[i]);
        }
        return least;
    }

    /** Only few halves are ever compared. */
    private long[] key() {
        if (key == null) {
            key = keyAnew();
        }
        return key;
    }

    private long[] keyAnew() {
        return LongStream.concat(
                        meshes.stream()
                                .flatMapToLong(choice -> LongStream.of(
                                        choice.teeth,
                                        choice.leaves,
                                        choice.mesh.module().nanometres())),
                        LongStream.of(drumDiameter.multiply(1_000_000_000).longValue(), reeving.falls()))
                .toArray();
    }

    /** The meshes from the drum. */
    public List<MeshChoice> meshes() {
        return meshes;
    }

    /** Diameter of the bare drum, m. */
    public BigFraction drumDiameter() {
        return drumDiameter;
    }

    /** How the line carries the weight. */
    public Reeving reeving() {
        return reeving;
    }

    MeshChoice lastMesh() {
        return meshes.get(meshes.size() - 1);
    }

    /** Compares by counts alone, see {@link drumfall.solver.rating.TrainOrder}. */
    @Override
    public int compareTo(UpperHalf other) {
        return Arrays.compare(key(), other.key());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof UpperHalf half && Arrays.equals(key(), half.key());
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(key());
    }
}
