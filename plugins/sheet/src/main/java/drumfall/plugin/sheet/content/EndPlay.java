// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Fit;
import drumfall.solver.fit.layer.LayerGrid;
import drumfall.solver.fit.layer.LayerRounding;
import drumfall.solver.fit.shake.ArborStack;
import drumfall.solver.fit.shake.Contribution;
import drumfall.solver.fit.shake.Direction;
import drumfall.solver.fit.shake.EndShake;
import drumfall.solver.fit.shake.ErrorShape;
import drumfall.solver.fit.shake.Sampling;
import drumfall.solver.fit.shake.ShakeBand;
import drumfall.solver.fit.shake.Temperatures;
import drumfall.solver.fitting.FittedArbor;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The end shake of each arbor as the kit has it; where no layout is known, with two spacers, one before and one behind its parts, that bring it to the middle of the
 * wanted band as near as whole layers allow.
 */
final class EndPlay {
    private static final int SPACERS = 2;

    /** Where chances are exact the sample only stands by. */
    private static final Sampling SAMPLE = new Sampling(1656, 100, true);

    private static final double ROOM = 20;

    private final Brief brief;
    private final Clock clock;

    EndPlay(Clock clock) {
        this.clock = clock;
        this.brief = clock.brief();
    }

    /** Height of both spacers together, nm; 0 if the parts leave no room for two. */
    long spacers(int arbor) {
        return clock.standing(arbor)
                .map(standing -> standing.backSpacer() + standing.frontSpacer())
                .orElseGet(() -> reckoned(arbor));
    }

    private long reckoned(int arbor) {
        return heights(arbor).stream().mapToLong(Long::longValue).sum();
    }

    /** The front one half of the room, the back one what is left of it, each in whole layers. */
    private List<Long> heights(int arbor) {
        Fit fit = brief.fit();
        long filled = parts(arbor).stream().mapToLong(Contribution::nominal).sum();
        long middle = (Words.nanometres(fit.endShake().low())
                        + Words.nanometres(fit.endShake().high()))
                / 2;
        long room = Words.nanometres(brief.frame().depth()) - filled - middle;
        LayerGrid grid = new LayerGrid(
                Words.nanometres(fit.firstLayer()),
                Words.nanometres(brief.printer().layer()));
        if (room < SPACERS * grid.first()) {
            return List.of();
        }
        long front = grid.snap(room / SPACERS, LayerRounding.DOWN, "spacer").height();
        // A nanometre less, so that of two equally near heights the one that leaves more shake is taken.
        long back = grid.snap(room - front - 1, LayerRounding.NEAREST, "spacer").height();
        return List.of(front, back);
    }

    /** What that gives. */
    EndShake shake(int arbor) {
        return clock.standing(arbor).map(FittedArbor.Standing::shake).orElseGet(() -> reckonedShake(arbor));
    }

    private EndShake reckonedShake(int arbor) {
        List<Contribution> stack = new ArrayList<>();
        stack.add(part("frame", Direction.OPENS, Words.nanometres(brief.frame().depth()), 1));
        stack.addAll(parts(arbor));
        heights(arbor).forEach(height -> stack.add(part("spacer", Direction.FILLS, height, 1)));
        ShakeBand band = new ShakeBand(
                Words.nanometres(brief.fit().endShake().low()),
                Words.nanometres(brief.fit().endShake().high()));
        return EndShake.of(new ArborStack(clock.name(arbor), stack), band, Temperatures.steady(ROOM), SAMPLE);
    }

    /** What stands on the arbor between the plates: wheel and pinion are one print, the drum and the great wheel two. */
    private List<Contribution> parts(int arbor) {
        long wheel = Words.nanometres(brief.parts().wheelThickness());
        if (arbor > 0) {
            long both = wheel + Words.nanometres(brief.parts().pinionLength());
            return List.of(part("wheel and pinion", Direction.FILLS, both, 1));
        }
        long drum = Words.nanometres(brief.drum().length())
                + 2 * Words.nanometres(brief.drum().wall())
                + Words.nanometres(brief.drum().clickSpace());
        return List.of(
                part("great wheel", Direction.FILLS, wheel, 1), part("drum and click", Direction.FILLS, drum, 1));
    }

    private Contribution part(String name, Direction direction, long length, int count) {
        long error = Math.min(length, Words.nanometres(brief.fit().heightError()));
        return new Contribution(name, direction, length, error, error, count, 0, ErrorShape.UNIFORM, Optional.empty());
    }
}
