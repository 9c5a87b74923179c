// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.train;

import drumfall.solver.ratio.WheelAndPinion;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The counts of a train from the drum to the escape wheel, and what follows from counts alone.
 *
 * @param meshes the meshes from the drum, at least one
 * @param timeBase the arbor that keeps a known time
 * @param beatsPerEscapeTurn beats of the pendulum in one turn of the escape wheel, {@code 2 N} for anchor and deadbeat
 *     escapements of {@code N} teeth, otherwise what the escapement gives
 */
public record GoingTrain(List<WheelAndPinion> meshes, TimeBase timeBase, int beatsPerEscapeTurn) {
    private static final BigFraction ONE_MINUTE = BigFraction.of(1, 60);

    /**
     * Copies the meshes and checks that the parts fit together.
     *
     * @throws IllegalArgumentException if there is no mesh, the time base names no arbor of the train, or the beats are
     *     below 1
     */
    public GoingTrain {
        meshes = List.copyOf(meshes);
        if (meshes.isEmpty()) {
            throw new IllegalArgumentException("A going train must have at least 1 mesh.");
        }
        if (timeBase.arbor() > meshes.size()) {
            throw new IllegalArgumentException("The arbor (%d) that keeps time must be at most %d, the escape arbor."
                    .formatted(timeBase.arbor(), meshes.size()));
        }
        if (beatsPerEscapeTurn < 1) {
            throw new IllegalArgumentException("The beatsPerEscapeTurn (%d) must be at least 1. Maybe 2 N was meant."
                    .formatted(beatsPerEscapeTurn));
        }
    }

    /** Number of the escape arbor, which is also the number of meshes. */
    public int escapeArbor() {
        return meshes.size();
    }

    /**
     * Turns of one arbor for one turn of another, exact and without sign.
     *
     * @param from number of the arbor that turns once
     * @param to number of the arbor asked for
     */
    public BigFraction turns(int from, int to) {
        return from <= to ? product(from, to) : product(to, from).reciprocal();
    }

    /**
     * Hours for one turn of an arbor.
     *
     * @param arbor number of the arbor
     */
    public BigFraction hoursPerTurn(int arbor) {
        return timeBase.hoursPerTurn().divide(turns(timeBase.arbor(), arbor));
    }

    /** Beats of the pendulum in one hour, {@code B = b / (hours per turn of the escape wheel)}. */
    public BigFraction beatsPerHour() {
        return BigFraction.of(beatsPerEscapeTurn).divide(hoursPerTurn(escapeArbor()));
    }

    /** Seconds of one beat, {@code 3600 / B}. */
    public BigFraction secondsPerBeat() {
        return BigFraction.of(3600).divide(beatsPerHour());
    }

    /** The arbor that turns once an hour, if there is one. */
    public OptionalInt hourlyArbor() {
        return arborTurningIn(BigFraction.ONE);
    }

    /**
     * The arbor that can carry a seconds hand: one turn a minute, clockwise like the hourly arbor, so an even number of
     * meshes from it.
     */
    public OptionalInt secondsArbor() {
        OptionalInt hourly = hourlyArbor();
        OptionalInt minute = arborTurningIn(ONE_MINUTE);
        boolean carries = hourly.isPresent() && minute.isPresent() && (minute.getAsInt() - hourly.getAsInt()) % 2 == 0;
        return carries ? minute : OptionalInt.empty();
    }

    /**
     * Whether an arbor turns clockwise seen from the dial, given that the arbor that keeps time does.
     *
     * @param arbor number of the arbor
     */
    public boolean clockwise(int arbor) {
        return (arbor - timeBase.arbor()) % 2 == 0;
    }

    /** Whether the line hangs from the right of the drum seen from the dial: a drum that turns clockwise pays out there. */
    public boolean lineOnTheRight() {
        return clockwise(0);
    }

    private OptionalInt arborTurningIn(BigFraction hours) {
        return IntStream.rangeClosed(0, escapeArbor())
                .filter(arbor -> hoursPerTurn(arbor).compareTo(hours) == 0)
                .findFirst();
    }

    private BigFraction product(int from, int to) {
        return WheelAndPinion.product(meshes.subList(from, to));
    }
}
