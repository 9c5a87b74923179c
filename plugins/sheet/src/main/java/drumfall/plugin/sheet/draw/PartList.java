// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.draw;

import drumfall.plugin.api.Handover;
import drumfall.solver.making.MovementPart;
import drumfall.solver.making.MovementParts;
import drumfall.solver.rating.TrainRater;
import java.util.List;
import java.util.Set;

/** The printed parts of a handover. */
public final class PartList {
    private static final Set<String> SHOWN = Set.of("pallets", "arbor-1-drum", "arbor-1-ratchet");

    private PartList() {}

    /**
     * All printed parts.
     *
     * @param handover the train with its brief
     * @throws drumfall.solver.making.solid.SizeLimitException if a size cannot be made
     */
    public static List<MovementPart> of(Handover handover) {
        TrainRater rater = new TrainRater(handover.brief());
        return MovementParts.of(rater, handover.rating(), handover.layout()).parts();
    }

    /**
     * Whether a part without teeth of its own is worth a drawing.
     *
     * @param part the part
     */
    public static boolean large(MovementPart part) {
        return SHOWN.contains(part.name()) || part.name().contains("plate");
    }
}
