// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.plugin.api.Handover;
import drumfall.plugin.outlines.draw.Drawing;
import drumfall.solver.kit.Kit;
import drumfall.solver.making.MovementPart;
import drumfall.solver.rating.TrainRater;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What there is to draw of a movement; each sheet is drawn when it is asked for.
 *
 * @param parts the printed parts
 * @param plates the holes of both plates; none without a layout
 * @param elevation the elevation; none without a layout
 */
record MovementDrawings(List<MovementPart> parts, List<PlateHoles> plates, Optional<Supplier<Drawing>> elevation) {
    /** Copies the lists. */
    MovementDrawings {
        parts = List.copyOf(parts);
        plates = List.copyOf(plates);
    }

    static MovementDrawings of(Handover handover) {
        TrainRater rater = new TrainRater(handover.brief());
        Kit kit = Kit.of(rater, handover.rating(), handover.layout());
        return new MovementDrawings(
                kit.parts(),
                PlateHoles.of(kit),
                handover.layout()
                        .map(placed -> () -> ElevationDrawing.of(
                                placed, rater, handover.rating().train())));
    }

    /** All sheets: the parts from the drum downwards, the plates' holes, the elevation. */
    List<Supplier<Drawing>> sheets() {
        List<Supplier<Drawing>> sheets = new ArrayList<>();
        parts.forEach(part -> sheets.add(() -> PartDrawing.of(part)));
        plates.forEach(plate -> sheets.add(() -> PlateDrawing.of(plate)));
        elevation.ifPresent(sheets::add);
        return sheets;
    }

    /** What the files are, for people. */
    String readMe() {
        String placed = plates.isEmpty()
                ? "The arbors have no places, so there is no elevation and there are no plates and no hole tables."
                : "elevation: the movement seen from the dial. front-plate-holes, back-plate-holes: the holes of the plates"
                        + " seen from the dial, as drawing and as table (csv).";
        return String.join(
                "\n",
                "Outlines, full size, in millimetres: one user unit of an SVG file and one drawing unit of a DXF file is"
                        + " 1 mm.",
                "One file for each printed part, seen from above as it lies on the printer's bed. Layers are named after"
                        + " what they hold: a section has a layer of its own, the bore is on BORE, what else runs"
                        + " through all sections on THROUGH, the notes say at which heights a section is found.",
                placed,
                "");
    }
}
