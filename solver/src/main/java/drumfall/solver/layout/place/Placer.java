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
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Rule;
import drumfall.solver.layout.Shortfall;
import drumfall.solver.layout.size.MeshSpacing;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** Finds a layout on the grid, the preferred one if something is wished, or proves that there is none. */
public final class Placer {
    private static final int COARSE_STEPS = 8;

    private final LayoutNeed need;
    private final PlaneBook book;
    private final Contacts contacts;
    private final Search.Progress progress;
    private Layout best;

    private Placer(LayoutNeed need, PlaneBook book, BooleanSupplier cancelled) {
        this.need = need;
        this.book = book;
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
        return place(need, new PlaneBook(), cancelled);
    }

    /**
     * Places a movement, one of several.
     *
     * @param need what is asked
     * @param book keeps the orders of the planes for the others
     * @param cancelled asked now and then; true ends the work
     */
    public static LayoutOutcome place(LayoutNeed need, PlaneBook book, BooleanSupplier cancelled) {
        return new Placer(need, book, cancelled).place();
    }

    private LayoutOutcome place() {
        Optional<Shortfall> refusal = new Refusals(need, contacts).first();
        if (refusal.isPresent()) {
            return new NoLayout(refusal.get(), Scope.ANYWHERE);
        }
        PairClaims claims = new PairClaims(need, contacts);
        boolean[] stopped = new boolean[1];
        Orders orders = book.orders(
                need, claims, () -> stopped[0] |= progress.cancelled().getAsBoolean());
        if (stopped[0]) {
            return new Stopped();
        }
        return orders.isEmpty() ? new NoLayout(noOrder(orders, claims), Scope.ANYWHERE) : search(orders);
    }

    /** Why no order of the planes will do: the depth, which the thickest part needs most of, or neighbours that cannot be clear. */
    private Shortfall noOrder(Orders orders, PairClaims claims) {
        long depth = need.envelope().depth();
        long needed = orders.leastSoundDepth() < Long.MAX_VALUE ? orders.leastSoundDepth() : orders.leastDepth();
        return needed > depth ? Shortfall.of(Rule.DEPTH, thickest(), depth, needed) : claims.forbiddenShortfall();
    }

    private Part thickest() {
        Part part = new Part(PartKind.DRUM, 0);
        long most = need.parts().drum().length();
        for (int mesh = 0; mesh < need.parts().meshes().size(); mesh++) {
            MeshSpacing spacing = need.parts().meshes().get(mesh);
            if (spacing.planeThickness() > most) {
                most = spacing.planeThickness();
                part = spacing.pinionLength() == most
                        ? new Part(PartKind.PINION, mesh + 1)
                        : new Part(PartKind.WHEEL, mesh);
            }
        }
        return need.parts().escape().thickness() > most
                ? new Part(PartKind.ESCAPE_WHEEL, need.parts().escapeArbor())
                : part;
    }

    /** A few directions first, which settles most; the whole grid then proves or improves. */
    private LayoutOutcome search(Orders orders) {
        int steps = need.grid().steps();
        if (steps > COARSE_STEPS && steps % COARSE_STEPS == 0) {
            boolean stopped = round(orders, steps / COARSE_STEPS);
            if (stopped || (best != null && need.preference().wishes().isEmpty())) {
                return outcome(stopped);
            }
        }
        return outcome(round(orders, 1));
    }

    private boolean round(Orders orders, int stride) {
        Search search = new Search(need, contacts, orders, stride, progress);
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
