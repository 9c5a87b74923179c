// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.Planes;
import drumfall.solver.layout.Span;
import drumfall.solver.layout.size.DrumSize;
import drumfall.solver.layout.size.Face;
import drumfall.solver.layout.size.Gaps;
import drumfall.solver.layout.size.MotionSize;
import java.util.ArrayList;
import java.util.List;

/** Packs one order of the planes between the plates, the drum before the great wheel or, seen from behind, after it. */
final class Packing {
    private final Gaps gaps;
    private final DrumSize drum;
    private final long[] thickness;
    private final long plate;
    private final LayoutNeed need;

    Packing(LayoutNeed need) {
        this.need = need;
        this.gaps = need.gaps();
        this.drum = need.parts().drum();
        this.plate = need.envelope().plateThickness();
        int meshes = need.parts().meshes().size();
        this.thickness = new long[meshes + 1];
        for (int mesh = 0; mesh < meshes; mesh++) {
            thickness[mesh] = need.parts().meshes().get(mesh).planeThickness();
        }
        thickness[meshes] = need.parts().escape().thickness();
    }

    /**
     * The planes of an order.
     *
     * @param levels from rear to front, each a set of bits
     * @param beside how many levels before the great wheel's stand beside the drum; the next stands before it
     */
    Planes pack(List<Integer> levels, int beside) {
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
                long start = gears[0].to() + drum.clickSpace();
                drumSpan = new Span(start, start + drum.length());
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
        List<Span> motion = new ArrayList<>();
        need.parts().motion().ifPresent(size -> layMotion(size, inner, motion));
        long front = motion.isEmpty() ? inner + plate : motion.get(1).to() + gaps.axial();
        return new Planes(planes, faced(drumSpan, inner), motion, inner, plate + front);
    }

    private Span faced(Span span, long inner) {
        long last = inner - gaps.endShake();
        return drum.face() == Face.FRONT ? span : new Span(last - span.to(), last - span.from());
    }

    private void layMotion(MotionSize size, long inner, List<Span> motion) {
        long first = inner + plate + gaps.spacing();
        motion.add(new Span(first, first + size.firstThickness()));
        long second = first + size.firstThickness() + gaps.spacing();
        motion.add(new Span(second, second + size.secondThickness()));
    }
}
