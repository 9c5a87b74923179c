// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import drumfall.solver.brief.Locks;
import drumfall.solver.brief.MeshLock;
import drumfall.solver.brief.MeshPlace;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import drumfall.ui.presenter.StripFigure;
import drumfall.ui.presenter.StripFigure.Kind;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The figures of a train that can be set, in the order of the way of the power. */
final class StripValues {
    private static final BigDecimal HALF_NANOMETRES_PER_MILLIMETRE = BigDecimal.valueOf(2_000_000);

    private StripValues() {}

    /**
     * The figures of a train and their values; a centre distance is among them while it is held, as it follows from the others.
     *
     * @param train the train
     * @param locks what is held
     * @param figures how they are written
     * @return in reading order from the weight
     */
    static Map<StripFigure, Figure> of(Train train, Locks locks, Figures figures) {
        Map<StripFigure, Figure> values = new LinkedHashMap<>();
        values.put(StripFigure.of(Kind.FALLS), Figure.count(train.reeving().falls()));
        values.put(StripFigure.of(Kind.DRUM), figures.exactLength(train.drumDiameter()));
        values.put(StripFigure.of(Kind.MESHES_ABOVE), Figure.count(train.meshesAbove()));
        for (int i = 0; i < train.meshes().size(); i++) {
            if (i == train.meshesAbove()) {
                values.put(
                        StripFigure.of(Kind.MESHES_BELOW),
                        Figure.count(train.below().size()));
            }
            MeshPlace place = MeshPlace.of(i, train.meshesAbove());
            mesh(train.meshes().get(i), place, values);
            StripFigure distance = StripFigure.of(Kind.DISTANCE, place);
            if (held(locks, distance)) {
                values.put(distance, distance(train.meshes().get(i)));
            }
        }
        values.put(StripFigure.of(Kind.ESCAPE_TEETH), Figure.count(train.escapeTeeth()));
        return values;
    }

    private static void mesh(Mesh mesh, MeshPlace place, Map<StripFigure, Figure> values) {
        values.put(StripFigure.of(Kind.WHEEL, place), Figure.count(mesh.toothCount()));
        values.put(StripFigure.of(Kind.LEAVES, place), Figure.count(mesh.leafCount()));
        values.put(StripFigure.of(Kind.MODULE, place), module(mesh));
    }

    /** In millimetres, as the module is from which it follows. */
    private static Figure distance(Mesh mesh) {
        long halfNanometres = (long) mesh.module().nanometres() * (mesh.toothCount() + mesh.leafCount());
        return new Figure(
                BigDecimal.valueOf(halfNanometres)
                        .divide(HALF_NANOMETRES_PER_MILLIMETRE)
                        .stripTrailingZeros()
                        .toPlainString(),
                "");
    }

    /** A module is a name as much as a size: it stays in millimetres, as published series give it. */
    private static Figure module(Mesh mesh) {
        return new Figure(mesh.module().toString(), "");
    }

    /**
     * Whether the maker holds a figure.
     *
     * @param locks what is held
     * @param figure the figure
     */
    static boolean held(Locks locks, StripFigure figure) {
        Optional<MeshLock> mesh = figure.place().flatMap(locks::at);
        return switch (figure.kind()) {
            case WHEEL -> mesh.flatMap(MeshLock::wheel).isPresent();
            case LEAVES -> mesh.flatMap(MeshLock::leaves).isPresent();
            case MODULE -> mesh.flatMap(MeshLock::module).isPresent();
            case DISTANCE -> mesh.flatMap(MeshLock::distance).isPresent();
            case DIRECTION -> mesh.flatMap(MeshLock::direction).isPresent();
            case MOTION_DIRECTION -> locks.motionDirection().isPresent();
            case MOTION_DISTANCE -> locks.motionDistance().isPresent();
            case PALLET_DISTANCE -> locks.palletDistance().isPresent();
            case DRUM -> locks.drumDiameter().isPresent();
            case FALLS -> locks.falls().isPresent();
            case ESCAPE_TEETH -> locks.escapeTeeth().isPresent();
            case MESHES_ABOVE -> locks.meshesAbove().isPresent();
            case MESHES_BELOW -> locks.meshesBelow().isPresent();
        };
    }

    /**
     * Number of a mesh from the drum, from 1.
     *
     * @param place the mesh
     * @param meshesAbove meshes above the centre
     */
    static int number(MeshPlace place, int meshesAbove) {
        return place.side() == MeshPlace.Side.ABOVE ? place.number() : meshesAbove + place.number();
    }
}
