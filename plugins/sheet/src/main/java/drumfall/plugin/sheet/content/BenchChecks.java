// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

import drumfall.solver.fit.bore.FinishedHole;
import drumfall.solver.fit.shake.EndShake;
import drumfall.solver.power.answers.FreeSpin;
import java.util.ArrayList;
import java.util.List;

/** What to try on each arbor before the next one goes in. */
final class BenchChecks {
    private final Clock clock;
    private final EndPlay ends;
    private final Bores bores;

    private BenchChecks(Clock clock) {
        this.clock = clock;
        this.ends = new EndPlay(clock);
        this.bores = new Bores(clock);
    }

    static Section section(Clock clock) {
        BenchChecks checks = new BenchChecks(clock);
        List<List<String>> rows = new ArrayList<>();
        for (int arbor = 0; arbor < clock.arbors(); arbor++) {
            rows.add(checks.row(arbor));
        }
        Block.Table table = new Block.Table(
                "Checks of each arbor by itself, nothing in mesh",
                List.of(
                        new Block.Column("Arbor", 3, false),
                        new Block.Column("Free spin", 2, true),
                        new Block.Column("Spacers, together", 2.4, true),
                        new Block.Column("End shake", 3.4, true),
                        new Block.Column("Misses the band", 2.2, true),
                        new Block.Column("Play in the bore", 2.2, true)),
                rows);
        return new Section("Checks at the bench", List.of(table, checks.spin(), checks.shake()));
    }

    private List<String> row(int arbor) {
        return List.of(clock.name(arbor), freeSpin(arbor), spacers(arbor), reach(arbor), chance(arbor), play(arbor));
    }

    private String freeSpin(int arbor) {
        return clock.answers()
                .map(answers -> Words.seconds(answers.freeSpins().get(arbor).seconds()))
                .orElse("not known");
    }

    private String spacers(int arbor) {
        return clock.lengths().ofNanometres(ends.spacers(arbor));
    }

    private String reach(int arbor) {
        EndShake shake = ends.shake(arbor);
        return clock.lengths().ofNanometres(shake.least()) + " to "
                + clock.lengths().ofNanometres(shake.most());
    }

    private String chance(int arbor) {
        return Words.percent(ends.shake(arbor).chance().outside());
    }

    private String play(int arbor) {
        if (!Bores.plain(clock.build(arbor))) {
            return "bearing";
        }
        FinishedHole hole = bores.hole(arbor);
        return clock.lengths().ofNanometres(hole.play());
    }

    private Block spin() {
        return new Block.Paragraph("Free spin: flick the rim to about " + Words.number(FreeSpin.USUAL_RIM_SPEED, 0)
                + " m/s, the hands off, and time it until it stands. Much less than the table says means a tight bore or"
                + " a bent rod.");
    }

    private Block shake() {
        return new Block.Paragraph("End shake: push the arbor to and fro between the plates, "
                + clock.lengths().ofNanometres(clock.depth()) + " apart. Wanted are "
                + clock.lengths().of(clock.brief().fit().endShake().low().si(), 2) + " to "
                + clock.lengths().of(clock.brief().fit().endShake().high().si(), 2)
                + "; the table shows the least and the most that parts off by "
                + clock.lengths().of(clock.brief().fit().heightError().si(), 2)
                + " give, and how often that misses. Under 0 the arbor would bind. Side shake: at any wheel between the plates the arbor strays from"
                + " its place by at most half the play in its bore.");
    }
}
