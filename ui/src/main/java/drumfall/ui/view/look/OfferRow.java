// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.look;

import drumfall.ui.presenter.Offer;
import drumfall.ui.presenter.Texts;
import java.util.function.Consumer;

/** A value offered for a figure of the brief, what it buys at the right edge; pressing it puts the value into the brief. */
final class OfferRow extends TwoLineButton {
    private final transient Offer offer;

    OfferRow(Offer offer, Consumer<Offer> taken) {
        super(offer.name(), offer.instead(), offer.buys(), offer.spoken(), () -> taken.accept(offer));
        this.offer = offer;
        setName("offer." + offer.pointer());
        setToolTipText(Texts.of("offer.tip", offer.spoken()));
    }

    Offer offer() {
        return offer;
    }
}
