// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet;

import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Handover;
import drumfall.plugin.api.trial.TrialFolder;
import drumfall.plugin.api.trial.TrialHandover;
import drumfall.solver.brief.Brief;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.answers.PowerAnswers;
import java.io.IOException;
import java.io.UncheckedIOException;

/** Handovers and what becomes of them, worked out once for all tests. */
final class Trials {
    private Trials() {}

    private static final class EightDays {
        static final Handover HANDOVER = TrialHandover.eightDays();
        static final TrainRater RATER = new TrainRater(HANDOVER.brief());
        static final PowerAnswers ANSWERS = new PowerAnswers(
                RATER, HANDOVER.rating().train(), HANDOVER.rating().recommendedWeight());
        static final TrialFolder FILES = files(HANDOVER);
    }

    /** The trial clock in plain bores. */
    private static final class Plain {
        static final Handover HANDOVER = plain();
        static final TrialFolder FILES = files(HANDOVER);
    }

    static Handover eightDays() {
        return EightDays.HANDOVER;
    }

    static TrainRater rater() {
        return EightDays.RATER;
    }

    static PowerAnswers answers() {
        return EightDays.ANSWERS;
    }

    static TrialFolder files() {
        return EightDays.FILES;
    }

    static Handover plainBores() {
        return Plain.HANDOVER;
    }

    static TrialFolder plainFiles() {
        return Plain.FILES;
    }

    static TrialFolder files(Handover handover) {
        try {
            TrialFolder folder = new TrialFolder();
            new SheetExporter().export(handover, folder, ExportProgress.unwatched());
            new TemplatesExporter().export(handover, folder, ExportProgress.unwatched());
            return folder;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static Handover plain() {
        Brief b = eightDays().brief();
        Brief.Arbors arbors = b.arbors();
        Brief brief = named(
                b,
                b.name(),
                new Brief.Arbors(
                        plain(arbors.drum()),
                        plain(arbors.centre()),
                        plain(arbors.intermediate()),
                        plain(arbors.escape()),
                        arbors.bearing()));
        return Handover.unplaced(
                brief,
                new TrainRater(brief).rate(eightDays().rating().train()),
                eightDays().programVersion());
    }

    /** The trial brief with bearings that rub and drag twice as hard, static friction included. */
    static Brief draggingBearings() {
        Brief brief = eightDays().brief();
        Brief.Arbors arbors = brief.arbors();
        return named(
                brief,
                brief.name(),
                new Brief.Arbors(
                        arbors.drum(),
                        arbors.centre(),
                        arbors.intermediate(),
                        arbors.escape(),
                        new Brief.Bearing(
                                twice(arbors.bearing().friction()),
                                twice(arbors.bearing().drag()))));
    }

    private static Quantity twice(Quantity quantity) {
        return Quantity.of(quantity.dimension(), quantity.exact().multiply(2));
    }

    private static Brief.ArborBuild plain(Brief.ArborBuild build) {
        return new Brief.ArborBuild(build.kind(), build.diameter(), Brief.BearingPlaces.NONE, build.bearing());
    }

    /** The trial clock under another name. */
    static Handover named(String name) {
        Brief brief = eightDays().brief();
        return Handover.unplaced(
                named(brief, name, brief.arbors()),
                eightDays().rating(),
                eightDays().programVersion());
    }

    private static Brief named(Brief b, String name, Brief.Arbors arbors) {
        return new Brief(
                name,
                b.run(),
                b.fall(),
                b.weight(),
                b.line(),
                b.drum(),
                b.beat(),
                b.pendulum(),
                b.escapement(),
                b.teeth(),
                b.train(),
                arbors,
                b.parts(),
                b.frame(),
                b.fit(),
                b.printer(),
                b.material(),
                b.friction(),
                b.hands(),
                b.objectives(),
                b.locks());
    }
}
