// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.sheet.SheetProblem;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TrainReaderTest {
    private static final Train TRAIN = new Train(
            List.of(
                    Mesh.of(96, 8, ToothModule.ofMillimetres("1.5")),
                    Mesh.of(64, 8, ToothModule.ofMillimetres("1.25")),
                    Mesh.of(60, 8, ToothModule.ofMillimetres("1.058333"))),
            1,
            BigFraction.of(3, 125),
            Reeving.DOUBLE,
            30);

    private static ObjectNode tree() {
        return TrainReader.FORMAT.tree(TrainSheet.of("Hollin no. 1", TRAIN));
    }

    @Test
    void a_train_written_down_is_the_train_read_back() {
        String text = TrainReader.write(TrainSheet.of("Hollin no. 1", TRAIN));
        TrainSheet sheet = TrainReader.read(text).accepted().orElseThrow();
        assertThat(sheet.train()).isEqualTo(TRAIN);
        assertThat(sheet.drumDiameter().text()).isEqualTo("24 mm");
        assertThat(TrainReader.write(sheet)).isEqualTo(text);
    }

    @Test
    void a_drum_that_turns_hourly_may_be_written_down() {
        ObjectNode tree = SheetEdits.apply(tree(), "/meshesAbove = 0");
        assertThat(TrainReader.read(tree).accepted().orElseThrow().train().meshesAbove())
                .isZero();
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = ';', textBlock = """
            /meshesAbove = 3;               /meshesAbove;     3;          one of the train's 3 meshes must lie below the centre; write at most 2
            /meshesAbove = -1;              /meshesAbove;     -1;         must be at least 0;                whole number from 0 to 11
            /meshes = [];                   /meshes;          [];         at least 1 entry;                  list of 1 to 12 entries
            /meshes/1/leaves = 0;           /meshes/1/leaves; 0;          must be at least 2;                whole number from 2 to 1000
            /meshes/1/teeth = 64;           /meshes/1/teeth;  64;         there is no field of that name;    "wheel", "leaves", "module"
            /meshes/2/module = "1/21 in";   /meshes/2/module; "1/21 in";  a whole number of nanometres;      at most six decimals
            /meshes/2/module = "0.04 mm";   /meshes/2/module; "0.04 mm";  at least 0.05 mm;                  at most 100 mm
            /falls = 3;                     /falls;           3;          must be at most 2;                 whole number from 1 to 2
            /drumDiameter = "24";           /drumDiameter;    "24";       the unit is missing;               for example "24 m"
            /format = "drumfall-brief";     /format;          "drumfall-brief"; not in the format "drumfall-train"; choose another file
            """)
    void a_train_that_cannot_be_built_is_refused(
            String edits, String pointer, String value, String rule, String remedy) {
        List<SheetProblem> problems =
                TrainReader.read(SheetEdits.apply(tree(), edits)).problems();
        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).pointer()).isEqualTo(pointer);
        assertThat(problems.get(0).value()).isEqualTo(value);
        assertThat(problems.get(0).rule()).contains(rule);
        assertThat(problems.get(0).remedy()).contains(remedy);
    }
}
