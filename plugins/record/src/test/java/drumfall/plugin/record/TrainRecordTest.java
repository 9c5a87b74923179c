// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Handover;
import drumfall.plugin.api.trial.TrialFolder;
import drumfall.plugin.api.trial.TrialHandover;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefReader;
import drumfall.solver.brief.BriefWriter;
import drumfall.solver.brief.TrainReader;
import drumfall.solver.brief.TrainSheet;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.written.LayoutReader;
import drumfall.solver.rating.DemandFigure;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TrainRecordTest {
    private static TrialFolder export(Handover handover) throws IOException {
        TrialFolder folder = new TrialFolder();
        new TrainRecordExporter().export(handover, folder, ExportProgress.unwatched());
        return folder;
    }

    private static JsonNode record(Handover handover) throws IOException {
        return new ObjectMapper().readTree(export(handover).text(TrainRecordExporter.RECORD));
    }

    @Test
    void three_files_are_written() throws IOException {
        assertThat(export(TrialHandover.eightDays()).names())
                .containsExactly("parts.csv", "train-to-rate.json", "train.json");
    }

    @Test
    void the_train_that_the_program_reads_back_rates_as_the_one_that_was_handed_over() throws IOException {
        Handover trial = TrialHandover.eightDays();
        TrainSheet sheet = TrainReader.read(export(trial).text(TrainRecordExporter.SHEET))
                .accepted()
                .orElseThrow();

        assertThat(sheet.name()).isEqualTo(trial.brief().name());
        assertThat(new TrainRater(trial.brief()).rate(sheet.train())).isEqualTo(trial.rating());
    }

    @ParameterizedTest
    @CsvSource({"depth, 80 mm, placed", "depth, 70 mm, no-place", "arrangement, unplaced, left-unplaced"})
    void the_record_says_whether_the_arbors_have_places(String field, String value, String placement)
            throws IOException {
        Handover trial = TrialHandover.eightDays();
        ObjectNode tree = BriefWriter.tree(trial.brief());
        ((ObjectNode) tree.get("frame")).put(field, value);
        Brief brief = BriefReader.read(tree).accepted().orElseThrow();
        Optional<Layout> layout = TrainPlacing.layout(brief, trial.rating().train(), () -> false);

        assertThat(record(new Handover(brief, trial.rating(), layout, "1"))
                        .get("placement")
                        .textValue())
                .isEqualTo(placement);
    }

    /** A trial that has a place, and what was placed. */
    private static Handover placed() throws IOException {
        Handover trial = TrialHandover.eightDays();
        ObjectNode tree = BriefWriter.tree(trial.brief());
        ((ObjectNode) tree.get("frame")).put("depth", "80 mm");
        Brief brief = BriefReader.read(tree).accepted().orElseThrow();
        Optional<Layout> layout = TrainPlacing.layout(brief, trial.rating().train(), () -> false);
        return new Handover(brief, trial.rating(), layout, "1");
    }

    @Test
    void the_layout_in_the_record_is_a_layout_file_that_reads_back_to_the_nanometre() throws IOException {
        Handover handover = placed();
        Layout layout = handover.layout().orElseThrow();
        String file = record(handover).get("layout").toString();

        assertThat(LayoutReader.read(file, layout.need())
                        .accepted()
                        .orElseThrow()
                        .layout(layout.need()))
                .isEqualTo(layout);
    }

    /** Directions from the places of two arbors, turned back into steps of a millimetre: to 1e-6 nm in floating point. */
    @Test
    void directions_and_size_in_the_record_are_those_of_the_layout() throws IOException {
        Handover handover = placed();
        Layout layout = handover.layout().orElseThrow();
        JsonNode record = record(handover);

        JsonNode meshes = record.at("/train/meshes");
        for (int mesh = 0; mesh < meshes.size(); mesh++) {
            double direction = meshes.get(mesh).get("direction_rad").doubleValue();
            double distance = layout.place(mesh).distance(layout.place(mesh + 1));
            assertThat(distance * Math.cos(direction))
                    .isCloseTo(
                            (double) (layout.place(mesh + 1).x()
                                    - layout.place(mesh).x()),
                            within(1e-6));
            assertThat(distance * Math.sin(direction))
                    .isCloseTo(
                            (double) (layout.place(mesh + 1).y()
                                    - layout.place(mesh).y()),
                            within(1e-6));
        }
        assertThat(record.at("/figures/movementWidth_m").doubleValue())
                .isEqualTo(layout.size().width() / 1e9);
        assertThat(record.at("/figures/movementHeight_m").doubleValue())
                .isEqualTo(layout.size().height() / 1e9);
        assertThat(record.at("/figures/movementDepth_m").doubleValue()).isEqualTo(layout.depth() / 1e9);
        assertThat(record.at("/figures/plateArea_m2").doubleValue())
                .isEqualTo(layout.size().plateArea());
    }

    @Test
    void a_record_without_places_says_nothing_of_layout_directions_and_size() throws IOException {
        Handover trial = TrialHandover.eightDays();
        JsonNode record = record(new Handover(trial.brief(), trial.rating(), Optional.empty(), "1"));

        assertThat(record.has("layout")).isFalse();
        assertThat(record.at("/train/meshes/0").has("direction_rad")).isFalse();
        assertThat(record.get("figures").has("movementHeight_m")).isFalse();
    }

    @Test
    void the_same_handover_gives_the_same_bytes_in_any_locale() throws IOException {
        TrialFolder first = export(TrialHandover.eightDays());
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TrialFolder second = export(TrialHandover.eightDays());
            for (String name : first.names()) {
                assertThat(second.bytes(name)).isEqualTo(first.bytes(name));
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    /** Values typed in for the trial clock: 96/8 m1.5 | 64/8 m1 · 60/8 m1 · E30, drum 52 mm, weight on a pulley. */
    @ParameterizedTest
    @CsvSource({
        "/format, drumfall-train-record",
        "/version, 1",
        "/program/version, 0.0.0-trial",
        "/name, 'Eight days, seconds pendulum'",
        "/feasible, true",
        "/placement, placed",
        "/train/meshesAbove, 1",
        "/train/meshesBelow, 2",
        "/train/drumDiameter_m, 0.052",
        "/train/falls, 2",
        "/train/escapeTeeth, 30",
        "/train/meshes/0/place, above-1",
        "/train/meshes/0/toothCount, 96",
        "/train/meshes/0/leafCount, 8",
        "/train/meshes/0/module_mm, 1.5",
        "/train/meshes/0/centreDistance_mm, 78",
        "/train/meshes/0/wheelTurn_h, 12",
        "/train/meshes/2/place, below-2",
        "/train/meshes/2/pinionArbor, 4",
        "/train/meshes/2/wheelTurn_h, 1/8",
        "/train/meshes/2/pinionTurn_h, 1/60",
        "/figures/beatsPerHour, 3600",
        "/figures/beat_s, 1.0",
        "/objectives/0/figure, recommended-weight",
        "/objectives/0/resolution, 1 %",
        "/objectives/2/value, 3.0",
        "/brief/run/atLeast, 8 d",
        "/brief/escapement/kind, deadbeat",
        "/brief/teeth/modules/1, 1.25 mm",
        "/brief/line/falls/1, 2",
        "/brief/beat/secondsHand, true",
        "/brief/objectives/1/figure, filament-mass",
        "/parts/4/part, arbor-2-pinion",
        "/parts/4/teeth, 8"
    })
    void every_figure_stands_under_its_name(String pointer, String value) throws IOException {
        assertThat(record(TrialHandover.eightDays()).at(pointer).asText()).isEqualTo(value);
    }

    @Test
    void figures_are_those_of_the_rating_bit_by_bit() throws IOException {
        Handover handover = TrialHandover.eightDays();
        JsonNode figures = record(handover).path("figures");
        assertThat(figures.path("recommendedWeight_kg").doubleValue())
                .isEqualTo(handover.rating().recommendedWeight());
        assertThat(figures.path("leastWeightRoughest_kg").doubleValue())
                .isEqualTo(handover.rating().leastRoughest());
        assertThat(figures.path("pendulumLength_m").doubleValue())
                .isEqualTo(handover.rating().pendulumLength());
        assertThat(figures.path("filamentMass_kg").doubleValue())
                .isEqualTo(handover.rating().filamentMass());
    }

    @Test
    void the_brief_cut_out_of_the_record_opens_as_the_same_brief() throws IOException {
        Handover handover = TrialHandover.eightDays();
        assertThat(BriefReader.read(record(handover).path("brief")).accepted()).contains(handover.brief());
    }

    @Test
    void every_demand_stands_with_figure_and_limits() throws IOException {
        Handover handover = TrialHandover.eightDays();
        JsonNode written = record(handover).path("demands");
        List<DemandFigure> demands = handover.rating().demands();
        assertThat(written).hasSameSizeAs(demands);
        for (int i = 0; i < demands.size(); i++) {
            JsonNode entry = written.get(i);
            DemandFigure demand = demands.get(i);
            assertThat(entry.path("demand").asText())
                    .isEqualTo(demand.demand().name().toLowerCase(Locale.ROOT).replace('_', '-'));
            assertThat(entry.path("pointer").asText()).isEqualTo(demand.demand().pointer());
            assertThat(entry.path("place").asText()).isEqualTo(demand.place());
            assertThat(entry.path("met").booleanValue()).isEqualTo(demand.met());
            assertThat(numberStartingWith(entry, "figure")).isEqualTo(demand.figure());
            demand.from()
                    .ifPresent(from ->
                            assertThat(numberStartingWith(entry, "from")).isEqualTo(from));
            demand.to()
                    .ifPresent(to -> assertThat(numberStartingWith(entry, "to")).isEqualTo(to));
        }
    }

    private static double numberStartingWith(JsonNode entry, String name) {
        return entry.properties().stream()
                .filter(field -> field.getKey().matches(name + "(_[A-Za-z]+)?"))
                .findFirst()
                .orElseThrow()
                .getValue()
                .doubleValue();
    }

    @ParameterizedTest
    @CsvSource({"run-at-least, figure_s", "weight-limit, to_kg", "line-load, to_N", "arc, from_rad", "frame, figure_m"})
    void a_demand_states_its_unit(String demand, String field) throws IOException {
        for (JsonNode entry : record(TrialHandover.eightDays()).path("demands")) {
            if (entry.path("demand").asText().equals(demand)) {
                assertThat(entry.has(field)).as(entry.toString()).isTrue();
                return;
            }
        }
        throw new AssertionError("The demand " + demand + " is not in the record.");
    }

    /** With 240 teeth a beat turns the wheel by less than its drop: nothing is left to drive the pendulum. */
    @Test
    void where_no_weight_drives_the_train_the_weight_is_null() throws IOException {
        Train train = TrialHandover.eightDays().rating().train();
        Train idle = new Train(train.meshes(), 1, train.drumDiameter(), train.reeving(), 240);
        JsonNode record = record(TrialHandover.of(idle));
        assertThat(record.path("feasible").booleanValue()).isFalse();
        assertThat(record.at("/figures/recommendedWeight_kg").isNull()).isTrue();
    }

    @Test
    void a_module_and_a_turn_keep_every_digit() throws IOException {
        Train odd = new Train(
                List.of(
                        Mesh.of(97, 9, ToothModule.ofMillimetres("1.058333")),
                        Mesh.of(61, 7, ToothModule.ofMillimetres("0.9"))),
                1,
                BigFraction.of(1, 30),
                Reeving.SINGLE,
                31);
        JsonNode meshes = record(TrialHandover.of(odd)).at("/train/meshes");
        assertThat(meshes.at("/0/module_mm").decimalValue()).isEqualByComparingTo("1.058333");
        assertThat(meshes.at("/0/wheelTurn_h").asText()).isEqualTo("97/9");
        assertThat(meshes.at("/1/pinionTurn_h").asText()).isEqualTo("7/61");
        assertThat(meshes.at("/0/hunts").booleanValue()).isTrue();
    }
}
