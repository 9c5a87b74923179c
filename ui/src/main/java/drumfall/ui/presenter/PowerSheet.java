// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.train.Train;
import drumfall.ui.presenter.MeshSetting.Travel;
import drumfall.ui.presenter.PowerSetting.Dial;
import drumfall.ui.presenter.StripFigure.Kind;
import drumfall.ui.work.LatestDesk;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The sheet of the power: where it goes under a weight, what arc it keeps, and what would save some.
 *
 * <p>Used from the event thread. Everything is reckoned off it and only while the sheet is looked at; the last picture of a
 * train stays until the next one is there.
 */
public final class PowerSheet {
    private final Workspace workspace;
    private final LatestDesk dials;
    private final LatestDesk findingsDesk;
    private final List<Consumer<Change>> listeners = new ArrayList<>();
    private Optional<PowerReckoner> reckoner = Optional.empty();
    private Optional<PowerSetting> moved = Optional.empty();
    private Optional<PowerSetting> asked = Optional.empty();
    private PowerState state = new PowerState.NoTrain();
    private PowerFindings findings = new PowerFindings.Unasked();
    private boolean lookedAt;

    /** What changed. */
    public enum Change {
        /** Train, setting, or what there is to see. */
        STATE,
        /** What is pointed at alone. */
        POINTED
    }

    /**
     * A sheet.
     *
     * @param workspace the shared state
     * @param dials reckons at a setting
     * @param findings reckons savings and chance
     */
    public PowerSheet(Workspace workspace, LatestDesk dials, LatestDesk findings) {
        this.workspace = workspace;
        this.dials = dials;
        this.findingsDesk = findings;
        workspace.listen(this::changed);
        follow();
    }

    /**
     * Adds whoever is to be told that something changed.
     *
     * @param listener is told after the change
     */
    public void listen(Consumer<Change> listener) {
        listeners.add(listener);
    }

    private void tell(Change change) {
        List.copyOf(listeners).forEach(listener -> listener.accept(change));
    }

    private void changed(Aspect aspect) {
        switch (aspect) {
            case CHOICE, BRIEF -> follow();
            case UNITS -> {
                state = reworded(state);
                tell(Change.STATE);
            }
            case HIGHLIGHT -> tell(Change.POINTED);
            default -> {}
        }
    }

    /**
     * Begins or ends reckoning.
     *
     * @param now whether the sheet is looked at
     */
    public void lookAt(boolean now) {
        if (now != lookedAt) {
            lookedAt = now;
            ask();
        }
    }

    private void follow() {
        Optional<Rating> chosen = workspace.chosen();
        boolean same = reckoner.isPresent() == chosen.isPresent()
                && reckoner.map(known -> known.isOf(workspace.brief(), chosen.orElseThrow()))
                        .orElse(true);
        if (!same) {
            dials.drop();
            findingsDesk.drop();
            reckoner = chosen.map(rating -> new PowerReckoner(workspace.brief(), rating));
            moved = Optional.empty();
            asked = Optional.empty();
            findings = new PowerFindings.Unasked();
            state = reckoner.isPresent() ? new PowerState.Reckoning() : new PowerState.NoTrain();
        }
        ask();
        tell(Change.STATE);
    }

    private void ask() {
        if (lookedAt && reckoner.isPresent()) {
            askPicture(reckoner.get());
            if (findings instanceof PowerFindings.Unasked) {
                find();
            }
        }
    }

    private void askPicture(PowerReckoner of) {
        Optional<PowerSetting> next = setting();
        if (!next.equals(asked)) {
            asked = next;
            dials.ask(
                    () -> of.picture(next.orElseThrow()),
                    picture -> show(reckoned(picture)),
                    fault -> show(new PowerState.Failed()));
        }
    }

    private void show(PowerState next) {
        state = next;
        tell(Change.STATE);
    }

    private PowerState reworded(PowerState old) {
        return old.picture().map(this::reckoned).orElse(old);
    }

    private PowerState reckoned(PowerPicture picture) {
        return new PowerState.Reckoned(picture, trouble(picture));
    }

    private Optional<String> trouble(PowerPicture picture) {
        if (Double.isInfinite(picture.least())) {
            return Optional.of(Texts.of("power.noweight") + " " + Texts.of("power.noweight.next"));
        }
        return picture.books().isPresent()
                ? Optional.empty()
                : Optional.of(Texts.of(
                        "power.stops",
                        mass(picture.setting().weight(), ShownFigure.Rounding.DOWN),
                        mass(picture.least(), ShownFigure.Rounding.UP)));
    }

    private String mass(double kilograms, ShownFigure.Rounding rounding) {
        return ShownFigure.of(Dimension.MASS, kilograms, units(), rounding).text();
    }

    /** Reckons savings and chance, anew if they were stopped. */
    public void find() {
        reckoner.ifPresent(of -> {
            findings = new PowerFindings.Busy();
            findingsDesk.ask(of::findings, this::found, fault -> found(new PowerFindings.Failed()));
            tell(Change.STATE);
        });
    }

    private void found(PowerFindings next) {
        findings = next;
        tell(Change.STATE);
    }

    /** Gives up reckoning savings and chance. */
    public void stopFinding() {
        if (findings instanceof PowerFindings.Busy) {
            findingsDesk.drop();
            found(new PowerFindings.Stopped());
        }
    }

    /** What there is to see. */
    public PowerState state() {
        return state;
    }

    /** What is known of savings and chance. */
    public PowerFindings findings() {
        return findings;
    }

    /** Which units are shown. */
    public UnitSystem units() {
        return workspace.units();
    }

    /** The brief that the chosen train is rated against. */
    public Brief brief() {
        return workspace.brief();
    }

    /** The chosen train. */
    public Optional<Train> train() {
        return reckoner.map(known -> known.rating().train());
    }

    /** The cards of the figures shown. */
    public Optional<PowerCards> cards() {
        return reckoner.flatMap(
                known -> state.picture().map(picture -> new PowerCards(known, picture, workspace.units())));
    }

    /**
     * Friction at the teeth at a place in the brief's band.
     *
     * @param share from 0 to 1
     */
    public ShownFigure friction(double share) {
        return ShownFigure.of(Dimension.NUMBER, PowerSetting.atTheTeeth(brief(), share), units());
    }

    /** What the dials stand at. */
    public Optional<PowerSetting> setting() {
        return reckoner.map(known -> moved.orElseGet(() -> PowerSetting.middle(known.brief(), known.rating())));
    }

    /** How far a dial goes; empty where the brief leaves nothing to set. */
    public Optional<Travel> travel(Dial dial) {
        return reckoner.map(known -> PowerSetting.travel(dial, known.brief(), known.rating()))
                .filter(travel -> travel.most() > travel.least());
    }

    /** Whether a dial was moved. */
    public boolean isMoved() {
        return moved.isPresent();
    }

    /**
     * Moves a dial.
     *
     * @param dial which
     * @param value to where, SI; held within its travel
     */
    public void set(Dial dial, double value) {
        travel(dial).ifPresent(travel -> {
            double held = Math.max(travel.least(), Math.min(travel.most(), value));
            moved = setting().map(setting -> setting.with(dial, held));
            ask();
            tell(Change.STATE);
        });
    }

    /** Puts every dial back. */
    public void reset() {
        moved = Optional.empty();
        ask();
        tell(Change.STATE);
    }

    /**
     * Points at a place where power goes, in the strip and the drawing too.
     *
     * @param step the place, or none
     */
    public void pointAt(Optional<PowerStep> step) {
        Optional<StripFigure> wheel = step.flatMap(PowerStep::mesh).map(this::wheel);
        if (wheel.isPresent()) {
            workspace.hover(wheel);
        } else {
            workspace.pointAtArbor(step.flatMap(PowerStep::arbor));
        }
    }

    private StripFigure wheel(int mesh) {
        return StripFigure.of(
                Kind.WHEEL, Attention.places(train().orElseThrow()).get(mesh));
    }

    /**
     * Picks a place: a mesh is the one looked into from then on.
     *
     * @param step the place
     */
    public void pick(PowerStep step) {
        step.mesh()
                .ifPresent(mesh -> workspace.lookInto(
                        Attention.places(train().orElseThrow()).get(mesh)));
    }

    /** Whether a place is pointed at, here or elsewhere in the window. */
    public boolean isPointedAt(PowerStep step) {
        Highlight highlight = workspace.highlight();
        Optional<StripFigure> wheel = step.mesh().map(this::wheel);
        return wheel.isPresent()
                ? highlight.hovered().equals(wheel)
                : step.arbor().isPresent()
                        && highlight.arbor().equals(step.arbor())
                        && highlight.hovered().isEmpty();
    }
}
