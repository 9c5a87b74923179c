// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.Box;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.Planes;
import drumfall.solver.layout.Preference;
import drumfall.solver.layout.Span;
import drumfall.solver.layout.check.LayoutCheck;
import drumfall.solver.layout.size.Envelope;
import drumfall.solver.layout.size.Face;
import drumfall.solver.layout.size.MotionSize;
import drumfall.solver.layout.size.MovementParts;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Every layout of a need by plain loops, judged by the check alone: all directions times all orders of the planes, nothing
 * left out early but what stands out of the frame. Shares no code with the placer. Locks are not read.
 */
final class PlainLayouts {
    /** Places of the frame tried each way where it is free to move around pillars. */
    private static final int SHIFTS = 5;

    private final LayoutNeed need;
    private final MovementParts parts;
    private final Set<Planes> stacks = new HashSet<>();
    private long[] best;

    private PlainLayouts(LayoutNeed need) {
        this.need = need;
        this.parts = need.parts();
    }

    /** The score of the best layout, null if there is none. */
    static long[] bestScore(LayoutNeed need) {
        return new PlainLayouts(need).search();
    }

    /** Whether these loops see every place of the frame: it cannot move, or nothing in it is in the way. */
    static boolean seesAllFrames(LayoutNeed need) {
        Envelope envelope = need.envelope();
        return envelope.pillars().isEmpty()
                || (envelope.dialPlace().fromLeft().isPresent()
                        && envelope.dialPlace().fromBottom().isPresent());
    }

    static long[] score(Layout layout) {
        Preference preference = layout.need().preference();
        long[] each = preference.wishes().stream()
                .mapToLong(wish -> layout.measure(wish.wish())
                        * (preference.manner() == Preference.Manner.SUMMED ? wish.weight() : 1))
                .toArray();
        return preference.manner() == Preference.Manner.SUMMED
                ? new long[] {Arrays.stream(each).sum()}
                : each;
    }

    private long[] search() {
        int planeCount = parts.meshes().size() + 1;
        int[] level = new int[planeCount];
        int all = (int) Math.pow(planeCount, planeCount);
        for (int code = 0; code < all; code++) {
            for (int plane = 0, rest = code; plane < planeCount; plane++, rest /= planeCount) {
                level[plane] = rest % planeCount;
            }
            addStacks(level);
        }
        Place[] places = new Place[parts.placeCount()];
        places[parts.centreArbor()] = Place.DIAL_CENTRE;
        settle(places, 0);
        return best;
    }

    private void addStacks(int[] level) {
        int levels = Arrays.stream(level).max().orElseThrow() + 1;
        if (Arrays.stream(level).distinct().count() < levels) {
            return;
        }
        for (int arbor = 1; arbor < level.length; arbor++) {
            if (level[arbor] == level[arbor - 1]) {
                return;
            }
        }
        for (int beside = 0; beside <= levels; beside++) {
            Planes planes = stack(level, levels, beside);
            if (planes.depth() <= need.envelope().depth()) {
                stacks.add(planes);
            }
        }
    }

    /** Lays levels outwards from the plate that the drum does not face, with as many of them beside the drum as stated. */
    private Planes stack(int[] level, int levels, int beside) {
        boolean front = parts.drum().face() == Face.FRONT;
        long spacing = need.gaps().axial() + need.gaps().endShake();
        long[] start = new long[level.length];
        long z = 0;
        long drumStart = -1;
        for (int now = 0; now < levels; now++) {
            if (now == level[0] + beside + 1 && drumStart >= 0) {
                z = Math.max(z, drumStart + parts.drum().length() + spacing);
            }
            long thickest = thickest(level, now);
            for (int plane = 0; plane < level.length; plane++) {
                if (level[plane] == now) {
                    long room = thickest - thickness(plane);
                    start[plane] = z + room / 2;
                }
            }
            if (now == level[0]) {
                drumStart = start[0] + thickness(0) + parts.drum().clickSpace();
            }
            z += thickest + spacing;
        }
        long end = Math.max(z - spacing, drumStart + parts.drum().length());
        List<Span> gears = new ArrayList<>();
        for (int plane = 0; plane < level.length; plane++) {
            gears.add(set(start[plane], thickness(plane), end, front));
        }
        return close(gears, set(drumStart, parts.drum().length(), end, front), end);
    }

    private Span set(long start, long length, long end, boolean front) {
        long from = need.gaps().axial() + (front ? start : end - start - length);
        return new Span(from, from + length);
    }

    private Planes close(List<Span> gears, Span drum, long end) {
        long spacing = need.gaps().axial() + need.gaps().endShake();
        long plate = need.envelope().plateThickness();
        long inner = need.gaps().axial() + end + spacing;
        if (parts.motion().isEmpty()) {
            return new Planes(gears, drum, List.of(), inner, inner + 2 * plate);
        }
        MotionSize motion = parts.motion().orElseThrow();
        long first = inner + plate + spacing;
        long second = first + motion.firstThickness() + spacing;
        long front = second + motion.secondThickness();
        List<Span> spans = List.of(new Span(first, first + motion.firstThickness()), new Span(second, front));
        return new Planes(gears, drum, spans, inner, plate + front + need.gaps().axial());
    }

    private long thickest(int[] level, int now) {
        long most = 0;
        for (int plane = 0; plane < level.length; plane++) {
            most = level[plane] == now ? Math.max(most, thickness(plane)) : most;
        }
        return most;
    }

    private long thickness(int plane) {
        return plane < parts.meshes().size()
                ? Math.max(
                        parts.meshes().get(plane).wheelThickness(),
                        parts.meshes().get(plane).pinionLength())
                : parts.escape().thickness();
    }

    /** Settles mesh after mesh; the drum's side is walked backwards from the centre. */
    private void settle(Place[] places, int done) {
        int centre = parts.centreArbor();
        int meshes = parts.meshes().size();
        if (done == meshes + 1) {
            judge(places);
        } else if (done == meshes) {
            settlePallets(places);
        } else if (done < centre) {
            int mesh = centre - 1 - done;
            each(places, mesh + 1, mesh, need.centreDistance(mesh), done);
        } else {
            each(places, done, done + 1, need.centreDistance(done), done);
        }
    }

    private void settlePallets(Place[] places) {
        Place escape = places[parts.escapeArbor()];
        places[parts.palletArbor()] =
                new Place(escape.x(), escape.y() + parts.escape().palletDistance());
        int meshes = parts.meshes().size();
        if (parts.motion().isPresent()) {
            each(places, parts.centreArbor(), parts.minuteArbor(), need.centreDistance(meshes), meshes);
        } else {
            settle(places, meshes + 1);
        }
    }

    private void each(Place[] places, int from, int to, long distance, int done) {
        for (Place step : need.grid().circle(distance)) {
            places[to] = places[from].plus(step);
            settle(places, done + 1);
        }
    }

    private void judge(Place[] places) {
        for (Planes planes : stacks) {
            Layout loose = new Layout(need, List.of(places), Place.DIAL_CENTRE, planes);
            Box extent = loose.extent();
            if (extent.width() > need.envelope().width()
                    || extent.height() > need.envelope().height()) {
                return;
            }
            if (best != null && Arrays.compare(score(loose), best) >= 0) {
                continue;
            }
            for (Place corner : corners(extent)) {
                Layout layout = new Layout(need, List.of(places), corner, planes);
                if (LayoutCheck.accepts(layout)) {
                    best = score(layout);
                    break;
                }
            }
        }
    }

    private List<Place> corners(Box extent) {
        Envelope envelope = need.envelope();
        int shifts = seesAllFrames(need) ? 1 : SHIFTS;
        List<Place> corners = new ArrayList<>();
        for (int across = 0; across < shifts; across++) {
            for (int up = 0; up < shifts; up++) {
                long freeX = extent.right() - envelope.width();
                long freeY = extent.top() - envelope.height();
                long x = freeX + (extent.left() - freeX) * across / SHIFTS;
                long y = freeY + (extent.bottom() - freeY) * up / SHIFTS;
                corners.add(new Place(
                        -envelope.dialPlace().fromLeft().orElse(-x),
                        -envelope.dialPlace().fromBottom().orElse(-y)));
            }
        }
        return corners;
    }
}
