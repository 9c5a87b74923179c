// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import com.fasterxml.jackson.databind.node.TextNode;
import drumfall.solver.brief.RoomFigure;
import drumfall.solver.quantity.Dimension;
import drumfall.ui.design.BriefDraft;
import java.util.Optional;
import java.util.stream.Stream;

/** How the room that is wanted small is entered: switched on with a start that is in order, and off as a whole. */
final class RoomEdits {
    private static final String ROOM = "/frame/least";
    private static final String FIGURE = ROOM + "/figure";
    private static final String RESOLUTION = ROOM + "/resolution";
    private static final String ENOUGH = ROOM + "/enough";

    private RoomEdits() {}

    /** Whether an entry is about the room. */
    static boolean concern(String pointer) {
        return pointer.startsWith(ROOM + "/");
    }

    /**
     * A draft after an entry about the room.
     *
     * @param draft the draft before it
     * @param pointer of the entry
     * @param typed what was typed or chosen; blank to leave it out
     */
    static BriefDraft entered(BriefDraft draft, String pointer, String typed) {
        if (pointer.equals(FIGURE)) {
            return figure(typed).map(figure -> wanting(draft, figure)).orElseGet(() -> draft.without(ROOM));
        }
        if (typed.isBlank()) {
            return draft.without(pointer);
        }
        boolean off = draft.at(ROOM).isMissingNode();
        return (off ? wanting(draft, RoomFigure.MOVEMENT_HEIGHT) : draft).with(pointer, TextNode.valueOf(typed));
    }

    /** Steps and size typed for a length say nothing of an area, and the other way round. */
    private static BriefDraft wanting(BriefDraft draft, RoomFigure figure) {
        Optional<Dimension> before = figure(draft.typed(FIGURE)).map(RoomFigure::dimension);
        BriefDraft changed = draft.with(FIGURE, TextNode.valueOf(figure.word()));
        return before.equals(Optional.of(figure.dimension()))
                ? changed
                : changed.without(ENOUGH).with(RESOLUTION, TextNode.valueOf(usualResolution(figure)));
    }

    /** Steps to begin with; the maker sets others. Common practice, no source. */
    private static String usualResolution(RoomFigure figure) {
        return figure.dimension() == Dimension.AREA ? "10 cm2" : "10 mm";
    }

    private static Optional<RoomFigure> figure(String word) {
        return Stream.of(RoomFigure.values())
                .filter(figure -> figure.word().equals(word))
                .findFirst();
    }
}
