// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.power.answers.ArcCurve;
import drumfall.solver.power.answers.Coasting;
import drumfall.solver.power.answers.FreeSpin;
import drumfall.solver.power.answers.HangingShock;
import drumfall.solver.power.answers.LineBend;
import drumfall.solver.power.answers.RatchetHold;
import drumfall.solver.power.answers.RodBound;
import drumfall.solver.power.answers.WallMoment;
import drumfall.solver.power.answers.Winding;
import drumfall.solver.power.books.BookEntry;
import drumfall.solver.power.books.PowerBooks;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.answers.Change;
import drumfall.solver.rating.answers.PowerAnswers;
import drumfall.solver.rating.answers.WeightChance;
import drumfall.solver.train.Train;
import java.util.List;

/** What a weight does to a train, as JSON: the books, the answers and how surely it runs. */
final class PowerJson {
    private static final double[] SHARES = {0.05, 0.25, 0.5, 0.75, 0.9, 0.95, 0.99};

    private PowerJson() {}

    static void put(ObjectNode document, TrainRater rater, Train train, double weight) {
        PowerAnswers answers = new PowerAnswers(rater, train, weight);
        document.put("hangingWeight_kg", weight);
        books(document.putObject("books"), answers.books());
        answers(document.putObject("answers"), answers);
        chance(document.putObject("chance"), WeightChance.of(rater, train, WeightChance.USUAL_TRIALS), weight);
    }

    private static void books(ObjectNode group, PowerBooks books) {
        group.put("weightPower_W", books.weightPower());
        group.put("semiArc_rad", books.semiArc());
        group.put("friction_W", books.friction());
        group.put("imbalance", books.imbalance());
        ArrayNode entries = group.putArray("entries");
        for (BookEntry entry : books.entries()) {
            ObjectNode line = entries.addObject();
            line.put("place", JsonOutput.word(entry.place()));
            line.put("number", entry.number() + 1);
            line.put("power_W", entry.power());
            line.put("share", books.share(entry));
            line.put("shareOfFriction", entry.place().friction() ? books.shareOfFriction(entry) : 0);
        }
        ArrayNode arbors = group.putArray("arbors");
        for (int i = 0; i < books.handedOn().size(); i++) {
            ObjectNode line = arbors.addObject();
            line.put("arbor", i + 1);
            line.put("given_Nm", books.torques().get(i).given());
            line.put("handedOn_Nm", books.torques().get(i).out());
            line.put("handedOn_W", books.handedOn().get(i));
        }
    }

    private static void answers(ObjectNode group, PowerAnswers answers) {
        changes(group.putArray("changes"), answers.changes());
        freeSpins(group.putArray("freeSpins"), answers.freeSpins());
        coasting(group.putObject("coasting"), answers.coasting());
        winding(group.putObject("winding"), answers.winding());
        arcs(group.putArray("arcs"), answers.arcs());
        shock(group.putObject("hangingShock"), answers.hangingShock());
        bend(group.putObject("lineBend"), answers.lineBend());
        answers.ratchet().ifPresent(hold -> ratchet(group.putObject("ratchet"), hold));
        wall(group.putObject("wallMoment"), answers.wallMoment());
        rods(group.putArray("rods"), answers.rods());
    }

    private static void coasting(ObjectNode group, Coasting coasting) {
        group.put("quality", coasting.quality())
                .put("semiArc_rad", coasting.semiArc())
                .put("escapeAngle_rad", coasting.escapeAngle())
                .put("beats", coasting.beats())
                .put("time_s", coasting.seconds());
    }

    private static void winding(ObjectNode group, Winding winding) {
        group.put("weight_kg", winding.weight())
                .put("lineArm_m", winding.lineArm())
                .put("tension_N", winding.tension())
                .put("torque_Nm", winding.torque());
    }

    private static void shock(ObjectNode group, HangingShock shock) {
        group.put("load_N", shock.load())
                .put("drop_m", shock.drop())
                .put("stretch_m", shock.stretch())
                .put("force_N", shock.force());
    }

    private static void bend(ObjectNode group, LineBend bend) {
        group.put("diameter_m", bend.diameter())
                .put("lineDiameter_m", bend.lineDiameter())
                .put("ratio", bend.ratio())
                .put("leastDiameter_m", bend.leastDiameter())
                .put("gentle", bend.gentle());
    }

    private static void ratchet(ObjectNode group, RatchetHold hold) {
        group.put("force_N", hold.force())
                .put("contactRadius_m", hold.contactRadius())
                .put("bendingHeight_m", hold.contactHeight())
                .put("rootThickness_m", hold.rootThickness())
                .put("thickness_m", hold.width())
                .put("toothBending_Pa", hold.toothBending())
                .put("pinShear_Pa", hold.pinShear());
    }

    private static void wall(ObjectNode group, WallMoment wall) {
        group.put("weight_kg", wall.weight()).put("offset_m", wall.offset()).put("moment_Nm", wall.moment());
    }

    private static void changes(ArrayNode entries, List<Change> changes) {
        for (Change change : changes) {
            ObjectNode line = entries.addObject();
            line.put("kind", JsonOutput.word(change.kind()));
            line.put("number", change.number() + 1);
            line.put("from", change.from());
            line.put("to", change.to());
            change.train().ifPresent(train -> line.put("text", train.toString()));
            JsonOutput.put(line, "leastWeight_kg", change.leastAfter());
            JsonOutput.put(line, "saved_kg", change.saved());
        }
    }

    private static void freeSpins(ArrayNode entries, List<FreeSpin> spins) {
        for (int i = 0; i < spins.size(); i++) {
            ObjectNode line = entries.addObject();
            line.put("arbor", i + 1);
            line.put("inertia_kgm2", spins.get(i).inertia());
            line.put("torque_Nm", spins.get(i).torque());
            line.put("flick_radps", spins.get(i).flick());
            JsonOutput.put(line, "time_s", spins.get(i).seconds());
        }
    }

    private static void arcs(ArrayNode entries, List<ArcCurve.Point> points) {
        for (ArcCurve.Point point : points) {
            ObjectNode line = entries.addObject();
            line.put("weight_kg", point.weight());
            JsonOutput.put(line, "worstArc_rad", point.worstArc().orElse(Double.NaN));
            JsonOutput.put(line, "meanArc_rad", point.meanArc().orElse(Double.NaN));
        }
    }

    private static void rods(ArrayNode entries, List<RodBound> rods) {
        for (int i = 0; i < rods.size(); i++) {
            RodBound rod = rods.get(i);
            ObjectNode line = entries.addObject();
            line.put("arbor", i + 1);
            line.put("load_N", rod.load());
            line.put("span_m", rod.span());
            line.put("diameter_m", rod.diameter());
            line.put("modulus_Pa", rod.modulus());
            line.put("stress_Pa", rod.stress());
            line.put("slope_rad", rod.slope());
        }
    }

    private static void chance(ObjectNode group, WeightChance chance, double weight) {
        group.put("trials", chance.trials());
        group.put("seed", WeightChance.SEED);
        group.put("thatRun", chance.thatRun(weight));
        ArrayNode quantiles = group.putArray("quantiles");
        for (double share : SHARES) {
            ObjectNode line = quantiles.addObject();
            line.put("share", share);
            JsonOutput.put(line, "leastWeight_kg", chance.quantile(share));
        }
    }
}
