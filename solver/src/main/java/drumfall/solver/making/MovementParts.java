// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.brief.Brief;
import drumfall.solver.fitting.FittedMovement;
import drumfall.solver.layout.Layout;
import drumfall.solver.making.solid.Box;
import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.power.Movement;
import drumfall.solver.rating.MotionChoice;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * All printed parts of a movement.
 *
 * <p>The going train, escapement, drum and winding, weight and pendulum follow from brief, train and sizes. Motion work and
 * hands are made if a motion work is given, plates, pillars and spacers if places are given, the weight's shell if a
 * weight drives the train. Which way the side that lies up on the bed faces in the clock stands with each part.
 *
 * @param brief the brief
 * @param train the train
 * @param movement the brief's movement, which chooses the teeth
 * @param weight shot for the weight, kg; infinite if no weight drives the train
 * @param sizes what neither brief nor train holds
 * @param motion the motion work, if there is one
 * @param places where the arbors stand, if that is known
 */
public record MovementParts(
        Brief brief,
        Train train,
        Movement movement,
        double weight,
        MakingSizes sizes,
        Optional<MotionTeeth> motion,
        Optional<FramePlaces> places) {
    /**
     * The parts that need neither motion work nor places.
     *
     * @param brief the brief
     * @param rating the train, rated against it
     * @param movement the brief's movement
     * @param sizes what neither brief nor train holds
     */
    public static MovementParts of(Brief brief, Rating rating, Movement movement, MakingSizes sizes) {
        return new MovementParts(
                brief, rating.train(), movement, rating.recommendedWeight(), sizes, Optional.empty(), Optional.empty());
    }

    /**
     * All parts of a train in customary sizes: with motion work and hands if the brief asks for them and some have teeth that
     * print, with plates, pillars and spacers if the arbors have places.
     *
     * @param rater rates against the brief
     * @param rating the train, rated against it
     * @param layout where its arbors stand
     * @throws drumfall.solver.fit.FitException if a hole or a height cannot be made
     */
    public static MovementParts of(TrainRater rater, Rating rating, Optional<Layout> layout) {
        MakingSizes sizes = MakingSizes.customary();
        MovementParts going = of(rater.brief(), rating, rater.movement(), sizes);
        MovementParts hands = MotionChoice.of(rater.brief(), rater.movement().teeth())
                .map(work -> going.with(MotionTeeth.of(work, rater.movement())))
                .orElse(going);
        return layout.map(placed -> hands.with(FramePlaces.of(
                        placed, FittedMovement.of(rater, rating.train(), placed, sizes.beyond(rater.brief())))))
                .orElse(hands);
    }

    /** The same with motion work and hands. */
    public MovementParts with(MotionTeeth motionTeeth) {
        return new MovementParts(brief, train, movement, weight, sizes, Optional.of(motionTeeth), places);
    }

    /** The same with plates, pillars and spacers. */
    public MovementParts with(FramePlaces framePlaces) {
        return new MovementParts(brief, train, movement, weight, sizes, motion, Optional.of(framePlaces));
    }

    /**
     * The parts, from the drum downwards, then motion work, frame, weight and pendulum.
     *
     * @throws SizeLimitException if a size cannot be made or a part is larger than the printer's bed
     * @throws IllegalArgumentException if a mesh has no teeth that print
     */
    public List<MovementPart> parts() {
        Workshop shop = new Workshop(brief, train, movement, sizes, places);
        WindingParts winding = new WindingParts(shop);
        EscapementParts escapement = new EscapementParts(shop);
        List<MovementPart> parts = new ArrayList<>(winding.parts());
        parts.addAll(new TrainParts(shop, winding, escapement).parts());
        parts.addAll(escapement.parts());
        motion.ifPresent(teeth -> parts.addAll(new DialParts(shop, teeth).parts()));
        places.ifPresent(known -> parts.addAll(new FrameParts(shop, known).parts()));
        if (Double.isFinite(weight)) {
            parts.addAll(new WeightParts(shop, weight).parts());
        }
        parts.addAll(new SwingParts(shop).parts());
        parts.forEach(this::requireBed);
        return List.copyOf(parts);
    }

    /**
     * The parts that stand before the front plate alone: winding square, motion work and hands, the same as among all
     * {@link #parts}. Whether they go onto the printer's bed is not asked.
     *
     * @throws SizeLimitException if a size cannot be made
     */
    public List<MovementPart> beforePlate() {
        Workshop shop = new Workshop(brief, train, movement, sizes, places);
        List<MovementPart> parts = new ArrayList<>(List.of(new WindingParts(shop).square()));
        motion.ifPresent(teeth -> parts.addAll(new DialParts(shop, teeth).parts()));
        return List.copyOf(parts);
    }

    /**
     * Volume of the printed parts that stand on each arbor of the train, cubic metres from the drum downwards: wheel with its
     * arms, pinion, spacers; on the drum arbor also drum, ratchet and square, on the centre arbor also what it carries before
     * the plates.
     *
     * @param parts the movement's parts
     */
    public List<Double> arborVolumes(List<MovementPart> parts) {
        return IntStream.rangeClosed(0, train.meshes().size())
                .mapToObj(arbor -> parts.stream()
                        .filter(part -> part.mount().arbor().equals(OptionalInt.of(arbor)))
                        .mapToDouble(part -> part.count() * part.volume())
                        .sum())
                .toList();
    }

    private void requireBed(MovementPart part) {
        Box box = part.solid().box();
        double small = Math.min(
                brief.printer().bedWidth().si(), brief.printer().bedDepth().si());
        double large = Math.max(
                brief.printer().bedWidth().si(), brief.printer().bedDepth().si());
        String reason = "the printer's bed, since it cannot be split";
        SizeLimitException.atMost(
                "longer side of the " + words(part), Math.max(box.width(), box.depth()) / 1e3, large, reason);
        SizeLimitException.atMost(
                "shorter side of the " + words(part), Math.min(box.width(), box.depth()) / 1e3, small, reason);
    }

    private static String words(MovementPart part) {
        return part.name().replace('-', ' ');
    }
}
