// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.mesh;

import drumfall.ui.presenter.MeshFigure;
import drumfall.ui.presenter.MeshSheet;
import drumfall.ui.presenter.MeshSheet.Change;
import drumfall.ui.presenter.MeshState.Traced;
import drumfall.ui.presenter.Names;
import drumfall.ui.presenter.ShownFigure;
import drumfall.ui.presenter.Texts;
import drumfall.ui.presenter.WhereCard;
import drumfall.ui.view.look.FigureButton;
import drumfall.ui.view.look.Ink;
import drumfall.ui.view.look.Parts;
import drumfall.ui.view.train.Role;
import java.awt.CardLayout;
import java.awt.Graphics;
import java.awt.event.HierarchyEvent;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.JTextArea;
import javax.swing.JToggleButton;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;

/** The sheet of the mesh looked into: gears, curve, dials, figures. */
public final class MeshPane extends JPanel {
    private static final int FRAME_MILLISECONDS = 16;
    private static final double MILLISECONDS = 1e3;
    private static final int PHASES = 1000;
    private static final String SHEET = "sheet";
    private static final String WORDS = "words";

    private final transient MeshSheet sheet;
    private final transient BiConsumer<JComponent, WhereCard> cards;
    private final Map<MeshFigure, FigureButton> figures = new EnumMap<>(MeshFigure.class);
    private final MeshDrawing drawing;
    private final MeshDials dials;
    private final JComboBox<String> meshes = new JComboBox<>();
    private final JToggleButton turn = new JToggleButton(Texts.of("mesh.turn"));
    private final JSlider phase = new JSlider(0, PHASES, 0);
    private final JTextArea jam = Parts.lines("");
    private final JTextArea words = Parts.lines("");
    private final CardLayout states = new CardLayout();
    private final JPanel body = new JPanel(states);
    private final transient Timer frames = new Timer(FRAME_MILLISECONDS, event -> frame());
    private long last;
    private boolean following;

    /**
     * A pane.
     *
     * @param sheet what it shows
     * @param cards opens the card of a figure beside what shows it
     */
    public MeshPane(MeshSheet sheet, BiConsumer<JComponent, WhereCard> cards) {
        super(new MigLayout("insets 6lp 0 0 0, gap 6lp, wrap 1", "[grow,fill,0:0:]", "[][grow,fill,0:0:]"));
        this.sheet = sheet;
        this.cards = cards;
        this.drawing = new MeshDrawing(sheet);
        this.dials = new MeshDials(sheet);
        setName("mesh");
        setOpaque(false);
        body.setOpaque(false);
        add(head(), "growx, wmin 0");
        body.add(content(), SHEET);
        body.add(told(), WORDS);
        add(body, "grow, wmin 0, hmin 0");
        sheet.listen(this::changed);
        addHierarchyListener(event -> {
            if ((event.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0) {
                runFrames();
            }
        });
        refresh();
    }

    private JPanel head() {
        JPanel head = new JPanel(new MigLayout("insets 0, gap 6lp", "[grow,fill,0:0:][]", "[]"));
        head.setOpaque(false);
        meshes.setName("mesh.which");
        Parts.named(meshes, Texts.of("mesh.which"));
        meshes.addActionListener(event -> {
            if (!following && meshes.getSelectedIndex() >= 0) {
                sheet.lookInto(meshes.getSelectedIndex());
            }
        });
        head.add(meshes, "growx, wmin 0");
        turn.setName("mesh.turn");
        Parts.named(turn, Texts.of("mesh.turn.name"));
        turn.addActionListener(event -> sheet.setTurning(turn.isSelected()));
        head.add(turn);
        return head;
    }

    private JPanel content() {
        JPanel content = new JPanel(new MigLayout(
                "insets 0, gap 8lp 4lp, hidemode 3",
                "[grow,fill,0:0:][172lp!,fill]",
                "[][grow 80,fill,60lp:60lp:][grow 20,fill,76lp:76lp:][pref!]"));
        content.setOpaque(false);
        jam.setName("mesh.jam");
        content.add(jam, "cell 0 0 2 1, growx, wmin 0");
        content.add(drawing, "cell 0 1, grow, wmin 0, hmin 0");
        content.add(side(), "cell 1 1 1 3, aligny top, growx, wmin 0");
        content.add(new TorqueCurve(sheet), "cell 0 2, grow, wmin 0, hmin 0");
        content.add(phaseSlider(), "cell 0 3, growx, wmin 0, gapleft 34lp, gapright 2lp");
        return content;
    }

    private JPanel side() {
        JPanel side = new JPanel(new MigLayout("insets 0, gap 0 2lp, wrap 2", "[50%!,fill][50%!,fill]", ""));
        side.setOpaque(false);
        for (MeshFigure figure : MeshFigure.values()) {
            FigureButton button =
                    new FigureButton("mesh." + figure.name(), figure.title(), 1.15f, pressed -> open(figure, pressed));
            figures.put(figure, button);
            side.add(button);
        }
        side.add(dials, "span 2, growx, wmin 0, gaptop 6lp");
        return side;
    }

    private JSlider phaseSlider() {
        phase.setName("mesh.phase");
        phase.setOpaque(false);
        Parts.named(phase, Texts.of("mesh.phase"));
        phase.setToolTipText(Texts.of("mesh.phase.tip"));
        phase.addChangeListener(event -> {
            if (!following) {
                sheet.turnTo(Math.min(PHASES - 1e-6, phase.getValue()) / PHASES);
            }
        });
        return phase;
    }

    private JPanel told() {
        JPanel told = new JPanel(new MigLayout("insets 24lp, wrap 1, ay 40%", "[grow,fill,0:0:]", "")) {
            @Override
            protected void paintComponent(Graphics graphics) {
                graphics.setColor(Ink.paper());
                graphics.fillRect(0, 0, getWidth(), getHeight());
            }
        };
        words.setName("mesh.words");
        told.add(words, "growx, wmin 0");
        return told;
    }

    private void open(MeshFigure figure, JComponent pressed) {
        sheet.state()
                .traced()
                .ifPresent(traced -> cards.accept(
                        pressed, figure.card(traced, sheet.setting().orElseThrow(), sheet.units())));
    }

    private void changed(Change change) {
        switch (change) {
            case STATE -> refresh();
            case PHASE -> showPhase();
            case TURNING -> {
                turn.setSelected(sheet.turning());
                runFrames();
            }
        }
    }

    private void refresh() {
        following = true;
        meshes.setModel(new DefaultComboBoxModel<>(names().toArray(String[]::new)));
        meshes.setSelectedIndex(sheet.index().orElse(-1));
        meshes.setEnabled(sheet.index().isPresent());
        following = false;
        Optional<Traced> traced = sheet.state().traced();
        Optional<String> sentence = sheet.state().sentence();
        boolean settable = sheet.state().settable();
        states.show(body, settable ? SHEET : WORDS);
        words.setText(sentence.orElse(""));
        jam.setText(sentence.orElse(""));
        jam.setVisible(settable && sentence.isPresent());
        jam.setForeground(Ink.of(Role.MISSED));
        turn.setEnabled(traced.isPresent());
        figures.forEach((figure, button) -> button.show(
                traced.map(known -> figure.value(known, sheet.units())).orElse(ShownFigure.NONE)));
        dials.refresh();
        showPhase();
    }

    private List<String> names() {
        return IntStream.range(0, sheet.places().size())
                .mapToObj(
                        index -> Texts.of("mesh.named", Names.of(sheet.places().get(index)), sheet.mesh(index)))
                .toList();
    }

    private void showPhase() {
        following = true;
        phase.setValue((int) Math.round(sheet.turn() * PHASES));
        following = false;
    }

    private void runFrames() {
        boolean run = sheet.turning() && isShowing();
        if (run && !frames.isRunning()) {
            last = System.nanoTime();
            frames.start();
        } else if (!run) {
            frames.stop();
        }
    }

    private void frame() {
        long now = System.nanoTime();
        sheet.pass((now - last) / MILLISECONDS / MILLISECONDS / MILLISECONDS);
        last = now;
    }

    /** Puts the keyboard on the gears, or on the choice of mesh where there are none. */
    public void takeFocus() {
        if (sheet.state().traced().isPresent()) {
            drawing.requestFocusInWindow();
        } else {
            meshes.requestFocusInWindow();
        }
    }
}
