// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.LayoutOutcome;
import drumfall.solver.layout.LayoutOutcome.Merit;
import drumfall.solver.layout.LayoutOutcome.NoLayout;
import drumfall.solver.layout.LayoutOutcome.Placed;
import drumfall.solver.layout.LayoutOutcome.Scope;
import drumfall.solver.layout.LayoutOutcome.Stopped;
import drumfall.solver.layout.Shortfall;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** Finds a layout on the grid, the preferred one if something is wished, or proves that there is none. */
public final class Placer {
    private static final int COARSE_STEPS = 8;

    private final LayoutNeed need;
    private final Contacts contacts;
    private final Search.Progress progress;
    private Layout best;

    private Placer(LayoutNeed need, BooleanSupplier cancelled) {
        this.need = need;
        this.contacts = new Contacts(need);
        this.progress = new Search.Progress(new NearMiss(), new Ranking(need.preference()), cancelled);
    }

    /**
     * Places a movement.
     *
     * @param need what is asked
     * @param cancelled asked now and then; true ends the work
     */
    public static LayoutOutcome place(LayoutNeed need, BooleanSupplier cancelled) {
        return new Placer(need, cancelled).place();
    }

    private LayoutOutcome place() {
        Optional<Shortfall> refusal = new Refusals(need, contacts).first();
        if (refusal.isPresent()) {
            return new NoLayout(refusal.get(), Scope.ANYWHERE);
        }
        StackingList list =
                new StackingList(need, contacts.slots(), new PairClaims(need, contacts), progress.cancelled());
        List<Stacking> stackings = list.build();
        if (list.isStopped()) {
            return new Stopped();
        }
        return stackings.isEmpty() ? new NoLayout(list.reason(), Scope.ANYWHERE) : search(stackings);
    }

    /** A few directions first, which settles most; the whole grid then proves or improves. */
    private LayoutOutcome search(List<Stacking> stackings) {
        int steps = need.grid().steps();
        if (steps > COARSE_STEPS && steps % COARSE_STEPS == 0) {
            boolean stopped = round(stackings, steps / COARSE_STEPS);
            if (stopped || (best != null && need.preference().wishes().isEmpty())) {
                return outcome(stopped);
            }
        }
        return outcome(round(stackings, 1));
    }

    private boolean round(List<Stacking> stackings, int stride) {
        Search search = new Search(need, contacts, stackings, stride, progress);
        search.run().ifPresent(layout -> best = layout);
        return search.wasStopped();
    }

    private LayoutOutcome outcome(boolean stopped) {
        if (best == null) {
            return stopped ? new Stopped() : new NoLayout(progress.nearMiss().closest(), Scope.ON_GRID);
        }
        if (need.preference().wishes().isEmpty()) {
            return new Placed(best, Merit.ANY);
        }
        return new Placed(best, stopped ? Merit.BEST_FOUND : Merit.BEST_ON_GRID);
    }
}
