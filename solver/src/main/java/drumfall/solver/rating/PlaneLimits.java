// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Arrangement;
import drumfall.solver.brief.Brief;
import drumfall.solver.layout.place.PlaneRoom;
import drumfall.solver.layout.place.PlaneSizes;
import drumfall.solver.layout.size.Nanometres;
import drumfall.solver.quantity.Quantity;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/**
 * Whether the frame is deep enough for what neighbouring arbors must keep apart along themselves; may be shared between
 * threads.
 *
 * <p>It follows from the demand that arbors have places, and can be asked of half a train. Sizes are taken a little
 * smaller than a layout takes them, so what is refused here has no place, and what has no place may pass.
 */
public final class PlaneLimits {
    /** Refuses nothing. */
    public static final PlaneLimits NONE = new PlaneLimits(null, 0, 0, () -> false);

    /**
     * What an overlap must exceed, m: a lock or rounding can move a layout's arbor off its centre distance by a micrometre
     * and a half, and its radii are rounded to nanometres.
     */
    private static final double SLACK = 1.6e-6;

    private final PlaneSizes sizes;
    private final long depth;
    private final double gap;
    private final BooleanSupplier cancelled;
    private final Map<Integer, PlaneRoom> rooms = new ConcurrentHashMap<>();

    private PlaneLimits(PlaneSizes sizes, long depth, double gap, BooleanSupplier cancelled) {
        this.sizes = sizes;
        this.depth = depth;
        this.gap = gap;
        this.cancelled = cancelled;
    }

    /**
     * The limits of a brief.
     *
     * @param rater the rater of the brief, whose waived demands are taken as met
     * @param cancelled asked often; once true the limits are good for nothing
     */
    public static PlaneLimits of(TrainRater rater, BooleanSupplier cancelled) {
        Brief brief = rater.brief();
        boolean asked = Stream.of(Demand.FRAME, Demand.CLEARANCE)
                .noneMatch(rater.limits().waived()::contains);
        if (!asked || brief.frame().arrangement() == Arrangement.UNPLACED) {
            return NONE;
        }
        AxialSizes axial = new AxialSizes(brief);
        PlaneSizes meshAndEscape = new PlaneSizes(
                List.of(axial.mesh(), axial.pallets()),
                axial.drum(),
                nanometres(brief.drum().clickSpace()),
                axial.gaps());
        return new PlaneLimits(
                meshAndEscape, nanometres(brief.frame().depth()), rater.limits().gap(), cancelled);
    }

    private static long nanometres(Quantity length) {
        return Nanometres.of(length.si());
    }

    /**
     * What the planes of trains with a number of meshes can keep apart.
     *
     * @param meshes from the drum to the escape wheel
     */
    public PlaneRoom room(int meshes) {
        return sizes == null ? PlaneRoom.AMPLE : rooms.computeIfAbsent(meshes, this::roomAnew);
    }

    private PlaneRoom roomAnew(int meshes) {
        List<Long> gears = Stream.concat(
                        Collections.nCopies(meshes, sizes.gears().get(0)).stream(),
                        Stream.of(sizes.gears().get(1)))
                .toList();
        return PlaneRoom.of(new PlaneSizes(gears, sizes.drum(), sizes.clickSpace(), sizes.gaps()), depth, cancelled);
    }

    /**
     * Whether two parts overlap, their radii and the gap together exceeding the distance of their axes.
     *
     * @param room the distance less the radius of one part, m
     * @param radius of the other, m
     */
    public boolean overlap(double room, double radius) {
        return room - radius < gap - SLACK;
    }
}
