// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.design;

import drumfall.solver.brief.Brief;
import drumfall.solver.layout.Locks;
import drumfall.solver.train.Train;
import java.util.Objects;
import java.util.Optional;

/**
 * A design: what is demanded and held, and the train chosen for it.
 *
 * @param draft the brief as typed, with its locks
 * @param chosen the chosen train, if there is one yet
 * @param drawn arbors drawn by hand in a layout, if there are any
 */
public record Design(BriefDraft draft, Optional<Train> chosen, Optional<DrawnArbors> drawn) {
    /** Checks that all are there. */
    public Design {
        Objects.requireNonNull(draft);
        Objects.requireNonNull(chosen);
        Objects.requireNonNull(drawn);
    }

    /** A design that begins with a brief in order and no train. */
    public static Design of(Brief brief) {
        return new Design(BriefDraft.of(brief), Optional.empty(), Optional.empty());
    }

    /** The design's name: its brief's. */
    public String name() {
        return draft.name();
    }

    /** The same design with another brief. */
    public Design with(BriefDraft changed) {
        return new Design(changed, chosen, drawn);
    }

    /** The same design with another train. */
    public Design choosing(Train train) {
        return new Design(draft, Optional.of(train), drawn);
    }

    /** The same design with arbors drawn in a layout; without any if no direction is held. */
    public Design drawing(DrawnArbors arbors) {
        return new Design(
                draft,
                chosen,
                Optional.of(arbors).filter(some -> !some.directions().isEmpty()));
    }

    /** What is drawn in the layout of a train. */
    public Locks drawnIn(Train train) {
        return drawn.filter(arbors -> arbors.train().equals(train))
                .map(DrawnArbors::locks)
                .orElse(Locks.NONE);
    }
}
