// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefReader;
import drumfall.solver.brief.BriefWriter;
import drumfall.solver.brief.TrainSheet;
import drumfall.solver.layout.Layout;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.KeptHoles;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.train.Train;
import drumfall.ui.wording.DemandWording;
import drumfall.ui.wording.FigureWording;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;

/** A finished clock whose plates are kept: its train, and where that stands. */
final class HolesChoice {
    private static final String KEEP = "--keep-holes";

    @Option(names = KEEP, paramLabel = "TRAIN.json", descriptionKey = "option.keep-holes")
    private String trainFile;

    @Option(names = "--layout", paramLabel = "LAYOUT.json", descriptionKey = "option.holes.layout")
    private String layoutFile;

    /** The brief with the holes held, which is told beside the command's answer; the brief as it is if none are kept. */
    Brief applyTo(Brief brief, TerminalPlace place) {
        if (trainFile == null) {
            if (layoutFile != null) {
                throw RefusedInput.of("keep-holes.missing", layoutFile);
            }
            return brief;
        }
        TrainSheet sheet = SheetTexts.train(trainFile);
        TrainRater rater = new TrainRater(brief);
        Rating rating = rater.rate(sheet.train());
        Brief kept = inOrder(KeptHoles.of(brief, sheet.train(), layout(rater, sheet.train(), place)));
        place.err().println(held(sheet.name(), kept));
        place.err().println(itself(rating));
        return kept;
    }

    private Layout layout(TrainRater rater, Train train, TerminalPlace place) {
        if (TrainPlaces.leavesUnplaced(rater)) {
            throw RefusedInput.of("keep-holes.unplaced", trainFile);
        }
        TrainPlaces places =
                LayoutChoice.places(layoutFile, new TrainPlacing(rater), train, rater, place.interrupted());
        PlacesWording wording = new PlacesWording(FigureWording.in(UnitSystem.METRIC));
        return switch (places.standing()) {
            case PLACED, SOUND -> places.layout().orElseThrow();
            case UNSOUND ->
                throw RefusedInput.of(
                        "keep-holes.unsound",
                        layoutFile,
                        wording.conflict(places.conflicts().get(0)));
            case NO_PLACE -> throw RefusedInput.of("keep-holes.noplace", trainFile, wording.none(places));
            case STOPPED -> throw RefusedInput.of("keep-holes.stopped", trainFile);
            default -> throw RefusedInput.of("keep-holes.undrawn", trainFile);
        };
    }

    /** A finished clock may have more meshes, or another escape wheel, than the brief allows. */
    private static Brief inOrder(Brief kept) {
        return SheetTexts.accepted(KEEP, BriefReader.read(BriefWriter.tree(kept)));
    }

    private static String held(String name, Brief kept) {
        int meshes = kept.locks().meshesAbove().orElseThrow()
                + kept.locks().meshesBelow().orElseThrow();
        return Phrases.phrase(
                kept.locks().motionDirection().isPresent() ? "holes.kept.motion" : "holes.kept",
                name,
                meshes,
                kept.locks().palletDistance().orElseThrow().text());
    }

    private static String itself(Rating rating) {
        String weight = FigureWording.in(UnitSystem.METRIC).recommendedWeight(rating);
        return rating.feasible()
                ? Phrases.phrase("holes.train", weight)
                : Phrases.phrase(
                        "holes.train.misses",
                        weight,
                        rating.missed()
                                .map(missed -> DemandWording.name(missed.demand()))
                                .distinct()
                                .collect(Collectors.joining(", ")));
    }
}
