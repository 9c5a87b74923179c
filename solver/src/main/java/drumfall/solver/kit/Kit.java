// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.kit;

import drumfall.solver.brief.Brief;
import drumfall.solver.fit.FitException;
import drumfall.solver.fit.cutting.ArborPiece;
import drumfall.solver.fit.cutting.CuttingPlan;
import drumfall.solver.fit.cutting.RodStock;
import drumfall.solver.fitting.FittedArbor;
import drumfall.solver.fitting.FittedMovement;
import drumfall.solver.fitting.PlateHole;
import drumfall.solver.layout.Box;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.size.Nanometres;
import drumfall.solver.making.BeforePlate;
import drumfall.solver.making.Bob;
import drumfall.solver.making.MakingSizes;
import drumfall.solver.making.MovementPart;
import drumfall.solver.making.MovementParts;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;

/**
 * All that a clock is built from.
 *
 * @param rater rates against the brief
 * @param rating the train
 * @param parts the printed parts
 * @param layout where its arbors stand, if they have places
 * @param fitted rods, holes and end shakes; empty without places
 */
public record Kit(
        TrainRater rater,
        Rating rating,
        List<MovementPart> parts,
        Optional<Layout> layout,
        Optional<FittedMovement> fitted) {
    /** Copies the list. */
    public Kit {
        parts = List.copyOf(parts);
    }

    /**
     * The kit of a train.
     *
     * @param rater rates against the brief
     * @param rating the train, rated against it
     * @param layout where its arbors stand, if they have places
     * @throws drumfall.solver.making.solid.SizeLimitException if a part cannot be made
     * @throws drumfall.solver.fit.FitException if a hole or a height cannot be made
     */
    public static Kit of(TrainRater rater, Rating rating, Optional<Layout> layout) {
        return new Kit(
                rater,
                rating,
                MovementParts.of(rater, rating, layout).parts(),
                layout,
                layout.map(placed -> FittedMovement.of(
                        rater, rating.train(), placed, MakingSizes.customary().beyond(rater.brief()))));
    }

    /** The brief. */
    public Brief brief() {
        return rater.brief();
    }

    /** Mass of all printed parts, kg. */
    public double printedMass() {
        return parts.stream().mapToDouble(part -> part.count() * part.mass()).sum();
    }

    /** The arbors to cut for one clock; none without places. */
    public List<ArborPiece> pieces() {
        return fitted.map(movement -> movement.arbors().stream()
                        .map(arbor -> new ArborPiece(arbor.name(), rod(arbor), arbor.length(), 1))
                        .toList())
                .orElse(List.of());
    }

    private static long rod(FittedArbor arbor) {
        return Nanometres.of(arbor.build().diameter().si());
    }

    /**
     * How to cut the arbors of all clocks from stock rods; empty without places.
     *
     * @throws drumfall.solver.fit.FitException if a rod is shorter than an arbor
     */
    public Optional<CuttingPlan> cutting() {
        List<ArborPiece> pieces = pieces();
        if (pieces.isEmpty()) {
            return Optional.empty();
        }
        long length =
                drumfall.solver.fit.Nanometres.exact(brief().fit().stockRod().exact());
        requireLongest(pieces, length);
        List<RodStock> stock = pieces.stream()
                .map(ArborPiece::diameter)
                .distinct()
                .map(diameter -> new RodStock(diameter, length))
                .toList();
        return Optional.of(CuttingPlan.of(
                stock,
                pieces,
                brief().fit().kits(),
                Nanometres.of(brief().fit().sawCut().si())));
    }

    /** The plan refuses the first arbor that a rod is too short for; what helps is a rod for the longest. */
    private static void requireLongest(List<ArborPiece> pieces, long rod) {
        ArborPiece longest = Collections.max(pieces, Comparator.comparingLong(ArborPiece::length));
        if (longest.length() > rod) {
            String needed = drumfall.solver.fit.Nanometres.text(longest.length());
            throw FitException.refused(
                    "stock rod",
                    drumfall.solver.fit.Nanometres.text(rod),
                    "the brief",
                    "be at least as long as the longest arbor (" + longest.name() + "), " + needed,
                    "take rods of " + needed);
        }
    }

    /** What stands before the front plate; empty without places. */
    public Optional<BeforePlate> beforePlate() {
        return fitted.map(movement -> BeforePlate.of(
                parts, 1e-9 * movement.depth() + brief().frame().plate().si()));
    }

    /** The holes of both plates, the front plate's first; none without places. */
    public List<HoleRow> holes() {
        List<HoleRow> rows = new ArrayList<>();
        fitted.ifPresent(movement -> {
            addHoles(HoleRow.Plate.FRONT, FittedArbor::front, movement, rows);
            addHoles(HoleRow.Plate.BACK, FittedArbor::back, movement, rows);
        });
        return rows;
    }

    private void addHoles(
            HoleRow.Plate plate,
            Function<FittedArbor, Optional<PlateHole>> side,
            FittedMovement movement,
            List<HoleRow> rows) {
        Box frame = layout.orElseThrow().frame();
        int number = 0;
        for (FittedArbor arbor : movement.arbors()) {
            Optional<PlateHole> hole = side.apply(arbor);
            if (hole.isPresent()) {
                number++;
                rows.add(row(plate, number, arbor, hole.get(), frame));
            }
        }
    }

    private static HoleRow row(HoleRow.Plate plate, int number, FittedArbor arbor, PlateHole hole, Box frame) {
        return new HoleRow(
                plate,
                number,
                arbor.name(),
                hole.use(),
                arbor.place().x(),
                arbor.place().y(),
                arbor.place().x() - frame.left(),
                arbor.place().y() - frame.bottom(),
                hole.through().drawn(),
                hole.through().drill().label(),
                hole.seat().map(seat -> OptionalLong.of(seat.hole().drawn())).orElse(OptionalLong.empty()),
                hole.seat().map(seat -> seat.hole().drill().label()).orElse(""),
                hole.seat().map(seat -> seat.depth().height()).orElse(0L));
    }

    /**
     * The bob of the brief's mass.
     *
     * @throws IllegalArgumentException if none can be made
     */
    public Bob bob() {
        return Bob.of(brief(), MakingSizes.customary());
    }

    /** How far the run-down weight hangs below the drum's arbor; empty if no weight drives the train. */
    public Optional<Hanging> hanging() {
        return parts.stream()
                .filter(part -> part.name().equals("weight-shell"))
                .findFirst()
                .map(shell -> new Hanging(
                        brief().fall().topLead().si(),
                        brief().fall().height().si(),
                        shell.height() + MakingSizes.customary().weight().can().wall(),
                        part("weight-pulley")
                                .map(pulley -> pulley.solid().box().depth() / 1e3)
                                .orElse(0.0)));
    }

    private Optional<MovementPart> part(String name) {
        return parts.stream().filter(part -> part.name().equals(name)).findFirst();
    }

    /** The same train with fewer or more rolling bearings. */
    public Builds builds() {
        return Builds.of(rater, rating.train(), layout);
    }

    /** What is to be bought. */
    public List<Item> shopping() {
        return new Shopping(this).items();
    }
}
