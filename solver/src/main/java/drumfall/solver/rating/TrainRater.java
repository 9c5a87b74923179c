// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Brief;
import drumfall.solver.power.ArborFriction;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.ArborSupports;
import drumfall.solver.power.Criterion;
import drumfall.solver.power.Movement;
import drumfall.solver.power.WeightFigure;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.teeth.MeshLoss;
import drumfall.solver.train.Train;
import java.util.Arrays;
import java.util.Set;

/** Rates trains against one brief; may be shared between threads. */
public final class TrainRater {
    private final Brief brief;
    private final ArborLoads loads;
    private final WeightWalk middle;
    private final WeightWalk smoothest;
    private final WeightWalk roughest;
    private final TrainLimits limits;
    private final Objectives objectives;
    private final BriefChoices choices;
    private final DemandSheet demands;
    private final Refused refused;
    private final PlaneLimits planes;

    /**
     * A rater for one brief.
     *
     * @param brief the brief
     */
    public TrainRater(Brief brief) {
        this(brief, Set.of());
    }

    /**
     * A rater that takes some demands as met.
     *
     * @param brief the brief
     * @param waived demands that are taken as met, to find out which of them clash
     */
    public TrainRater(Brief brief, Set<Demand> waived) {
        this(brief, waived, BriefTeeth.of(brief, waived));
    }

    /**
     * A rater with other teeth than those that would be chosen.
     *
     * @param brief the brief
     * @param waived demands that are taken as met
     * @param teeth the teeth of every mesh
     */
    public TrainRater(Brief brief, Set<Demand> waived, MeshLoss teeth) {
        this.brief = brief;
        this.loads = ArborLoads.of(brief);
        this.middle = walk(teeth, Expectation.MIDDLE);
        this.smoothest = walk(teeth, Expectation.SMOOTHEST);
        this.roughest = walk(teeth, Expectation.ROUGHEST);
        this.limits = new TrainLimits(brief, movement(), loads, waived);
        this.objectives = new Objectives(brief, movement(), limits);
        this.choices = new BriefChoices(brief);
        this.demands = new DemandSheet(brief, limits, choices);
        this.refused = Refused.NONE;
        this.planes = PlaneLimits.NONE;
    }

    private WeightWalk walk(MeshLoss teeth, Expectation expectation) {
        return new WeightWalk(new BriefMovement(brief, teeth, loads, expectation.point()).movement());
    }

    private TrainRater(TrainRater other, Refused refused, PlaneLimits planes) {
        this.brief = other.brief;
        this.loads = other.loads;
        this.middle = other.middle;
        this.smoothest = other.smoothest;
        this.roughest = other.roughest;
        this.limits = other.limits;
        this.objectives = other.objectives;
        this.choices = other.choices;
        this.demands = other.demands;
        this.refused = refused;
        this.planes = planes;
    }

    /**
     * The same rater for a search that knows of trains without a place for their arbors or with a weight for too few builders.
     *
     * @param trains what is known
     */
    public TrainRater knowing(Refused trains) {
        return new TrainRater(this, trains, planes);
    }

    /**
     * The same rater for a search that leaves out what the frame is too shallow for.
     *
     * @param limits on the planes
     */
    public TrainRater within(PlaneLimits limits) {
        return new TrainRater(this, refused, limits);
    }

    /** Trains known to have no place for their arbors or to serve too few builders; the rating does not speak of them, the search leaves them out. */
    public Refused refused() {
        return refused;
    }

    /** What the frame's depth leaves out of a search; the rating does not speak of it. */
    public PlaneLimits planes() {
        return planes;
    }

    /** The brief rated against. */
    public Brief brief() {
        return brief;
    }

    /** The movement in the middle of all bands. */
    public Movement movement() {
        return middle.movement();
    }

    /**
     * The movement at a place in the bands, with the teeth chosen for their middle.
     *
     * @param point the place
     */
    public Movement movement(BandPoint point) {
        return at(point).movement();
    }

    private BriefMovement at(BandPoint point) {
        return new BriefMovement(brief, movement().teeth(), loads, point);
    }

    private BriefMovement middle() {
        return at(Expectation.MIDDLE.point());
    }

    /** What each arbor's supports carry besides wheel and pinion or drum. */
    public ArborLoads loads() {
        return loads;
    }

    /**
     * The brief's build of an arbor.
     *
     * @param role what the arbor is
     */
    public Brief.ArborBuild build(ArborRole role) {
        return BriefMovement.roles(brief).build(role);
    }

    /**
     * A rater against the brief with another build of the arbors of one role, the teeth as they are.
     *
     * @param role what the arbors are
     * @param build how they are built instead
     */
    public TrainRater built(ArborRole role, Brief.ArborBuild build) {
        return new TrainRater(
                brief.withArbors(BriefMovement.roles(brief).with(role, build)),
                Set.of(),
                movement().teeth());
    }

    /**
     * A rater against the brief with other bands of friction and quality, the teeth as they are.
     *
     * @param friction the bands of friction instead
     * @param quality the band of the pendulum's quality instead
     */
    public TrainRater within(Brief.Friction friction, Brief.QualityBand quality) {
        return new TrainRater(
                brief.withBands(friction, quality), Set.of(), movement().teeth());
    }

    /**
     * Friction of an arbor of any build, in the middle of all bands.
     *
     * @param build how it is built
     * @param role what the arbor is
     * @param criterion kinetic or static friction
     */
    public ArborFriction friction(Brief.ArborBuild build, ArborRole role, Criterion criterion) {
        return middle().friction(build, role, criterion);
    }

    /**
     * The two supports of an arbor, in the middle of all bands.
     *
     * @param role what the arbor is
     * @param criterion kinetic or static friction
     * @param span between the supports, m, positive
     */
    public ArborSupports supports(ArborRole role, Criterion criterion, double span) {
        return middle().supports(role, criterion, span);
    }

    /**
     * Friction torque of the weight of motion work and hands at the centre arbor's supports, in the middle of all bands, N m.
     *
     * @param criterion kinetic or static friction
     */
    public double dialTorque(Criterion criterion) {
        return middle().dialTorque(criterion);
    }

    /**
     * A train ready to be asked about weights, in the middle of all bands.
     *
     * @param train the train
     */
    public LoadedClock loaded(Train train) {
        return loaded(train, Expectation.MIDDLE.point());
    }

    /**
     * A train ready to be asked about weights at a place in the bands, with the teeth chosen for their middle.
     *
     * @param train the train
     * @param point the place
     */
    public LoadedClock loaded(Train train, BandPoint point) {
        return LoadedClock.of(movement(point), train, brief.hands().torque().si())
                .withDial(at(point).dialTorque(Criterion.RUNNING));
    }

    /** The walk to the weight in the middle of all bands. */
    public WeightWalk walk() {
        return middle;
    }

    /**
     * The recommended weight runs the clocks of as many builders as the brief asks for.
     *
     * @param train the train
     */
    public boolean servesBuilders(Train train) {
        BuilderLimits builders = limits.builders();
        return !builders.decides()
                || builders.served(
                        train, objectives.recommended(middle.weigh(train).leastWeight()));
    }

    /** The demands as claims. */
    public TrainLimits limits() {
        return limits;
    }

    /** What the brief leaves open. */
    public BriefChoices choices() {
        return choices;
    }

    /** The figures wanted small. */
    public Objectives objectives() {
        return objectives;
    }

    /**
     * Rates a train.
     *
     * @param train any train, whether or not it meets the brief
     */
    public Rating rate(Train train) {
        WeightFigure weight = middle.weigh(train);
        double recommended = objectives.recommended(weight.leastWeight());
        double[] values = objectives.values(train, recommended);
        return new Rating(
                train,
                demands.of(train, recommended),
                Arrays.stream(values).boxed().toList(),
                Cell.of(brief.objectives(), values),
                limits.drumRun(train.drumDiameter(), train.reeving())
                        .hoursRoundedDown(train.going().hoursPerTurn(0)),
                weight,
                recommended,
                smoothest.weigh(train).leastWeight(),
                roughest.weigh(train).leastWeight(),
                weight.need().equivalentLength(),
                Objectives.kilograms(movement().filamentMass(train)));
    }
}
