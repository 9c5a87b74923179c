// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.train;

import java.math.BigInteger;
import java.util.List;
import java.util.function.ToIntFunction;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A train with its sizes: meshes, drum, reeving and escape wheel, the centre arbor turning once an hour.
 *
 * @param meshes the meshes from the drum, at least one
 * @param meshesAbove meshes from the drum arbor to the centre arbor, {@code h}; 0 if the drum itself turns hourly
 * @param drumDiameter diameter of the bare drum, m, positive
 * @param reeving how the line carries the weight
 * @param escapeTeeth teeth of the escape wheel, {@code N}, at least 2; two beats a tooth
 */
public record Train(List<Mesh> meshes, int meshesAbove, BigFraction drumDiameter, Reeving reeving, int escapeTeeth) {
    private static final long SECONDS_PER_HOUR = 3600;
    private static final long EXACT = 1L << 53;

    /**
     * Copies the meshes and checks that the parts fit together.
     *
     * @throws IllegalArgumentException if there is no mesh below the centre, the drum is not positive, or the escape wheel
     *     has fewer than 2 teeth
     */
    public Train {
        meshes = List.copyOf(meshes);
        if (meshesAbove < 0 || meshesAbove >= meshes.size()) {
            throw new IllegalArgumentException(
                    "The meshesAbove (%d) must be from 0 to %d, so that a mesh is left below the centre."
                            .formatted(meshesAbove, meshes.size() - 1));
        }
        if (drumDiameter.signum() <= 0) {
            throw new IllegalArgumentException(
                    "The drumDiameter (%s m) must be more than 0 m.".formatted(drumDiameter));
        }
        if (escapeTeeth < 2) {
            throw new IllegalArgumentException("The escapeTeeth (%d) must be at least 2 teeth.".formatted(escapeTeeth));
        }
    }

    /** The counts alone. */
    public GoingTrain going() {
        return new GoingTrain(
                meshes.stream().map(Mesh::counts).toList(), TimeBase.hourly(meshesAbove), 2 * escapeTeeth);
    }

    /**
     * Hours for one turn of an arbor, correctly rounded.
     *
     * @param arbor number of the arbor from the drum
     */
    public double hoursPerTurn(int arbor) {
        return arbor <= meshesAbove
                ? quotient(1, teeth(arbor, meshesAbove), 1, leaves(arbor, meshesAbove))
                : quotient(1, leaves(meshesAbove, arbor), 1, teeth(meshesAbove, arbor));
    }

    /** Seconds of one beat, correctly rounded. */
    public double secondsPerBeat() {
        int last = meshes.size();
        return quotient(SECONDS_PER_HOUR, leaves(meshesAbove, last), 2L * escapeTeeth, teeth(meshesAbove, last));
    }

    /**
     * {@code a Π over / (b Π under)}: one division of two numbers that a double holds exactly is correctly rounded; larger
     * ones go the long way.
     */
    private static double quotient(long a, int[] over, long b, int[] under) {
        long top = shortProduct(a, over);
        long bottom = shortProduct(b, under);
        return top > 0 && bottom > 0
                ? (double) top / bottom
                : BigFraction.of(product(a, over), product(b, under)).doubleValue();
    }

    /** A product that a double holds exactly, or 0 if it may not. */
    private static long shortProduct(long first, int[] factors) {
        long product = first;
        for (int factor : factors) {
            if (product > EXACT / factor) {
                return 0;
            }
            product *= factor;
        }
        return product;
    }

    private static BigInteger product(long first, int[] factors) {
        BigInteger product = BigInteger.valueOf(first);
        for (int factor : factors) {
            product = product.multiply(BigInteger.valueOf(factor));
        }
        return product;
    }

    private int[] teeth(int from, int to) {
        return counts(from, to, Mesh::toothCount);
    }

    private int[] leaves(int from, int to) {
        return counts(from, to, Mesh::leafCount);
    }

    private int[] counts(int from, int to, ToIntFunction<Mesh> count) {
        int[] counts = new int[to - from];
        for (int i = from; i < to; i++) {
            counts[i - from] = count.applyAsInt(meshes.get(i));
        }
        return counts;
    }

    /** Meshes from the drum arbor to the centre arbor, in order. */
    public List<Mesh> above() {
        return meshes.subList(0, meshesAbove);
    }

    /** Meshes from the centre arbor to the escape arbor, in order. */
    public List<Mesh> below() {
        return meshes.subList(meshesAbove, meshes.size());
    }

    /** The train in one line, the centre arbor marked, for example {@code 96/8 m1.5 | 64/8 m1 · 60/8 m1 · E30}. */
    @Override
    public String toString() {
        return join(above()) + (meshesAbove == 0 ? "| " : " | ") + join(below()) + " · E" + escapeTeeth;
    }

    private static String join(List<Mesh> meshes) {
        return String.join(" · ", meshes.stream().map(Mesh::toString).toList());
    }
}
