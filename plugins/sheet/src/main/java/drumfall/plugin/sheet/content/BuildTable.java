// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

import drumfall.solver.kit.Build;
import drumfall.solver.kit.Builds;
import java.util.List;

/** What fewer or more rolling bearings do to the weight. */
final class BuildTable {
    private BuildTable() {}

    static Section section(Clock clock) {
        Builds builds = clock.builds();
        Block.Table table = new Block.Table(
                "The same train with fewer or more rolling bearings",
                List.of(
                        new Block.Column("Built", 5, false),
                        new Block.Column("Bearings", 2, true),
                        new Block.Column("Least weight", 2.4, true),
                        new Block.Column("Recommended", 3, true),
                        new Block.Column("Misses of the brief", 4.4, false)),
                builds.all().stream().map(BuildTable::row).toList());
        return new Section(
                "Fewer or more bearings",
                List.of(
                        table,
                        new Block.Paragraph(
                                "Least weights are predictions from the brief's friction and the drag of the"
                                        + " grease, not measurements. Change the weight in small steps, with nothing and nobody"
                                        + " under it.")));
    }

    private static List<String> row(Build build) {
        List<String> missed = build.missed();
        return List.of(
                build.way().title(),
                Integer.toString(build.bearingCount()),
                Words.kilograms(build.leastWeight()),
                Words.kilograms(build.rating().recommendedWeight()),
                missed.isEmpty() ? "nothing" : String.join(", ", missed));
    }
}
