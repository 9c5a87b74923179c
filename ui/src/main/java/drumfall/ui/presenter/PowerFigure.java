// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import java.util.Optional;

/** Figures of the power of a train at a setting. */
public enum PowerFigure {
    /** Least running weight at the friction and quality set. */
    LEAST("least-weight", ""),
    /** Semi-arc kept on the mean. */
    ARC("", "arc-set"),
    /** Power of the falling weight. */
    POWER("weight-power", "weight-power-set"),
    /** Share of it that the pendulum gets. */
    DELIVERED("", "delivered"),
    /** How long the clock goes on while it is wound. */
    COASTING("", "coasting"),
    /** How long the arbor that stands first spins by itself after a flick. */
    FREE_SPIN("", ""),
    /** Bending stress in the teeth of the ratchet. */
    RATCHET("ratchet-bending", "");

    private final String card;
    private final String ofBooks;

    PowerFigure(String card, String ofBooks) {
        this.card = card;
        this.ofBooks = ofBooks;
    }

    /** What it is called. */
    public String title() {
        return Texts.of("powerfigure." + name());
    }

    /** Name of the solver's card of it among those of the books at any setting, if there is one. */
    Optional<String> cardOfBooks() {
        return Optional.of(ofBooks).filter(name -> !name.isEmpty());
    }

    /** Name of the solver's card of it among those of the rating, if there is one. */
    Optional<String> card() {
        return Optional.of(card).filter(name -> !name.isEmpty());
    }
}
