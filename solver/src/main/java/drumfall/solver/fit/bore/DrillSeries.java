// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.bore;

import drumfall.solver.fit.Nanometres;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/** Published series of drill sizes. */
public enum DrillSeries {
    /**
     * Metric, 0.2 to 25 mm: parallel shank twist drills of the jobber series (ISO 235), in the sizes BS 328 is quoted with.
     *
     * <p>By 0.02 and 0.03 mm below 1 mm, by 0.05 mm below 3 mm, by 0.1 mm below 14 mm, by 0.25 mm to 25 mm.
     */
    METRIC,

    /** Fractional inch, 1/64 to 1 in by 64ths: straight shank twist drills, jobber length, after ASME B94.11M. */
    FRACTIONAL_INCH;

    private static final int LAST_SIXTY_FOURTH = 64;

    /** All sizes, smallest first. */
    public List<Drill> drills() {
        return switch (this) {
            case METRIC -> metric();
            case FRACTIONAL_INCH ->
                IntStream.rangeClosed(1, LAST_SIXTY_FOURTH)
                        .mapToObj(Drill::sixtyFourths)
                        .toList();
        };
    }

    private static List<Drill> metric() {
        List<Drill> sizes = new ArrayList<>();
        for (int tenth = 2; tenth <= 9; tenth++) {
            for (int hundredth : new int[] {0, 2, 5, 8}) {
                sizes.add(Drill.metric((10 * tenth + hundredth) * Nanometres.MILLIMETRE / 100));
            }
        }
        sizes.addAll(steps(100, 295, 5));
        sizes.addAll(steps(300, 1390, 10));
        sizes.addAll(steps(1400, 2500, 25));
        return List.copyOf(sizes);
    }

    private static List<Drill> steps(long first, long last, long step) {
        return LongStream.iterate(first, size -> size <= last, size -> size + step)
                .mapToObj(hundredths -> Drill.metric(hundredths * Nanometres.MILLIMETRE / 100))
                .toList();
    }
}
