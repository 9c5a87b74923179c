// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.answers;

import drumfall.solver.brief.Brief;
import drumfall.solver.power.answers.ArcCurve;
import drumfall.solver.power.answers.Coasting;
import drumfall.solver.power.answers.FreeSpin;
import drumfall.solver.power.answers.HangingShock;
import drumfall.solver.power.answers.LineBend;
import drumfall.solver.power.answers.RatchetHold;
import drumfall.solver.power.answers.RodBound;
import drumfall.solver.power.answers.WallMoment;
import drumfall.solver.power.answers.Winding;
import drumfall.solver.power.books.BookKeeper;
import drumfall.solver.power.books.LoadedArbor;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.power.books.LoadedTrain.ArborTorque;
import drumfall.solver.power.books.PowerBooks;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Train;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** All answers about one train under one weight, in the middle of all bands. */
public final class PowerAnswers {
    private static final int CURVE_POINTS = 9;

    /** How far above the heaviest of interest the curve of arcs goes. */
    private static final double CURVE_END = 2;

    private final TrainRater rater;
    private final Brief brief;
    private final Train train;
    private final LoadedClock clock;
    private final PowerBooks books;

    /**
     * The answers.
     *
     * @param rater rates against the brief
     * @param train the train
     * @param weight that hangs, kg, at least the least running weight
     * @throws IllegalArgumentException if the weight is under the least running weight
     */
    public PowerAnswers(TrainRater rater, Train train, double weight) {
        this.rater = rater;
        this.brief = rater.brief();
        this.train = train;
        this.clock = rater.loaded(train);
        this.books = new BookKeeper(clock).under(weight);
    }

    /** Where the power goes. */
    public PowerBooks books() {
        return books;
    }

    /** What changes would save. */
    public List<Change> changes() {
        return new Changes(rater, train).all();
    }

    /** How long each arbor spins after a flick of its larger part at {@link FreeSpin#USUAL_RIM_SPEED}; the hands are off. */
    public List<FreeSpin> freeSpins() {
        return FreeSpin.all(clock);
    }

    /** How long the clock goes on while it is wound. */
    public Coasting coasting() {
        return Coasting.of(clock, books.semiArc());
    }

    /** What the key feels. */
    public Winding winding() {
        return new Winding(
                books.weight(), gravity(), train.reeving(), clock.movement().pulleyEfficiency(), lineArm());
    }

    /** The arc against the weight, from the least running weight to twice the weight that hangs. */
    public List<ArcCurve.Point> arcs() {
        return arcCurve().points(clock.leastWeight(), CURVE_END * books.weight(), CURVE_POINTS);
    }

    /** The curve itself, for any weight or arc. */
    public ArcCurve arcCurve() {
        return new ArcCurve(
                clock, Math.max(books.weight(), brief.weight().limit().si()));
    }

    /** The shock of hanging the weight on the shortest line, fully wound, when it slips out of the hand. */
    public HangingShock hangingShock() {
        double load = books.weight() * gravity() / train.reeving().falls();
        double length =
                Math.max(brief.fall().topLead().si(), brief.line().diameter().si());
        return HangingShock.of(
                load, HangingShock.USUAL_DROP, length, brief.line().ratedLoad().si());
    }

    /** How the line is bent round the drum. */
    public LineBend lineBend() {
        return new LineBend(
                train.drumDiameter().doubleValue(), brief.line().diameter().si());
    }

    /** Ratchet and click with the weight at rest; empty if the click does not rest on the teeth. */
    public Optional<RatchetHold> ratchet() {
        return rater.limits().ratchet().hold(books.weight(), lineArm(), train.reeving());
    }

    /** The moment on the wall as long as the screw is taken to stand above the drum's axis. */
    public WallMoment wallMoment() {
        return new WallMoment(books.weight(), gravity(), lineArm());
    }

    /** The most that each arbor's rod can be bent wherever its wheel and pinion stand, from the drum. */
    public List<RodBound> rods() {
        return IntStream.rangeClosed(0, train.meshes().size())
                .mapToObj(this::rod)
                .toList();
    }

    private RodBound rod(int i) {
        LoadedArbor arbor = clock.running().arbors().get(i);
        ArborTorque torque = books.torques().get(i);
        double load = torque.given() / arbor.drivenArm()
                + torque.out() / arbor.wheelArm()
                + arbor.wheelWeight()
                + arbor.drivenWeight();
        return new RodBound(
                load,
                brief.frame().depth().si(),
                rater.build(arbor.role()).diameter().si(),
                RodBound.STEEL);
    }

    private double lineArm() {
        return clock.movement().lineArm(train.drumDiameter().doubleValue());
    }

    private double gravity() {
        return clock.movement().pendulum().gravity();
    }
}
