// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.sheet.SheetProblem;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The beat is asked for, can be had, and suits a seconds hand where there is one. */
final class BeatRules {
    /** Beats an hour for each tooth of an escape wheel that turns once a minute: two a tooth, sixty turns. */
    private static final int BEATS_PER_TOOTH = 120;

    /** Meshes from the centre to the seconds arbor, at the least: it turns the same way as the centre. */
    private static final int MESHES_TO_SECONDS = 2;

    private BeatRules() {}

    static Stream<SheetProblem> someBeatIsAsked(Brief brief) {
        Brief.Beat beat = brief.beat();
        return Clash.unless(
                beat.pendulumLength().isPresent() || beat.beatsPerHour().isPresent() || beat.secondsHand(),
                "/beat",
                "no demand",
                "the beat must be asked for by length, by beats an hour or by a seconds hand",
                "add \"pendulumLength\" or \"beatsPerHour\", or set \"secondsHand\" to true");
    }

    static Stream<SheetProblem> lengthAndBeatsAgree(Brief brief) {
        Brief.Beat beat = brief.beat();
        return beat.beatsPerHour().stream()
                .flatMap(beats -> beat.pendulumLength().stream()
                        .map(lengths -> BeatSpan.of(lengths, askedArc(brief)))
                        .flatMap(span -> Clash.unless(
                                span.overlaps(BeatSpan.of(beats)),
                                "/beat/beatsPerHour",
                                "\"%s\" to \"%s\"".formatted(beats.from(), beats.to()),
                                "pendulums of the lengths asked for beat %s times an hour".formatted(span),
                                "leave one of the two demands out or bring them together")));
    }

    /** The arc the pendulum is to keep: the escape angle and the reserve; rad. */
    private static double askedArc(Brief brief) {
        return EscapementRules.form(brief).escapeAngle()
                + brief.escapement().reserveArc().si();
    }

    static Stream<SheetProblem> secondsArborHasItsMeshes(Brief brief) {
        return Clash.unless(
                !brief.beat().secondsHand() || mostBelow(brief) >= MESHES_TO_SECONDS,
                "/beat/secondsHand",
                "true",
                "a seconds hand needs an even number of meshes from the centre, and at most %d is allowed below it"
                        .formatted(mostBelow(brief)),
                "allow at least 2 meshes below the centre or give the seconds hand up");
    }

    private static int mostBelow(Brief brief) {
        return brief.locks().meshesBelow().orElse(brief.train().below().to());
    }

    private static int fewestBelow(Brief brief) {
        return brief.locks().meshesBelow().orElse(brief.train().below().from());
    }

    static Stream<SheetProblem> secondsArborGivesTheBeat(Brief brief) {
        List<BeatSpan> given = spansWithSecondsHand(brief);
        boolean bound = brief.beat().secondsHand() && !given.isEmpty();
        return Clash.unless(
                !bound || given.stream().anyMatch(span -> asked(brief).allMatch(span::overlaps)),
                "/beat/secondsHand",
                "true",
                "an escape wheel on or behind an arbor that turns once a minute gives none of the beats asked for",
                "aim at 120 beats an hour for each escape tooth, allow other escape teeth, or give the seconds hand up");
    }

    private static Stream<BeatSpan> asked(Brief brief) {
        return Stream.concat(
                brief.beat().beatsPerHour().stream().map(BeatSpan::of),
                brief.beat().pendulumLength().stream().map(range -> BeatSpan.of(range, askedArc(brief))));
    }

    /** The beats that each escape wheel can give behind a seconds arbor, for every allowed number of meshes. */
    private static List<BeatSpan> spansWithSecondsHand(Brief brief) {
        return IntStream.rangeClosed(Math.max(MESHES_TO_SECONDS, fewestBelow(brief)), mostBelow(brief))
                .boxed()
                .flatMap(meshes -> EscapementRules.counts(brief).boxed().flatMap(teeth -> spans(brief, teeth, meshes)))
                .toList();
    }

    /** From an even number of meshes on the escape arbor may itself be the seconds arbor. */
    private static Stream<BeatSpan> spans(Brief brief, int teeth, int meshes) {
        return IntStream.iterate(meshes - MESHES_TO_SECONDS, behind -> behind >= 0, behind -> behind - 2)
                .mapToObj(behind -> span(brief, teeth, behind));
    }

    private static BeatSpan span(Brief brief, int teeth, int meshesBehind) {
        Brief.WheelRange wheels = brief.teeth().wheelTeeth();
        Brief.LeafRange leaves = brief.teeth().leaves();
        double beats = (double) BEATS_PER_TOOTH * teeth;
        return new BeatSpan(
                beats * Math.pow((double) wheels.from() / leaves.to(), meshesBehind),
                beats * Math.pow((double) wheels.to() / leaves.from(), meshesBehind));
    }
}
