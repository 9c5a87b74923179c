// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

import drumfall.solver.power.Criterion;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.power.books.LoadedMesh;
import drumfall.solver.power.books.LoadedTrain;
import drumfall.solver.teeth.EfficiencyCurve;
import drumfall.solver.teeth.MeshTeeth;
import drumfall.solver.teeth.contact.ContactPath;
import drumfall.solver.teeth.contact.ContactSample;
import drumfall.solver.teeth.contact.MeshConditions;
import drumfall.solver.teeth.contact.MeshContact;
import drumfall.solver.teeth.contact.MeshTracer;
import drumfall.solver.teeth.contact.Sampling;
import drumfall.solver.train.Mesh;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Weighs the clock with one centre distance wrong; the teeth stay as they are. */
final class DepthFaults {
    /** How much too far apart two arbors stand, m. */
    static final double WIDE = 0.2e-3;

    private final Clock clock;

    DepthFaults(Clock clock) {
        this.clock = clock;
    }

    /** A mesh whose arbors stand {@link #WIDE} too far apart. */
    Fault wide(int index) {
        Mesh mesh = clock.train().meshes().get(index);
        String what =
                "Arbors " + (index + 1) + " and " + (index + 2) + " " + Words.millimetres(WIDE, 1) + " too far apart";
        double centres = 1000 * mesh.centreDistance();
        return new Fault(
                what,
                "measure " + Words.number(centres, 2) + " mm between their middles; the mesh rattles",
                weight(index, mesh));
    }

    private double weight(int index, Mesh mesh) {
        Optional<MeshTeeth> teeth = clock.loaded().movement().teeth(mesh);
        if (teeth.isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        ContactPath path = MeshTracer.trace(
                teeth.get().pair(),
                MeshConditions.centreOff(WIDE / mesh.module().metres()),
                Sampling.SWIFT);
        LoadedClock was = clock.loaded();
        return new LoadedClock(
                        was.movement(),
                        was.train(),
                        was.hands(),
                        changed(was.running(), index, curve(path, Criterion.RUNNING)),
                        changed(was.starting(), index, curve(path, Criterion.BINDING)))
                .leastWeight();
    }

    private static LoadedTrain changed(LoadedTrain train, int index, EfficiencyCurve curve) {
        List<LoadedMesh> meshes = new ArrayList<>(train.meshes());
        LoadedMesh was = meshes.get(index);
        meshes.set(index, new LoadedMesh(was.toothCount(), was.leafCount(), curve, was.pitchSeconds()));
        return new LoadedTrain(train.arbors(), meshes);
    }

    private EfficiencyCurve curve(ContactPath path, Criterion criterion) {
        MeshContact contact =
                path.withFriction(clock.loaded().movement().regime(criterion).toothFriction());
        double[] samples = contact.samples().stream()
                .mapToDouble(ContactSample::efficiency)
                .map(DepthFaults::share)
                .toArray();
        double worst = share(contact.worst());
        return EfficiencyCurve.of(worst, Math.max(worst, share(contact.mean())), samples);
    }

    /** A mesh that binds passes nothing; rounding may lift a mesh without friction a hair above 1. */
    private static double share(double efficiency) {
        return Math.min(1, Math.max(0, efficiency));
    }
}
