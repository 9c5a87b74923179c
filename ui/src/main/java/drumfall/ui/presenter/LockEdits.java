// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Locks;
import drumfall.solver.brief.MeshLock;
import drumfall.solver.brief.MeshPlace;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import drumfall.ui.presenter.StripFigure.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Holds figures of a train fast and lets them go. */
public final class LockEdits {
    private LockEdits() {}

    /** Every figure that is held, from the drum to the escape wheel. */
    public static List<StripFigure> held(Locks locks) {
        List<StripFigure> figures = new ArrayList<>();
        locks.falls().ifPresent(held -> figures.add(StripFigure.of(Kind.FALLS)));
        locks.drumDiameter().ifPresent(held -> figures.add(StripFigure.of(Kind.DRUM)));
        locks.meshesAbove().ifPresent(held -> figures.add(StripFigure.of(Kind.MESHES_ABOVE)));
        for (MeshLock lock : locks.meshes()) {
            lock.wheel().ifPresent(held -> figures.add(StripFigure.of(Kind.WHEEL, lock.place())));
            lock.leaves().ifPresent(held -> figures.add(StripFigure.of(Kind.LEAVES, lock.place())));
            lock.module().ifPresent(held -> figures.add(StripFigure.of(Kind.MODULE, lock.place())));
            lock.distance().ifPresent(held -> figures.add(StripFigure.of(Kind.DISTANCE, lock.place())));
            lock.direction().ifPresent(held -> figures.add(StripFigure.of(Kind.DIRECTION, lock.place())));
        }
        locks.meshesBelow().ifPresent(held -> figures.add(StripFigure.of(Kind.MESHES_BELOW)));
        locks.escapeTeeth().ifPresent(held -> figures.add(StripFigure.of(Kind.ESCAPE_TEETH)));
        locks.palletDistance().ifPresent(held -> figures.add(StripFigure.of(Kind.PALLET_DISTANCE)));
        locks.motionDistance().ifPresent(held -> figures.add(StripFigure.of(Kind.MOTION_DISTANCE)));
        locks.motionDirection().ifPresent(held -> figures.add(StripFigure.of(Kind.MOTION_DIRECTION)));
        return figures;
    }

    /** Whether a figure is held. */
    public static boolean holds(Locks locks, StripFigure figure) {
        return held(locks).contains(figure);
    }

    /** The value at which a figure is held, as text; empty if it is not. */
    public static Optional<String> heldValue(Locks locks, StripFigure figure) {
        return switch (figure.kind()) {
            case WHEEL -> lock(locks, figure).flatMap(MeshLock::wheel).map(String::valueOf);
            case LEAVES -> lock(locks, figure).flatMap(MeshLock::leaves).map(String::valueOf);
            case MODULE -> lock(locks, figure).flatMap(MeshLock::module).map(Quantity::text);
            case DISTANCE -> lock(locks, figure).flatMap(MeshLock::distance).map(Quantity::text);
            case DIRECTION -> lock(locks, figure).flatMap(MeshLock::direction).map(Quantity::text);
            case MOTION_DIRECTION -> locks.motionDirection().map(Quantity::text);
            case MOTION_DISTANCE -> locks.motionDistance().map(Quantity::text);
            case PALLET_DISTANCE -> locks.palletDistance().map(Quantity::text);
            case DRUM -> locks.drumDiameter().map(Quantity::text);
            case FALLS -> locks.falls().map(String::valueOf);
            case ESCAPE_TEETH -> locks.escapeTeeth().map(String::valueOf);
            case MESHES_ABOVE -> locks.meshesAbove().map(String::valueOf);
            case MESHES_BELOW -> locks.meshesBelow().map(String::valueOf);
        };
    }

    private static Optional<MeshLock> lock(Locks locks, StripFigure figure) {
        return figure.place().flatMap(locks::at);
    }

    /**
     * The locks with a figure held at a train's value.
     *
     * @param locks what is held so far
     * @param figure what to hold
     * @param train gives the value; the locks stay as they are if it has no such figure; a direction is none of a train's but of
     *     its layout, and other distances than those of meshes are the brief's
     */
    static Locks holding(Locks locks, StripFigure figure, Train train) {
        Optional<Mesh> mesh = figure.place().flatMap(place -> meshAt(train, place));
        if (figure.kind().placed() && mesh.isEmpty()) {
            return locks;
        }
        return switch (figure.kind()) {
            case WHEEL -> withMesh(locks, figure, lock -> lock.withWheel(mesh.map(Mesh::toothCount)));
            case LEAVES -> withMesh(locks, figure, lock -> lock.withLeaves(mesh.map(Mesh::leafCount)));
            case MODULE ->
                withMesh(
                        locks,
                        figure,
                        lock -> lock.withModule(mesh.map(Mesh::module).map(LockEdits::length)));
            case DISTANCE -> withMesh(locks, figure, lock -> lock.withDistance(mesh.map(LockEdits::distance)));
            case DIRECTION, MOTION_DIRECTION, MOTION_DISTANCE, PALLET_DISTANCE -> locks;
            case DRUM -> locks.withDrumDiameter(Optional.of(drum(train)));
            case FALLS -> locks.withFalls(Optional.of(train.reeving().falls()));
            case ESCAPE_TEETH -> locks.withEscapeTeeth(Optional.of(train.escapeTeeth()));
            case MESHES_ABOVE -> locks.withMeshesAbove(Optional.of(train.meshesAbove()));
            case MESHES_BELOW -> locks.withMeshesBelow(Optional.of(train.below().size()));
        };
    }

    /**
     * The locks with a figure let go.
     *
     * @param locks what is held so far
     * @param figure what to let go
     */
    static Locks releasing(Locks locks, StripFigure figure) {
        return switch (figure.kind()) {
            case WHEEL -> withMesh(locks, figure, lock -> lock.withWheel(Optional.empty()));
            case LEAVES -> withMesh(locks, figure, lock -> lock.withLeaves(Optional.empty()));
            case MODULE -> withMesh(locks, figure, lock -> lock.withModule(Optional.empty()));
            case DISTANCE -> withMesh(locks, figure, lock -> lock.withDistance(Optional.empty()));
            case DIRECTION -> withMesh(locks, figure, lock -> lock.withDirection(Optional.empty()));
            case MOTION_DIRECTION -> locks.withMotionDirection(Optional.empty());
            case MOTION_DISTANCE -> locks.withMotionDistance(Optional.empty());
            case PALLET_DISTANCE -> locks.withPalletDistance(Optional.empty());
            case DRUM -> locks.withDrumDiameter(Optional.empty());
            case FALLS -> locks.withFalls(Optional.empty());
            case ESCAPE_TEETH -> locks.withEscapeTeeth(Optional.empty());
            case MESHES_ABOVE -> locks.withMeshesAbove(Optional.empty());
            case MESHES_BELOW -> locks.withMeshesBelow(Optional.empty());
        };
    }

    private interface MeshChange {
        MeshLock on(MeshLock lock);
    }

    private static Locks withMesh(Locks locks, StripFigure figure, MeshChange change) {
        MeshPlace place = figure.place().orElseThrow();
        MeshLock changed = change.on(locks.at(place).orElse(MeshLock.open(place)));
        List<MeshLock> meshes = new ArrayList<>(locks.meshes());
        meshes.removeIf(lock -> lock.place().equals(place));
        if (!changed.isOpen()) {
            meshes.add(changed);
        }
        meshes.sort(Comparator.comparing((MeshLock lock) -> lock.place().side())
                .thenComparing(lock -> lock.place().number()));
        return locks.withMeshes(meshes);
    }

    private static Quantity distance(Mesh mesh) {
        return Quantity.of(MeshLock.centreDistance(mesh).multiply(1000), Dimension.LENGTH.unit("mm"));
    }

    private static Quantity length(ToothModule module) {
        return Quantity.parse(Dimension.LENGTH, module + " mm");
    }

    private static Quantity drum(Train train) {
        return Quantity.of(train.drumDiameter().multiply(1000), Dimension.LENGTH.unit("mm"));
    }

    /** The mesh at a place, if the train has so many meshes on that side. */
    static Optional<Mesh> meshAt(Train train, MeshPlace place) {
        List<Mesh> side = place.side() == MeshPlace.Side.ABOVE ? train.above() : train.below();
        return place.number() <= side.size() ? Optional.of(side.get(place.number() - 1)) : Optional.empty();
    }
}
