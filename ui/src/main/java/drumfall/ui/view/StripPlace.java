// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.ui.presenter.Aspect;
import drumfall.ui.presenter.Figure;
import drumfall.ui.presenter.Texts;
import drumfall.ui.presenter.TrialStanding;
import drumfall.ui.presenter.TriedTrain;
import drumfall.ui.presenter.Workspace;
import drumfall.ui.view.look.Parts;
import drumfall.ui.view.train.StripReading;
import drumfall.ui.view.train.TrainStrip;
import java.awt.BorderLayout;
import java.awt.Rectangle;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** The train strip over the full width. */
final class StripPlace implements Place {
    private final Workspace workspace;
    private final TriedTrain tried;
    private final TrainStrip strip;
    private final JPanel place = new JPanel(new BorderLayout());

    /** Opens the card of a figure beside a component. */
    interface Cards {
        void open(Figure figure, JComponent beside, Rectangle at);
    }

    /**
     * The place.
     *
     * @param workspace the shared state
     * @param tried how the tried train stands
     * @param cards opens the cards of figures
     */
    StripPlace(Workspace workspace, TriedTrain tried, Cards cards) {
        this.workspace = workspace;
        this.tried = tried;
        this.strip = new TrainStrip(workspace);
        strip.setName("strip");
        strip.onWhereFrom((spot, at) ->
                spot.reading().flatMap(StripPlace::figure).ifPresent(figure -> cards.open(figure, strip, at)));
        place.setName("strip.place");
        Parts.named(place, Texts.of("place.strip"));
        place.add(strip);
        workspace.listen(this::changed);
        tried.listen(this::show);
        show();
    }

    private void show() {
        strip.show(workspace.strip().saying(tried.standing().map(TrialStanding::shortly)));
    }

    private static Optional<Figure> figure(StripReading reading) {
        return switch (reading.kind()) {
            case RUN -> Optional.of(Figure.DURATION);
            case WEIGHT -> Optional.of(Figure.RECOMMENDED_WEIGHT);
            case BEAT -> Optional.of(Figure.BEAT);
            case BEATS_PER_HOUR -> Optional.of(Figure.BEATS_PER_HOUR);
            case PENDULUM -> Optional.of(Figure.PENDULUM_LENGTH);
            case TORQUE, POWER -> Optional.of(Figure.LINE_TENSION);
        };
    }

    private void changed(Aspect aspect) {
        switch (aspect) {
            case CHOICE, TRIAL, BRIEF, HIGHLIGHT, UNITS, FRONT -> show();
            default -> {}
        }
    }

    @Override
    public JComponent component() {
        return place;
    }

    @Override
    public void takeFocus() {
        strip.requestFocusInWindow();
    }
}
