// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.train.Train;
import drumfall.ui.presenter.Highlight;
import drumfall.ui.presenter.StripFigure;
import drumfall.ui.presenter.StripFigure.Kind;
import drumfall.ui.presenter.TrainStripActions;
import drumfall.ui.presenter.TrainStripContent;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class TrainStripTest {
    private static final StripFigure FIRST_WHEEL = StripFigure.of(Kind.WHEEL, new MeshPlace(MeshPlace.Side.ABOVE, 1));

    private final Recorder recorder = new Recorder();
    private TrainStrip strip;

    @BeforeEach
    void open() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            strip = new TrainStrip(recorder);
            strip.setSize(1440, 262);
            strip.show(SampleTrains.content(SampleTrains.of(4), SampleTrains.heldBrief(), Optional.empty()));
        });
    }

    private void onEventThread(Runnable action) throws Exception {
        SwingUtilities.invokeAndWait(action);
    }

    private void press(int key) {
        KeyEvent event = new KeyEvent(strip, KeyEvent.KEY_PRESSED, 0, 0, key, KeyEvent.CHAR_UNDEFINED);
        List.of(strip.getKeyListeners()).forEach(listener -> listener.keyPressed(event));
    }

    private void type(char c) {
        KeyEvent event = new KeyEvent(strip, KeyEvent.KEY_TYPED, 0, 0, KeyEvent.VK_UNDEFINED, c);
        List.of(strip.getKeyListeners()).forEach(listener -> listener.keyTyped(event));
    }

    private void mouse(int id, StripFigure figure) {
        var box = strip.plan().orElseThrow().of(figure).orElseThrow().box();
        strip.dispatchEvent(new MouseEvent(
                strip, id, 0, 0, (int) box.getCenterX(), (int) box.getCenterY(), 1, false, MouseEvent.BUTTON1));
    }

    private void walkTo(StripFigure figure) {
        press(KeyEvent.VK_HOME);
        for (int i = 0; i < 60 && !strip.focused().orElseThrow().figure().equals(Optional.of(figure)); i++) {
            press(KeyEvent.VK_RIGHT);
        }
    }

    @Test
    void a_click_holds_the_figure() throws Exception {
        onEventThread(() -> mouse(MouseEvent.MOUSE_PRESSED, FIRST_WHEEL));
        assertThat(recorder.said).containsExactly("toggle " + FIRST_WHEEL);
    }

    @Test
    void space_holds_the_figure_the_arrows_have_reached() throws Exception {
        onEventThread(() -> {
            walkTo(FIRST_WHEEL);
            press(KeyEvent.VK_SPACE);
        });
        assertThat(recorder.said).containsExactly("toggle " + FIRST_WHEEL);
    }

    @Test
    void the_arrow_down_goes_from_a_wheel_to_its_pinion() throws Exception {
        onEventThread(() -> {
            walkTo(FIRST_WHEEL);
            press(KeyEvent.VK_DOWN);
        });
        assertThat(strip.focused().orElseThrow().figure())
                .contains(StripFigure.of(Kind.LEAVES, new MeshPlace(MeshPlace.Side.ABOVE, 1)));
    }

    @Test
    void the_arrows_stop_at_both_ends() throws Exception {
        onEventThread(() -> {
            press(KeyEvent.VK_HOME);
            press(KeyEvent.VK_LEFT);
        });
        assertThat(strip.focused())
                .isEqualTo(strip.plan().map(plan -> plan.spots().get(0)));
        onEventThread(() -> {
            press(KeyEvent.VK_END);
            press(KeyEvent.VK_RIGHT);
        });
        var spots = strip.plan().orElseThrow().spots();
        assertThat(strip.focused()).contains(spots.get(spots.size() - 1));
    }

    @Test
    void a_typed_number_is_tried_with_enter() throws Exception {
        onEventThread(() -> {
            walkTo(FIRST_WHEEL);
            type('9');
            JTextField editor = editor().orElseThrow();
            assertThat(editor.getText()).isEqualTo("9");
            editor.setText("90");
            editor.postActionEvent();
        });
        assertThat(recorder.said).containsExactly("try " + FIRST_WHEEL + " 90");
        assertThat(editor()).isEmpty();
    }

    @Test
    void a_second_digit_typed_before_the_field_has_the_focus_is_kept() throws Exception {
        onEventThread(() -> {
            walkTo(FIRST_WHEEL);
            type('9');
            type('0');
        });
        assertThat(editor().orElseThrow().getText()).isEqualTo("90");
    }

    @Test
    void the_present_value_is_offered_selected_with_f2() throws Exception {
        onEventThread(() -> {
            walkTo(FIRST_WHEEL);
            press(KeyEvent.VK_F2);
        });
        assertThat(editor().orElseThrow().getSelectedText()).isEqualTo("85");
    }

    @Test
    void escape_drops_what_is_being_typed() throws Exception {
        onEventThread(() -> {
            walkTo(FIRST_WHEEL);
            type('9');
            JTextField editor = editor().orElseThrow();
            editor.getActionMap().get("drop").actionPerformed(null);
        });
        assertThat(recorder.said).isEmpty();
        assertThat(editor()).isEmpty();
    }

    private Optional<JTextField> editor() {
        for (Component child : strip.getComponents()) {
            if (child instanceof JTextField field) {
                return Optional.of(field);
            }
        }
        return Optional.empty();
    }

    @Test
    void a_reading_cannot_be_typed_over() throws Exception {
        onEventThread(() -> {
            press(KeyEvent.VK_HOME);
            type('9');
        });
        assertThat(strip.focused().orElseThrow().reading()).isPresent();
        assertThat(editor()).isEmpty();
    }

    @Test
    void enter_takes_a_trial_and_escape_drops_it() throws Exception {
        Train train = SampleTrains.of(4);
        onEventThread(() -> {
            press(KeyEvent.VK_ENTER);
            strip.show(SampleTrains.content(
                    train, SampleTrains.brief(), Optional.of(SampleTrains.withWheel(train, 0, 90))));
            press(KeyEvent.VK_ENTER);
            press(KeyEvent.VK_ESCAPE);
        });
        assertThat(recorder.said).containsExactly("accept", "drop");
    }

    @Test
    void pointing_at_a_figure_is_told_once_and_leaving_it_too() throws Exception {
        onEventThread(() -> {
            mouse(MouseEvent.MOUSE_MOVED, FIRST_WHEEL);
            mouse(MouseEvent.MOUSE_MOVED, FIRST_WHEEL);
            mouse(MouseEvent.MOUSE_EXITED, FIRST_WHEEL);
        });
        assertThat(recorder.said).containsExactly("hover " + FIRST_WHEEL, "hover none");
    }

    @Test
    void where_a_figure_comes_from_is_asked_with_f1() throws Exception {
        List<String> asked = new ArrayList<>();
        onEventThread(() -> {
            strip.onWhereFrom((spot, place) -> asked.add(spot.name()));
            press(KeyEvent.VK_HOME);
            press(KeyEvent.VK_F1);
        });
        assertThat(asked).containsExactly("Duration of a full fall: 7.51 d");
    }

    @Test
    void every_figure_is_a_named_child_for_a_screen_reader() {
        AccessibleContext context = strip.getAccessibleContext();
        var spots = strip.plan().orElseThrow().spots();
        assertThat(context.getAccessibleName()).isEqualTo(TrainText.of("strip.name"));
        assertThat(context.getAccessibleChildrenCount()).isEqualTo(spots.size());
        for (int i = 0; i < spots.size(); i++) {
            AccessibleContext child = context.getAccessibleChild(i).getAccessibleContext();
            assertThat(child.getAccessibleName()).isEqualTo(spots.get(i).name());
            assertThat(child.getAccessibleIndexInParent()).isEqualTo(i);
            assertThat(child.getAccessibleStateSet().contains(AccessibleState.CHECKED))
                    .isEqualTo(spots.get(i).held());
        }
    }

    @Test
    void a_screen_reader_can_hold_a_figure() throws Exception {
        int index = strip.plan()
                .map(plan -> plan.spots().indexOf(plan.of(FIRST_WHEEL).orElseThrow()))
                .orElseThrow();
        AccessibleContext child =
                strip.getAccessibleContext().getAccessibleChild(index).getAccessibleContext();
        assertThat(child.getAccessibleRole()).isEqualTo(AccessibleRole.TOGGLE_BUTTON);
        onEventThread(() -> child.getAccessibleAction().doAccessibleAction(0));
        assertThat(recorder.said).containsExactly("toggle " + FIRST_WHEEL);
    }

    @Test
    void without_a_train_there_is_a_sentence_and_no_figure() throws Exception {
        TrainStripContent chosen = SampleTrains.content(SampleTrains.of(4));
        onEventThread(() -> {
            strip.show(new TrainStripContent(
                    Optional.empty(), Optional.empty(), chosen.brief(), Highlight.NONE, chosen.units(), false));
            press(KeyEvent.VK_RIGHT);
            press(KeyEvent.VK_SPACE);
        });
        assertThat(strip.getAccessibleContext().getAccessibleChildrenCount()).isZero();
        assertThat(inked(strip)).isPositive();
        assertThat(recorder.said).isEmpty();
    }

    @Test
    void the_strip_puts_ink_on_paper() {
        assertThat(inked(strip)).isGreaterThan(5000);
    }

    @Test
    void going_to_a_count_looks_into_its_mesh() throws Exception {
        onEventThread(() -> walkTo(FIRST_WHEEL));
        assertThat(recorder.lookedInto).last().isEqualTo(FIRST_WHEEL.place().orElseThrow());
        assertThat(recorder.said).isEmpty();
    }

    private static int inked(TrainStrip strip) {
        BufferedImage image = new BufferedImage(1440, 262, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        strip.paint(graphics);
        graphics.dispose();
        int paper = image.getRGB(0, 0);
        int inked = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                inked += image.getRGB(x, y) == paper ? 0 : 1;
            }
        }
        return inked;
    }

    /** Notes what the strip asks for. */
    private static final class Recorder implements TrainStripActions {
        private final List<String> said = new ArrayList<>();
        private final List<MeshPlace> lookedInto = new ArrayList<>();

        @Override
        public void toggleLock(StripFigure figure) {
            said.add("toggle " + figure);
        }

        @Override
        public void tryCount(StripFigure figure, String typed) {
            said.add("try " + figure + " " + typed);
        }

        @Override
        public void hover(Optional<StripFigure> figure) {
            said.add("hover " + figure.map(StripFigure::toString).orElse("none"));
        }

        @Override
        public void lookInto(MeshPlace place) {
            lookedInto.add(place);
        }

        @Override
        public void acceptTrial() {
            said.add("accept");
        }

        @Override
        public void dropTrial() {
            said.add("drop");
        }
    }
}
