// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.power;

import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.answers.Change;
import drumfall.ui.presenter.PowerCards;
import drumfall.ui.presenter.PowerFindings;
import drumfall.ui.presenter.PowerFindings.Found;
import drumfall.ui.presenter.PowerSheet;
import drumfall.ui.presenter.ShownFigure;
import drumfall.ui.presenter.Texts;
import drumfall.ui.presenter.WhereCard;
import drumfall.ui.view.look.FigureButton;
import drumfall.ui.view.look.Parts;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** For how many builders the weight runs, and what changes would save; or that it is being reckoned. */
final class PowerSavings extends JPanel {
    private final transient PowerSheet sheet;
    private final transient BiConsumer<JComponent, WhereCard> cards;
    private final FigureButton chance;
    private final JTextArea spread = Parts.lines("");
    private final JTextArea doing = Parts.lines("");
    private final JProgressBar busy = new JProgressBar();
    private final JButton turn;
    private final JPanel list = new JPanel(new MigLayout("insets 0, gap 0, wrap 1", "[grow,fill,0:0:]", ""));
    private transient Optional<Found> listed = Optional.empty();
    private transient Optional<UnitSystem> worded = Optional.empty();

    PowerSavings(PowerSheet sheet, BiConsumer<JComponent, WhereCard> cards) {
        super(new MigLayout("insets 0, gap 0 2lp, wrap 1, hidemode 3", "[grow,fill,0:0:]", ""));
        this.sheet = sheet;
        this.cards = cards;
        this.turn = Parts.link(Texts.of("power.stop"), this::turned);
        setName("power.savings");
        setOpaque(false);
        list.setOpaque(false);
        Parts.named(list, Texts.of("power.savings.name"));
        chance = new FigureButton("power.CHANCE", Texts.of("power.chance"), 1.15f, this::openChance);
        busy.setIndeterminate(true);
        Parts.named(busy, Texts.of("power.busy"));
        turn.setName("power.turn");
        doing.setName("power.doing");
        add(doing, "growx, wmin 0");
        add(busy, "growx, wmin 0");
        add(turn, "al left, growx 0");
        add(chance, "al left, growx 0");
        add(spread, "growx, wmin 0, gapleft 6lp");
        add(Parts.subheading(Texts.of("power.savings")), "gaptop 4lp, gapleft 4lp");
        add(list, "growx, wmin 0");
    }

    private void turned() {
        if (sheet.findings() instanceof PowerFindings.Busy) {
            sheet.stopFinding();
        } else {
            sheet.find();
        }
    }

    private void openChance(JComponent pressed) {
        sheet.findings()
                .found()
                .ifPresent(found -> sheet.cards().ifPresent(known -> cards.accept(pressed, known.chanceCard(found))));
    }

    /** Shows what is known. */
    void refresh() {
        PowerFindings findings = sheet.findings();
        boolean running = findings instanceof PowerFindings.Busy;
        Optional<String> words = words(findings);
        doing.setVisible(words.isPresent());
        doing.setText(words.orElse(""));
        busy.setVisible(running);
        turn.setVisible(words.isPresent());
        String does = Texts.of(running ? "power.stop" : "power.again");
        turn.setText(does);
        Parts.named(turn, does);
        Optional<Found> found = findings.found();
        Optional<PowerCards> known = sheet.cards();
        chance.setVisible(found.isPresent());
        spread.setVisible(found.isPresent());
        getComponent(getComponentCount() - 2).setVisible(found.isPresent());
        list.setVisible(found.isPresent());
        chance.show(found.flatMap(done -> known.map(all -> all.chance(done))).orElse(ShownFigure.NONE));
        spread.setText(found.flatMap(done -> known.map(all -> all.spread(done))).orElse(""));
        relist(found, known);
    }

    private static Optional<String> words(PowerFindings findings) {
        if (findings instanceof PowerFindings.Busy) {
            return Optional.of(Texts.of("power.busy"));
        }
        if (findings instanceof PowerFindings.Stopped) {
            return Optional.of(Texts.of("power.stopped"));
        }
        return findings instanceof PowerFindings.Failed ? Optional.of(Texts.of("power.lost")) : Optional.empty();
    }

    private void relist(Optional<Found> found, Optional<PowerCards> known) {
        // Every turn of a dial comes by here, and no dial changes what is saved: it is reckoned in the middle of the
        // bands.
        Optional<UnitSystem> units = Optional.of(sheet.units());
        if (known.isEmpty() || (listed.equals(found) && worded.equals(units))) {
            return;
        }
        worded = units;
        if (!listed.equals(found)) {
            listed = found;
            list.removeAll();
            found.ifPresent(done -> done.changes().forEach(change -> list.add(row(change), "growx, wmin 0")));
            revalidate();
        }
        for (int i = 0; i < list.getComponentCount(); i++) {
            Change change = found.orElseThrow().changes().get(i);
            ((PowerRow) list.getComponent(i))
                    .show(known.get().title(change), known.get().value(change));
        }
        repaint();
    }

    private PowerRow row(Change change) {
        PowerRow row = new PowerRow();
        row.setName("power." + change.kind() + "." + change.number());
        row.addActionListener(event -> sheet.cards().ifPresent(all -> cards.accept(row, all.card(change))));
        return row;
    }
}
