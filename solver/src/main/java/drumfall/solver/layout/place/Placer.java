// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.Half;
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
import drumfall.solver.layout.Preference;
import drumfall.solver.layout.Rule;
import drumfall.solver.layout.Shortfall;
import drumfall.solver.layout.SizeLimit;
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
    private boolean stopped;
    private boolean found;
    private Layout best;
    private Shortfall closest;
    private Scope scope;

    private Placer(
            LayoutNeed need, Contacts contacts, Optional<SizeLimit> limit, PlaneBook book, BooleanSupplier cancelled) {
        this.need = need;
        this.book = book;
        this.contacts = contacts;
        this.progress = new Search.Progress(new NearMiss(), new Ranking(need.preference(), limit), cancelled);
    }

    /** What is known of places. */
    private enum Verdict {
        FOUND,
        NONE,
        UNKNOWN
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
        return new Placer(need, new Contacts(need), Optional.empty(), book, cancelled).place();
    }

    /**
     * Whether a movement has places on the grid.
     *
     * @param need what is asked; its preference plays no part
     * @param limit what the layout may measure at most, beside what the need asks
     * @param book keeps the orders of the planes for other movements
     * @param cancelled asked now and then; once true the answer is no
     */
    public static boolean fits(LayoutNeed need, Optional<SizeLimit> limit, PlaneBook book, BooleanSupplier cancelled) {
        LayoutNeed any = need.with(Preference.ANY);
        return new Placer(any, new Contacts(any), limit, book, cancelled).look() == Verdict.FOUND;
    }

    /**
     * Whether the arbors of half a movement have places on the grid if the other half took no room; a layout of the whole is
     * one of its halves, and no larger, so what is refused here has none, whatever its other half. What that half needs along
     * the arbors counts as much as in the movement given.
     *
     * @param need what is asked of a movement with that half; its preference plays no part
     * @param half which
     * @param limit what the layout may measure at most, beside what the need asks
     * @param book keeps the orders of the planes for others
     * @param cancelled asked now and then; once true the answer is yes, as nothing is refused
     */
    public static boolean mayStand(
            LayoutNeed need, Half half, Optional<SizeLimit> limit, PlaneBook book, BooleanSupplier cancelled) {
        LayoutNeed any = need.with(Preference.ANY);
        return new Placer(any, new Contacts(any, half), limit, book, cancelled).look() != Verdict.NONE;
    }

    private LayoutOutcome place() {
        return switch (look()) {
            case FOUND -> placed();
            case NONE -> new NoLayout(closest, scope);
            case UNKNOWN -> new Stopped();
        };
    }

    private Verdict look() {
        Optional<Shortfall> refusal = new Refusals(need, contacts).first();
        if (refusal.isPresent()) {
            return none(refusal.get(), Scope.ANYWHERE);
        }
        PairClaims claims = new PairClaims(need, contacts);
        Orders orders = book.orders(need, claims, this::isStopped);
        if (stopped) {
            return Verdict.UNKNOWN;
        }
        if (orders.isEmpty()) {
            return none(noOrder(orders, claims), Scope.ANYWHERE);
        }
        search(orders);
        if (found) {
            return Verdict.FOUND;
        }
        return stopped ? Verdict.UNKNOWN : none(progress.nearMiss().closest(), Scope.ON_GRID);
    }

    private Verdict none(Shortfall nearest, Scope where) {
        this.closest = nearest;
        this.scope = where;
        return Verdict.NONE;
    }

    private boolean isStopped() {
        stopped = stopped || progress.cancelled().getAsBoolean();
        return stopped;
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
    private void search(Orders orders) {
        int steps = need.grid().steps();
        if (steps > COARSE_STEPS && steps % COARSE_STEPS == 0) {
            round(orders, steps / COARSE_STEPS);
            if (stopped || (found && isIndifferent())) {
                return;
            }
        }
        round(orders, 1);
    }

    private void round(Orders orders, int stride) {
        Search search = new Search(need, contacts, orders, stride, progress);
        if (search.run()) {
            found = true;
            best = search.best();
        }
        stopped = search.wasStopped();
    }

    private boolean isIndifferent() {
        return need.preference().wishes().isEmpty();
    }

    private LayoutOutcome placed() {
        if (isIndifferent()) {
            return new Placed(best, Merit.ANY);
        }
        return new Placed(best, stopped ? Merit.BEST_FOUND : Merit.BEST_ON_GRID);
    }
}
