// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.power;

import drumfall.ui.presenter.PowerCards;
import drumfall.ui.presenter.PowerFigure;
import drumfall.ui.presenter.PowerSheet;
import drumfall.ui.presenter.PowerState;
import drumfall.ui.presenter.ShownFigure;
import drumfall.ui.presenter.WhereCard;
import drumfall.ui.view.look.FigureButton;
import drumfall.ui.view.look.Ink;
import drumfall.ui.view.look.Parts;
import drumfall.ui.view.look.TallPanel;
import drumfall.ui.view.train.Role;
import java.awt.CardLayout;
import java.awt.Graphics;
import java.awt.event.HierarchyEvent;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** The sheet of the power: its way, the arc against the weight, figures, dials, savings. */
public final class PowerPane extends JPanel {
    private static final String SHEET = "sheet";
    private static final String WORDS = "words";

    private final transient PowerSheet sheet;
    private final transient BiConsumer<JComponent, WhereCard> cards;
    private final Map<PowerFigure, FigureButton> figures = new EnumMap<>(PowerFigure.class);
    private final PowerFlow flow;
    private final ArcChart chart;
    private final PowerDials dials;
    private final PowerSavings savings;
    private final JTextArea trouble = Parts.lines("");
    private final JTextArea words = Parts.lines("");
    private final CardLayout states = new CardLayout();

    /**
     * A pane.
     *
     * @param sheet what it shows
     * @param cards opens the card of a figure beside what shows it
     */
    public PowerPane(PowerSheet sheet, BiConsumer<JComponent, WhereCard> cards) {
        this.sheet = sheet;
        this.cards = cards;
        this.flow = new PowerFlow(sheet, cards);
        this.chart = new ArcChart(sheet);
        this.dials = new PowerDials(sheet);
        this.savings = new PowerSavings(sheet, cards);
        setLayout(states);
        setName("power");
        setOpaque(false);
        add(content(), SHEET);
        add(told(), WORDS);
        sheet.listen(this::changed);
        addHierarchyListener(event -> {
            if ((event.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0) {
                sheet.lookAt(isShowing());
            }
        });
        refresh();
    }

    private JPanel content() {
        JPanel content = new JPanel(new MigLayout(
                "insets 6lp 0 0 0, gap 8lp 4lp, hidemode 3",
                "[grow,fill,0:0:][180lp!,fill]",
                "[][grow 100,fill,0:0:][fill,100lp:124lp:124lp]"));
        content.setOpaque(false);
        trouble.setName("power.trouble");
        content.add(trouble, "cell 0 0 2 1, growx, wmin 0");
        content.add(TallPanel.scrolled(flow), "cell 0 1, grow, wmin 0, hmin 0");
        content.add(chart, "cell 0 2, grow, wmin 0, hmin 0");
        content.add(TallPanel.scrolled(side()), "cell 1 1 1 2, grow, wmin 0, hmin 0");
        return content;
    }

    private JPanel side() {
        JPanel side = new TallPanel(new MigLayout("insets 0 0 0 4lp, gap 0 2lp, wrap 2", "[50%!,fill][50%!,fill]", ""));
        side.setOpaque(false);
        for (PowerFigure figure : PowerFigure.values()) {
            FigureButton button =
                    new FigureButton("power." + figure.name(), figure.title(), 1.15f, pressed -> open(figure, pressed));
            figures.put(figure, button);
            side.add(button, "wmin 0");
        }
        side.add(dials, "newline, span 2, growx, wmin 0, gaptop 4lp");
        side.add(savings, "newline, span 2, growx, wmin 0, gaptop 4lp");
        return side;
    }

    private JPanel told() {
        JPanel told = new JPanel(new MigLayout("insets 24lp, wrap 1, ay 40%", "[grow,fill,0:0:]", "")) {
            @Override
            protected void paintComponent(Graphics graphics) {
                graphics.setColor(Ink.paper());
                graphics.fillRect(0, 0, getWidth(), getHeight());
            }
        };
        words.setName("power.words");
        told.add(words, "growx, wmin 0");
        return told;
    }

    private void open(PowerFigure figure, JComponent pressed) {
        sheet.cards().ifPresent(known -> cards.accept(pressed, known.card(figure)));
    }

    private void changed(PowerSheet.Change change) {
        if (change == PowerSheet.Change.POINTED) {
            flow.repaint();
        } else {
            refresh();
        }
    }

    private void refresh() {
        PowerState state = sheet.state();
        Optional<PowerCards> known = sheet.cards();
        states.show(this, known.isPresent() ? SHEET : WORDS);
        String sentence = state.sentence().orElse("");
        words.setText(sentence);
        trouble.setText(sentence);
        trouble.setVisible(!sentence.isEmpty());
        trouble.setForeground(Ink.of(Role.MISSED));
        figures.forEach((figure, button) ->
                button.show(known.map(all -> all.value(figure)).orElse(ShownFigure.NONE)));
        flow.refresh();
        dials.refresh();
        savings.refresh();
        chart.repaint();
    }

    /** Puts the keyboard on the way of the power, or on the weight where there is none. */
    public void takeFocus() {
        if (!flow.takeFocus()) {
            dials.takeFocus();
        }
    }
}
