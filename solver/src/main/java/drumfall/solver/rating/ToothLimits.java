// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Brief;
import drumfall.solver.power.Movement;
import drumfall.solver.teeth.MeshTeeth;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The demands on teeth: that they can be printed, and that they bear the weight.
 *
 * <p>Bending is judged at rest and without friction anywhere, so that the whole torque of the recommended weight stands at
 * every mesh, on one tooth, at the highest place its flank is touched. The torque on the centre arbor is then the weight
 * times a length that only the upper half of a train knows, and each mesh bears so much at the centre and no more, which
 * only its own half knows: the claim on a train is that torque against the least that any mesh bears.
 */
public final class ToothLimits {
    /** A tooth is printed in two passes of the nozzle at least; common practice, no source. */
    private static final int PASSES = 2;

    /** Bounds are computed by other operations than figures. */
    private static final double ROUNDING = 1 + 1e-9;

    private final Brief brief;
    private final Movement movement;
    private final Set<Demand> waived;
    private final Map<Mesh, Double> sections = new ConcurrentHashMap<>();

    ToothLimits(Brief brief, Movement movement, Set<Demand> waived) {
        this.brief = brief;
        this.movement = movement;
        this.waived = Set.copyOf(waived);
    }

    /**
     * A pair of teeth exists that can be printed at the module and runs.
     *
     * @param mesh the mesh
     */
    public boolean print(Mesh mesh) {
        return movement.teeth(mesh).isPresent();
    }

    /** Thinnest section of a tooth that the nozzle prints, m. */
    double thinnestSection() {
        return PASSES * brief.printer().nozzle().si();
    }

    /**
     * The section of the teeth that decides whether they print, m; 0 if no pair of these counts runs, or none that prints
     * runs at the module.
     *
     * @param mesh the mesh
     */
    double section(Mesh mesh) {
        return sections.computeIfAbsent(mesh, this::sectionAnew);
    }

    private double sectionAnew(Mesh mesh) {
        double module = mesh.module().metres();
        Optional<MeshTeeth> teeth =
                movement.teeth(mesh).or(() -> movement.teeth().atAnyModule(mesh.toothCount(), mesh.leafCount()));
        double section = teeth.map(found -> found.printableSection(
                                brief.printer().nozzle().si() / module,
                                brief.teeth().thinning().high().si() / module))
                        .orElse(0.0)
                * module;
        return print(mesh) || section < thinnestSection() ? section : 0;
    }

    /**
     * Torque on the centre arbor for each newton of the weight if nothing rubs, m.
     *
     * @param lineArm arm of the line about the drum's axis, m
     * @param reeving how the line carries the weight
     * @param hoursPerDrumTurn hours for a turn of the drum
     */
    public double centrePull(double lineArm, Reeving reeving, double hoursPerDrumTurn) {
        return lineArm / (reeving.falls() * hoursPerDrumTurn);
    }

    /**
     * Torque on the centre arbor if nothing rubs, N m.
     *
     * @param weight kg
     * @param centrePull answer of {@link #centrePull}, m
     */
    public double centreTorque(double weight, double centrePull) {
        return weight * movement.pendulum().gravity() * centrePull;
    }

    /**
     * The weight that makes a torque on the centre arbor, kg.
     *
     * @param centreTorque N m
     * @param centrePull answer of {@link #centrePull}, m
     */
    public double weightFor(double centreTorque, double centrePull) {
        return centreTorque / (movement.pendulum().gravity() * centrePull);
    }

    /**
     * Torque on the centre arbor that the teeth of a mesh bear, N m; 0 without teeth.
     *
     * <p>{@code σ b m Y r / h}: wheel and leaf see the same force at their pitch circles over the width they share, so the
     * smaller form factor decides; the wheel's arbor carries {@code h} times the centre's torque.
     *
     * @param mesh the mesh
     * @param hoursPerTurn hours for a turn of the wheel's arbor
     */
    public double borne(Mesh mesh, double hoursPerTurn) {
        double module = mesh.module().metres();
        double width = Math.min(
                brief.parts().wheelThickness().si(),
                brief.parts().pinionLength().si());
        double factor = movement.teeth(mesh)
                .map(teeth ->
                        Math.min(teeth.wheel().formFactor(), teeth.pinion().formFactor()))
                .orElse(0.0);
        double force = brief.material().allowable().si() * width * module * factor;
        return force * module * mesh.toothCount() / 2 / hoursPerTurn;
    }

    /**
     * The teeth bear the weight.
     *
     * @param centreTorque torque on the centre arbor, N m
     * @param borne the least that any mesh bears there, N m
     */
    public boolean bear(double centreTorque, double borne) {
        return waived.contains(Demand.TOOTH_BENDING) || centreTorque <= borne;
    }

    /** Greatest bending stress that the material bears, Pa. */
    double allowable() {
        return brief.material().allowable().si();
    }

    /**
     * Bending stress of the weaker tooth of a mesh, Pa; infinite without teeth.
     *
     * @param centreTorque torque on the centre arbor, N m
     * @param borne answer of {@link #borne} for the mesh, N m
     */
    double stress(double centreTorque, double borne) {
        return borne > 0 ? allowable() * (centreTorque / borne) : Double.POSITIVE_INFINITY;
    }

    /**
     * Torque on the centre arbor that no weight allowed exceeds, N m; may be infinite.
     *
     * <p>A weight {@code W} that falls {@code F} in {@code H} hours brings {@code W g F}, and the centre turns {@code 2 π H}
     * meanwhile.
     *
     * @param heaviest heaviest weight allowed, kg
     * @param shortestRun shortest duration allowed, s
     */
    public double mostCentreTorque(double heaviest, double shortestRun) {
        double turned = 2 * Math.PI * shortestRun / 3600;
        return waived.contains(Demand.TOOTH_BENDING)
                ? 0
                : heaviest
                        * movement.pendulum().gravity()
                        * brief.fall().height().si()
                        / turned
                        * ROUNDING;
    }
}
