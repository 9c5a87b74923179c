// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.MeshPlace;
import drumfall.solver.power.answers.WallMoment;
import drumfall.solver.power.answers.Winding;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.DemandFigure;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.Train;

/** Cards of what the recommended weight does: power, line, key, wall and teeth. */
final class UseCards {
    private final CardShelf shelf;
    private final TrainRater rater;
    private final Brief brief;
    private final Rating rating;
    private final Train train;

    UseCards(CardShelf shelf, TrainRater rater, Rating rating) {
        this.shelf = shelf;
        this.rater = rater;
        this.brief = rater.brief();
        this.rating = rating;
        this.train = rating.train();
    }

    void make() {
        Card gravity = PendulumCards.gravity(shelf);
        Card weight = shelf.get("recommended-weight");
        shelf.figure(
                "weight-power",
                "P",
                power(),
                "W",
                "P = W_r g F / H",
                in -> in[0] * in[1] * in[2] / in[3],
                "work over time; so a longcase of 5.44 kg has 1/8500 W (O. Cooke, Antiquarian Horological Society)",
                weight,
                gravity,
                shelf.get("brief.fall.height"),
                shelf.get("duration"));
        shelf.figure(
                "line-load",
                "S_r",
                demand(Demand.LINE_LOAD, ""),
                "N",
                "S_r = W_r g / k · safety factor",
                in -> in[0] * in[1] / in[2] * in[3],
                "design factor 5 to 12, knots halve strength: Cordage Institute, CI 1401-06",
                weight,
                gravity,
                shelf.get("train.falls"),
                shelf.brief("n", "/line/safetyFactor", brief.line().safetyFactor()));
        key(weight, gravity);
        wall(weight, gravity);
        for (int i = 0; i < train.meshes().size(); i++) {
            bending(i, weight, gravity);
        }
    }

    private double power() {
        var drum = rater.loaded(train).running().arbors().get(0);
        double speed = drum.speed() * drum.drivenArm() / train.reeving().falls();
        return rating.recommendedWeight() * rater.movement().pendulum().gravity() * speed;
    }

    private double demand(Demand demand, String place) {
        return rating.demands().stream()
                .filter(figure -> figure.demand() == demand && figure.place().equals(place))
                .mapToDouble(DemandFigure::figure)
                .findFirst()
                .orElseThrow();
    }

    private void key(Card weight, Card gravity) {
        double arm = shelf.get("line-arm").value();
        double g = gravity.value();
        double efficiency = rater.movement().pulleyEfficiency();
        double torque = new Winding(weight.value(), g, train.reeving(), efficiency, arm).torque();
        if (train.reeving() == Reeving.SINGLE) {
            shelf.figure(
                    "winding-torque",
                    "M_k",
                    torque,
                    "N m",
                    "M_k = W_r g r_l",
                    in -> in[0] * in[1] * in[2],
                    CardShelf.OUR_OWN,
                    weight,
                    gravity,
                    shelf.get("line-arm"));
        } else {
            shelf.figure(
                    "winding-torque",
                    "M_k",
                    torque,
                    "N m",
                    "M_k = W_r g r_l / (1 + η)",
                    in -> in[0] * in[1] * in[2] / (1 + in[3]),
                    CardShelf.OUR_OWN,
                    weight,
                    gravity,
                    shelf.get("line-arm"),
                    shelf.get("brief.line.pulleyEfficiency"));
        }
    }

    private void wall(Card weight, Card gravity) {
        double arm = shelf.get("line-arm").value();
        shelf.figure(
                "wall-moment",
                "M_w",
                new WallMoment(weight.value(), gravity.value(), arm).moment(),
                "N m",
                "M_w = W_r g x, x = r_l while the screw is taken to stand above the drum",
                in -> in[0] * in[1] * in[2],
                CardShelf.OUR_OWN,
                weight,
                gravity,
                shelf.get("line-arm"));
    }

    /** At rest, without friction, the whole force on one tooth. */
    private void bending(int i, Card weight, Card gravity) {
        Mesh mesh = train.meshes().get(i);
        shelf.figure(
                "tooth-bending-%d".formatted(i + 1),
                "σ",
                demand(
                        Demand.TOOTH_BENDING,
                        MeshPlace.of(i, train.meshesAbove()).toString()),
                "Pa",
                "σ = F / (b m Y), F = W_r g r_l / k · (T_i / T_1) / (m z / 2)",
                in -> in[0]
                        * in[1]
                        * in[2]
                        / in[3]
                        * in[4]
                        / in[5]
                        / (in[6] * in[7] / 2)
                        / (Math.min(in[8], in[9]) * in[6] * in[10]),
                "W. Lewis, 1892, by way of Shigley's Mechanical Engineering Design, ch. 14",
                weight,
                gravity,
                shelf.get("line-arm"),
                shelf.get("train.falls"),
                shelf.get(RunCards.turnName(i)),
                shelf.get(RunCards.turnName(0)),
                RunCards.module(shelf, train, i),
                RunCards.toothCount(shelf, train, i),
                shelf.brief("b", "/parts/wheelThickness", brief.parts().wheelThickness()),
                shelf.brief("l", "/parts/pinionLength", brief.parts().pinionLength()),
                shelf.given(
                        "form-factor-%d".formatted(i + 1),
                        "Y",
                        formFactor(mesh),
                        "1",
                        "least section of the drawn teeth under load"));
    }

    private double formFactor(Mesh mesh) {
        return rater.movement()
                .teeth(mesh)
                .map(teeth ->
                        Math.min(teeth.wheel().formFactor(), teeth.pinion().formFactor()))
                .orElse(0.0);
    }
}
