// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Brief;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Movement;
import drumfall.solver.power.escape.Deadbeat;
import drumfall.solver.power.pendulum.FiniteArc;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.ratio.WheelAndPinion;
import drumfall.solver.train.DrumRun;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.Train;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Each demand of a brief as one claim about counts and sizes. */
public final class TrainLimits {
    private static final BigFraction SECONDS_PER_HOUR = BigFraction.of(3600);
    /** Turns an hour of an arbor that turns once a minute. */
    private static final int ONCE_A_MINUTE = 60;

    /**
     * Sizes are summed in floating point, m: a part that just fits must not miss by rounding. Far above the rounding of a few
     * sums, far below anything that can be printed.
     */
    private static final double ROUNDING = 1e-12;

    private final Brief brief;
    private final Movement movement;
    private final Set<Demand> waived;
    private final BriefChoices choices;
    private final ArborRoles roles;
    private final ToothLimits teeth;
    private final RatchetLimits ratchet;
    private final BuilderLimits builders;
    private final HeldHoles holes;
    private final BigFraction hoursAtLeast;
    private final BigFraction hoursAtMost;
    private final double periodRatio;
    private final Map<DrumRun, DrumLimits> drums = new ConcurrentHashMap<>();

    /**
     * The limits of a brief.
     *
     * @param brief the brief
     * @param movement its movement in the middle of all bands
     * @param loads what its arbors carry
     * @param waived demands that are taken as met, to find out which of them clash
     */
    public TrainLimits(Brief brief, Movement movement, ArborLoads loads, Set<Demand> waived) {
        this.brief = brief;
        this.movement = movement;
        Set<Demand> copy = EnumSet.noneOf(Demand.class);
        copy.addAll(waived);
        this.waived = Collections.unmodifiableSet(copy);
        this.choices = new BriefChoices(brief);
        this.roles = BriefMovement.roles(brief);
        this.teeth = new ToothLimits(brief, movement, waived);
        this.ratchet = new RatchetLimits(brief, movement, teeth.thinnestSection(), waived);
        this.builders = new BuilderLimits(brief, movement.teeth(), loads, waived);
        this.holes = new HeldHoles(brief, movement, loads);
        this.hoursAtLeast = brief.run().atLeast().exact().divide(SECONDS_PER_HOUR);
        this.hoursAtMost = brief.run().atMost().exact().divide(SECONDS_PER_HOUR);
        this.periodRatio = FiniteArc.periodRatio(arcAsked());
    }

    /** Demands that are taken as met. */
    public Set<Demand> waived() {
        return waived;
    }

    /** The demands on teeth. */
    public ToothLimits teeth() {
        return teeth;
    }

    /** The demand on the ratchet. */
    public RatchetLimits ratchet() {
        return ratchet;
    }

    /** The demand on how many builders' clocks the weight runs. */
    public BuilderLimits builders() {
        return builders;
    }

    /** Torque on the centre arbor that no weight allowed exceeds, N m; 0 if teeth bear whatever comes. */
    public double mostCentreTorque() {
        return teeth.mostCentreTorque(heaviestRecommendedWeight(), shortestRun());
    }

    /**
     * Torque on a train's centre arbor for each newton of its weight if nothing rubs, m.
     *
     * @param train the train
     */
    double centrePull(Train train) {
        return teeth.centrePull(lineArm(train), train.reeving(), train.hoursPerTurn(0));
    }

    /** Arm of a train's line about the drum's axis, m. */
    double lineArm(Train train) {
        return movement.lineArm(train.drumDiameter().doubleValue());
    }

    /**
     * Line and ratchet carry a train's weight.
     *
     * @param train the train
     * @param recommendedWeight kg
     */
    public boolean carried(Train train, double recommendedWeight) {
        return lineCarries(recommendedWeight, train.reeving())
                && ratchet.holds(recommendedWeight, lineArm(train), train.reeving());
    }

    /**
     * The teeth of every mesh of a train bear its weight.
     *
     * @param train the train
     * @param recommendedWeight kg
     */
    public boolean teethBear(Train train, double recommendedWeight) {
        double torque = teeth.centreTorque(recommendedWeight, centrePull(train));
        return IntStream.range(0, train.meshes().size())
                .allMatch(i -> teeth.bear(torque, teeth.borne(train.meshes().get(i), train.hoursPerTurn(i))));
    }

    /** The heaviest recommended weight that any train may have, kg; may be infinite. */
    public double heaviestRecommendedWeight() {
        return heaviestLeastWeight() * (1 + brief.weight().reserve().si());
    }

    /**
     * The drum and its line at one size.
     *
     * @param diameter bare diameter, m
     * @param reeving how the line carries the weight
     */
    public DrumRun drumRun(BigFraction diameter, Reeving reeving) {
        DrumRun run = new DrumRun(
                brief.fall().height().exact(), diameter, brief.line().diameter().exact(), reeving);
        return of(run).run();
    }

    /** What the brief asks of a drum. */
    DrumLimits of(DrumRun drum) {
        return drums.computeIfAbsent(drum, run -> new DrumLimits(brief, run, hoursAtLeast, hoursAtMost));
    }

    /**
     * The duration reaches the shortest that will do: {@code R_up n_d >= H}, never by rounding up.
     *
     * @param hoursPerDrumTurn {@code R_up}
     * @param drum the drum
     */
    public boolean runsLongEnough(BigFraction hoursPerDrumTurn, DrumRun drum) {
        return waived.contains(Demand.RUN_AT_LEAST) || of(drum).runsLongEnough(hoursPerDrumTurn);
    }

    /**
     * The duration keeps to the longest that will do.
     *
     * @param hoursPerDrumTurn {@code R_up}
     * @param drum the drum
     */
    public boolean runsNotTooLong(BigFraction hoursPerDrumTurn, DrumRun drum) {
        return waived.contains(Demand.RUN_AT_MOST) || of(drum).runsNotTooLong(hoursPerDrumTurn);
    }

    /**
     * The line fits the drum in one layer: {@code (n_d + 2) s u + u <= drum length}.
     *
     * @param drum the drum
     */
    public boolean windsInOneLayer(DrumRun drum) {
        return waived.contains(Demand.SINGLE_LAYER) || of(drum).windsInOneLayer();
    }

    /**
     * Length of the simple pendulum that keeps a beat at the least arc, m.
     *
     * @param secondsPerBeat s
     */
    public double pendulumLength(double secondsPerBeat) {
        return movement.pendulum().equivalentLength(secondsPerBeat, periodRatio);
    }

    /**
     * The pendulum's length is in range.
     *
     * @param secondsPerBeat s
     */
    public boolean pendulumFits(double secondsPerBeat) {
        Optional<Brief.LengthRange> range = brief.beat().pendulumLength();
        double length = pendulumLength(secondsPerBeat);
        return waived.contains(Demand.PENDULUM_LENGTH)
                || range.isEmpty()
                || (length >= range.get().from().si()
                        && length <= range.get().to().si());
    }

    /**
     * The beats an hour are in range.
     *
     * @param beatsPerHour exact
     */
    public boolean beatsInRange(BigFraction beatsPerHour) {
        Optional<Brief.NumberRange> range = brief.beat().beatsPerHour();
        return waived.contains(Demand.BEATS_PER_HOUR)
                || range.isEmpty()
                || (beatsPerHour.compareTo(range.get().from().exact()) >= 0
                        && beatsPerHour.compareTo(range.get().to().exact()) <= 0);
    }

    /**
     * Bounds outside which no beat is allowed, slightly wide; a quick way to leave most trains out before asking
     * {@link #pendulumFits} and {@link #beatsInRange}.
     *
     * @return fewest and most beats an hour
     */
    public double[] roughBeatsPerHour() {
        double from = 1;
        double to = 1e9;
        if (brief.beat().pendulumLength().isPresent() && !waived.contains(Demand.PENDULUM_LENGTH)) {
            Brief.LengthRange range = brief.beat().pendulumLength().get();
            from = Math.max(from, beatsFor(range.to()));
            to = Math.min(to, beatsFor(range.from()));
        }
        if (brief.beat().beatsPerHour().isPresent() && !waived.contains(Demand.BEATS_PER_HOUR)) {
            from = Math.max(from, brief.beat().beatsPerHour().get().from().si());
            to = Math.min(to, brief.beat().beatsPerHour().get().to().si());
        }
        return new double[] {from * (1 - 1e-9), to * (1 + 1e-9)};
    }

    private double beatsFor(Quantity length) {
        double beat = Math.PI * Math.sqrt(length.si() / movement.pendulum().gravity()) * periodRatio;
        return 3600 / beat;
    }

    /** Whether a seconds hand is asked for. */
    public boolean asksSecondsHand() {
        return brief.beat().secondsHand() && !waived.contains(Demand.SECONDS_HAND);
    }

    /**
     * The beat is in range, by the pendulum's length and by beats an hour.
     *
     * @param wheelTeeth product of the wheels below the centre
     * @param leaves product of the pinions below the centre
     * @param escapeTeeth teeth of the escape wheel
     */
    public boolean beatKept(long wheelTeeth, long leaves, int escapeTeeth) {
        double secondsPerBeat = (double) (3600 * leaves) / (2L * escapeTeeth * wheelTeeth);
        return pendulumFits(secondsPerBeat)
                && (brief.beat().beatsPerHour().isEmpty()
                        || beatsInRange(BigFraction.of(2L * escapeTeeth * wheelTeeth, leaves)));
    }

    /**
     * Hours for a turn of a drum that give the shortest and the longest duration allowed, correct to a few parts in
     * 1e16; whatever lies clearly inside or outside needs no exact arithmetic.
     *
     * @param drum the drum
     * @return fewest and most hours
     */
    public double[] hoursPerTurn(DrumRun drum) {
        double from = waived.contains(Demand.RUN_AT_LEAST) ? 0 : hoursAtLeast.doubleValue() / drum.turns();
        double to = waived.contains(Demand.RUN_AT_MOST)
                ? Double.POSITIVE_INFINITY
                : hoursAtMost.doubleValue() / drum.turns();
        return new double[] {from, to};
    }

    /**
     * Whether an arbor behind meshes below the centre turns once a minute.
     *
     * @param wheelTeeth product of their wheels
     * @param leaves product of their pinions, at most 1e17
     */
    public static boolean turnsOnceAMinute(long wheelTeeth, long leaves) {
        return wheelTeeth == ONCE_A_MINUTE * leaves;
    }

    /**
     * An arbor below the centre turns once a minute, an even number of meshes from the centre.
     *
     * @param below the meshes below the centre, from the centre
     */
    public boolean secondsHandServed(List<WheelAndPinion> below) {
        if (!asksSecondsHand()) {
            return true;
        }
        BigFraction turns = BigFraction.ONE;
        for (int i = 0; i < below.size(); i++) {
            turns = turns.multiply(below.get(i).ratio());
            if (i % 2 == 1 && turns.compareTo(BigFraction.of(ONCE_A_MINUTE)) == 0) {
                return true;
            }
        }
        return false;
    }

    /**
     * The escapement exists with a tooth count, and some torque keeps the pendulum at its arc.
     *
     * @param escapeTeeth teeth of the escape wheel
     */
    public boolean arcKept(int escapeTeeth) {
        var escapement = movement.escapement().with(escapeTeeth);
        return escapement.exists() && escapement.gain(movement.escapement().escapeAngle() + movement.reserveArc()) > 0;
    }

    /**
     * The holes that the brief holds and no mesh settles are where they are held: the minute arbor's and the pallet arbor's.
     *
     * @param escapeTeeth teeth of the escape wheel
     */
    public boolean holesKept(int escapeTeeth) {
        return holes.motionKept() && holes.palletsKept(escapeTeeth);
    }

    /** The holes that no mesh settles. */
    HeldHoles holes() {
        return holes;
    }

    /** Arc the brief asks for: the escape angle and its reserve, rad. */
    double arcAsked() {
        return movement.escapement().escapeAngle() + movement.reserveArc();
    }

    /**
     * Arc that no weight can exceed with a tooth count, rad; 0 if there is no such escapement.
     *
     * @param escapeTeeth teeth of the escape wheel
     */
    double saturationArc(int escapeTeeth) {
        Deadbeat escapement = movement.escapement().with(escapeTeeth);
        return escapement.exists() ? escapement.saturationArc() : 0;
    }

    /** Radius of the escape wheel to its tips, m. */
    public double escapeWheelRadius() {
        return movement.parts().escapeWheelRadius();
    }

    /**
     * Radius of the drum's flanges, m.
     *
     * @param diameter bare diameter, m
     */
    public double drumFlangeRadius(double diameter) {
        return movement.parts().drumFlangeRadius(diameter);
    }

    /**
     * The counts step the speed up.
     *
     * @param counts wheel and pinion
     */
    public boolean stepsUp(WheelAndPinion counts) {
        return counts.toothCount() >= counts.leafCount();
    }

    /**
     * Tip diameter of the wheel, m.
     *
     * @param mesh the mesh
     */
    public double wheelTipDiameter(Mesh mesh) {
        return 2 * movement.wheelTipRadius(mesh);
    }

    /** Shorter side of the printer's bed, m. */
    double bed() {
        return Math.min(
                brief.printer().bedWidth().si(), brief.printer().bedDepth().si());
    }

    /**
     * The wheel fits the printer's bed.
     *
     * @param mesh the mesh
     */
    public boolean fitsBed(Mesh mesh) {
        return waived.contains(Demand.PRINT_BED) || wheelTipDiameter(mesh) <= bed() + ROUNDING;
    }

    /**
     * How much room a mesh leaves in the frame at its best direction, m; negative if wheel and pinion cannot both be inside.
     *
     * <p>With the tip radii {@code A} and {@code B}, the axes can be at most {@code w - A - B} apart across and
     * {@code h - A - B} upright; the diagonal of that rectangle must reach the centre distance. A necessary bound until
     * the arbors are placed.
     *
     * @param mesh the mesh
     */
    double roomInFrame(Mesh mesh) {
        double tips = wheelTipDiameter(mesh) / 2 + movement.pinionTipRadius(mesh);
        double across = brief.frame().width().si() - tips;
        double upright = brief.frame().height().si() - tips;
        double wheel =
                Math.min(brief.frame().width().si(), brief.frame().height().si()) - wheelTipDiameter(mesh);
        double pair = across < 0 || upright < 0
                ? Math.min(across, upright)
                : Math.hypot(across, upright) - mesh.centreDistance();
        return Math.min(wheel, pair);
    }

    /**
     * Wheel and pinion find room in the frame.
     *
     * @param mesh the mesh
     */
    public boolean fitsFrame(Mesh mesh) {
        return waived.contains(Demand.FRAME) || roomInFrame(mesh) >= -ROUNDING;
    }

    /**
     * Distance between a wheel's tips and the rings around the neighbouring arbor towards the drum, which crosses its plane
     * with a hub or a spacer on it, m.
     *
     * @param mesh the mesh between that arbor and the wheel's own
     * @param neighbour role of the arbor that is to be cleared
     * @param tipRadius of the wheel, m
     */
    public double clearance(Mesh mesh, ArborRole neighbour, double tipRadius) {
        return mesh.centreDistance() - ringRadius(neighbour) - tipRadius;
    }

    /**
     * Radius of the hubs and spacers around an arbor, m.
     *
     * @param role what the arbor is
     */
    public double ringRadius(ArborRole role) {
        return roles.radius(role) + brief.parts().hubWall().si();
    }

    /** Least clearance asked for, m. */
    public double gap() {
        return brief.parts().gap().si();
    }

    /**
     * A wheel clears the neighbouring arbor.
     *
     * @param mesh the mesh between that arbor and the wheel's own
     * @param neighbour role of the arbor that is to be cleared
     * @param tipRadius of the wheel, m
     */
    public boolean clears(Mesh mesh, ArborRole neighbour, double tipRadius) {
        return waived.contains(Demand.CLEARANCE) || clearance(mesh, neighbour, tipRadius) >= gap() - ROUNDING;
    }

    /**
     * Load on the line for which it must be rated: its share of the weight times the safety factor, N.
     *
     * @param weight kg
     * @param reeving how the line carries the weight
     */
    double loadToCarry(double weight, Reeving reeving) {
        return weight
                * movement.pendulum().gravity()
                / reeving.falls()
                * brief.line().safetyFactor().si();
    }

    /**
     * The line carries its share of the weight with its safety factor.
     *
     * @param weight kg
     * @param reeving how the line carries the weight
     */
    public boolean lineCarries(double weight, Reeving reeving) {
        return waived.contains(Demand.LINE_LOAD)
                || loadToCarry(weight, reeving) <= brief.line().ratedLoad().si();
    }

    /**
     * The heaviest recommended weight that line and ratchet carry, kg; may be infinite.
     *
     * @param lineArm arm of the line about the drum's axis, m
     * @param reeving how the line carries the weight
     */
    public double heaviestCarried(double lineArm, Reeving reeving) {
        double line = waived.contains(Demand.LINE_LOAD)
                ? Double.POSITIVE_INFINITY
                : brief.line().ratedLoad().si() / loadToCarry(1, reeving);
        double held = waived.contains(Demand.RATCHET) ? Double.POSITIVE_INFINITY : ratchet.heaviest(lineArm, reeving);
        return Math.min(line, held);
    }

    /** The heaviest least running weight that any train may have, by the limit, the line and the ratchet, kg; may be infinite. */
    public double heaviestLeastWeight() {
        double limit = waived.contains(Demand.WEIGHT_LIMIT)
                ? Double.POSITIVE_INFINITY
                : brief.weight().limit().si();
        double carried = choices.drumDiametersLeft().stream()
                .flatMapToDouble(diameter -> choices.reevingsLeft().stream()
                        .mapToDouble(reeving -> heaviestCarried(movement.lineArm(diameter.doubleValue()), reeving)))
                .max()
                .orElse(0);
        return Math.min(limit, carried) / (1 + brief.weight().reserve().si());
    }

    /** The shortest duration that will do, s; 0 if none is asked. */
    public double shortestRun() {
        return waived.contains(Demand.RUN_AT_LEAST) ? 0 : brief.run().atLeast().si();
    }

    /** Height the weight may descend, m. */
    public double fall() {
        return brief.fall().height().si();
    }

    /**
     * The weight is not too heavy.
     *
     * @param weight kg
     */
    public boolean lightEnough(double weight) {
        return waived.contains(Demand.WEIGHT_LIMIT)
                || weight <= brief.weight().limit().si();
    }
}
