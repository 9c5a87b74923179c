// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

import drumfall.plugin.api.Handover;
import drumfall.solver.brief.Brief;
import drumfall.solver.fitting.FittedArbor;
import drumfall.solver.fitting.FittedMovement;
import drumfall.solver.kit.Builds;
import drumfall.solver.kit.Kit;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.answers.PowerAnswers;
import drumfall.solver.train.DrumRun;
import drumfall.solver.train.Train;
import java.util.Optional;

/**
 * A train with all that is asked about it.
 *
 * @param handover the train and its brief
 * @param rater rates against the brief
 * @param loaded the train under its friction
 * @param answers about the clock on its recommended weight; empty if no weight drives it
 * @param kit what it is built from; empty if its arbors have no places, or a part or a hole cannot be made
 * @param lengths what lengths are shown in
 */
record Clock(
        Handover handover,
        TrainRater rater,
        LoadedClock loaded,
        Optional<PowerAnswers> answers,
        Optional<Kit> kit,
        Lengths lengths) {
    static Clock of(Handover handover, Lengths lengths) {
        TrainRater rater = new TrainRater(handover.brief());
        Rating rating = handover.rating();
        Optional<PowerAnswers> answers = Double.isFinite(rating.recommendedWeight())
                ? Optional.of(new PowerAnswers(rater, rating.train(), rating.recommendedWeight()))
                : Optional.empty();
        return new Clock(handover, rater, rater.loaded(rating.train()), answers, kit(handover, rater), lengths);
    }

    /** What cannot be made is told where the parts are drawn. */
    private static Optional<Kit> kit(Handover handover, TrainRater rater) {
        if (handover.layout().isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Kit.of(rater, handover.rating(), handover.layout()));
        } catch (IllegalArgumentException refused) {
            return Optional.empty();
        }
    }

    /** What stands on an arbor between the plates, in whole layers, if that is known. */
    Optional<FittedArbor.Standing> standing(int arbor) {
        return kit.flatMap(Kit::fitted)
                .flatMap(movement -> movement.arbors().get(arbor).standing());
    }

    /** The same train with fewer or more rolling bearings. */
    Builds builds() {
        return Builds.of(rater, train(), handover.layout());
    }

    /** Distance of the plates, nm. */
    long depth() {
        return kit.flatMap(Kit::fitted)
                .map(FittedMovement::depth)
                .orElseGet(() -> Words.nanometres(brief().frame().depth()));
    }

    Brief brief() {
        return handover.brief();
    }

    Rating rating() {
        return handover.rating();
    }

    Train train() {
        return handover.rating().train();
    }

    /** Arbors from the drum to the escape wheel. */
    int arbors() {
        return train().meshes().size() + 1;
    }

    ArborRole role(int arbor) {
        return WeightWalk.role(train(), arbor);
    }

    Brief.ArborBuild build(int arbor) {
        return rater.build(role(arbor));
    }

    /** Such as {@code Arbor 2, centre}. */
    String name(int arbor) {
        String role = switch (role(arbor)) {
            case DRUM -> ", drum";
            case CENTRE -> ", centre";
            case INTERMEDIATE -> "";
            case ESCAPE -> ", escape";
        };
        return "Arbor " + (arbor + 1) + role;
    }

    DrumRun drumRun() {
        return rater.limits().drumRun(train().drumDiameter(), train().reeving());
    }
}
