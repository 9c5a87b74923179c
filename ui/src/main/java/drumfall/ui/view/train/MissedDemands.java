// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.DemandFigure;
import drumfall.solver.rating.Rating;
import drumfall.solver.train.Train;
import drumfall.ui.presenter.StripFigure;
import drumfall.ui.presenter.StripFigure.Kind;
import drumfall.ui.wording.FigureWording;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The missed demands of a train, each as a sentence and beside the figure that it speaks of.
 *
 * @param rating the train
 * @param figures how figures are written
 */
record MissedDemands(Rating rating, Figures figures) {
    private static final Map<Demand, StripReading.Kind> READINGS = Map.of(
            Demand.RUN_AT_LEAST, StripReading.Kind.RUN,
            Demand.RUN_AT_MOST, StripReading.Kind.RUN,
            Demand.WEIGHT_LIMIT, StripReading.Kind.WEIGHT,
            Demand.LINE_LOAD, StripReading.Kind.WEIGHT,
            Demand.BUILDERS, StripReading.Kind.WEIGHT,
            Demand.PENDULUM_LENGTH, StripReading.Kind.PENDULUM,
            Demand.BEATS_PER_HOUR, StripReading.Kind.BEATS_PER_HOUR,
            Demand.SECONDS_HAND, StripReading.Kind.BEAT);

    /** One sentence for each missed demand, in the order of the demands. */
    List<String> sentences() {
        return rating.missed().map(this::sentence).distinct().toList();
    }

    boolean on(StripReading reading) {
        return rating.missed().anyMatch(missed -> READINGS.get(missed.demand()) == reading.kind());
    }

    boolean on(StripFigure figure) {
        return rating.missed()
                .anyMatch(missed -> subject(missed).filter(figure::equals).isPresent());
    }

    /** The figure of the strip that a missed demand is written beside; empty if it is written beside a reading. */
    Optional<StripFigure> subject(DemandFigure missed) {
        return switch (missed.demand()) {
            case SINGLE_LAYER, RATCHET, DRUM_SIZE -> Optional.of(StripFigure.of(Kind.DRUM));
            case FALLS -> Optional.of(StripFigure.of(Kind.FALLS));
            case ARC, ESCAPE_TEETH -> Optional.of(StripFigure.of(Kind.ESCAPE_TEETH));
            case MESHES ->
                Optional.of(StripFigure.of(missed.place().equals("above") ? Kind.MESHES_ABOVE : Kind.MESHES_BELOW));
            case WHEEL_TEETH, STEPS_UP, PRINT_BED, FRAME -> ofMesh(Kind.WHEEL, missed.place());
            case LEAVES -> ofMesh(Kind.LEAVES, missed.place());
            case MODULE, TOOTH_SIZE, TOOTH_BENDING -> ofMesh(Kind.MODULE, missed.place());
            case CLEARANCE -> ofClearance(missed.place());
            case LOCK -> ofLock(missed.place());
            default -> Optional.empty();
        };
    }

    private Optional<StripFigure> ofMesh(Kind kind, String place) {
        return places().filter(found -> place.startsWith(found.toString()))
                .findFirst()
                .map(found -> StripFigure.of(kind, found));
    }

    private java.util.stream.Stream<MeshPlace> places() {
        Train train = rating.train();
        return IntStream.range(0, train.meshes().size()).mapToObj(i -> MeshPlace.of(i, train.meshesAbove()));
    }

    private Optional<StripFigure> ofClearance(String place) {
        if (place.startsWith("drum flange")) {
            return Optional.of(StripFigure.of(Kind.DRUM));
        }
        if (place.startsWith("escape wheel")) {
            return Optional.of(StripFigure.of(Kind.ESCAPE_TEETH));
        }
        return IntStream.range(0, rating.train().meshes().size())
                .filter(i -> place.startsWith("wheel on arbor " + (i + 1) + " "))
                .mapToObj(i -> StripFigure.of(
                        Kind.WHEEL, MeshPlace.of(i, rating.train().meshesAbove())))
                .findFirst();
    }

    private Optional<StripFigure> ofLock(String place) {
        return switch (place) {
            case "meshes above" -> Optional.of(StripFigure.of(Kind.MESHES_ABOVE));
            case "meshes below" -> Optional.of(StripFigure.of(Kind.MESHES_BELOW));
            case "drum diameter" -> Optional.of(StripFigure.of(Kind.DRUM));
            case "falls" -> Optional.of(StripFigure.of(Kind.FALLS));
            case "escape wheel" -> Optional.of(StripFigure.of(Kind.ESCAPE_TEETH));
            case "motion distance" -> Optional.of(StripFigure.of(Kind.MOTION_DISTANCE));
            case "pallet distance" -> Optional.of(StripFigure.of(Kind.PALLET_DISTANCE));
            default -> ofMesh(lockedKind(place), place);
        };
    }

    private static Kind lockedKind(String place) {
        if (place.endsWith("wheel")) {
            return Kind.WHEEL;
        }
        if (place.endsWith("distance")) {
            return Kind.DISTANCE;
        }
        return place.endsWith("leaves") ? Kind.LEAVES : Kind.MODULE;
    }

    private String sentence(DemandFigure missed) {
        return TrainText.of(
                "missed." + missed.demand(),
                where(missed),
                shown(missed.demand(), missed.figure()),
                missed.from().isPresent() ? shown(missed.demand(), missed.from().getAsDouble()) : "",
                missed.to().isPresent() ? shown(missed.demand(), missed.to().getAsDouble()) : "");
    }

    private String where(DemandFigure missed) {
        return missed.demand() == Demand.LOCK ? subject(missed).map(this::name).orElse(missed.place()) : mesh(missed);
    }

    private String name(StripFigure figure) {
        int meshesAbove = rating.train().meshesAbove();
        return TrainText.of(
                "name." + figure.kind(),
                figure.place()
                        .map(place -> StripValues.number(place, meshesAbove))
                        .orElse(0));
    }

    private String mesh(DemandFigure missed) {
        return places().filter(place -> missed.place().startsWith(place.toString()))
                .findFirst()
                .map(place -> TrainText.of(
                        "mesh", StripValues.number(place, rating.train().meshesAbove())))
                .orElse(missed.place());
    }

    private String shown(Demand demand, double figure) {
        Dimension dimension = demand.dimension();
        if (FigureWording.isShare(demand)) {
            return FigureWording.percent(figure);
        }
        return demand == Demand.LOCK ? "" : figures.of(dimension, figure).text();
    }
}
