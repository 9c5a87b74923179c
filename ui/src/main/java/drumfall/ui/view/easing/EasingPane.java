// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.easing;

import drumfall.ui.presenter.EasingSheet;
import drumfall.ui.presenter.Inquiry;
import drumfall.ui.presenter.Texts;
import drumfall.ui.presenter.TriedTrain;
import drumfall.ui.view.look.AskLine;
import drumfall.ui.view.look.Ink;
import drumfall.ui.view.look.OfferList;
import drumfall.ui.view.look.Parts;
import drumfall.ui.view.look.TallPanel;
import java.awt.BorderLayout;
import java.awt.Graphics;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** The sheet of easing: the tried train if there is one, and what each eased figure buys the chosen one. */
public final class EasingPane extends JPanel {
    private final transient EasingSheet sheet;
    private final TriedPane tried;
    private final AskLine line;
    private final JTextArea about = Parts.lines("");
    private final JLabel mark = Parts.remark("");
    private final OfferList offers;

    /**
     * A pane.
     *
     * @param sheet what it shows
     * @param train how the tried train stands
     * @param ways where its links lead
     */
    public EasingPane(EasingSheet sheet, TriedTrain train, Ways ways) {
        super(new BorderLayout());
        this.sheet = sheet;
        setName("easing");
        setOpaque(false);
        tried = new TriedPane(train, ways);
        line = new AskLine("easing.line", this::turned);
        offers = new OfferList(Texts.of("easing.offers.name"), sheet::put);
        offers.setName("easing.offers");
        about.setName("easing.about");
        mark.setName("easing.mark");
        JPanel content = new TallPanel(
                new MigLayout("insets 10lp 12lp 10lp 12lp, gap 0 4lp, hidemode 3, wrap 1", "[grow,fill,0:0:]", ""));
        content.setOpaque(false);
        content.add(tried, "growx, wmin 0");
        content.add(Parts.subheading(Texts.of("easing.title")));
        content.add(about, "growx, wmin 0");
        content.add(mark, "growx, wmin 0");
        content.add(line, "growx, wmin 0");
        content.add(offers, "growx, wmin 0, gaptop 4lp");
        add(TallPanel.scrolled(content));
        sheet.listen(this::refresh);
        refresh();
    }

    private void turned() {
        if (sheet.stage() == Inquiry.BUSY) {
            sheet.stop();
        } else {
            sheet.ask();
        }
    }

    private void refresh() {
        boolean busy = sheet.stage() == Inquiry.BUSY;
        line.show(sheet.sentence(), busy, sheet.done(), turn());
        about.setText(sheet.about());
        about.setVisible(!sheet.about().isEmpty());
        mark.setText(sheet.mark());
        mark.setVisible(!sheet.mark().isEmpty());
        offers.show(sheet.offers());
        revalidate();
        repaint();
    }

    private Optional<String> turn() {
        if (sheet.stage() == Inquiry.BUSY) {
            return Optional.of(Texts.of("easing.stop"));
        }
        return sheet.canAsk()
                ? Optional.of(Texts.of(sheet.stage() == Inquiry.UNASKED ? "easing.ask" : "easing.again"))
                : Optional.empty();
    }

    /** Puts the keyboard on the offers, or on what can be done where there are none. */
    public void takeFocus() {
        if (!offers.takeFocus() && !line.takeFocus()) {
            tried.takeFocus();
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        graphics.setColor(Ink.paper());
        graphics.fillRect(0, 0, getWidth(), getHeight());
    }
}
