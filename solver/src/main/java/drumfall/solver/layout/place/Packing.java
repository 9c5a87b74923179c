// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.Planes;
import drumfall.solver.layout.Span;
import drumfall.solver.layout.size.Face;
import drumfall.solver.layout.size.Gaps;
import drumfall.solver.layout.size.MotionSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Packs one order of the planes between the plates, the drum before the great wheel or, seen from behind, after it. */
final class Packing {
    private final Gaps gaps;
    private final PlaneSizes sizes;
    private final Face face;
    private final long[] thickness;
    private final long plate;
    private final Optional<MotionSize> motion;

    /**
     * Packs planes of some thickness.
     *
     * @param sizes what stands between the plates
     * @param face on which side of the great wheel the drum stands
     * @param plate thickness of a plate, nm
     * @param motion the motion work, if there is one
     */
    Packing(PlaneSizes sizes, Face face, long plate, Optional<MotionSize> motion) {
        this.sizes = sizes;
        this.gaps = sizes.gaps();
        this.face = face;
        this.plate = plate;
        this.motion = motion;
        this.thickness = sizes.gears().stream().mapToLong(one -> one).toArray();
    }

    Packing(LayoutNeed need) {
        this(
                PlaneSizes.of(need),
                need.parts().drum().face(),
                need.envelope().plateThickness(),
                need.parts().motion());
    }

    /**
     * Packs every order in every way.
     *
     * @param receiver told of the planes; some may come twice
     * @param cancelled asked often; once true the rest is left out
     */
    void each(Consumer<Planes> receiver, BooleanSupplier cancelled) {
        PlaneOrders.each(thickness.length, levels -> {
            if (!cancelled.getAsBoolean()) {
                packAll(levels, receiver);
            }
        });
    }

    private void packAll(List<Integer> levels, Consumer<Planes> receiver) {
        int great = 0;
        while ((levels.get(great) & 1) == 0) {
            great++;
        }
        int before = levels.size() - great - 1;
        Planes allBeside = pack(levels, before);
        receiver.accept(allBeside);
        for (int beside = 0; beside < before; beside++) {
            Planes planes = pack(levels, beside);
            if (!planes.equals(allBeside)) {
                receiver.accept(planes);
            }
        }
    }

    /**
     * The planes of an order.
     *
     * @param levels from rear to front, each a set of bits
     * @param beside how many levels before the great wheel's stand beside the drum; the next stands before it
     */
    private Planes pack(List<Integer> levels, int beside) {
        Span[] gears = new Span[thickness.length];
        long next = gaps.axial();
        Span drumSpan = null;
        int afterGreat = -1;
        for (int level : levels) {
            if (drumSpan != null && ++afterGreat == beside) {
                next = Math.max(next, drumSpan.to() + gaps.spacing());
            }
            long end = next + layLevel(level, next, gears);
            if ((level & 1) != 0) {
                long start = gears[0].to() + sizes.clickSpace();
                drumSpan = new Span(start, start + sizes.drum());
            }
            next = end + gaps.spacing();
        }
        long inner = Math.max(next, drumSpan.to() + gaps.spacing());
        return finish(gears, drumSpan, inner);
    }

    /** Lays the planes of a level about its middle and gives its thickness. */
    private long layLevel(int level, long start, Span[] gears) {
        long thickest = 0;
        for (int plane = 0; plane < thickness.length; plane++) {
            if ((level & (1 << plane)) != 0) {
                thickest = Math.max(thickest, thickness[plane]);
            }
        }
        for (int plane = 0; plane < thickness.length; plane++) {
            if ((level & (1 << plane)) != 0) {
                long from = start + (thickest - thickness[plane]) / 2;
                gears[plane] = new Span(from, from + thickness[plane]);
            }
        }
        return thickest;
    }

    private Planes finish(Span[] gears, Span drumSpan, long inner) {
        List<Span> planes = new ArrayList<>();
        for (Span span : gears) {
            planes.add(faced(span, inner));
        }
        List<Span> before = new ArrayList<>();
        motion.ifPresent(size -> layMotion(size, inner, before));
        long front = before.isEmpty() ? inner + plate : before.get(1).to() + gaps.axial();
        return new Planes(planes, faced(drumSpan, inner), before, inner, plate + front);
    }

    private Span faced(Span span, long inner) {
        long last = inner - gaps.endShake();
        return face == Face.FRONT ? span : new Span(last - span.to(), last - span.from());
    }

    private void layMotion(MotionSize size, long inner, List<Span> before) {
        long first = inner + plate + gaps.spacing();
        before.add(new Span(first, first + size.firstThickness()));
        long second = first + size.firstThickness() + gaps.spacing();
        before.add(new Span(second, second + size.secondThickness()));
    }
}
