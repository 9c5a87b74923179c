// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.ratio.RatioEntry;
import drumfall.solver.ratio.RatioOutcome;
import drumfall.solver.ratio.RatioQuery;
import drumfall.solver.ratio.RatioTrain;
import drumfall.solver.ratio.WheelAndPinion;
import drumfall.ui.wording.FigureWording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Ratios found, as a table for people. */
final class RatioTable {
    private static final double MILLION = 1e6;

    private RatioTable() {}

    static List<String> lines(RatioQuery query, RatioOutcome outcome) {
        List<String> lines = new ArrayList<>();
        lines.add(Phrases.phrase(
                outcome.proven() ? "ratio.proved" : "ratio.stopped",
                target(query),
                query.meshCount(),
                query.wheels().least(),
                query.wheels().most(),
                query.leaves().least(),
                query.leaves().most()));
        lines.add("");
        lines.addAll(table(query, outcome).lines());
        return lines;
    }

    private static String target(RatioQuery query) {
        String exact = FigureWording.exact(query.target());
        return exact.contains("/") ? exact + " = " + decimal(query.target().doubleValue()) : exact;
    }

    private static String decimal(double value) {
        return String.format(Locale.ROOT, "%.9g", value);
    }

    private static TextTable table(RatioQuery query, RatioOutcome outcome) {
        TextTable table = TextTable.of("ratio.columns");
        for (int i = 0; i < outcome.entries().size(); i++) {
            RatioEntry entry = outcome.entries().get(i);
            table.row(
                    i + 1,
                    FigureWording.exact(entry.ratio()),
                    decimal(entry.ratio().doubleValue()),
                    partsPerMillion(entry.error().divide(query.target()).doubleValue()),
                    trains(entry));
        }
        return table;
    }

    private static String partsPerMillion(double relative) {
        return relative == 0 ? Phrases.phrase("ratio.exact") : String.format(Locale.ROOT, "%+.4g", relative * MILLION);
    }

    private static String trains(RatioEntry entry) {
        String listed = entry.trains().stream().map(RatioTable::train).collect(Collectors.joining(",  "));
        return entry.allListed() ? listed : listed + ", …";
    }

    private static String train(RatioTrain train) {
        return train.pairs().stream().map(WheelAndPinion::toString).collect(Collectors.joining(" · "));
    }
}
