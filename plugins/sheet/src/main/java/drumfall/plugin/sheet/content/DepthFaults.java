// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

import drumfall.solver.brief.Brief;
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
import drumfall.solver.teeth.flank.ToothLimitException;
import drumfall.solver.train.Mesh;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Weighs the clock with one centre distance wrong; the teeth stay as they are, thinned as they are drawn. */
final class DepthFaults {
    /** How far a centre distance is off, m. */
    static final double OFF = 0.2e-3;

    private final Clock clock;

    DepthFaults(Clock clock) {
        this.clock = clock;
    }

    /** A mesh whose arbors stand {@link #OFF} too far apart. */
    Fault wide(int index) {
        Optional<ContactPath> path = path(index, OFF);
        return new Fault(
                arbors(index) + " too far apart",
                measure(index) + (path.isPresent() ? "; the mesh rattles" : "; the teeth skip"),
                path.map(traced -> weight(index, traced)).orElse(Double.POSITIVE_INFINITY));
    }

    /** A mesh whose arbors stand {@link #OFF} too near each other; without room it jams. */
    Fault close(int index) {
        Optional<ContactPath> free =
                path(index, -OFF).filter(path -> path.clearances().isFree());
        return new Fault(
                arbors(index) + " too close",
                measure(index)
                        + free.map(path -> "; play left at the teeth " + play(index, path))
                                .orElse("; the teeth jam or bottom"),
                free.map(path -> weight(index, path)).orElse(Double.POSITIVE_INFINITY));
    }

    private String arbors(int index) {
        return "Arbors " + (index + 1) + " and " + (index + 2) + ", "
                + clock.lengths().of(OFF, 1);
    }

    private String measure(int index) {
        return "not " + clock.lengths().of(mesh(index).centreDistance(), 2) + " between their middles";
    }

    private String play(int index, ContactPath path) {
        return clock.lengths()
                .of(path.clearances().leastBacklash() * mesh(index).module().metres(), 2);
    }

    private Mesh mesh(int index) {
        return clock.train().meshes().get(index);
    }

    /** Contact with the centres off by so much, m; empty if the mesh has no teeth or they lose touch. */
    private Optional<ContactPath> path(int index, double error) {
        Brief.ThinningBand band = clock.brief().teeth().thinning();
        double module = mesh(index).module().metres();
        double thinning = (band.low().si() + band.high().si()) / 2 / module;
        MeshConditions conditions = new MeshConditions(error / module, thinning, thinning);
        return clock.loaded().movement().teeth(mesh(index)).flatMap(teeth -> traced(teeth, conditions));
    }

    private static Optional<ContactPath> traced(MeshTeeth teeth, MeshConditions conditions) {
        try {
            return Optional.of(MeshTracer.trace(teeth.pair(), conditions, Sampling.SWIFT));
        } catch (ToothLimitException apart) {
            return Optional.empty();
        }
    }

    private double weight(int index, ContactPath path) {
        LoadedClock was = clock.loaded();
        return new LoadedClock(
                        was.movement(),
                        was.train(),
                        was.hands(),
                        was.dial(),
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
