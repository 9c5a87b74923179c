// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Brief;
import drumfall.solver.parts.DrumForm;
import drumfall.solver.parts.EscapeToothSize;
import drumfall.solver.parts.PartStock;
import drumfall.solver.parts.Shrouds;
import drumfall.solver.parts.SquareSize;
import drumfall.solver.power.ArborFriction;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.ArborSupports;
import drumfall.solver.power.Criterion;
import drumfall.solver.power.Movement;
import drumfall.solver.power.Regime;
import drumfall.solver.power.Support;
import drumfall.solver.power.escape.DeadbeatForm;
import drumfall.solver.power.pendulum.Pendulum;
import drumfall.solver.teeth.MeshLoss;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** Turns a brief's groups into the figures that the walk to the weight needs. */
final class BriefMovement {
    private static final double METRES = 1e-9;

    private final Brief brief;
    private final MeshLoss teeth;
    private final ArborLoads loads;
    private final BandPoint point;

    BriefMovement(Brief brief, MeshLoss teeth, ArborLoads loads, BandPoint point) {
        this.brief = brief;
        this.teeth = teeth;
        this.loads = loads;
        this.point = point;
    }

    /** Friction of an arbor of some build under one criterion; a build that is not the brief's carries what the brief's does. */
    ArborFriction friction(Brief.ArborBuild build, ArborRole role, Criterion criterion) {
        return arbor(build, role, factor(criterion));
    }

    /** The supports of an arbor under one criterion. */
    ArborSupports supports(ArborRole role, Criterion criterion, double span) {
        return supports(roles(brief).build(role), span, factor(criterion));
    }

    /** Friction torque of the weight of motion work and hands, N m. */
    double dialTorque(Criterion criterion) {
        return dialTorque(roles(brief).build(ArborRole.CENTRE), ArborRole.CENTRE, factor(criterion));
    }

    private double factor(Criterion criterion) {
        return criterion == Criterion.RUNNING
                ? 1
                : brief.friction().staticFactor().si();
    }

    static ArborRoles roles(Brief brief) {
        return new ArborRoles(brief.arbors());
    }

    Movement movement() {
        return new Movement(
                parts(),
                teeth,
                pendulum(),
                escapement(),
                brief.escapement().reserveArc().si(),
                regime(1),
                regime(brief.friction().staticFactor().si()),
                brief.weight().bindingReserve().si(),
                brief.line().pulleyEfficiency().si());
    }

    private PartStock parts() {
        AxialSizes axial = new AxialSizes(brief);
        return new PartStock(
                brief.parts().wheelThickness().si(),
                METRES * axial.leaves(),
                BriefParts.thinning(brief),
                BriefParts.crossing(brief),
                axial.lantern() ? Optional.of(axial.shrouds()) : Optional.empty(),
                brief.material().density().si(),
                EscapeToothSize.CUSTOMARY,
                brief.escapement().wheelRadius().si(),
                drum(axial));
    }

    private DrumForm drum(AxialSizes axial) {
        return new DrumForm(
                brief.drum().length().si(),
                brief.drum().wall().si(),
                brief.line().diameter().si(),
                brief.arbors().drum().diameter().si(),
                BriefParts.ratchet(brief),
                METRES * axial.ratchetRoom(),
                brief.parts().gap().si(),
                SquareSize.CUSTOMARY,
                axial.wall());
    }

    private Pendulum pendulum() {
        return new Pendulum(
                brief.pendulum().bobMass().si(),
                brief.pendulum().rodMass().si(),
                point.quality(brief.pendulum().quality()),
                Pendulum.STANDARD_GRAVITY);
    }

    private DeadbeatForm escapement() {
        return new DeadbeatForm(
                brief.escapement().wheelRadius().si(),
                brief.escapement().palletSpan().si(),
                brief.escapement().lift().si(),
                brief.escapement().lock().si(),
                brief.escapement().drop().si(),
                point.pallets(brief.friction()),
                brief.escapement().palletArborTorque().si(),
                brief.escapement().inertiaShare().si());
    }

    private Regime regime(double factor) {
        Map<ArborRole, ArborFriction> arbors = new EnumMap<>(ArborRole.class);
        for (ArborRole role : ArborRole.values()) {
            arbors.put(role, arbor(roles(brief).build(role), role, factor));
        }
        return new Regime(point.teeth(brief.friction()) * factor, arbors);
    }

    /**
     * The rod turns in the plates, or a hub turns on the rod. Where wheel and pinion, or the line, stand between the supports
     * is open until the arbors are placed, so the worst place counts.
     */
    private ArborFriction arbor(Brief.ArborBuild build, ArborRole role, double factor) {
        double hands = role == ArborRole.CENTRE ? brief.hands().torque().si() : 0;
        double span = brief.frame().depth().si();
        ArborSupports supports = supports(build, span, factor);
        double slope = supports.worstSlopeBetween();
        double rod = build.kind() == Brief.ArborKind.TURNING ? rodMass(build, loads.rodLength(role)) : 0;
        double carried = Pendulum.STANDARD_GRAVITY * (rod + loads.spacers(role) - loads.bores(role));
        double standing = hands + supports.drag() + slope * carried + dialTorque(build, role, factor);
        return new ArborFriction(slope, slope, standing, Pendulum.STANDARD_GRAVITY);
    }

    private double dialTorque(Brief.ArborBuild build, ArborRole role, double factor) {
        ArborSupports supports = supports(build, 1, factor);
        Support onRod = support(build, false, factor);
        return loads.dialTorque(role, supports.front(), supports.rear(), onRod, Pendulum.STANDARD_GRAVITY);
    }

    private static double rodMass(Brief.ArborBuild build, double length) {
        double radius = build.diameter().si() / 2;
        return Shrouds.STEEL * Math.PI * radius * radius * length;
    }

    private ArborSupports supports(Brief.ArborBuild build, double span, double factor) {
        boolean frontRolls =
                build.bearings() == Brief.BearingPlaces.FRONT || build.bearings() == Brief.BearingPlaces.BOTH;
        boolean rearRolls =
                build.bearings() == Brief.BearingPlaces.REAR || build.bearings() == Brief.BearingPlaces.BOTH;
        return new ArborSupports(support(build, frontRolls, factor), support(build, rearRolls, factor), span);
    }

    private Support support(Brief.ArborBuild build, boolean rolls, double factor) {
        double diameter = build.diameter().si();
        return rolls
                ? Support.bearing(
                        brief.arbors().bearing().friction().si() * factor,
                        diameter,
                        brief.arbors().bearing().drag().si() * factor)
                : Support.plain(point.bores(brief.friction()) * factor, diameter / 2);
    }
}
