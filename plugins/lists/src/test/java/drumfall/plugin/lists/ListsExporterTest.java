// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.ExportSetting;
import drumfall.plugin.api.Handover;
import drumfall.plugin.api.RefusedExportException;
import drumfall.plugin.api.SettingValues;
import drumfall.plugin.api.trial.TrialFolder;
import drumfall.plugin.api.trial.TrialHandover;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefReader;
import drumfall.solver.brief.BriefWriter;
import drumfall.solver.fit.Nanometres;
import drumfall.solver.fit.cutting.ArborPiece;
import drumfall.solver.fit.cutting.CuttingPlan;
import drumfall.solver.fit.cutting.RodCut;
import drumfall.solver.fit.cutting.RodPlan;
import drumfall.solver.fitting.PlateHole;
import drumfall.solver.kit.Build;
import drumfall.solver.kit.BuildWay;
import drumfall.solver.kit.Builds;
import drumfall.solver.kit.Kit;
import drumfall.solver.making.BeforePlate;
import drumfall.solver.making.MovementPart;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;

/** The lists of the trial clock. */
class ListsExporterTest {
    private static final Handover HANDOVER = TrialHandover.eightDays();
    private static final Kit KIT = Kit.of(new TrainRater(HANDOVER.brief()), HANDOVER.rating(), HANDOVER.layout());

    private static final ExportProgress SILENT = new ExportProgress() {
        @Override
        public void at(double share, String doing) {}

        @Override
        public boolean cancelled() {
            return false;
        }
    };

    private static TrialFolder export(Handover handover) throws IOException {
        TrialFolder folder = new TrialFolder();
        new ListsExporter().export(handover, folder, SILENT);
        return folder;
    }

    private static List<String> lines(TrialFolder folder, String name) {
        return folder.text(name).lines().toList();
    }

    /** A cell of a row without quoted cells. */
    private static String cell(String row, int column) {
        return List.of(row.split(",", -1)).get(column);
    }

    @Test
    void a_placed_train_has_every_list_and_the_page() throws IOException {
        assertThat(export(HANDOVER).names())
                .containsExactlyInAnyOrder(
                        "parts.csv",
                        "shopping.csv",
                        "builds.csv",
                        "arbors.csv",
                        "cutting.csv",
                        "holes.csv",
                        "end-shake.csv",
                        "before-plate.csv",
                        "lists.html");
    }

    @Test
    void a_train_without_places_has_no_holes_and_no_rods() throws IOException {
        Handover unplaced = Handover.unplaced(HANDOVER.brief(), HANDOVER.rating(), "0.0.0-trial");

        assertThat(export(unplaced).names())
                .containsExactlyInAnyOrder("parts.csv", "shopping.csv", "builds.csv", "lists.html");
    }

    @Test
    void the_same_train_gives_the_same_bytes() throws IOException {
        TrialFolder one = export(HANDOVER);
        TrialFolder other = export(HANDOVER);
        for (String name : one.names()) {
            assertThat(one.bytes(name)).as(name).isEqualTo(other.bytes(name));
        }
    }

    @Test
    void every_printed_part_is_listed_once_with_its_count_and_mass() throws IOException {
        List<String> rows = lines(export(HANDOVER), "parts.csv");

        assertThat(rows).hasSize(1 + KIT.parts().size());
        for (int i = 0; i < KIT.parts().size(); i++) {
            MovementPart part = KIT.parts().get(i);
            assertThat(rows.get(i + 1)).startsWith(part.name() + "," + part.count() + "," + part.material() + ",");
        }
        double listed = rows.stream()
                .skip(1)
                .mapToDouble(row -> Double.parseDouble(cell(row, 1)) * Double.parseDouble(cell(row, 3)))
                .sum();
        // Each mass is rounded to a tenth of a gram.
        assertThat(listed).isCloseTo(1e3 * KIT.printedMass(), org.assertj.core.api.Assertions.within(0.05 * 60));
    }

    @Test
    void what_stands_before_the_front_plate_is_listed_with_the_room_it_takes() throws IOException {
        BeforePlate stack = KIT.beforePlate().orElseThrow();
        List<String> rows = lines(export(HANDOVER), "before-plate.csv");

        assertThat(rows).hasSize(1 + stack.levels().size());
        for (int i = 0; i < stack.levels().size(); i++) {
            BeforePlate.Level level = stack.levels().get(i);
            assertThat(rows.get(i + 1))
                    .isEqualTo(String.format(
                            Locale.ROOT, "%s,%.2f,%.2f", level.part(), 1e3 * level.from(), 1e3 * level.to()));
        }
        assertThat(stack.levels())
                .extracting(BeforePlate.Level::part)
                .contains("minute-hand", "arbor-1-winding-square");
        assertThat(export(HANDOVER).text("lists.html"))
                .contains(String.format(Locale.ROOT, "All of it takes %.2f mm.", 1e3 * stack.room()));
    }

    // By hand: frame, parts and each spacer are off by 0.1 mm at most (the brief's), so n of them by n tenths at their
    // worst
    // and by √n tenths as the root of the sum of squares.
    @Test
    void end_shakes_are_told_at_their_worst_and_as_a_root_sum_of_squares_with_what_helps_most() throws IOException {
        List<String> rows = lines(export(HANDOVER), "end-shake.csv");
        double error = 1e3 * HANDOVER.brief().fit().heightError().si();
        assertThat(rows.get(0)).endsWith("least_mm,most_mm,likely_least_mm,likely_most_mm,outside_the_band,helps_most");
        for (int i = 1; i < rows.size(); i++) {
            String row = rows.get(i);
            int spacers = (cell(row, 1).equals("0.00") ? 0 : 1) + (cell(row, 3).equals("0.00") ? 0 : 1);
            double middle = Double.parseDouble(cell(row, 4));
            assertThat(Double.parseDouble(cell(row, 6)) - middle)
                    .isCloseTo(error * (2 + spacers), org.assertj.core.api.Assertions.within(0.006));
            assertThat(Double.parseDouble(cell(row, 8)) - middle)
                    .isCloseTo(error * Math.sqrt(2.0 + spacers), org.assertj.core.api.Assertions.within(0.006));
            String asked = KIT.fitted()
                    .orElseThrow()
                    .arbors()
                    .get(i - 1)
                    .standing()
                    .orElseThrow()
                    .shake()
                    .change()
                    .map(change -> change.part() + " ")
                    .orElse("none");
            assertThat(cell(row, 10)).startsWith(asked);
        }
    }

    // What a rod gives: pieces, one saw cut after each, and what is left; a rod used up has no last cut.
    @Test
    void pieces_cuts_and_what_is_left_make_up_every_rod() {
        CuttingPlan plan = KIT.cutting().orElseThrow();
        Map<String, ArborPiece> pieces =
                KIT.pieces().stream().collect(Collectors.toMap(ArborPiece::name, Function.identity()));
        int cut = 0;
        for (RodPlan rod : plan.rods()) {
            for (RodCut one : rod.cuts()) {
                long used = one.pieces().entrySet().stream()
                        .mapToLong(piece ->
                                piece.getValue() * (pieces.get(piece.getKey()).length() + plan.kerf()))
                        .sum();
                assertThat(used + one.offcut())
                        .isIn(rod.stock().length(), rod.stock().length() + plan.kerf());
                cut += one.rods()
                        * one.pieces().values().stream()
                                .mapToInt(Integer::intValue)
                                .sum();
            }
        }
        assertThat(cut).isEqualTo(KIT.pieces().size() * HANDOVER.brief().fit().kits());
    }

    @Test
    void every_arbor_has_its_holes_where_the_layout_puts_it() throws IOException {
        List<String> rows = lines(export(HANDOVER), "holes.csv");
        var layout = HANDOVER.layout().orElseThrow();
        // Four arbors of the train and the pallets' in both plates, the minute stud in the front plate alone.
        int arbors = layout.need().parts().arbors().size() + 1;
        int stud = layout.minutePlace().isPresent() ? 1 : 0;

        assertThat(rows).hasSize(1 + 2 * arbors + stud);
        for (int arbor = 0; arbor < arbors - 1; arbor++) {
            String x = KitTables.millimetres(layout.place(arbor).x());
            String y = KitTables.millimetres(layout.place(arbor).y());
            assertThat(rows.get(1 + arbor)).startsWith("front," + (arbor + 1) + ",arbor " + (arbor + 1) + ",");
            assertThat(rows.get(1 + arbor)).contains("," + x + "," + y + ",");
        }
    }

    // Seen from the dial both plates have the same places; the back plate lacks the stud only.
    @Test
    void holes_of_both_plates_lie_in_line() {
        Map<String, List<Long>> front = KIT.holes().stream()
                .filter(row -> row.plate() == drumfall.solver.kit.HoleRow.Plate.FRONT)
                .collect(Collectors.toMap(row -> row.name(), row -> List.of(row.fromLeft(), row.fromBottom())));
        KIT.holes().stream()
                .filter(row -> row.plate() == drumfall.solver.kit.HoleRow.Plate.BACK)
                .forEach(row -> assertThat(front.get(row.name())).containsExactly(row.fromLeft(), row.fromBottom()));
    }

    @Test
    void weight_and_line_to_buy_are_those_of_the_rating_rounded_up() throws IOException {
        List<String> rows = lines(export(HANDOVER), "shopping.csv");
        String shot = rows.stream()
                .filter(row -> row.startsWith("steel shot,"))
                .findFirst()
                .orElseThrow();
        double kilograms = Double.parseDouble(cell(shot, 2).replace(" kg", ""));
        double asked = HANDOVER.rating().recommendedWeight();

        assertThat(kilograms).isBetween(asked, asked + 0.01);
        assertThat(rows).anyMatch(row -> row.startsWith("line,"));
        assertThat(rows).anyMatch(row -> row.startsWith("filament,"));
        assertThat(rows).filteredOn(row -> row.startsWith("ball bearing,")).isNotEmpty();
    }

    // The weights are written to the gram.
    @Test
    void every_build_is_listed_with_the_solvers_figures() throws IOException {
        List<String> rows = lines(export(HANDOVER), "builds.csv");
        List<Build> builds = KIT.builds().all();

        assertThat(rows).hasSize(1 + builds.size());
        for (int i = 0; i < builds.size(); i++) {
            Build build = builds.get(i);
            String row = rows.get(i + 1);
            Rating anew = new TrainRater(build.brief()).rate(HANDOVER.rating().train());
            assertThat(cell(row, 0)).isEqualTo(build.way().title());
            assertThat(cell(row, 1)).isEqualTo(Integer.toString(build.bearingCount()));
            assertThat(cell(row, 2)).isEqualTo(gram(anew.weight().leastWeight()));
            assertThat(cell(row, 3)).isEqualTo(gram(anew.leastSmoothest()));
            assertThat(cell(row, 4)).isEqualTo(gram(anew.leastRoughest()));
            assertThat(cell(row, 5)).isEqualTo(gram(anew.recommendedWeight()));
            assertThat(cell(row, 6).isEmpty()).isEqualTo(anew.feasible());
        }
    }

    private static String gram(double kilograms) {
        return String.format(Locale.ROOT, "%.3f", kilograms);
    }

    // Both supports of all four arbors, none of them of a size that the brief gives.
    @Test
    void the_bearings_needed_are_those_that_the_plates_take() throws IOException {
        long seats = KIT.holes().stream()
                .filter(row -> row.use() == PlateHole.Use.UNKNOWN_SEAT)
                .count();

        assertThat(seats).isEqualTo(8);
        assertThat(bearings(export(HANDOVER), "ball bearing")).isEqualTo(seats);
        assertThat(bearings(export(HANDOVER), "ball bearing (recommended besides)"))
                .isZero();
    }

    @Test
    void a_clock_in_plain_bores_needs_no_bearings_and_has_those_recommended_apart() throws IOException {
        Brief plain = KIT.builds().build(BuildWay.PLAIN).brief();
        TrainRater rater = new TrainRater(plain);
        Rating rating = rater.rate(HANDOVER.rating().train());
        Build recommended = Builds.of(rater, rating.train(), Optional.empty()).build(BuildWay.RECOMMENDED);
        TrialFolder folder = export(Handover.unplaced(plain, rating, "0.0.0-trial"));

        assertThat(bearings(folder, "ball bearing")).isZero();
        assertThat(bearings(folder, "ball bearing (recommended besides)"))
                .isEqualTo(recommended.bearingCount())
                .isPositive();
        assertThat(folder.text("shopping.csv"))
                .contains("least weight with the recommended bearings " + gram(recommended.leastWeight())
                        + " kg, as the brief says " + gram(rating.weight().leastWeight()) + " kg");
    }

    private static long bearings(TrialFolder folder, String what) {
        return lines(folder, "shopping.csv").stream()
                .filter(row -> row.startsWith(what + ","))
                .mapToLong(row -> Long.parseLong(cell(row, 2)))
                .sum();
    }

    @Test
    void the_page_says_that_least_weights_are_predictions() throws IOException {
        assertThat(export(HANDOVER).text("lists.html"))
                .contains("Fewer or more bearings", "least weight, kg", "Least weights are predictions");
    }

    @Test
    void the_page_is_well_formed_and_holds_every_row_and_the_cautions() throws Exception {
        TrialFolder folder = export(HANDOVER);
        DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
        Document page = builder.parse(new ByteArrayInputStream(folder.bytes("lists.html")));
        int rows = folder.names().stream()
                .filter(name -> name.endsWith(".csv"))
                .mapToInt(name -> lines(folder, name).size())
                .sum();

        assertThat(page.getElementsByTagName("tr").getLength()).isEqualTo(rows);
        assertThat(folder.text("lists.html")).contains("A hanging weight can fall", "eye protection", "steel shot");
        assertThat(Optional.of(page.getDocumentElement().getAttribute("lang"))).contains("en");
    }

    // IETF, RFC 4180, section 2, rules 5 to 7: quotes around cells with commas, quotes or line breaks, quotes doubled.
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '\'',
            value = {"aaa; aaa", "b,bb; \"b,bb\"", "b\"bb; \"b\"\"bb\""})
    void cells_are_quoted_as_the_standard_says(String cell, String written) {
        assertThat(Csv.quoted(cell, Csv.Separator.COMMA)).isEqualTo(written);
    }

    // IETF, RFC 4180, section 2, rule 6, with the separator in place of the comma: common practice, no source.
    @Test
    void another_separator_is_quoted_in_place_of_the_comma() {
        assertThat(Csv.quoted("a;b", Csv.Separator.SEMICOLON)).isEqualTo("\"a;b\"");
        assertThat(Csv.quoted("a,b", Csv.Separator.SEMICOLON)).isEqualTo("a,b");
        assertThat(Csv.quoted("a\tb", Csv.Separator.TAB)).isEqualTo("\"a\tb\"");
    }

    private static TrialFolder export(ExportSetting.Choice setting, String value) throws IOException {
        return export(HANDOVER.with(SettingValues.USUAL.with(setting, value)));
    }

    @Test
    void cells_are_divided_as_asked() throws IOException {
        List<String> commas = lines(export(HANDOVER), "arbors.csv");
        List<String> tabs = lines(export(ListsExporter.SEPARATOR, "tab"), "arbors.csv");
        assertThat(tabs)
                .isEqualTo(commas.stream().map(line -> line.replace(',', '\t')).toList());
    }

    @Test
    void only_the_kind_of_file_that_is_asked_for_is_written() throws IOException {
        assertThat(export(ListsExporter.FILES, "html").names()).containsExactly("lists.html");
        assertThat(export(ListsExporter.FILES, "csv").names())
                .contains("cutting.csv")
                .allMatch(name -> name.endsWith(".csv"));
    }

    private static Brief stockRods(Brief brief, String length) {
        ObjectNode tree = BriefWriter.tree(brief);
        ((ObjectNode) tree.get("fit")).put("stockRod", length);
        return BriefReader.read(tree).fold(read -> read, problems -> {
            throw new AssertionError(problems);
        });
    }

    private static Handover withStockRods(String length) {
        return new Handover(stockRods(HANDOVER.brief(), length), HANDOVER.rating(), HANDOVER.layout(), "0.0.0-trial");
    }

    @Test
    void a_stock_rod_shorter_than_the_longest_arbor_is_refused_in_one_sentence() {
        ArborPiece longest = Collections.max(KIT.pieces(), Comparator.comparingLong(ArborPiece::length));
        String length = Nanometres.text(longest.length());
        assertThatThrownBy(() -> export(withStockRods("20 mm")))
                .isInstanceOf(RefusedExportException.class)
                .hasMessage("The stock rod (20 mm) of the brief must be at least as long as the longest arbor ("
                        + longest.name() + "), " + length + ". Maybe take rods of " + length + ".");
        assertThatCode(() -> export(withStockRods(length))).doesNotThrowAnyException();
    }

    @Test
    void stock_rods_may_be_longer_than_a_metre() throws IOException {
        assertThat(lines(export(withStockRods("2.5 m")), "cutting.csv").get(1)).contains(",2500.00,");
    }
}
