// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.bench;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.Train;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;

/** Measures a full rating of a train, first with meshes never seen and then with all of them tabulated; never asserted. */
public final class RatingBench {
    private static final int TRAINS = 500;
    private static final double NINETY_FIVE = 0.95;

    private RatingBench() {}

    /** Prints milliseconds a rating. */
    public static void main(String[] arguments) {
        Brief brief = BundledBriefs.demo();
        Random random = new Random(7);
        List<Train> trains = IntStream.range(0, TRAINS)
                .mapToObj(i -> Trains.random(brief, random))
                .toList();
        long start = System.nanoTime();
        TrainRater rater = new TrainRater(brief);
        System.out.printf(Locale.ROOT, "rater of a brief %.2f ms%n", (System.nanoTime() - start) / 1e6);
        for (String when : List.of("meshes never seen", "meshes tabulated", "and once more")) {
            rate(when, rater, trains);
        }
    }

    private static void rate(String when, TrainRater rater, List<Train> trains) {
        double[] milliseconds = new double[TRAINS];
        int missed = 0;
        for (int i = 0; i < TRAINS; i++) {
            long start = System.nanoTime();
            Rating rating = rater.rate(trains.get(i));
            milliseconds[i] = (System.nanoTime() - start) / 1e6;
            missed += rating.missed().findAny().isPresent() ? 1 : 0;
        }
        double first = milliseconds[0];
        Arrays.sort(milliseconds);
        System.out.printf(
                Locale.ROOT,
                "%-18s first %.2f ms, median %.3f ms, 95 %% within %.3f ms, most %.2f ms; %d of %d miss a demand%n",
                when,
                first,
                milliseconds[TRAINS / 2],
                milliseconds[(int) (NINETY_FIVE * TRAINS)],
                milliseconds[TRAINS - 1],
                missed,
                TRAINS);
    }
}
