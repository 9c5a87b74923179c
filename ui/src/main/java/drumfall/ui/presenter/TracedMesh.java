// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.rating.why.WhereFromMesh;
import drumfall.solver.teeth.MeshTeeth;
import drumfall.solver.teeth.contact.Clearances;
import drumfall.solver.teeth.contact.ContactPath;
import drumfall.solver.teeth.contact.Sampling;
import drumfall.solver.teeth.form.LanternPinion;
import drumfall.solver.teeth.form.ToothForm;
import drumfall.solver.teeth.outline.OutlineSegment;
import drumfall.solver.teeth.outline.Point;
import drumfall.solver.teeth.outline.ToothRing;
import drumfall.solver.train.Mesh;
import java.util.List;
import java.util.Optional;

/**
 * A mesh whose contact is traced, with one tooth of each gear as drawn; lengths in modules.
 *
 * @param mesh counts and module
 * @param teeth the teeth
 * @param path the contact
 * @param wheelTooth corners along one tooth of the wheel and the space after it
 * @param leaf the same for the pinion; empty for pins
 */
public record TracedMesh(Mesh mesh, MeshTeeth teeth, ContactPath path, List<Point> wheelTooth, List<Point> leaf) {
    /** As exact as the solver's swift tracing, at as many phases as a curve on the screen has points. */
    private static final Sampling SMOOTH = new Sampling(
            128,
            Sampling.SWIFT.scan(),
            Sampling.SWIFT.nodes(),
            Sampling.SWIFT.quadrature(),
            Sampling.SWIFT.stretches(),
            Sampling.SWIFT.tolerance(),
            Sampling.SWIFT.spells());

    /** Less than a tenth of a pixel at forty pixels a module. */
    private static final double OFF = 0.001;

    /** Copies the lists. */
    public TracedMesh {
        wheelTooth = List.copyOf(wheelTooth);
        leaf = List.copyOf(leaf);
    }

    /** What touches that must not. */
    public enum Jam {
        /** The wheel's top land and the pinion's root circle. */
        WHEEL_TOP,
        /** The pinion's tops and the wheel's root circle. */
        PINION_TOP,
        /** The trailing flanks. */
        TRAILING,
        /** A tip and the other's root curve. */
        ROOT
    }

    /**
     * Traces a mesh.
     *
     * @param mesh counts and module
     * @param teeth its teeth
     * @param setting how it departs from its drawing
     * @throws IllegalArgumentException if the teeth do not reach each other, or thinning leaves none
     */
    static TracedMesh of(Mesh mesh, MeshTeeth teeth, MeshSetting setting) {
        double module = mesh.module().metres();
        double thinning = setting.thinning() / module;
        boolean pins = teeth.pair().follower() instanceof LanternPinion;
        return new TracedMesh(
                mesh,
                teeth,
                WhereFromMesh.trace(teeth, setting.centreError(), setting.thinning(), module, SMOOTH),
                tooth(teeth.pair().driver(), thinning),
                pins ? List.of() : tooth(teeth.pair().follower(), thinning));
    }

    /** The solver's cards of it at what the dials stand at. */
    WhereFromMesh cards(MeshSetting setting) {
        WhereFromMesh.Errors errors =
                new WhereFromMesh.Errors(setting.centreError(), setting.thinning(), setting.friction());
        return WhereFromMesh.of(mesh, teeth, errors, SMOOTH);
    }

    private static List<Point> tooth(ToothForm form, double thinning) {
        List<OutlineSegment> ring = ToothRing.of(form, 1, thinning, OFF).segments();
        return ring.subList(0, ring.size() / form.toothCount()).stream()
                .flatMap(segment -> segment.points(OFF).stream())
                .toList();
    }

    private double millimetres(double modules) {
        return modules * mesh.module().millimetres();
    }

    /** Least play of the trailing flanks along the pitch circle, m; negative where they jam. */
    public double backlash() {
        return path.clearances().leastBacklash() * mesh.module().metres();
    }

    /** What jams the mesh at these errors, if anything does. */
    public Optional<Jam> jam() {
        Clearances left = path.clearances();
        if (left.leastBacklash() < 0) {
            return Optional.of(Jam.TRAILING);
        }
        if (left.driverTip() <= 0) {
            return Optional.of(Jam.WHEEL_TOP);
        }
        if (left.followerTip() <= 0) {
            return Optional.of(Jam.PINION_TOP);
        }
        return left.rootTouched() ? Optional.of(Jam.ROOT) : Optional.empty();
    }

    /** How far the parts that jam lie within each other, mm; 0 where only a root curve is touched. */
    public double overlap() {
        Clearances left = path.clearances();
        return jam().map(jam -> switch (jam) {
                    case TRAILING -> -millimetres(left.leastBacklash());
                    case WHEEL_TOP -> -millimetres(left.driverTip());
                    case PINION_TOP -> -millimetres(left.followerTip());
                    case ROOT -> 0.0;
                })
                .orElse(0.0);
    }
}
