// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.written.LayoutReader;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.train.Train;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import picocli.CommandLine.Option;

/** Places that are read from a file instead of looked for, or written to one. */
final class LayoutChoice {
    @Option(names = "--layout", paramLabel = "LAYOUT.json", descriptionKey = "option.layout")
    private String source;

    @Option(names = "--write-layout", paramLabel = "LAYOUT.json", descriptionKey = "option.write-layout")
    private String target;

    /** The places of a train: those of the file, or those that are found. */
    TrainPlaces places(TrainRater rater, Train train, TerminalPlace place) {
        if (source != null && target != null) {
            throw RefusedInput.of("layout-and-write-layout", source, target);
        }
        if (target != null && TrainPlaces.leavesUnplaced(rater)) {
            throw RefusedInput.of("write-layout.unplaced", target);
        }
        TrainPlacing placing = new TrainPlacing(rater);
        return places(source, placing, train, rater, place.interrupted());
    }

    /** The places of a train: those of a file, or those that are found if there is none. */
    static TrainPlaces places(
            String source, TrainPlacing placing, Train train, TrainRater rater, BooleanSupplier interrupted) {
        return source == null
                ? TrainPlaces.sought(rater, placing, train, interrupted)
                : TrainPlaces.read(read(source, placing, train));
    }

    private static Layout read(String source, TrainPlacing placing, Train train) {
        if (placing.lacking(train).isPresent()) {
            throw RefusedInput.of("layout.undrawn", source);
        }
        LayoutNeed need = placing.need(train);
        Path path = SheetTexts.path(source);
        return SheetTexts.accepted(source, LayoutReader.read(path, need)).layout(need);
    }

    /** Writes the places if that is asked for and there are any. */
    void write(String name, TrainPlaces places, TerminalPlace place) {
        if (target == null) {
            return;
        }
        if (places.layout().isEmpty()) {
            place.err().println(Phrases.phrase("write-layout.none", target));
            return;
        }
        try {
            Files.writeString(
                    SheetTexts.path(target),
                    LayoutReader.write(name, places.layout().get()));
        } catch (IOException refused) {
            throw RefusedInput.of("write-layout", target);
        }
    }
}
