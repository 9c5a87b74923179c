// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.power.escape.Deadbeat;
import drumfall.solver.power.escape.DeadbeatForm;
import drumfall.solver.sheet.SheetProblem;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** At least one of the escape wheels allowed makes an escapement with the angles asked for. */
final class EscapementRules {
    private EscapementRules() {}

    /** The escapement with the least friction to expect at its pallets. */
    static DeadbeatForm form(Brief brief) {
        Brief.Escapement escapement = brief.escapement();
        return new DeadbeatForm(
                escapement.wheelRadius().si(),
                escapement.palletSpan().si(),
                escapement.lift().si(),
                escapement.lock().si(),
                escapement.drop().si(),
                brief.friction().pallets().low().si(),
                escapement.palletArborTorque().si(),
                escapement.inertiaShare().si());
    }

    /** The tooth counts allowed. */
    static IntStream counts(Brief brief) {
        Brief.CountSteps teeth = brief.escapement().teeth();
        return IntStream.iterate(teeth.from(), count -> count <= teeth.to(), count -> count + teeth.step());
    }

    private static boolean someWheel(Brief brief, Predicate<Deadbeat> rule) {
        DeadbeatForm form = form(brief);
        return counts(brief).count() == 0 || counts(brief).mapToObj(form::with).anyMatch(rule);
    }

    private static boolean embraces(Deadbeat escapement) {
        return escapement.wholeSpaces() >= 1 && escapement.halfSpan() < Math.PI / 2;
    }

    static Stream<SheetProblem> palletsEmbraceATooth(Brief brief) {
        return Clash.unless(
                someWheel(brief, EscapementRules::embraces),
                "/escapement/palletSpan",
                brief.escapement().palletSpan(),
                "the pallets must embrace at least one and a half tooth spaces of some wheel allowed",
                "widen the span or allow more escape teeth");
    }

    static Stream<SheetProblem> dropLeavesTurn(Brief brief) {
        return Clash.unless(
                someWheel(brief, escapement -> escapement.workingTurn() > 0),
                "/escapement/drop",
                brief.escapement().drop(),
                "the drop must be less than half the tooth space of some wheel allowed",
                "make the drop smaller or allow fewer escape teeth");
    }

    static Stream<SheetProblem> oneWheelMeetsBoth(Brief brief) {
        boolean eachAlone = someWheel(brief, EscapementRules::embraces)
                && someWheel(brief, escapement -> escapement.workingTurn() > 0);
        return Clash.unless(
                !eachAlone || someWheel(brief, Deadbeat::exists),
                "/escapement/palletSpan",
                brief.escapement().palletSpan(),
                "no wheel allowed both lies within the span and has more than the drop to turn",
                "widen the span or make the drop smaller");
    }

    /** Above the saturation arc the locking faces take all that the impulse brings, even at the least friction. */
    static Stream<SheetProblem> arcIsWithinReach(Brief brief) {
        double asked =
                form(brief).escapeAngle() + brief.escapement().reserveArc().si();
        return Clash.unless(
                !someWheel(brief, Deadbeat::exists)
                        || someWheel(brief, escapement -> escapement.exists() && asked < escapement.saturationArc()),
                "/escapement/reserveArc",
                brief.escapement().reserveArc(),
                "no weight swings the pendulum %.1f° from rest with these pallets".formatted(Math.toDegrees(asked)),
                "ask for less reserve, or for less lock");
    }
}
