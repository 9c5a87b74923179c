// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.MeshPlace;
import drumfall.solver.power.ArborNeed;
import drumfall.solver.power.PowerPath;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.rating.DemandFigure;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.WeightBesideBob;
import drumfall.solver.train.GoingTrain;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import drumfall.ui.wording.FigureWording;
import java.util.OptionalDouble;

/** Every figure of one train, as JSON. */
final class RatingJson {
    private RatingJson() {}

    static ObjectNode of(TrainRater rater, String name, Rating rating, TrainPlaces places, OptionalDouble weight) {
        ObjectNode document = JsonOutput.document("drumfall-rating");
        document.put("brief", rater.brief().name());
        document.put("feasible", rating.feasible());
        TrainFields.put(document, rater.brief(), name, rating, places);
        PlacesJson.conflicts(document.putArray("conflicts"), places);
        ArrayNode demands = document.putArray("demands");
        rating.demands().forEach(demand -> put(demands.addObject(), demand));
        beat(document, rater, rating.train());
        document.put("teeth", rater.movement().teeth().label());
        meshes(document.putArray("meshes"), rating);
        arbors(document.putArray("arbors"), rating);
        JsonOutput.put(
                document,
                "leastWeightPlaced_kg",
                places.leastWeight(rater, rating.train()).orElse(Double.POSITIVE_INFINITY));
        places.beside(rater, rating.train(), weight)
                .ifPresent(beside -> beside(document.putObject("weightBesideBob"), beside));
        power(document, rating);
        weight.ifPresent(hung -> PowerJson.put(document, rater, rating.train(), hung));
        CardJson.put(document.putArray("figures"), new AllCards(rater, rating, places.book(rater, rating), weight));
        return document;
    }

    private static void put(ObjectNode group, DemandFigure figure) {
        group.put("demand", JsonOutput.word(figure.demand()));
        group.put("pointer", figure.demand().pointer());
        group.put("place", figure.place());
        group.put("unit", figure.dimension().siSymbol());
        JsonOutput.put(group, "figure_SI", figure.figure());
        figure.from().ifPresent(from -> group.put("from_SI", from));
        figure.to().ifPresent(to -> group.put("to_SI", to));
        group.put("met", figure.met());
    }

    private static void beat(ObjectNode document, TrainRater rater, Train train) {
        GoingTrain going = train.going();
        var fall = rater.brief().fall();
        document.put("beatsPerHourExact", FigureWording.exact(going.beatsPerHour()));
        document.put("secondsPerBeatExact", FigureWording.exact(going.secondsPerBeat()));
        document.put(
                "secondsArbor",
                going.secondsArbor().isPresent() ? going.secondsArbor().getAsInt() + 1 : null);
        document.put("lineLeavesDrum", going.lineOnTheRight() ? "right" : "left");
        document.put(
                "lineLength_m",
                rater.limits()
                        .drumRun(train.drumDiameter(), train.reeving())
                        .lineLength(fall.topLead().si(), fall.tieOff().si()));
    }

    private static void meshes(ArrayNode meshes, Rating rating) {
        Train train = rating.train();
        for (int i = 0; i < train.meshes().size(); i++) {
            Mesh mesh = train.meshes().get(i);
            ObjectNode group = meshes.addObject();
            group.put("place", MeshPlace.of(i, train.meshesAbove()).toString());
            group.put("ratioExact", FigureWording.exact(mesh.counts().ratio()));
            group.put("hunting", mesh.counts().hunts());
            group.put("centreDistance_m", mesh.centreDistance());
            JsonOutput.put(
                    group,
                    "efficiencyRunning",
                    rating.weight().running().arbors().get(i).passed());
            JsonOutput.put(
                    group,
                    "efficiencyBinding",
                    rating.weight().binding().arbors().get(i).passed());
        }
    }

    private static void arbors(ArrayNode arbors, Rating rating) {
        Train train = rating.train();
        GoingTrain going = train.going();
        for (int arbor = 0; arbor <= going.escapeArbor(); arbor++) {
            ObjectNode group = arbors.addObject();
            group.put("arbor", arbor + 1);
            group.put("role", JsonOutput.word(WeightWalk.role(train, arbor)));
            group.put("hoursPerTurnExact", FigureWording.exact(going.hoursPerTurn(arbor)));
            group.put("clockwise", going.clockwise(arbor));
            needs(group, "Running", rating.weight().running().arbors().get(arbor));
            needs(group, "Binding", rating.weight().binding().arbors().get(arbor));
        }
    }

    private static void needs(ObjectNode group, String criterion, ArborNeed need) {
        JsonOutput.put(group, "out" + criterion + "_Nm", need.out());
        JsonOutput.put(group, "load" + criterion + "_Nm", need.load());
    }

    private static void beside(ObjectNode group, WeightBesideBob beside) {
        group.put("verdict", JsonOutput.word(beside.verdict()));
        group.put("gap_m", beside.gap());
        group.put("aside_m", beside.clearance().aside());
        group.put("across_m", beside.planeKnown() ? beside.clearance().across() : null);
        group.put("upright_m", beside.clearance().upright());
        group.put("wanted_m", beside.wanted());
        group.put("furtherAside_m", beside.furtherAside());
        group.put("leastBehindPlate_m", beside.leastBehindPlate());
    }

    private static void power(ObjectNode document, Rating rating) {
        var need = rating.weight().need();
        document.put("decidingCriterion", JsonOutput.word(rating.weight().deciding()));
        JsonOutput.put(document, "escapeTorque_Nm", need.torque());
        JsonOutput.put(document, "semiArc_rad", need.semiArc());
        JsonOutput.put(document, "pendulumMemory_s", need.memory());
        JsonOutput.put(document, "pendulumLoss_J", need.pendulumLoss());
        path(document, "Running", rating.weight().running());
        path(document, "Binding", rating.weight().binding());
    }

    private static void path(ObjectNode document, String criterion, PowerPath path) {
        JsonOutput.put(document, "tension" + criterion + "_N", path.tension());
        JsonOutput.put(document, "weight" + criterion + "_kg", path.weight());
    }
}
