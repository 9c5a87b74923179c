// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.display.DisplayOption;
import drumfall.solver.display.DisplayOutcome;
import drumfall.solver.display.DisplayQuery;
import drumfall.solver.display.DisplayTrain;
import drumfall.solver.display.Resolution;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Displays found, as a table for people.
 *
 * @param query what was looked for
 * @param resolution the smallest error that shows
 * @param bySize whether the trains are those of the front of error and size
 */
record DisplayTable(DisplayQuery query, Resolution resolution, boolean bySize) {
    private static final BigFraction SECONDS_PER_DAY = BigFraction.of(86_400);

    /** The Julian year of astronomy, 365.25 d. */
    private static final BigFraction DAYS_PER_YEAR = BigFraction.of(1461, 4);

    private static final BigFraction DAYS_SHOWN_AS_YEARS = BigFraction.of(1000);

    /** A time until an error shows is rounded down, so as not to flatter. */
    private static final MathContext FOUR_DIGITS_DOWN = new MathContext(4, RoundingMode.DOWN);

    List<String> lines(DisplayOutcome outcome) {
        List<String> lines = new ArrayList<>();
        lines.add(heading(outcome));
        lines.add(sense());
        lines.add("");
        lines.addAll(table(outcome).lines());
        return lines;
    }

    private String heading(DisplayOutcome outcome) {
        String key = (bySize ? "display.front." : "display.") + (outcome.proven() ? "proved" : "stopped");
        return Phrases.phrase(
                key,
                days(query.display().secondsPerTurn()),
                decimal(query.arborTurns()),
                query.meshCount(),
                query.drivers().least(),
                query.drivers().most(),
                query.followers().least(),
                query.followers().most());
    }

    private String sense() {
        return Phrases.phrase(
                "display.sense",
                Phrases.phrase(query.clockwise() ? "clockwise" : "anticlockwise"),
                Phrases.phrase(query.clockwise() ? "anticlockwise" : "clockwise"));
    }

    private TextTable table(DisplayOutcome outcome) {
        TextTable table = TextTable.of("display.columns");
        for (int i = 0; i < outcome.options().size(); i++) {
            DisplayOption option = outcome.options().get(i);
            table.row(
                    i + 1,
                    days(option.secondsPerTurn()),
                    secondsADay(option),
                    shows(option),
                    largest(option),
                    trains(option));
        }
        return table;
    }

    private static String days(BigFraction seconds) {
        return decimal(seconds.divide(SECONDS_PER_DAY));
    }

    private static String decimal(BigFraction value) {
        return String.format(Locale.ROOT, "%.9g", value.doubleValue());
    }

    private static String secondsADay(DisplayOption option) {
        BigFraction gain = option.error().secondsADay();
        return gain.isZero() ? Phrases.phrase("ratio.exact") : String.format(Locale.ROOT, "%+.4g", gain.doubleValue());
    }

    private String shows(DisplayOption option) {
        return option.error()
                .daysUntil(resolution)
                .map(DisplayTable::span)
                .orElseGet(() -> Phrases.phrase("display.never"));
    }

    private static String span(BigFraction days) {
        return days.compareTo(DAYS_SHOWN_AS_YEARS) < 0
                ? Phrases.phrase("display.days", roundedDown(days))
                : Phrases.phrase("display.years", roundedDown(days.divide(DAYS_PER_YEAR)));
    }

    private static String roundedDown(BigFraction positive) {
        return new BigDecimal(positive.getNumerator().abs())
                .divide(new BigDecimal(positive.getDenominator().abs()), FOUR_DIGITS_DOWN)
                .toPlainString();
    }

    private static int largest(DisplayOption option) {
        return option.trains().stream()
                .mapToInt(DisplayTrain::largestCount)
                .min()
                .orElseThrow();
    }

    private static String trains(DisplayOption option) {
        String listed = option.trains().stream().map(DisplayTable::train).collect(Collectors.joining(",  "));
        return option.allListed() ? listed : listed + ", …";
    }

    private static String train(DisplayTrain train) {
        return IntStream.range(0, train.driverCounts().size())
                .mapToObj(mesh -> train.driverCounts().get(mesh) + "→"
                        + train.followerCounts().get(mesh))
                .collect(Collectors.joining(" · "));
    }
}
