// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fitting;

import static drumfall.solver.fitting.BriefFit.nanometres;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Brief.ArborBuild;
import drumfall.solver.brief.Brief.ArborKind;
import drumfall.solver.brief.Brief.BearingPlaces;
import drumfall.solver.fit.bore.Seating;
import drumfall.solver.fit.layer.LayerGrid;
import drumfall.solver.fit.layer.LayerRounding;
import drumfall.solver.fit.shake.ArborStack;
import drumfall.solver.fit.shake.Contribution;
import drumfall.solver.fit.shake.Direction;
import drumfall.solver.fit.shake.EndShake;
import drumfall.solver.fit.shake.ErrorShape;
import drumfall.solver.fit.shake.LayerRange;
import drumfall.solver.fit.shake.Sampling;
import drumfall.solver.fit.shake.ShakeBand;
import drumfall.solver.fit.shake.Temperatures;
import drumfall.solver.fitting.FittedArbor.Standing;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.Planes;
import drumfall.solver.layout.Span;
import drumfall.solver.layout.size.Face;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.rating.AxialSizes;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A placed movement with its plates apart by whole layers of its pillars, and every arbor fitted.
 *
 * @param depth between the plates, nm
 * @param arbors of the train from the drum, then the pallets', then the minute wheel's if there is motion work
 */
public record FittedMovement(long depth, List<FittedArbor> arbors) {
    /** Where chances are exact the sample only stands by. */
    private static final Sampling SAMPLE = new Sampling(1656, 100, true);

    private static final double ROOM = 20;

    /** Copies the list. */
    public FittedMovement {
        arbors = List.copyOf(arbors);
    }

    /**
     * Fits a placed train.
     *
     * @param rater rates against the brief
     * @param train the train
     * @param layout where its arbors stand
     * @param beyond how far rods and pillars reach beyond what they carry
     * @throws drumfall.solver.fit.FitException if no drill serves, or a height is below the first layer
     */
    public static FittedMovement of(TrainRater rater, Train train, Layout layout, Beyond beyond) {
        return new Fitter(rater, train, layout, beyond).fitted();
    }

    private static final class Fitter {
        private final TrainRater rater;
        private final Brief brief;
        private final Train train;
        private final Layout layout;
        private final Planes planes;
        private final BriefFit fit;
        private final LayerGrid grid;
        private final Beyond beyond;
        private final AxialSizes sizes;
        private final long depth;
        private final long plate;

        Fitter(TrainRater rater, Train train, Layout layout, Beyond beyond) {
            this.rater = rater;
            this.brief = rater.brief();
            this.train = train;
            this.layout = layout;
            this.planes = layout.planes();
            this.fit = new BriefFit(brief);
            this.grid = fit.grid();
            this.beyond = beyond;
            this.sizes = new AxialSizes(brief);
            this.plate = nanometres(brief.frame().plate());
            this.depth = depth();
        }

        /** Printed pillars are whole layers high; without them the frame is made to measure. */
        private long depth() {
            if (brief.frame().pillars().isEmpty()) {
                return planes.innerDepth();
            }
            long pockets = 2 * beyond.pocket();
            return grid.snap(planes.innerDepth() + pockets, LayerRounding.UP, "pillar")
                            .height()
                    - pockets;
        }

        FittedMovement fitted() {
            List<FittedArbor> arbors = new ArrayList<>();
            for (int arbor = 0; arbor <= train.meshes().size(); arbor++) {
                arbors.add(arbor(arbor));
            }
            arbors.add(pallets());
            layout.minutePlace().ifPresent(place -> arbors.add(minute(place)));
            return new FittedMovement(depth, arbors);
        }

        private FittedArbor arbor(int arbor) {
            String name = "arbor " + (arbor + 1);
            ArborBuild build = rater.build(WeightWalk.role(train, arbor));
            BearingPlaces bearings = build.bearings();
            return new FittedArbor(
                    name,
                    build,
                    layout.place(arbor),
                    rod(arbor),
                    Optional.of(hole(
                            name,
                            "front plate",
                            build,
                            bearings == BearingPlaces.FRONT || bearings == BearingPlaces.BOTH)),
                    Optional.of(hole(
                            name,
                            "back plate",
                            build,
                            bearings == BearingPlaces.REAR || bearings == BearingPlaces.BOTH)),
                    Optional.of(standing(arbor, name)));
        }

        /** The room of the motion work before the front plate. */
        private long before() {
            return Math.max(0, planes.depth() - planes.innerDepth() - 2 * plate);
        }

        /** Rods end level with the plates' outer faces but for those that work before the dial. */
        private long rod(int arbor) {
            long between = depth + 2 * plate;
            long before = before();
            OptionalInt seconds = brief.beat().secondsHand() ? train.going().secondsArbor() : OptionalInt.empty();
            if (arbor == 0) {
                return between + before + beyond.square();
            }
            boolean hands = arbor == train.meshesAbove() || (seconds.isPresent() && seconds.getAsInt() == arbor);
            return hands ? between + before + beyond.hands() : between;
        }

        /** On a fixed rod the bearings sit in what turns on it, and the plate holds the rod. */
        private PlateHole hole(String name, String where, ArborBuild build, boolean rolls) {
            String place = name + ", " + where;
            if (build.kind() == ArborKind.FIXED) {
                return new PlateHole(PlateHole.Use.HOLDING, fit.holding(place, build.diameter()), Optional.empty());
            }
            if (!rolls) {
                return running(place, build);
            }
            Optional<Seating.Rolling> seat = fit.seat(name, where, build);
            PlateHole.Use use = seat.isPresent() ? PlateHole.Use.SEAT : PlateHole.Use.UNKNOWN_SEAT;
            return new PlateHole(use, fit.running(place, build.diameter()), seat);
        }

        private PlateHole running(String place, ArborBuild build) {
            return new PlateHole(PlateHole.Use.RUNNING, fit.running(place, build.diameter()), Optional.empty());
        }

        /**
         * The wheel stands in the middle of its plane, so that it stays on a longer pinion, clear of shrouds and on the
         * pallets at either end of its shake; from it the leaves go to the end of the pinion's plane.
         */
        private Standing standing(int arbor, String name) {
            Span wheel = middle(planes.ofWheel(arbor), sizes.wheel());
            Span other = arbor == 0 ? planes.drum() : planes.ofPinion(arbor);
            Face toward = other.from() > wheel.from() ? Face.FRONT : Face.REAR;
            long parts = arbor == 0 ? great(wheel, other) : whole(wheel, other, name);
            long between = parts - sizes.wheel() - (arbor == 0 ? other.length() : 0);
            long back = spacer(Math.min(wheel.from(), other.from()));
            ShakeBand band = fit.band();
            long middle = (band.least() + band.most()) / 2;
            // A nanometre less, so that of two equally near heights the one that leaves more shake is taken.
            long front = spacer(depth - back - parts - middle - 1);
            return new Standing(parts, between, toward, back, front, shake(name, parts, back, front));
        }

        private static Span middle(Span plane, long thickness) {
            long from = plane.from() + (plane.length() - thickness) / 2;
            return new Span(from, from + thickness);
        }

        /** Wheel and pinion are one print. */
        private long whole(Span wheel, Span pinion, String name) {
            long from = Math.min(wheel.from(), pinion.from());
            long to = Math.max(wheel.to(), pinion.to());
            return grid.snap(to - from, LayerRounding.NEAREST, name).height();
        }

        /** Between great wheel and drum stands the ratchet. */
        private long great(Span wheel, Span drum) {
            long room = grid.snap(wheel.gapTo(drum), LayerRounding.NEAREST, "ratchet")
                    .height();
            return sizes.wheel() + room + drum.length();
        }

        /** Too little room for a first layer is left to the end shake. */
        private long spacer(long room) {
            return room < grid.first()
                    ? 0
                    : grid.snap(room, LayerRounding.NEAREST, "spacer").height();
        }

        private EndShake shake(String name, long parts, long back, long front) {
            List<Contribution> stack = new ArrayList<>();
            stack.add(part("frame", Direction.OPENS, depth, Optional.empty()));
            stack.add(part("parts", Direction.FILLS, parts, Optional.empty()));
            addSpacer("back spacer", back, stack);
            addSpacer("front spacer", front, stack);
            return EndShake.of(new ArborStack(name, stack), fit.band(), Temperatures.steady(ROOM), SAMPLE);
        }

        private void addSpacer(String name, long height, List<Contribution> stack) {
            if (height > 0) {
                long least = Math.max(grid.first(), fit.heightError() + 1);
                stack.add(part(
                        name,
                        Direction.FILLS,
                        height,
                        height < least
                                ? Optional.empty()
                                : Optional.of(new LayerRange(grid.layer(), least, Math.max(height, depth)))));
            }
        }

        private Contribution part(String name, Direction direction, long length, Optional<LayerRange> range) {
            long error = Math.min(length, fit.heightError());
            return new Contribution(name, direction, length, error, error, 1, 0, ErrorShape.UNIFORM, range);
        }

        /** The pallet arbor is a rod like the escape arbor's that turns in plain bores. */
        private FittedArbor pallets() {
            ArborBuild build = turning(brief.arbors().escape());
            return new FittedArbor(
                    "pallet arbor",
                    build,
                    layout.palletPlace(),
                    depth + 2 * plate,
                    Optional.of(running("pallet arbor, front plate", build)),
                    Optional.of(running("pallet arbor, back plate", build)),
                    Optional.empty());
        }

        /** The minute wheel turns on a stud that the front plate holds. */
        private FittedArbor minute(drumfall.solver.layout.Place place) {
            ArborBuild build = brief.arbors().intermediate();
            long beyondPlates = planes.depth() - planes.innerDepth() - 2 * plate;
            return new FittedArbor(
                    "minute stud",
                    new ArborBuild(ArborKind.FIXED, build.diameter(), BearingPlaces.NONE, Optional.empty()),
                    place,
                    plate + beyondPlates,
                    Optional.of(new PlateHole(
                            PlateHole.Use.HOLDING,
                            fit.holding("minute stud, front plate", build.diameter()),
                            Optional.empty())),
                    Optional.empty(),
                    Optional.empty());
        }

        private static ArborBuild turning(ArborBuild build) {
            return new ArborBuild(ArborKind.TURNING, build.diameter(), BearingPlaces.NONE, Optional.empty());
        }
    }
}
