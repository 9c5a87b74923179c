// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Handover;
import drumfall.plugin.api.trial.TrialFolder;
import drumfall.plugin.api.trial.TrialHandover;
import drumfall.solver.power.Movement;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Mesh;
import java.io.IOException;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines end in CR LF, cells with commas, quotes or line breaks are quoted: RFC 4180, section 2. */
class PartsCsvTest {
    private static List<String> lines() throws IOException {
        TrialFolder folder = new TrialFolder();
        new TrainRecordExporter().export(TrialHandover.eightDays(), folder, ExportProgress.unwatched());
        String text = folder.text(TrainRecordExporter.PARTS);
        assertThat(text).endsWith("\r\n");
        return List.of(text.split("\r\n"));
    }

    /**
     * Pitch diameter m z by ISO 54, tip diameters those of the teeth chosen for each mesh; bores and widths as typed in the
     * trial brief; the drum over its flanges is 52 mm and three lines of 1.5 mm on either side. Around a rod of 6 mm, a tube of
     * 4 mm, walls of 0.8 mm and pins of 3 mm the ratchet has roots at 3 + 4 + 0.8 + 3 + 1 = 11.8 mm and tips at 14.3 mm; it fills
     * the 6 mm beside the great wheel's plane of 12 mm, and the 3 mm that a wheel of 6 mm leaves in it. A pinion of 12 mm crosses
     * those 3 mm, a gap of 1 mm and an end shake of 0.8 mm. The square is 12 mm wide, its collar 2 (12/√2 + 0.8) mm.
     */
    @Test
    void the_parts_of_the_eight_day_clock() throws IOException {
        assertThat(lines().stream().map(line -> line.substring(0, line.lastIndexOf(','))))
                .containsExactly(
                        "part,count,arbor,teeth,module_mm,pitch_diameter_mm,tip_diameter_mm,bore_mm,width_mm",
                        "arbor-1-drum,1,1,,,,61,6,53",
                        "arbor-1-ratchet-and-click,1,1,18,,,28.6,6,9",
                        "arbor-1-winding-square,1,1,,,,18.5706,6,17",
                        "arbor-1-wheel,1,1,96,1.5,144," + tip(0, Movement::wheelTipRadius) + ",6,6",
                        "arbor-2-pinion,1,2,8,1.5,12," + tip(0, Movement::pinionTipRadius) + ",4,16.8",
                        "arbor-2-wheel,1,2,64,1,64," + tip(1, Movement::wheelTipRadius) + ",4,6",
                        "arbor-3-pinion,1,3,8,1,8," + tip(1, Movement::pinionTipRadius) + ",3,16.8",
                        "arbor-3-wheel,1,3,60,1,60," + tip(2, Movement::wheelTipRadius) + ",3,6",
                        "arbor-4-pinion,1,4,8,1,8," + tip(2, Movement::pinionTipRadius) + ",3,16.8",
                        "arbor-4-escape-wheel,1,4,30,,,60,3,6");
    }

    private static String tip(int mesh, ToDoubleBiFunction<Movement, Mesh> radius) {
        Handover handover = TrialHandover.eightDays();
        Movement movement = new TrainRater(handover.brief()).movement();
        double metres = radius.applyAsDouble(
                movement, handover.rating().train().meshes().get(mesh));
        return Decimals.millimetres(2 * metres).toPlainString();
    }

    /** Each mass is rounded to a milligram, so ten of them differ from the whole by less than ten half milligrams. */
    @Test
    void the_masses_add_up_to_the_filament_of_the_rating() throws IOException {
        Handover handover = TrialHandover.eightDays();
        double grams = lines().stream()
                .skip(1)
                .mapToDouble(line -> Double.parseDouble(line.substring(line.lastIndexOf(',') + 1)))
                .sum();
        assertThat(grams).isCloseTo(1000 * handover.rating().filamentMass(), within(0.005));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\u0001',
            value = {"plain|plain", "a,b|\"a,b\"", "say \"so\"|\"say \"\"so\"\"\""})
    void a_cell_is_quoted_only_where_it_must_be(String cell, String quoted) {
        assertThat(PartsCsv.quoted(cell)).isEqualTo(quoted);
    }

    @Test
    void a_cell_with_a_line_break_is_quoted() {
        assertThat(Stream.of("a\nb", "a\rb").map(PartsCsv::quoted)).containsExactly("\"a\nb\"", "\"a\rb\"");
    }
}
