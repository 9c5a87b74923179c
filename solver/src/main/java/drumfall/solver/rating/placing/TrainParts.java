// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.placing;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.DrumSide;
import drumfall.solver.layout.size.ArborSize;
import drumfall.solver.layout.size.DrumSize;
import drumfall.solver.layout.size.EscapeSize;
import drumfall.solver.layout.size.Face;
import drumfall.solver.layout.size.HangingLine;
import drumfall.solver.layout.size.MeshSpacing;
import drumfall.solver.layout.size.MotionSize;
import drumfall.solver.layout.size.MovementParts;
import drumfall.solver.layout.size.Nanometres;
import drumfall.solver.layout.size.Side;
import drumfall.solver.parts.RatchetForm;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Movement;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.power.escape.Deadbeat;
import drumfall.solver.power.escape.PalletDrawing;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.rating.AxialSizes;
import drumfall.solver.rating.BriefParts;
import drumfall.solver.rating.MotionChoice;
import drumfall.solver.teeth.form.MeshPair;
import drumfall.solver.teeth.form.ToothForm;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.SizedMotionWork;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * A train's parts as a layout sees them.
 *
 * @param brief the brief
 * @param movement its movement
 * @param motion the motion work, if there is one
 */
record TrainParts(Brief brief, Movement movement, Optional<SizedMotionWork> motion) {
    MovementParts of(Train train) {
        OptionalInt seconds = brief.beat().secondsHand() ? train.going().secondsArbor() : OptionalInt.empty();
        return new MovementParts(
                train.meshesAbove(),
                IntStream.rangeClosed(0, train.meshes().size())
                        .mapToObj(arbor -> arbor(train, arbor, seconds))
                        .toList(),
                train.meshes().stream().map(this::mesh).toList(),
                drum(train),
                escape(train),
                motion.map(this::motionWork));
    }

    /**
     * Hubs and spacers stand around an arbor all the way between the plates. The winding square and the seconds hand stand before the
     * dial; the rod of the centre arbor always goes there.
     */
    private ArborSize arbor(Train train, int arbor, OptionalInt seconds) {
        Brief.ArborBuild build = build(WeightWalk.role(train, arbor));
        long ring = radius(build.diameter()) + nanometres(brief.parts().hubWall());
        boolean seen = arbor == 0 || (seconds.isPresent() && seconds.getAsInt() == arbor);
        return new ArborSize(ring, Math.max(ring, leaves(train, arbor)), seen);
    }

    /** The leaves go on to the wheel, so that wheel and pinion are one print without an overhang. */
    private long leaves(Train train, int arbor) {
        return arbor == 0 ? 0 : pinionRadius(train.meshes().get(arbor - 1));
    }

    /** To the tips of the leaves, or to the edge of the shrouds. */
    private long pinionRadius(Mesh mesh) {
        double tips = movement.pinionTipRadius(mesh);
        return Nanometres.of(axial().lantern() ? axial().shroudRadius(tips) : tips);
    }

    private AxialSizes axial() {
        return new AxialSizes(brief);
    }

    private Brief.ArborBuild build(ArborRole role) {
        return switch (role) {
            case DRUM -> brief.arbors().drum();
            case CENTRE -> brief.arbors().centre();
            case INTERMEDIATE -> brief.arbors().intermediate();
            case ESCAPE -> brief.arbors().escape();
        };
    }

    private MeshSpacing mesh(Mesh mesh) {
        return new MeshSpacing(
                Nanometres.of(mesh.centreDistance()),
                Nanometres.of(movement.wheelTipRadius(mesh)),
                pinionRadius(mesh),
                axial().wheel(),
                axial().pinion());
    }

    private DrumSize drum(Train train) {
        return new DrumSize(
                Nanometres.of(drumRadius(train.drumDiameter().doubleValue())),
                axial().drum(),
                nanometres(brief.drum().clickSpace()),
                brief.drum().side() == DrumSide.BEFORE ? Face.FRONT : Face.REAR);
    }

    /** The click may reach beyond the flanges of a small drum. */
    private double drumRadius(double diameter) {
        RatchetForm ratchet = new RatchetForm(
                BriefParts.ratchet(brief),
                brief.fit().largestBore(brief.arbors().drum()),
                diameter,
                brief.drum().wall().si(),
                2 * brief.printer().nozzle().si());
        return Math.max(
                movement.parts().drumFlangeRadius(diameter),
                ratchet.reach(brief.parts().gap().si()));
    }

    private EscapeSize escape(Train train) {
        Deadbeat escapement = movement.escapement().with(train.escapeTeeth());
        PalletDrawing pallets = new PalletDrawing(escapement);
        return new EscapeSize(
                nanometres(brief.escapement().wheelRadius()),
                axial().pallets(),
                Nanometres.of(pallets.centreDistance()),
                EscapeSize.ABOVE,
                Nanometres.of(pallets.radius()),
                radius(brief.arbors().escape().diameter()));
    }

    private MotionSize motionWork(SizedMotionWork work) {
        MeshPair first = MotionChoice.pair(MotionChoice.first(work), movement.teeth());
        MeshPair second = MotionChoice.pair(MotionChoice.second(work), movement.teeth());
        return new MotionSize(
                Nanometres.of(work.centreDistance()),
                tip(first.driver(), work.cannonModule()),
                tip(first.follower(), work.cannonModule()),
                tip(second.driver(), work.minuteModule()),
                tip(second.follower(), work.minuteModule()),
                radius(brief.arbors().intermediate().diameter()),
                axial().wheel(),
                axial().wheel());
    }

    private static long tip(ToothForm form, ToothModule module) {
        return Nanometres.of(form.flank().tipRadius() * module.metres());
    }

    /** The fall that returns runs over the pulley from its outer side to its fixed point beside the drum. */
    HangingLine line(Train train) {
        long diameter = nanometres(brief.line().diameter());
        return new HangingLine(
                diameter,
                Nanometres.of(movement.lineArm(train.drumDiameter().doubleValue())),
                Side.ofLine(train.meshesAbove()),
                train.reeving() == Reeving.SINGLE ? 0 : nanometres(brief.line().pulley()) + diameter,
                nanometres(brief.weight().width()),
                nanometres(brief.fall().topLead()));
    }

    static long nanometres(Quantity length) {
        return Nanometres.of(length.si());
    }

    static long radius(Quantity diameter) {
        return Nanometres.of(diameter.si() / 2);
    }
}
