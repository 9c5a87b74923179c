// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefReader;
import drumfall.solver.brief.BriefWriter;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.Train;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every drum that a brief allows can be made; a brief that allows one that cannot is refused. */
class SmallDrumTest {
    @ParameterizedTest
    @CsvSource({
        "desk-clock, 78/12 m1.5 | 79/12 m1.25 · 76/12 m1 · 57/9 m1 · E24, 16, 40, 2, 1",
        "weekly-wall-clock, 85/10 m1.5 | 66/12 m1.5 · 83/12 m1 · 55/12 m1 · E21, 24, 48, 2, 2",
        "month-runner, 129/16 m1.25 · 73/16 m2 | 120/16 m1 · 112/14 m0.8 · E30, 24, 48, 2, 1"
    })
    void every_drum_of_a_bundled_brief_is_made(String name, String line, int from, int to, int step, int falls) {
        Brief brief = BundledBriefs.load(name).orElseThrow();
        TrainRater rater = new TrainRater(brief);
        for (int diameter = from; diameter <= to; diameter += step) {
            Train train = Trains.of(line, Integer.toString(diameter), falls);
            List<MovementPart> parts = MovementParts.of(
                            brief, rater.rate(train), rater.movement(), MakingSizes.customary())
                    .parts();
            assertThat(parts).extracting(MovementPart::name).contains("arbor-1-drum", "arbor-1-ratchet");
        }
    }

    // By hand: a bore of 4 mm and on either side a wall of 0.8 mm, a pin of 3 mm and another wall make 13.2 mm.
    @ParameterizedTest
    @CsvSource({"13.2, true", "13.19, false"})
    void a_drum_too_thin_for_its_ratchet_s_pins_is_refused_with_the_brief(String from, boolean good) {
        String text = BriefWriter.write(Briefs.demoWith(""))
                .replace("\"from\" : \"24 mm\"", "\"from\" : \"" + from + " mm\"")
                .replace("\"from\": \"24 mm\"", "\"from\": \"" + from + " mm\"")
                .replace("\"step\" : \"2 mm\"", "\"step\" : \"0.01 mm\"")
                .replace("\"step\": \"2 mm\"", "\"step\": \"0.01 mm\"");
        var problems = BriefReader.read(text).problems();
        assertThat(problems.isEmpty()).isEqualTo(good);
        if (!good) {
            assertThat(problems)
                    .singleElement()
                    .satisfies(problem -> assertThat(problem.toString())
                            .contains("/drum/diameter/from")
                            .contains("at least 13.20 mm"));
        } else {
            TrainRater rater = new TrainRater(Briefs.demoWith(""));
            Train thin = Trains.of("85/10 m1.5 | 66/12 m1.5 · 83/12 m1 · 55/12 m1 · E21", from, 2);
            assertThat(MovementParts.of(rater.brief(), rater.rate(thin), rater.movement(), MakingSizes.customary())
                            .parts())
                    .extracting(MovementPart::name)
                    .contains("arbor-1-drum");
        }
    }
}
