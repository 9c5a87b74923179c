// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.TrainSheet;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.Trains;
import drumfall.solver.sheet.SheetProblem;
import drumfall.solver.train.Train;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TrainNotationTest {
    private static final Train TRAIN = Trains.of("85/10 m1.5 | 66/12 m1.5 · 83/12 m1 · 55/12 m1 · E21", "36", 2);

    @ParameterizedTest
    @ValueSource(
            strings = {
                "85/10 m1.5 | 66/12 m1.5 · 83/12 m1 · 55/12 m1 · E21 drum 36 mm falls 2",
                "85/10 m1.5 | 66/12 m1.5 . 83/12 m1 . 55/12 m1 E21 drum 36 mm falls 2",
                " 85/10  m1.5|66/12 m1.50 . 83/12 m1 mm . 55/12 m1.0 . E 21, drum 36 mm, falls 2",
                "85/10 m1.5 | 66/12 m1.5 · 83/12 m1 · 55/12 m1 · E21 drum 3.6 cm falls 2"
            })
    void a_line_stands_for_its_train(String line) {
        assertThat(TrainNotation.read(line.replace("E 21,", "E 21")).accepted().map(TrainSheet::train))
                .contains(TRAIN);
    }

    @Test
    void what_a_train_prints_is_read_back() {
        Brief brief = Briefs.demoWith("");
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            Train train = Trains.random(brief, random);
            String drum = TrainSheet.of("", train).drumDiameter().text();
            String line =
                    "%s drum %s falls %d".formatted(train, drum, train.reeving().falls());
            assertThat(TrainNotation.read(line).accepted().map(TrainSheet::train))
                    .contains(train);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '`', textBlock = """
            85/10 m1.5 | 66/12 m1.5 drum 36 mm falls 2;          the escape wheel is missing
            ``;                                                  the escape wheel is missing
            85/10 m1.5 | 66/12 m1.5 E21;                         drum and falls must stand behind the escape wheel
            85/10 m1.5 | 66/12 m1.5 E21 drum 36 mm;              drum and falls must stand behind the escape wheel
            85/10 m1.5 . 66/12 m1.5 E21 drum 36 mm falls 2;      one bar must stand where the centre arbor is
            85/10 m1 | 66/12 m1 | 60/8 m1 E21 drum 36 mm falls 2; one bar must stand where the centre arbor is
            85/10 m1.5 | 66-12 m1.5 E21 drum 36 mm falls 2;      this is no mesh
            85/10 m1.5 | 66/12 E21 drum 36 mm falls 2;           this is no mesh
            85/10 m1.5 | E21 drum 36 mm falls 2;                 at least one of the train's 1 meshes must lie below
            | E21 drum 36 mm falls 2;                            at least 1
            85/10 m1.5 | 66/1 m1.5 E21 drum 36 mm falls 2;       it must be at least 2
            85/10 m1.5 | 66/12 m1.5 E1 drum 36 mm falls 2;       it must be at least 2
            85/10 m1.5 | 66/12 m1.5 E21 drum 36 mm falls 3;      it must be at most 2
            85/10 m1.5 | 66/12 m1.5 E21 drum 36 falls 2;         the unit is missing
            85/10 m0 | 66/12 m1.5 E21 drum 36 mm falls 2;        at least 0.05 mm
            85/10 m1.2.3 | 66/12 m1.5 E21 drum 36 mm falls 2;    "1.2.3 mm"
            """)
    void a_line_that_is_no_train_is_answered_by_one_sentence(String line, String sentence) {
        var problems = TrainNotation.read(line).problems();
        assertThat(problems.stream().map(SheetProblem::sentence))
                .anySatisfy(said -> assertThat(said).contains(sentence).endsWith("."));
    }
}
