// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.solver.fitting.FittedArbor;
import drumfall.solver.fitting.FittedMovement;
import drumfall.solver.layout.Layout;
import drumfall.solver.making.BeforePlate;
import drumfall.solver.making.BeforePlate.DialRoom;
import drumfall.solver.making.BeforePlate.Level;
import drumfall.solver.making.FramePlaces;
import drumfall.solver.making.MakingSizes;
import drumfall.solver.making.MovementPart;
import drumfall.solver.making.MovementParts;
import drumfall.solver.making.solid.Box;
import drumfall.solver.making.solid.Slab;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What stands before the front plate on the arbors of a placed train: winding square, motion work and hands as they are made,
 * the rods that reach there, and the room that is left for a dial. Millimetres before the front face of the front plate.
 *
 * @param pieces the parts with an arbor of the train and their rods
 * @param dial room for a dial, empty without motion work
 * @param room what all of it takes, 0 if nothing stands there
 * @param refusal why none of it can be made; empty if it can
 */
public record PlacedFront(List<Piece> pieces, Optional<DialSpan> dial, double room, Optional<String> refusal) {
    /** Nothing stands there. */
    public static final PlacedFront NONE = new PlacedFront(List.of(), Optional.empty(), 0, Optional.empty());

    private static final double MILLIMETRES = 1e3;
    private static final double MILLIMETRES_A_NANOMETRE = 1e-6;

    /** Copies the list. */
    public PlacedFront {
        pieces = List.copyOf(pieces);
    }

    /** What a piece is. */
    public enum Kind {
        /** A hand, turned towards the drum. */
        HAND,
        /** Another printed part. */
        PART,
        /** A rod. */
        ROD,
        /** The rod that a seconds hand goes on; no such hand is made. */
        SECONDS_ROD
    }

    /**
     * A part or a rod.
     *
     * @param kind what it is
     * @param name of the printed part; empty for a rod
     * @param arbor its arbor, 0 at the drum
     * @param slabs what it is made of, those nearest to the plate first, at least one
     */
    public record Piece(Kind kind, String name, int arbor, List<Slice> slabs) {
        /** Copies the list. */
        public Piece {
            slabs = List.copyOf(slabs);
        }

        /** Where it begins. */
        public double from() {
            return slabs.get(0).from();
        }

        /** Where it ends. */
        public double to() {
            return slabs.get(slabs.size() - 1).to();
        }

        /** How far it reaches from its axis towards the drum: a hand's length. */
        public double reach() {
            return -slabs.stream().mapToDouble(Slice::left).min().orElseThrow();
        }

        /** How wide it is. */
        public double across() {
            return reach() + slabs.stream().mapToDouble(Slice::right).max().orElseThrow();
        }
    }

    /**
     * A piece of even width.
     *
     * @param left where it ends towards the drum, counted from its axis: negative
     * @param right where it ends on the other side
     * @param from where it begins
     * @param to where it ends
     */
    public record Slice(double left, double right, double from, double to) {}

    /**
     * Room along the arbors.
     *
     * @param from where it begins
     * @param to where it ends
     */
    public record DialSpan(double from, double to) {
        static DialSpan of(DialRoom room) {
            return new DialSpan(MILLIMETRES * room.from(), MILLIMETRES * room.to());
        }
    }

    /** What stands before the plate of a placed train. */
    static PlacedFront of(TrainRater rater, Rating rating, Layout layout) {
        try {
            return made(rater, rating, layout);
        } catch (IllegalArgumentException refused) {
            return new PlacedFront(List.of(), Optional.empty(), 0, Optional.of(refused.getMessage()));
        }
    }

    private static PlacedFront made(TrainRater rater, Rating rating, Layout layout) {
        Brief brief = rater.brief();
        MovementParts movement = MovementParts.of(rater, rating, Optional.of(layout));
        List<MovementPart> parts = movement.beforePlate();
        double plate = brief.frame().plate().si();
        BeforePlate before =
                BeforePlate.of(parts, movement.places().map(FramePlaces::depth).orElseThrow() + plate);
        List<Piece> pieces = new ArrayList<>(rods(rater, rating.train(), layout));
        for (Level level : before.levels()) {
            parts.stream()
                    .filter(part -> part.name().equals(level.part()))
                    .filter(part -> part.mount().arbor().isPresent())
                    .forEach(part -> pieces.add(piece(part, MILLIMETRES * level.from())));
        }
        return new PlacedFront(pieces, before.dial().map(DialSpan::of), MILLIMETRES * before.room(), Optional.empty());
    }

    /** Parts are turned a quarter, so that hands, which are made upright, lie in the section, towards the drum. */
    private static Piece piece(MovementPart part, double rear) {
        return new Piece(
                part.name().endsWith("-hand") ? Kind.HAND : Kind.PART,
                part.name(),
                part.mount().arbor().getAsInt(),
                part.solid().slabs().stream().map(slab -> slice(slab, rear)).toList());
    }

    private static Slice slice(Slab slab, double rear) {
        Box box = slab.region().box();
        return new Slice(-box.top(), -box.bottom(), rear + slab.from(), rear + slab.to());
    }

    /** The rods of the train that reach beyond the front plate. */
    private static List<Piece> rods(TrainRater rater, Train train, Layout layout) {
        Brief brief = rater.brief();
        FittedMovement fitted =
                FittedMovement.of(rater, train, layout, MakingSizes.customary().beyond(brief));
        double plates = MILLIMETRES_A_NANOMETRE * fitted.depth()
                + 2 * MILLIMETRES * brief.frame().plate().si();
        OptionalInt seconds = brief.beat().secondsHand() ? train.going().secondsArbor() : OptionalInt.empty();
        List<Piece> rods = new ArrayList<>();
        for (int arbor = 0; arbor <= train.meshes().size(); arbor++) {
            FittedArbor rod = fitted.arbors().get(arbor);
            double end = MILLIMETRES_A_NANOMETRE * rod.length() - plates;
            double radius = MILLIMETRES * rod.build().diameter().si() / 2;
            if (end > MILLIMETRES_A_NANOMETRE) {
                Kind kind = seconds.isPresent() && seconds.getAsInt() == arbor ? Kind.SECONDS_ROD : Kind.ROD;
                rods.add(new Piece(kind, "", arbor, List.of(new Slice(-radius, radius, 0, end))));
            }
        }
        return rods;
    }
}
