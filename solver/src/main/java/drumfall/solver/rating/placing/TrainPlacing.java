// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.placing;

import static drumfall.solver.rating.placing.TrainParts.nanometres;
import static drumfall.solver.rating.placing.TrainParts.radius;

import drumfall.solver.brief.Arrangement;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.MeshLock;
import drumfall.solver.brief.MeshPlace;
import drumfall.solver.layout.AngleGrid;
import drumfall.solver.layout.DirectionLock;
import drumfall.solver.layout.Half;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.LayoutOutcome;
import drumfall.solver.layout.Locks;
import drumfall.solver.layout.Preference;
import drumfall.solver.layout.SizeLimit;
import drumfall.solver.layout.Wish;
import drumfall.solver.layout.place.Placer;
import drumfall.solver.layout.place.PlaneBook;
import drumfall.solver.layout.size.DialPlace;
import drumfall.solver.layout.size.Envelope;
import drumfall.solver.layout.size.Gaps;
import drumfall.solver.layout.size.MotionSize;
import drumfall.solver.layout.size.MovementParts;
import drumfall.solver.layout.size.Nanometres;
import drumfall.solver.layout.size.Pillars;
import drumfall.solver.power.Movement;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.rating.AxialSizes;
import drumfall.solver.rating.Blame;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.MotionChoice;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.SizedMotionWork;
import drumfall.solver.train.Train;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Places the arbors of trains for one brief, and keeps in mind which of them have places; may be shared between threads.
 */
public final class TrainPlacing {
    /** Directions of a mesh that are tried: every 15 degrees. */
    public static final AngleGrid GRID = new AngleGrid(24);

    private final Brief brief;
    private final Movement movement;
    private final Set<Demand> waived;
    private final AngleGrid grid;
    private final Optional<SizedMotionWork> motion;
    private final TrainParts parts;
    private final PlaneBook planes = new PlaneBook();
    private final Map<Question, Optional<Blame>> known = new ConcurrentHashMap<>();

    /** What placing answers. */
    private record Question(LayoutNeed need, Optional<SizeLimit> limit) {}

    /**
     * Places trains as a rater rates them.
     *
     * @param rater the rater of the brief
     */
    public TrainPlacing(TrainRater rater) {
        this(rater, GRID);
    }

    /**
     * Places trains on a grid of another width.
     *
     * @param rater the rater of the brief
     * @param grid directions of a mesh that are tried
     */
    public TrainPlacing(TrainRater rater, AngleGrid grid) {
        this.brief = rater.brief();
        this.movement = rater.movement();
        this.waived = rater.limits().waived();
        this.grid = grid;
        this.motion = MotionChoice.of(brief, movement.teeth());
        this.parts = new TrainParts(brief, movement, motion);
    }

    /**
     * Where a train's arbors stand as the brief prefers; empty if it leaves them unplaced, there is no place, or the work
     * was cancelled.
     *
     * @param brief the brief
     * @param train the train
     * @param cancelled asked now and then; true ends the work
     */
    public static Optional<Layout> layout(Brief brief, Train train, BooleanSupplier cancelled) {
        return brief.frame().arrangement() == Arrangement.UNPLACED
                ? Optional.empty()
                : new TrainPlacing(new TrainRater(brief))
                        .place(train, cancelled)
                        .found();
    }

    /** The motion work; empty if the brief asks for none, or none has teeth that print. */
    public Optional<SizedMotionWork> motion() {
        return motion;
    }

    /** Directions of a mesh that are tried. */
    public AngleGrid grid() {
        return grid;
    }

    /**
     * Whether a train's arbors have places, which of them does not matter; so if clearance is not demanded, or the brief
     * leaves arbors unplaced.
     *
     * @param train the train
     * @param cancelled asked now and then; true ends the work, and the answer is then no
     */
    public boolean placeable(Train train, BooleanSupplier cancelled) {
        return blame(train, cancelled).isEmpty();
    }

    /**
     * What of a train is to blame if its arbors have no places; empty if they have some, whichever, if clearance is not
     * demanded, or if the brief leaves arbors unplaced.
     *
     * @param train the train
     * @param cancelled asked now and then; true ends the work, and both halves are then blamed
     */
    public Optional<Blame> blame(Train train, BooleanSupplier cancelled) {
        return blame(train, Optional.empty(), cancelled);
    }

    /**
     * What of a train is to blame if its arbors have no places in some room; empty if they have some, whichever, if clearance
     * is not demanded, or if the brief leaves arbors unplaced.
     *
     * @param train the train
     * @param limit what the layout may measure at most, beside what the brief asks
     * @param cancelled asked now and then; true ends the work, and both halves are then blamed
     */
    public Optional<Blame> blame(Train train, Optional<SizeLimit> limit, BooleanSupplier cancelled) {
        if (waived.contains(Demand.CLEARANCE) || brief.frame().arrangement() == Arrangement.UNPLACED) {
            return Optional.empty();
        }
        if (lacking(train).isPresent()) {
            return Optional.of(Blame.TOGETHER);
        }
        Question question = new Question(need(train, Preference.ANY), limit);
        Optional<Blame> before = known.get(question);
        if (before != null) {
            return before;
        }
        Optional<Blame> found = blame(question, cancelled);
        if (!cancelled.getAsBoolean()) {
            known.put(question, found);
        }
        return found;
    }

    private Optional<Blame> blame(Question asked, BooleanSupplier cancelled) {
        if (Placer.fits(asked.need, asked.limit, planes, cancelled)) {
            return Optional.empty();
        }
        if (!Placer.mayStand(asked.need, Half.ABOVE, asked.limit, planes, cancelled)) {
            return Optional.of(Blame.ABOVE);
        }
        return Optional.of(
                Placer.mayStand(asked.need, Half.BELOW, asked.limit, planes, cancelled) ? Blame.TOGETHER : Blame.BELOW);
    }

    /**
     * The least that a train's layouts measure; empty if it has none or the work was cancelled.
     *
     * @param train the train
     * @param wish what layouts are measured by
     * @param cancelled asked now and then; true ends the work
     */
    public OptionalLong least(Train train, Wish wish, BooleanSupplier cancelled) {
        if (lacking(train).isPresent()) {
            return OptionalLong.empty();
        }
        return Placer.place(need(train, Preference.inOrder(wish)), planes, cancelled)
                                instanceof LayoutOutcome.Placed placed
                        && placed.merit() == LayoutOutcome.Merit.BEST_ON_GRID
                ? OptionalLong.of(placed.layout().measure(wish))
                : OptionalLong.empty();
    }

    /**
     * Places a train's arbors as the brief prefers.
     *
     * @param train the train
     * @param cancelled asked now and then; true ends the work
     */
    public Placement place(Train train, BooleanSupplier cancelled) {
        Optional<Demand> lacking = lacking(train);
        if (lacking.isPresent()) {
            return new Placement.Undrawn(lacking.get());
        }
        LayoutOutcome outcome = Placer.place(need(train), planes, cancelled);
        if (outcome instanceof LayoutOutcome.Placed placed) {
            return new Placement.Placed(placed.layout(), placed.merit());
        }
        if (outcome instanceof LayoutOutcome.NoLayout none) {
            return new Placement.NoPlace(none.closest(), none.scope());
        }
        return new Placement.Stopped();
    }

    /**
     * The demand on account of which a train lacks parts that are to be placed.
     *
     * @param train the train
     */
    public Optional<Demand> lacking(Train train) {
        if (!movement.escapement().with(train.escapeTeeth()).exists()) {
            return Optional.of(Demand.ARC);
        }
        boolean undrawn =
                train.meshes().stream().anyMatch(mesh -> movement.teeth(mesh).isEmpty())
                        || (brief.hands().motionWork() && motion.isEmpty());
        return undrawn ? Optional.of(Demand.TOOTH_SIZE) : Optional.empty();
    }

    /**
     * What is asked of the layout of a train that lacks nothing.
     *
     * @param train the train
     */
    public LayoutNeed need(Train train) {
        return need(train, preference());
    }

    private LayoutNeed need(Train train, Preference preference) {
        MovementParts placed = parts.of(train);
        return new LayoutNeed(placed, parts.line(train), gaps(), envelope(placed), locks(train), preference, grid);
    }

    /** The least room first, if it is asked for: what is drawn then has the figure by which the train is listed. */
    private Preference preference() {
        Stream<Wish> least = brief.frame().least().stream().map(LeastRooms::wish);
        return Preference.inOrder(
                Stream.concat(least, wish().stream()).distinct().toArray(Wish[]::new));
    }

    private Optional<Wish> wish() {
        return switch (brief.frame().arrangement()) {
            case UPRIGHT -> Optional.of(Wish.UPRIGHT);
            case COMPACT -> Optional.of(Wish.COMPACT);
            case SYMMETRIC -> Optional.of(Wish.SYMMETRIC);
            case SHALLOW -> Optional.of(Wish.SHALLOW);
            case UNPLACED -> Optional.empty();
        };
    }

    private Gaps gaps() {
        return new AxialSizes(brief).gaps();
    }

    private Envelope envelope(MovementParts placed) {
        long plate = nanometres(brief.frame().plate());
        if (waived.contains(Demand.FRAME)) {
            return new Envelope(
                    Nanometres.LONGEST,
                    Nanometres.LONGEST,
                    Nanometres.LONGEST,
                    plate,
                    Optional.empty(),
                    DialPlace.ANYWHERE);
        }
        Brief.Frame frame = brief.frame();
        return new Envelope(
                nanometres(frame.width()),
                nanometres(frame.height()),
                nanometres(frame.depth())
                        + 2 * plate
                        + placed.motion().map(this::beforeThePlate).orElse(0L),
                plate,
                frame.pillars()
                        .map(four -> new Pillars(
                                radius(four.diameter()), nanometres(four.sideInset()), nanometres(four.endInset()))),
                new DialPlace(length(frame.dialFromLeft()), length(frame.dialFromBottom())));
    }

    /** The two planes of the motion work, a gap and the end shake behind each, and a gap before them. */
    private long beforeThePlate(MotionSize size) {
        Gaps gaps = gaps();
        return 2 * gaps.spacing() + size.firstThickness() + size.secondThickness() + gaps.axial();
    }

    private static OptionalLong length(Optional<Quantity> length) {
        return length.map(TrainParts::nanometres).map(OptionalLong::of).orElse(OptionalLong.empty());
    }

    private Locks locks(Train train) {
        int meshes = train.meshes().size();
        Stream<DirectionLock> directions = IntStream.range(0, meshes)
                .boxed()
                .flatMap(mesh -> direction(mesh, MeshPlace.of(mesh, train.meshesAbove())));
        Stream<DirectionLock> minute = brief.locks().motionDirection().stream()
                .filter(angle -> motion.isPresent())
                .map(angle -> new DirectionLock(meshes, angle.si()));
        return new Locks(List.of(), Stream.concat(directions, minute).toList());
    }

    private Stream<DirectionLock> direction(int mesh, MeshPlace place) {
        return brief.locks().at(place).flatMap(MeshLock::direction).stream()
                .map(angle -> new DirectionLock(mesh, angle.si()));
    }
}
