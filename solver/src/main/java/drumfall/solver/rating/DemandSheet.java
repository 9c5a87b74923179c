// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.MeshLock;
import drumfall.solver.brief.MeshPlace;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.ratio.WheelAndPinion;
import drumfall.solver.train.DrumRun;
import drumfall.solver.train.GoingTrain;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Holds a train against every demand of a brief, figure beside limit. */
final class DemandSheet {
    private static final String WHOLE_TRAIN = "";
    private static final double SECONDS_PER_HOUR = 3600;

    private final Brief brief;
    private final TrainLimits limits;
    private final BriefChoices choices;

    DemandSheet(Brief brief, TrainLimits limits, BriefChoices choices) {
        this.brief = brief;
        this.limits = limits;
        this.choices = choices;
    }

    List<DemandFigure> of(Train train, double recommendedWeight) {
        List<DemandFigure> figures = new ArrayList<>();
        duration(train, figures);
        weight(train, recommendedWeight, figures);
        beat(train.going(), figures);
        choices(train, figures);
        for (int i = 0; i < train.meshes().size(); i++) {
            mesh(train.meshes().get(i), MeshPlace.of(i, train.meshesAbove()).toString(), figures);
        }
        bending(train, recommendedWeight, figures);
        clearances(train, figures);
        locks(train, figures);
        figures.sort(Comparator.comparing(DemandFigure::demand));
        return figures;
    }

    private void duration(Train train, List<DemandFigure> figures) {
        DrumRun drum = limits.drumRun(train.drumDiameter(), train.reeving());
        BigFraction perTurn = train.going().hoursPerTurn(0);
        double seconds = perTurn.doubleValue() * drum.turns() * SECONDS_PER_HOUR;
        figures.add(DemandFigure.atLeast(
                Demand.RUN_AT_LEAST,
                WHOLE_TRAIN,
                seconds,
                brief.run().atLeast().si(),
                limits.runsLongEnough(perTurn, drum)));
        figures.add(DemandFigure.atMost(
                Demand.RUN_AT_MOST,
                WHOLE_TRAIN,
                seconds,
                brief.run().atMost().si(),
                limits.runsNotTooLong(perTurn, drum)));
        figures.add(DemandFigure.atMost(
                Demand.SINGLE_LAYER,
                WHOLE_TRAIN,
                limits.of(drum).layerLength().doubleValue(),
                brief.drum().length().si(),
                limits.windsInOneLayer(drum)));
    }

    private void weight(Train train, double recommended, List<DemandFigure> figures) {
        figures.add(DemandFigure.atMost(
                Demand.WEIGHT_LIMIT,
                WHOLE_TRAIN,
                recommended,
                brief.weight().limit().si(),
                limits.lightEnough(recommended)));
        figures.add(DemandFigure.atMost(
                Demand.LINE_LOAD,
                WHOLE_TRAIN,
                limits.loadToCarry(recommended, train.reeving()),
                brief.line().ratedLoad().si(),
                limits.lineCarries(recommended, train.reeving())));
        double arm = limits.lineArm(train);
        figures.add(DemandFigure.atMost(
                Demand.RATCHET,
                WHOLE_TRAIN,
                limits.ratchet().stress(recommended, arm, train.reeving()),
                limits.ratchet().allowable(),
                limits.ratchet().holds(recommended, arm, train.reeving())));
        limits.builders().asked().ifPresent(asked -> {
            BuilderLimits.Served served = limits.builders().share(train, recommended);
            figures.add(DemandFigure.atLeast(Demand.BUILDERS, WHOLE_TRAIN, served.share(), asked, served.enough()));
        });
        figures.add(DemandFigure.atLeast(
                Demand.ARC,
                WHOLE_TRAIN,
                limits.saturationArc(train.escapeTeeth()),
                limits.arcAsked(),
                limits.arcKept(train.escapeTeeth())));
    }

    private void beat(GoingTrain going, List<DemandFigure> figures) {
        double beat = going.secondsPerBeat().doubleValue();
        brief.beat()
                .pendulumLength()
                .ifPresent(range -> figures.add(DemandFigure.between(
                        Demand.PENDULUM_LENGTH,
                        WHOLE_TRAIN,
                        limits.pendulumLength(beat),
                        range.from().si(),
                        range.to().si(),
                        limits.pendulumFits(beat))));
        brief.beat()
                .beatsPerHour()
                .ifPresent(range -> figures.add(DemandFigure.between(
                        Demand.BEATS_PER_HOUR,
                        WHOLE_TRAIN,
                        going.beatsPerHour().doubleValue(),
                        range.from().si(),
                        range.to().si(),
                        limits.beatsInRange(going.beatsPerHour()))));
        if (brief.beat().secondsHand()) {
            boolean served = limits.secondsHandServed(below(going));
            figures.add(DemandFigure.atLeast(Demand.SECONDS_HAND, WHOLE_TRAIN, served ? 1 : 0, 1, served));
        }
    }

    private static List<WheelAndPinion> below(GoingTrain going) {
        return going.meshes().subList(going.timeBase().arbor(), going.meshes().size());
    }

    private void choices(Train train, List<DemandFigure> figures) {
        int above = train.meshesAbove();
        int below = train.meshes().size() - above;
        figures.add(range(
                Demand.MESHES,
                "above",
                above,
                brief.train().above().from(),
                brief.train().above().to()));
        figures.add(range(
                Demand.MESHES,
                "below",
                below,
                brief.train().below().from(),
                brief.train().below().to()));
        figures.add(DemandFigure.oneOf(
                Demand.DRUM_SIZE,
                WHOLE_TRAIN,
                train.drumDiameter().doubleValue(),
                choices.drumDiameters().stream().anyMatch(size -> size.compareTo(train.drumDiameter()) == 0)));
        figures.add(DemandFigure.oneOf(
                Demand.FALLS,
                WHOLE_TRAIN,
                train.reeving().falls(),
                choices.reevings().contains(train.reeving())));
        figures.add(DemandFigure.oneOf(
                Demand.ESCAPE_TEETH,
                WHOLE_TRAIN,
                train.escapeTeeth(),
                choices.escapeTeeth().contains(train.escapeTeeth())));
    }

    private void mesh(Mesh mesh, String place, List<DemandFigure> figures) {
        figures.add(range(
                Demand.WHEEL_TEETH,
                place,
                mesh.toothCount(),
                brief.teeth().wheelTeeth().from(),
                brief.teeth().wheelTeeth().to()));
        figures.add(range(
                Demand.LEAVES,
                place,
                mesh.leafCount(),
                brief.teeth().leaves().from(),
                brief.teeth().leaves().to()));
        figures.add(DemandFigure.atLeast(
                Demand.STEPS_UP, place, mesh.toothCount(), mesh.leafCount(), limits.stepsUp(mesh.counts())));
        figures.add(DemandFigure.oneOf(
                Demand.MODULE, place, mesh.module().metres(), choices.modules().contains(mesh.module())));
        figures.add(DemandFigure.atMost(
                Demand.PRINT_BED, place, limits.wheelTipDiameter(mesh), limits.bed(), limits.fitsBed(mesh)));
        figures.add(DemandFigure.atLeast(
                Demand.TOOTH_SIZE,
                place,
                limits.teeth().section(mesh),
                limits.teeth().thinnestSection(),
                limits.teeth().print(mesh)));
        figures.add(DemandFigure.atLeast(Demand.FRAME, place, limits.roomInFrame(mesh), 0, limits.fitsFrame(mesh)));
    }

    private void bending(Train train, double recommended, List<DemandFigure> figures) {
        ToothLimits teeth = limits.teeth();
        double torque = teeth.centreTorque(recommended, limits.centrePull(train));
        for (int i = 0; i < train.meshes().size(); i++) {
            double borne = teeth.borne(train.meshes().get(i), train.hoursPerTurn(i));
            figures.add(DemandFigure.atMost(
                    Demand.TOOTH_BENDING,
                    MeshPlace.of(i, train.meshesAbove()).toString(),
                    teeth.stress(torque, borne),
                    teeth.allowable(),
                    teeth.bear(torque, borne)));
        }
    }

    private void clearances(Train train, List<DemandFigure> figures) {
        double flange = limits.drumFlangeRadius(train.drumDiameter().doubleValue());
        figures.add(clearance(train, 0, 1, flange, "drum flange and arbor 2"));
        for (int i = 0; i < train.meshes().size(); i++) {
            boolean last = i == train.meshes().size() - 1;
            double tip = last
                    ? limits.escapeWheelRadius()
                    : limits.wheelTipDiameter(train.meshes().get(i + 1)) / 2;
            String wheel = last ? "escape wheel" : "wheel on arbor " + (i + 2);
            figures.add(clearance(train, i, i, tip, wheel + " and arbor " + (i + 1)));
        }
    }

    private DemandFigure clearance(Train train, int meshIndex, int arbor, double tip, String place) {
        Mesh mesh = train.meshes().get(meshIndex);
        var role = WeightWalk.role(train, arbor);
        return DemandFigure.atLeast(
                Demand.CLEARANCE,
                place,
                limits.clearance(mesh, role, tip),
                limits.gap(),
                limits.clears(mesh, role, tip));
    }

    private void locks(Train train, List<DemandFigure> figures) {
        int above = train.meshesAbove();
        brief.locks().meshesAbove().ifPresent(held -> figures.add(held("meshes above", above, held)));
        brief.locks()
                .meshesBelow()
                .ifPresent(
                        held -> figures.add(held("meshes below", train.meshes().size() - above, held)));
        brief.locks()
                .drumDiameter()
                .ifPresent(held -> figures.add(DemandFigure.between(
                        Demand.LOCK,
                        "drum diameter",
                        train.drumDiameter().doubleValue(),
                        held.si(),
                        held.si(),
                        train.drumDiameter().compareTo(held.exact()) == 0)));
        brief.locks()
                .falls()
                .ifPresent(held -> figures.add(held("falls", train.reeving().falls(), held)));
        brief.locks().escapeTeeth().ifPresent(held -> figures.add(held("escape wheel", train.escapeTeeth(), held)));
        HeldHoles holes = limits.holes();
        brief.locks()
                .motionDistance()
                .ifPresent(
                        held -> figures.add(held("motion distance", holes.motionDistance(), held, holes.motionKept())));
        brief.locks()
                .palletDistance()
                .ifPresent(held -> figures.add(held(
                        "pallet distance",
                        holes.palletDistance(train.escapeTeeth()),
                        held,
                        holes.palletsKept(train.escapeTeeth()))));
        for (MeshLock lock : brief.locks().meshes()) {
            meshLock(train, lock, figures);
        }
    }

    private static void meshLock(Train train, MeshLock lock, List<DemandFigure> figures) {
        Optional<Mesh> mesh = meshAt(train, lock.place());
        lock.wheel()
                .ifPresent(held -> figures.add(
                        held(lock.place() + " wheel", mesh.map(Mesh::toothCount).orElse(0), held)));
        lock.leaves()
                .ifPresent(held -> figures.add(
                        held(lock.place() + " leaves", mesh.map(Mesh::leafCount).orElse(0), held)));
        lock.module().ifPresent(held -> {
            ToothModule wanted = ToothModule.ofMetres(held.exact());
            double figure = mesh.map(found -> found.module().metres()).orElse(0.0);
            figures.add(DemandFigure.between(
                    Demand.LOCK,
                    lock.place() + " module",
                    figure,
                    wanted.metres(),
                    wanted.metres(),
                    mesh.isPresent() && mesh.get().module().equals(wanted)));
        });
        lock.distance()
                .ifPresent(held -> figures.add(DemandFigure.between(
                        Demand.LOCK,
                        lock.place() + " distance",
                        mesh.map(Mesh::centreDistance).orElse(0.0),
                        held.si(),
                        held.si(),
                        mesh.map(lock::distanceMetBy).orElse(false))));
    }

    /** The mesh at a place, if the train has so many meshes on that side. */
    static Optional<Mesh> meshAt(Train train, MeshPlace place) {
        List<Mesh> side = place.side() == MeshPlace.Side.ABOVE ? train.above() : train.below();
        return place.number() <= side.size() ? Optional.of(side.get(place.number() - 1)) : Optional.empty();
    }

    private static DemandFigure range(Demand demand, String place, int figure, int from, int to) {
        return DemandFigure.between(demand, place, figure, from, to, figure >= from && figure <= to);
    }

    private static DemandFigure held(String place, double figure, Quantity held, boolean met) {
        return DemandFigure.between(Demand.LOCK, place, figure, held.si(), held.si(), met);
    }

    private static DemandFigure held(String place, int figure, int held) {
        return DemandFigure.between(Demand.LOCK, place, figure, held, held, figure == held);
    }
}
