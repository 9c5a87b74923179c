// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Brief.ArborBuild;
import drumfall.solver.brief.Brief.ArborKind;
import drumfall.solver.parts.DialForm;
import drumfall.solver.parts.HandSize;
import drumfall.solver.parts.Shrouds;
import drumfall.solver.parts.SquareSize;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.ArborSupports;
import drumfall.solver.power.Support;
import drumfall.solver.teeth.GearFigures;
import drumfall.solver.teeth.MeshLoss;
import drumfall.solver.teeth.form.ToothForm;
import drumfall.solver.teeth.outline.ToothArea;
import drumfall.solver.train.SizedMotionWork;
import drumfall.solver.train.ToothModule;
import java.util.Optional;
import java.util.Set;

/**
 * What an arbor's supports carry besides wheel and pinion or drum: its rod if that turns, spacers, what the centre arbor carries
 * before the front plate; and the bores, which wheel and pinion are weighed without.
 *
 * <p>All of it hangs on the brief and on the arbor's role alone, never on the train: how long spacers are depends on the order of
 * the planes, so that they count as filling what a movement as deep as the frame allows leaves beside wheel and pinion. On a
 * rod that stands still they count as if they turned with the hub. Nothing is made heavier than it counts here but leaves that
 * reach over a further plane.
 */
public final class ArborLoads {
    private static final double METRES = 1e-9;

    private final Brief brief;
    private final AxialSizes axial;
    private final Optional<DialForm> dial;
    private final double motionDistance;

    private ArborLoads(Brief brief, Optional<SizedMotionWork> work, MeshLoss teeth) {
        this.brief = brief;
        this.axial = new AxialSizes(brief);
        this.dial = work.map(sized -> dial(brief, sized, teeth));
        this.motionDistance = work.map(SizedMotionWork::centreDistance).orElse(0.0);
    }

    /**
     * The loads of a brief. The motion work has teeth that print, whatever demand a train is rated without.
     *
     * @param brief the brief
     */
    static ArborLoads of(Brief brief) {
        MeshLoss teeth = BriefTeeth.of(brief, Set.of());
        return new ArborLoads(brief, MotionChoice.of(brief, teeth), teeth);
    }

    private static DialForm dial(Brief brief, SizedMotionWork work, MeshLoss teeth) {
        ToothForm cannon = MotionChoice.pair(MotionChoice.first(work), teeth).driver();
        ToothForm hour = MotionChoice.pair(MotionChoice.second(work), teeth).follower();
        double thinning = BriefParts.thinning(brief);
        return dial(brief, area(cannon, work.cannonModule(), thinning), area(hour, work.minuteModule(), thinning));
    }

    private static DialForm dial(Brief brief, double cannon, double hour) {
        return new DialForm(
                HandSize.CUSTOMARY,
                SquareSize.CUSTOMARY,
                brief.arbors().centre().diameter().si(),
                brief.parts().hubWall().si(),
                brief.parts().wheelThickness().si(),
                METRES * new AxialSizes(brief).gaps().axial(),
                METRES * new AxialSizes(brief).gaps().spacing(),
                brief.printer().layer().si(),
                brief.printer().nozzle().si(),
                cannon,
                hour,
                brief.material().density().si());
    }

    private static double area(ToothForm form, ToothModule module, double thinning) {
        double metres = module.metres();
        GearFigures figures =
                new GearFigures(form.flank().tipRadius(), 0, 0, form.flank().rootRadius(), ToothArea.disc(form));
        return metres * metres * figures.area(thinning / metres);
    }

    /** Distance of the minute arbor from the centre arbor, m; 0 without motion work. */
    double motionDistance() {
        return motionDistance;
    }

    /** What the centre arbor carries before the front plate; empty without motion work. */
    public Optional<DialForm> dial() {
        return dial;
    }

    /**
     * Length of a turning rod that counts as between its supports, m: the frame's whole depth and both plates, of the centre arbor's
     * as far as the middle of the front plate. The drum's goes on through the winding square, and counts as if it did not.
     *
     * @param role what the arbor is
     */
    public double rodLength(ArborRole role) {
        double between = METRES * axial.depth() + 2 * METRES * axial.plate();
        return switch (role) {
            case CENTRE -> between - METRES * axial.plate() / 2;
            case DRUM -> between + METRES * before() + SquareSize.CUSTOMARY.collar() + SquareSize.CUSTOMARY.length();
            case INTERMEDIATE, ESCAPE -> between;
        };
    }

    /**
     * Mass of what is longest of spacers, kg: rings of the brief's wall around a rod, along all that a movement as deep as the
     * frame allows leaves beside wheel and pinion, and a layer for rounding.
     *
     * @param role what the arbor is
     */
    public double spacers(ArborRole role) {
        double rod = build(role).diameter().si();
        double outer = rod + 2 * brief.parts().hubWall().si();
        return brief.material().density().si() * Math.PI * (outer * outer - rod * rod) / 4 * spacerLength(role);
    }

    /**
     * Length of these spacers, m.
     *
     * @param role what the arbor is
     */
    public double spacerLength(ArborRole role) {
        long stands = role == ArborRole.DRUM
                ? axial.wheel() + axial.ratchetRoom() + axial.drum()
                : axial.wheel() + axial.leaves();
        return METRES * (Math.max(0, axial.depth() - stands) + axial.layer());
    }

    /** The room that the motion work takes before the front plate, nm. */
    private long before() {
        return brief.hands().motionWork()
                ? 2 * axial.gaps().spacing() + 2 * axial.wheel() + axial.gaps().axial()
                : 0;
    }

    /**
     * Mass that the bores take off wheel and pinion, kg; the drum's parts are weighed with theirs. A bore that runs on its rod is
     * drawn wider.
     *
     * @param role what the arbor is
     */
    public double bores(ArborRole role) {
        double rod = build(role).diameter().si();
        return brief.material().density().si() * Math.PI * rod * rod / 4 * boreLength(role);
    }

    private double boreLength(ArborRole role) {
        long pinion = axial.lantern() ? 2 * axial.shroud() : axial.leaves();
        return METRES * (axial.wheel() + (role == ArborRole.DRUM ? 0 : pinion));
    }

    /**
     * Friction torque that the weight of what the centre arbor carries before the front plate takes, N m; 0 on the others.
     *
     * @param role what the arbor is
     * @param front the front support
     * @param rear the rear support
     * @param onRod friction of a bore on the rod itself, for what sits on a rod that stands still
     * @param gravity m/s²
     */
    double dialTorque(ArborRole role, Support front, Support rear, Support onRod, double gravity) {
        if (role != ArborRole.CENTRE) {
            return 0;
        }
        if (build(role).kind() == ArborKind.FIXED) {
            return onRod.slope() * dialMass() * gravity;
        }
        ArborSupports supports = new ArborSupports(front, rear, leastSpan());
        return gravity
                * (dialMass() * supports.slopeAt(-dialOverhang()) + rodEnd() * supports.slopeAt(-beforeSupport() / 2));
    }

    /** Mass of what the centre arbor carries before the front plate, its rod left out, kg. */
    public double dialMass() {
        return dial.map(DialForm::mass).orElse(0.0);
    }

    /** From the middle of the front plate to the middle of what the centre arbor carries before it, m. */
    public double dialOverhang() {
        return dial.map(form -> METRES * (axial.plate() / 2.0 + axial.gaps().spacing()) + form.middle())
                .orElse(0.0);
    }

    /** From the middle of the front plate to the front end of the centre arbor's rod, m. */
    public double beforeSupport() {
        return METRES * (axial.plate() / 2.0 + before())
                + HandSize.CUSTOMARY.beyond(
                        SquareSize.CUSTOMARY,
                        METRES * axial.gaps().axial(),
                        METRES * axial.gaps().spacing(),
                        brief.printer().layer().si());
    }

    /** Mass of the centre arbor's rod before the middle of the front plate, kg. */
    public double rodEnd() {
        double rod = build(ArborRole.CENTRE).diameter().si();
        return Shrouds.STEEL * Math.PI * rod * rod / 4 * beforeSupport();
    }

    /**
     * The shortest that any movement of the brief is from the middle of one plate to that of the other, m: two planes of meshes, or
     * great wheel and drum.
     */
    public double leastSpan() {
        long spacing = axial.gaps().spacing();
        long meshes = 2 * axial.mesh() + spacing;
        long drum = axial.mesh() + axial.clickSpace() + axial.drum();
        return METRES * (axial.plate() + axial.gaps().axial() + spacing + Math.max(meshes, drum));
    }

    private ArborBuild build(ArborRole role) {
        return new ArborRoles(brief.arbors()).build(role);
    }
}
