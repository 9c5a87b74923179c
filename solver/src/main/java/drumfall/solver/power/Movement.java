// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power;

import drumfall.solver.parts.PartStock;
import drumfall.solver.power.escape.DeadbeatForm;
import drumfall.solver.power.escape.HeldArc;
import drumfall.solver.power.pendulum.Pendulum;
import drumfall.solver.teeth.GearFigures;
import drumfall.solver.teeth.MeshLoss;
import drumfall.solver.teeth.MeshTeeth;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.Train;
import java.util.Optional;

/**
 * All that the walk from the escape wheel to the weight needs besides the train itself.
 *
 * @param parts sizes and masses of the printed parts
 * @param teeth tooth form
 * @param pendulum the pendulum
 * @param escapement the escapement without its tooth count
 * @param reserveArc arc asked for beyond the escape angle, rad
 * @param running kinetic friction
 * @param starting static friction
 * @param bindingReserve share of the escape wheel's need that must be left with every mesh at its worst
 * @param pulleyEfficiency of the pulley at the weight, more than 0, at most 1
 */
public record Movement(
        PartStock parts,
        MeshLoss teeth,
        Pendulum pendulum,
        DeadbeatForm escapement,
        double reserveArc,
        Regime running,
        Regime starting,
        double bindingReserve,
        double pulleyEfficiency) {
    /**
     * The friction of one criterion.
     *
     * @param criterion the criterion
     */
    public Regime regime(Criterion criterion) {
        return criterion == Criterion.RUNNING ? running : starting;
    }

    /**
     * The arc that must be kept with an escape wheel.
     *
     * @param teeth teeth of the escape wheel
     */
    public HeldArc heldArc(int teeth) {
        return new HeldArc(escapement.with(teeth), pendulum, reserveArc);
    }

    /**
     * The part of the escape wheel's need that a criterion asks for.
     *
     * @param criterion the criterion
     * @param torque needed to keep the arc, N m
     * @return N m
     */
    public double torqueAsked(Criterion criterion, double torque) {
        return criterion == Criterion.RUNNING ? torque : torque * bindingReserve;
    }

    /**
     * Weight that pulls the line at the drum with a tension while the clock runs: {@code S / g}, or with a pulley
     * {@code S (1 + η) / (η g)}.
     *
     * @param tension N
     * @param reeving how the line carries the weight
     * @return kg, the pulley included
     */
    public double weightFor(double tension, Reeving reeving) {
        double pull = tension / pendulum.gravity();
        return reeving == Reeving.SINGLE ? pull : pull * (1 + pulleyEfficiency) / pulleyEfficiency;
    }

    /**
     * Tension of the line at the drum while the clock runs.
     *
     * @param weight kg, the pulley included
     * @param reeving how the line carries the weight
     * @return N
     */
    public double tensionUnder(double weight, Reeving reeving) {
        double pull = weight * pendulum.gravity();
        return reeving == Reeving.SINGLE ? pull : pull * pulleyEfficiency / (1 + pulleyEfficiency);
    }

    /**
     * The teeth of a mesh; empty if none can be printed, and then the mesh passes nothing.
     *
     * @param mesh the mesh
     */
    public Optional<MeshTeeth> teeth(Mesh mesh) {
        return teeth.teeth(mesh.toothCount(), mesh.leafCount(), mesh.module());
    }

    /**
     * The wheel of a mesh, at module 1; a pitch circle if the mesh has no teeth.
     *
     * @param mesh the mesh
     */
    public GearFigures wheel(Mesh mesh) {
        return teeth(mesh).map(MeshTeeth::wheel).orElseGet(() -> GearFigures.rolling(mesh.toothCount()));
    }

    /**
     * The pinion of a mesh, at module 1; a pitch circle if the mesh has no teeth.
     *
     * @param mesh the mesh
     */
    public GearFigures pinion(Mesh mesh) {
        return teeth(mesh).map(MeshTeeth::pinion).orElseGet(() -> GearFigures.rolling(mesh.leafCount()));
    }

    /**
     * Arm of the mesh force about the wheel's axis, m; that of its pitch circle if it has no teeth.
     *
     * @param mesh the mesh
     */
    public double wheelArm(Mesh mesh) {
        return wheel(mesh).forceArm() * mesh.module().metres();
    }

    /**
     * Arm of the mesh force about the pinion's axis, m; that of its pitch circle if it has no teeth.
     *
     * @param mesh the mesh
     */
    public double pinionArm(Mesh mesh) {
        return pinion(mesh).forceArm() * mesh.module().metres();
    }

    /**
     * Radius of the wheel to its tips, m; of its pitch circle if it has no teeth.
     *
     * @param mesh the mesh
     */
    public double wheelTipRadius(Mesh mesh) {
        return wheel(mesh).tipRadius() * mesh.module().metres();
    }

    /**
     * Radius of the pinion to its tips, m; of its pitch circle if it has no teeth.
     *
     * @param mesh the mesh
     */
    public double pinionTipRadius(Mesh mesh) {
        return pinion(mesh).tipRadius() * mesh.module().metres();
    }

    /**
     * Mass of the wheel of a mesh as it is made, µg; of a disc on its pitch circle if it has no teeth.
     *
     * @param mesh the mesh
     */
    public long wheelMass(Mesh mesh) {
        return parts.wheelMass(wheel(mesh), mesh.module().metres());
    }

    /**
     * Mass of what is printed of the pinion of a mesh, µg; see {@link PartStock#pinionMass}.
     *
     * @param mesh the mesh
     */
    public long printedPinionMass(Mesh mesh) {
        return parts.pinionMass(mesh.leafCount(), pinion(mesh), mesh.module().metres());
    }

    /**
     * Mass of the pinion of a mesh, µg, with the steel pins of a lantern.
     *
     * @param mesh the mesh
     */
    public long pinionMass(Mesh mesh) {
        return printedPinionMass(mesh)
                + parts.pinMass(mesh.leafCount(), pinion(mesh), mesh.module().metres());
    }

    /**
     * Material printed for the wheel and the pinion of one mesh, µg.
     *
     * @param mesh the mesh
     */
    public long gearMass(Mesh mesh) {
        return wheelMass(mesh) + printedPinionMass(mesh);
    }

    /**
     * Material printed for the parts that differ from train to train, µg: wheels, pinions, escape wheel, and what stands on
     * the drum's arbor.
     *
     * @param train the train
     */
    public long filamentMass(Train train) {
        long gears = train.meshes().stream().mapToLong(this::gearMass).sum();
        return parts.escapeWheelMass()
                + gears
                + parts.drumMass(train.drumDiameter().doubleValue());
    }

    /**
     * Arm of the line about the drum's axis.
     *
     * @param drumDiameter bare diameter, m
     * @return m
     */
    public double lineArm(double drumDiameter) {
        return (drumDiameter + parts.lineDiameter()) / 2;
    }
}
