// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.DrumRun;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.List;

/** Cards of counts, speeds, beat, drum and line. */
final class RunCards {
    private static final double SECONDS_PER_HOUR = 3600;
    private static final String GOODRICH =
            "Goodrich, The Modern Clock (1905), ch. XV: one layer, effective diameter drum plus one line";

    private final CardShelf shelf;
    private final Brief brief;
    private final Rating rating;
    private final Train train;
    private final DrumRun drum;

    RunCards(CardShelf shelf, TrainRater rater, Rating rating) {
        this.shelf = shelf;
        this.brief = rater.brief();
        this.rating = rating;
        this.train = rating.train();
        this.drum = rater.limits().drumRun(train.drumDiameter(), train.reeving());
    }

    void make() {
        for (int arbor = 0; arbor <= train.meshes().size(); arbor++) {
            turn(arbor);
        }
        Card beats = shelf.figure(
                "beats-per-hour",
                "B",
                rating.train().going().beatsPerHour().doubleValue(),
                "1",
                "B = 2 N · 3600 s / T_e",
                in -> 2 * in[0] * SECONDS_PER_HOUR / in[1],
                CardShelf.COUNTS + ": two beats a tooth",
                escapeTeeth(),
                shelf.get(turnName(train.meshes().size())));
        shelf.figure(
                "beat",
                "t",
                train.secondsPerBeat(),
                "s",
                "t = 3600 s / B",
                in -> SECONDS_PER_HOUR / in[0],
                CardShelf.COUNTS,
                beats);
        drum();
    }

    static String turnName(int arbor) {
        return "turn-of-arbor-%d".formatted(arbor + 1);
    }

    private Card escapeTeeth() {
        return shelf.train("escape-teeth", "N", train.escapeTeeth(), "1");
    }

    /** Above the centre arbors are slower than an hour, below it faster. */
    private void turn(int arbor) {
        boolean above = arbor <= train.meshesAbove();
        int from = Math.min(arbor, train.meshesAbove());
        int to = Math.max(arbor, train.meshesAbove());
        List<Card> counts = new ArrayList<>();
        for (int i = from; i < to; i++) {
            counts.add(toothCount(shelf, train, i));
            counts.add(leafCount(shelf, train, i));
        }
        shelf.figure(
                turnName(arbor),
                "T_%d".formatted(arbor + 1),
                train.hoursPerTurn(arbor) * SECONDS_PER_HOUR,
                "s",
                above ? "T = 3600 s · ∏ z/p, from here to the centre" : "T = 3600 s / ∏ z/p, from the centre to here",
                in -> above
                        ? SECONDS_PER_HOUR * CardShelf.ratio(in, 0, in.length)
                        : SECONDS_PER_HOUR / CardShelf.ratio(in, 0, in.length),
                CardShelf.COUNTS,
                counts.toArray(Card[]::new));
    }

    static Card toothCount(CardShelf shelf, Train train, int mesh) {
        int count = train.meshes().get(mesh).toothCount();
        return shelf.train("wheel-%d".formatted(mesh + 1), "z_%d".formatted(mesh + 1), count, "1");
    }

    static Card leafCount(CardShelf shelf, Train train, int mesh) {
        int count = train.meshes().get(mesh).leafCount();
        return shelf.train("pinion-%d".formatted(mesh + 1), "p_%d".formatted(mesh + 1), count, "1");
    }

    static Card module(CardShelf shelf, Train train, int mesh) {
        Mesh found = train.meshes().get(mesh);
        return shelf.train(
                "module-%d".formatted(mesh + 1),
                "m_%d".formatted(mesh + 1),
                found.module().metres(),
                "m");
    }

    private void drum() {
        Card falls = shelf.train("falls", "k", train.reeving().falls(), "1");
        Card fall = shelf.brief("F", "/fall/height", brief.fall().height());
        Card size = shelf.train("drum-diameter", "D", train.drumDiameter().doubleValue(), "m");
        Card line = shelf.brief("u", "/line/diameter", brief.line().diameter());
        shelf.figure(
                "line-arm",
                "r_l",
                drum.effectiveDiameter().doubleValue() / 2,
                "m",
                "r_l = (D + u) / 2",
                in -> (in[0] + in[1]) / 2,
                GOODRICH,
                size,
                line);
        Card turns = shelf.figure(
                "drum-turns",
                "n_d",
                drum.turns(),
                "1",
                "n_d = k F / (π (D + u))",
                in -> in[0] * in[1] / (Math.PI * (in[2] + in[3])),
                GOODRICH,
                falls,
                fall,
                size,
                line);
        shelf.figure(
                "duration",
                "H",
                rating.durationRoundedDown().doubleValue() * SECONDS_PER_HOUR,
                "s",
                "H = T_1 n_d, rounded down in the fiftieth decimal of π",
                in -> in[0] * in[1],
                CardShelf.OUR_OWN,
                shelf.get(turnName(0)),
                turns);
        line(falls, fall, size, line, turns);
    }

    private void line(Card falls, Card fall, Card size, Card line, Card turns) {
        shelf.figure(
                "line-length",
                "l",
                drum.lineLength(
                        brief.fall().topLead().si(), brief.fall().tieOff().si()),
                "m",
                "l = k (F + l_t) + 2 π (D + u) + l_k",
                in -> in[0] * (in[1] + in[2]) + 2 * Math.PI * (in[3] + in[4]) + in[5],
                "two turns never leave the drum; common practice, no source",
                falls,
                fall,
                shelf.brief("l_t", "/fall/topLead", brief.fall().topLead()),
                size,
                line,
                shelf.brief("l_k", "/fall/tieOff", brief.fall().tieOff()));
        shelf.figure(
                "layer-length",
                "b_l",
                drum.layerLength(brief.drum().turnSpacing().exact()).doubleValue(),
                "m",
                "b_l = (n_d + 2) s u + u",
                in -> (in[0] + 2) * in[1] * in[2] + in[2],
                GOODRICH + "; spacing common practice, no source",
                turns,
                shelf.brief("s", "/drum/turnSpacing", brief.drum().turnSpacing()),
                line);
    }
}
