// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Locks;
import drumfall.solver.brief.MeshLock;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.Rating;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A demand or a single lock that can be dropped to see whether a train exists without it.
 *
 * @param demand the demand; {@link Demand#LOCK} for a lock
 * @param pointer JSON pointer into the brief
 * @param lock the lock alone, {@link Locks#NONE} for other demands
 */
public record HeldDemand(Demand demand, String pointer, Locks lock) {
    /** Demands that can be dropped; the others are choices of the brief or laws of the trade. */
    private static final List<Demand> DROPPABLE = List.of(
            Demand.RUN_AT_LEAST,
            Demand.RUN_AT_MOST,
            Demand.SINGLE_LAYER,
            Demand.WEIGHT_LIMIT,
            Demand.LINE_LOAD,
            Demand.RATCHET,
            Demand.BUILDERS,
            Demand.PENDULUM_LENGTH,
            Demand.BEATS_PER_HOUR,
            Demand.SECONDS_HAND,
            Demand.PRINT_BED,
            Demand.TOOTH_SIZE,
            Demand.TOOTH_BENDING,
            Demand.FRAME,
            Demand.CLEARANCE);

    /**
     * Everything of a brief that can be dropped, demands first, in the order of {@link Demand}.
     *
     * @param brief the brief
     */
    public static List<HeldDemand> of(Brief brief) {
        List<HeldDemand> demands = new ArrayList<>();
        for (Demand demand : DROPPABLE) {
            if (asks(brief, demand)) {
                demands.add(new HeldDemand(demand, demand.pointer(), Locks.NONE));
            }
        }
        addLocks(brief.locks(), demands);
        return demands;
    }

    /**
     * Whether a train meets this.
     *
     * @param rating of the train against the brief with all its locks
     */
    public boolean metBy(Rating rating) {
        return rating.missed()
                .noneMatch(figure -> figure.demand() == demand
                        && (demand != Demand.LOCK || figure.place().equals(place())));
    }

    /** The place under which a rating reports a lock. */
    private String place() {
        String field = pointer.substring(pointer.lastIndexOf('/') + 1);
        return switch (field) {
            case "meshesAbove" -> "meshes above";
            case "meshesBelow" -> "meshes below";
            case "drumDiameter" -> "drum diameter";
            case "escapeTeeth" -> "escape wheel";
            case "motionDistance" -> "motion distance";
            case "palletDistance" -> "pallet distance";
            case "falls", "motionDirection" -> field;
            default -> lock.meshes().get(0).place() + " " + field;
        };
    }

    private static boolean asks(Brief brief, Demand demand) {
        return switch (demand) {
            case BUILDERS -> brief.weight().builders().isPresent();
            case PENDULUM_LENGTH -> brief.beat().pendulumLength().isPresent();
            case BEATS_PER_HOUR -> brief.beat().beatsPerHour().isPresent();
            case SECONDS_HAND -> brief.beat().secondsHand();
            default -> true;
        };
    }

    private static void addLocks(Locks locks, List<HeldDemand> demands) {
        if (locks.meshesAbove().isPresent()) {
            add(demands, "/locks/meshesAbove", Locks.NONE.withMeshesAbove(locks.meshesAbove()));
        }
        if (locks.meshesBelow().isPresent()) {
            add(demands, "/locks/meshesBelow", Locks.NONE.withMeshesBelow(locks.meshesBelow()));
        }
        if (locks.drumDiameter().isPresent()) {
            add(demands, "/locks/drumDiameter", Locks.NONE.withDrumDiameter(locks.drumDiameter()));
        }
        if (locks.falls().isPresent()) {
            add(demands, "/locks/falls", Locks.NONE.withFalls(locks.falls()));
        }
        if (locks.escapeTeeth().isPresent()) {
            add(demands, "/locks/escapeTeeth", Locks.NONE.withEscapeTeeth(locks.escapeTeeth()));
        }
        if (locks.motionDirection().isPresent()) {
            add(demands, "/locks/motionDirection", Locks.NONE.withMotionDirection(locks.motionDirection()));
        }
        if (locks.motionDistance().isPresent()) {
            add(demands, "/locks/motionDistance", Locks.NONE.withMotionDistance(locks.motionDistance()));
        }
        if (locks.palletDistance().isPresent()) {
            add(demands, "/locks/palletDistance", Locks.NONE.withPalletDistance(locks.palletDistance()));
        }
        for (int i = 0; i < locks.meshes().size(); i++) {
            addMeshLocks(locks.meshes().get(i), "/locks/meshes/" + i, demands);
        }
    }

    private static void addMeshLocks(MeshLock lock, String pointer, List<HeldDemand> demands) {
        MeshLock open = MeshLock.open(lock.place());
        if (lock.wheel().isPresent()) {
            add(demands, pointer + "/wheel", only(open.withWheel(lock.wheel())));
        }
        if (lock.leaves().isPresent()) {
            add(demands, pointer + "/leaves", only(open.withLeaves(lock.leaves())));
        }
        if (lock.module().isPresent()) {
            add(demands, pointer + "/module", only(open.withModule(lock.module())));
        }
        if (lock.distance().isPresent()) {
            add(demands, pointer + "/distance", only(open.withDistance(lock.distance())));
        }
        if (lock.direction().isPresent()) {
            add(demands, pointer + "/direction", only(open.withDirection(lock.direction())));
        }
    }

    private static Locks only(MeshLock lock) {
        return Locks.NONE.withMeshes(List.of(lock));
    }

    /** Whether this is a direction of a mesh or of the motion work, of which no figure of a rating speaks, only places do. */
    boolean holdsDirection() {
        return lock.motionDirection().isPresent()
                || lock.meshes().stream().anyMatch(mesh -> mesh.direction().isPresent());
    }

    private static void add(List<HeldDemand> demands, String pointer, Locks lock) {
        demands.add(new HeldDemand(Demand.LOCK, pointer, lock));
    }

    /** Both sets of locks together; what the second holds takes the place of the first. */
    static Locks merged(Locks first, Locks second) {
        List<MeshLock> meshes = new ArrayList<>(first.meshes());
        for (MeshLock lock : second.meshes()) {
            Optional<MeshLock> same = meshes.stream()
                    .filter(other -> other.place().equals(lock.place()))
                    .findFirst();
            same.ifPresent(meshes::remove);
            meshes.add(same.map(lock::and).orElse(lock));
        }
        return new Locks(
                meshes,
                second.meshesAbove().or(first::meshesAbove),
                second.meshesBelow().or(first::meshesBelow),
                second.drumDiameter().or(first::drumDiameter),
                second.falls().or(first::falls),
                second.escapeTeeth().or(first::escapeTeeth),
                second.motionDirection().or(first::motionDirection),
                second.motionDistance().or(first::motionDistance),
                second.palletDistance().or(first::palletDistance));
    }
}
