// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Fit;
import drumfall.solver.fit.bore.DrillRack;
import drumfall.solver.fit.bore.DrillSeries;
import drumfall.solver.fit.bore.Finish;
import drumfall.solver.fit.bore.FinishedHole;

/** The plain bores of a clock, finished as its brief asks. */
final class Bores {
    private final Clock clock;
    private final Finish finish;

    Bores(Clock clock) {
        this.clock = clock;
        Fit fit = clock.brief().fit();
        this.finish = new Finish(rack(fit), Words.nanometres(fit.skim()), Words.nanometres(fit.shrinkage()));
    }

    private static DrillRack rack(Fit fit) {
        return switch (fit.drills()) {
            case METRIC -> DrillRack.of(DrillSeries.METRIC);
            case INCH -> DrillRack.of(DrillSeries.FRACTIONAL_INCH);
            case METRIC_AND_INCH -> DrillRack.of(DrillSeries.METRIC, DrillSeries.FRACTIONAL_INCH);
        };
    }

    /** Whether an arbor runs in at least one plain bore. */
    static boolean plain(Brief.ArborBuild build) {
        return build.bearings() != Brief.BearingPlaces.BOTH;
    }

    /** The bore of an arbor that runs in a plain one. */
    FinishedHole hole(int arbor) {
        return FinishedHole.bore(
                clock.name(arbor),
                Words.nanometres(clock.build(arbor).diameter()),
                Words.nanometres(clock.brief().fit().clearance()),
                finish);
    }
}
