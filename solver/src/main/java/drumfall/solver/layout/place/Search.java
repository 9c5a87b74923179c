// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.Rule;
import drumfall.solver.layout.size.HangingLine;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;

/** Sets arbor after arbor and goes back where nothing fits. */
final class Search {
    private static final int STEPS_BETWEEN_LOOKS = 256;

    private final LayoutNeed need;
    private final HangingLine line;
    private final Contacts contacts;
    private final List<Joint> joints;
    private final List<Linkage> linkages = new ArrayList<>();
    private final List<Integer> arbors;
    private final LivePlanes planes;
    private final Elevation elevation;
    private final Extremes extremes;
    private final FrameFit frame;
    private final NearMiss nearMiss;
    private final Ranking ranking;
    private final BooleanSupplier cancelled;
    private final Place[] corner;
    /** Of each arbor that stands, by pillar. */
    private final List<List<List<Obstacle>>> obstacles = new ArrayList<>();

    private boolean found;
    private Layout best;
    private int steps;
    private boolean stopped;

    Search(LayoutNeed need, Contacts contacts, Orders orders, int stride, Progress progress) {
        this.need = need;
        this.line = need.line();
        this.contacts = contacts;
        this.joints = contacts.joints();
        this.arbors = joints.stream().map(Joint::arbor).toList();
        joints.forEach(joint -> linkages.add(new Linkage(need, joint, stride)));
        this.nearMiss = progress.nearMiss();
        this.ranking = progress.ranking();
        this.cancelled = progress.cancelled();
        this.planes = new LivePlanes(orders, joints.size(), need.gaps().radial(), nearMiss);
        this.elevation = new Elevation(contacts, need.parts(), line);
        this.extremes = new Extremes(contacts, need.parts().placeCount(), line);
        this.frame = new FrameFit(need, contacts);
        this.corner = new Place[joints.size() + 1];
    }

    /** What the rounds of a search share. */
    record Progress(NearMiss nearMiss, Ranking ranking, BooleanSupplier cancelled) {}

    /** Whether this round found places, for a whole movement better ones than earlier rounds did. */
    boolean run() {
        descend(0);
        return found;
    }

    /** The best layout that this round found of a whole movement. */
    Layout best() {
        return best;
    }

    boolean wasStopped() {
        return stopped;
    }

    private boolean isDone() {
        return stopped || (found && ranking.isIndifferent());
    }

    private void descend(int level) {
        if (level == joints.size()) {
            keep();
            return;
        }
        Joint joint = joints.get(level);
        int anchor = elevation.levelOf(joint.anchor());
        long fromX = level == 0 ? 0 : elevation.x(anchor);
        long fromY = level == 0 ? 0 : elevation.y(anchor);
        Place[] tries = linkages.get(level).steps(fromX, fromY);
        if (tries.length == 0) {
            note(level, Rule.LOCKED_PLACE, 0, linkages.get(level).elbowGap(fromX, fromY));
        }
        for (Place step : tries) {
            look();
            if (isDone()) {
                return;
            }
            if (stands(level, step, fromX + step.x(), fromY + step.y())) {
                descend(level + 1);
            }
        }
    }

    private void look() {
        if (++steps % STEPS_BETWEEN_LOOKS == 0 && cancelled.getAsBoolean()) {
            stopped = true;
        }
    }

    private void keep() {
        found = true;
        if (joints.size() == need.parts().placeCount()) {
            keepLayout();
        }
    }

    private void keepLayout() {
        int levels = joints.size();
        Place at = frame.hasPillars()
                ? corner[levels]
                : frame.corners(elevation.box(levels), List.of()).middle();
        best = new Layout(
                need, elevation.byArbor(), at, planes.shallowest(levels).planes());
        ranking.keep(figures(levels));
    }

    private boolean stands(int level, Place step, long x, long y) {
        return isReached(level, step, x, y)
                && isInside(level, x, y)
                && isClear(level, x, y)
                && hangsClear(level, x, y)
                && clearsPillars(level)
                && ranking.isBetter(figures(level + 1));
    }

    private boolean isReached(int level, Place step, long x, long y) {
        long miss = linkages.get(level).miss(step);
        if (miss > 0) {
            return note(level, Rule.LOCKED_PLACE, 0, miss);
        }
        long outOfReach = linkages.get(level).outOfReach(x, y);
        return outOfReach <= 0 || note(level, Rule.LOCKED_PLACE, 0, outOfReach);
    }

    private boolean isInside(int level, long x, long y) {
        elevation.set(level, x, y);
        int levels = level + 1;
        long across = frame.excessAcross(elevation.left(levels), elevation.right(levels));
        if (across > 0) {
            return note(
                    level, Rule.WIDTH, need.envelope().width(), need.envelope().width() + across);
        }
        long up = frame.excessUp(elevation.bottom(levels), elevation.top(levels));
        return up <= 0
                || note(
                        level,
                        Rule.HEIGHT,
                        need.envelope().height(),
                        need.envelope().height() + up);
    }

    private boolean note(int level, Rule rule, long asked, long found) {
        Part part = rule == Rule.LOCKED_PLACE
                ? new Part(PartKind.ROD, joints.get(level).arbor())
                : contacts.largest(joints.get(level).arbor()).part();
        nearMiss.note(level, rule, part, null, asked, found);
        return false;
    }

    private boolean isClear(int level, long x, long y) {
        planes.open(level);
        int arbor = joints.get(level).arbor();
        for (int other = 0; other < level; other++) {
            Contact[] pair = contacts.of(arbor, joints.get(other).arbor());
            if (!planes.keep(pair, elevation.x(other) - x, elevation.y(other) - y, level)) {
                return false;
            }
        }
        return true;
    }

    private boolean hangsClear(int level, long x, long y) {
        int drum = elevation.levelOf(0);
        if (drum > level) {
            return true;
        }
        if (drum < level) {
            return hangsClearOf(level, x, y, level);
        }
        for (int other = 0; other <= level; other++) {
            if (!hangsClearOf(other, elevation.x(other), elevation.y(other), level)) {
                return false;
            }
        }
        return true;
    }

    private boolean hangsClearOf(int standing, long x, long y, int level) {
        int drum = elevation.levelOf(0);
        int arbor = joints.get(standing).arbor();
        long drumX = elevation.x(drum);
        long above = Math.max(0, y - elevation.y(drum));
        Contact[] withLine = contacts.withLineOf(arbor);
        long middle = drumX + line.weightMiddle();
        long across = Math.max(0, Math.abs(x - middle) - (line.weightWidth() + 1) / 2);
        long aboveTop = Math.max(0, y - elevation.y(drum) + line.weightDrop());
        return planes.keep(withLine, x - drumX - line.firstFall(), above, level)
                && planes.keep(withLine, x - drumX - line.lastFall(), above, level)
                && planes.keep(contacts.withWeightOf(arbor), across, aboveTop, level);
    }

    /** The frame's corner from the level before usually still does. */
    private boolean clearsPillars(int level) {
        if (!frame.hasPillars()) {
            return true;
        }
        obstacles.subList(level, obstacles.size()).clear();
        obstacles.add(frame.obstacles(arbors.get(level), elevation.place(level)));
        FreeCorner free = frame.corners(elevation.box(level + 1), byPillar());
        Place hint = corner[level];
        corner[level + 1] = hint != null && free.isFree(hint.x(), hint.y())
                ? hint
                : free.find().orElse(null);
        if (corner[level + 1] == null) {
            Obstacle worst = free.worst();
            long gap = need.gaps().radial();
            long found = gap - worst.lacks(free.middle().x(), free.middle().y());
            nearMiss.note(level, Rule.RADIAL_GAP, worst.part(), worst.pillar(), gap, found);
        }
        return corner[level + 1] != null;
    }

    private List<Obstacle> byPillar() {
        List<Obstacle> all = new ArrayList<>();
        for (int pillar = 0; pillar < obstacles.get(0).size(); pillar++) {
            for (List<List<Obstacle>> ofArbor : obstacles) {
                all.addAll(ofArbor.get(pillar));
            }
        }
        return all;
    }

    private Ranking.Figures figures(int levels) {
        return new Ranking.Figures(
                elevation.spread(levels),
                elevation.right(levels) - elevation.left(levels),
                elevation.top(levels) - elevation.bottom(levels),
                extremes.leastImbalance(levels, elevation.left(levels), elevation.right(levels)),
                planes.shallowest(levels).planes().depth());
    }
}
