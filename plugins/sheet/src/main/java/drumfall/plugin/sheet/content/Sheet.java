// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

import drumfall.plugin.api.Handover;
import java.util.List;
import java.util.stream.Stream;

/**
 * The builder's sheet of one train, on no particular kind of page.
 *
 * @param title what the maker calls the design
 * @param subtitle the train and what it is for, one line
 * @param version of the program that worked it out
 * @param sections its parts in order
 */
public record Sheet(String title, String subtitle, String version, List<Section> sections) {
    /** Copies the sections. */
    public Sheet {
        sections = List.copyOf(sections);
    }

    /**
     * The sheet of a train.
     *
     * @param handover the train with its brief
     * @param lengths what lengths are shown in
     */
    public static Sheet of(Handover handover, Lengths lengths) {
        Clock clock = Clock.of(handover, lengths);
        return new Sheet(
                Words.printable(handover.brief().name()),
                KeyFigures.line(clock),
                Words.printable(handover.programVersion()),
                Stream.of(
                                Stream.of(Cautions.section(), KeyFigures.section(clock)),
                                Places.section(clock).stream(),
                                Stream.of(
                                        PartDrawings.section(clock),
                                        ArborTable.section(clock),
                                        BuildTable.section(clock),
                                        AssemblyOrder.section(clock),
                                        BenchChecks.section(clock),
                                        FirstRun.section(clock),
                                        FaultTable.section(clock)))
                        .flatMap(sections -> sections)
                        .toList());
    }
}
