// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.look;

import drumfall.ui.presenter.Offer;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Offered values below one another; rows that stay keep the keyboard while others come in between. */
public final class OfferList extends JPanel {
    private final transient Consumer<Offer> taken;

    /**
     * An empty list.
     *
     * @param spoken the list's name as it is read aloud
     * @param taken puts an offered value into the brief
     */
    public OfferList(String spoken, Consumer<Offer> taken) {
        super(new MigLayout("insets 0, gap 0, wrap 1", "[grow,fill,0:0:]", ""));
        this.taken = taken;
        setOpaque(false);
        Parts.named(this, spoken);
    }

    /** Shows other offers. */
    public void show(List<Offer> offers) {
        for (int i = 0; i < offers.size(); i++) {
            if (i >= getComponentCount() || !row(i).offer().equals(offers.get(i))) {
                add(new OfferRow(offers.get(i), taken), "growx, wmin 0", i);
            }
        }
        while (getComponentCount() > offers.size()) {
            remove(offers.size());
        }
        revalidate();
        repaint();
    }

    private OfferRow row(int index) {
        return (OfferRow) getComponent(index);
    }

    /** Puts the keyboard on the first offer; false if there is none. */
    public boolean takeFocus() {
        return getComponentCount() > 0 && row(0).requestFocusInWindow();
    }
}
