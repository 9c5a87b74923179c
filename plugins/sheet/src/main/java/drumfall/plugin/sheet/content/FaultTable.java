// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

import java.util.List;

/** What to look for when the clock stops, and what each fault costs. */
final class FaultTable {
    private FaultTable() {}

    static Section section(Clock clock) {
        double recommended = clock.rating().recommendedWeight();
        List<List<String>> rows = new Faults(clock)
                .all().stream()
                        .map(fault -> List.of(
                                fault.what(),
                                fault.sign(),
                                Words.kilograms(fault.leastWeight()),
                                goesOn(fault.leastWeight(), recommended)))
                        .toList();
        Block.Table table = new Block.Table(
                "One fault at a time, all else as designed",
                List.of(
                        new Block.Column("Fault", 5, false),
                        new Block.Column("Sign", 5, false),
                        new Block.Column("Least weight", 2.2, true),
                        new Block.Column(head(recommended), 2, false)),
                rows);
        return new Section(
                "If it stops",
                List.of(
                        new Block.Paragraph("As designed the clock needs at least "
                                + Words.kilograms(clock.rating().weight().leastWeight()) + " and "
                                + Words.kilograms(recommended)
                                + " are recommended. Each row is the whole clock weighed anew with that fault in it: a"
                                + " tight bore or a dirty bearing counts as rubbing twice as hard as reckoned."),
                        table));
    }

    private static String goesOn(double least, double recommended) {
        return Double.isFinite(least) && least <= recommended ? "runs" : "stops";
    }

    private static String head(double recommended) {
        return Double.isFinite(recommended) ? "On " + Words.kilograms(recommended) : "As it is";
    }
}
