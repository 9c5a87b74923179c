// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.plugin.api.Handover;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefReader;
import drumfall.solver.brief.BriefWriter;
import drumfall.solver.fit.Nanometres;
import drumfall.solver.fit.bore.DrillRack;
import drumfall.solver.fit.bore.DrillSeries;
import drumfall.solver.fit.bore.Finish;
import drumfall.solver.fit.bore.FinishedHole;
import drumfall.solver.kit.Build;
import drumfall.solver.kit.Builds;
import drumfall.solver.power.Criterion;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.power.books.LoadedArbor;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.power.pendulum.BobPlace;
import drumfall.solver.power.pendulum.BodyShape;
import drumfall.solver.power.pendulum.CompoundPendulum;
import drumfall.solver.power.pendulum.DailyRate;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.rating.BandPoint;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.answers.PowerAnswers;
import drumfall.solver.train.DrumRun;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every figure on the sheet is the solver's, asked here by another way than the sheet asks. */
class FiguresTest {
    /** What the pages of the trial clock say, in the order A4, Letter, web page. */
    private static final List<String> PAGES = new ArrayList<>();

    @BeforeAll
    static void read() throws IOException {
        PAGES.add(Pages.text(Trials.files().bytes("builders-sheet-a4.pdf")));
        PAGES.add(Pages.text(Trials.files().bytes("builders-sheet-letter.pdf")));
        PAGES.add(HtmlTest.text(Trials.files().text("builders-sheet.html")));
    }

    private static String f(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }

    static List<Arguments> figures() {
        Rating rating = Trials.eightDays().rating();
        Brief brief = Trials.eightDays().brief();
        DrumRun run = Trials.rater()
                .limits()
                .drumRun(rating.train().drumDiameter(), rating.train().reeving());
        double line = run.lineLength(
                brief.fall().topLead().si(), brief.fall().tieOff().si());
        PowerAnswers answers = Trials.answers();
        CompoundPendulum pendulum = BobPlace.onRodToTheBob(
                        rating.pendulumLength(),
                        brief.pendulum().bobMass().si(),
                        new BodyShape.MassPoint(),
                        brief.pendulum().rodMass().si())
                .orElseThrow();
        List<Arguments> figures = new ArrayList<>(List.of(
                Arguments.of(
                        "duration",
                        f("Runs for %.2f days", rating.durationRoundedDown().doubleValue() / 24)),
                Arguments.of("beats", "Beats an hour 3600.00"),
                Arguments.of("pendulum", f("of that beat %.1f mm", 1000 * rating.pendulumLength())),
                Arguments.of(
                        "least",
                        f(
                                "Least weight, pulley included %.3f kg",
                                rating.weight().leastWeight())),
                Arguments.of(
                        "band",
                        f("rough clock %.3f kg and ", rating.leastSmoothest()) + f("%.2f kg", rating.leastRoughest())),
                Arguments.of("recommended", f("included %.2f kg", rating.recommendedWeight())),
                Arguments.of(
                        "arc",
                        f("each side %.2f\u00b0", Math.toDegrees(answers.books().semiArc()))),
                // Lift and lock of the trial brief: (2 + 0.5) / 2 degrees.
                Arguments.of("escape angle", "escapes, each side 1.25\u00b0"),
                Arguments.of("line", f("Line to cut %.0f mm", 1000 * line)),
                Arguments.of("turns", f("Turns of the drum to wind %.1f", run.turns())),
                Arguments.of(
                        "key", f("Torque at the key %.2f N m", answers.winding().torque())),
                Arguments.of(
                        "coasting", f("is wound, for %.1f s", answers.coasting().seconds())),
                Arguments.of(
                        "bob", f("middle %.1f mm below", 1000 * pendulum.bob().centre())),
                // 86 400 seconds a day over 3600 beats an hour.
                Arguments.of("beat too many", "gains 24.0 s a day"),
                Arguments.of("nut", f("M6 1.00 mm %.1f s a day", DailyRate.perNutTurn(pendulum, 1e-3)))));
        for (Build build :
                Builds.of(Trials.rater(), rating.train(), Optional.empty()).all()) {
            Rating anew = new TrainRater(build.brief()).rate(rating.train());
            figures.add(Arguments.of(
                    build.way().title(),
                    build.bearingCount() + " " + kilograms(anew.weight().leastWeight()) + " "
                            + kilograms(anew.recommendedWeight())));
        }
        for (int i = 0; i < answers.freeSpins().size(); i++) {
            double seconds = answers.freeSpins().get(i).seconds();
            figures.add(Arguments.of("free spin of arbor " + (i + 1), f("%.1f s", seconds)));
            figures.add(Arguments.of(
                    "half the spin of arbor " + (i + 1),
                    f("spins %.1f s", seconds / 2) + f(" instead of %.1f s", seconds)));
        }
        return figures;
    }

    private static String kilograms(double mass) {
        return f(mass < 10 ? "%.3f kg" : "%.2f kg", mass);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("figures")
    void every_page_shows_the_solvers_figure(String name, String shown) {
        assertThat(PAGES)
                .as(name)
                .hasSize(3)
                .allSatisfy(page -> assertThat(page).contains(shown));
    }

    @Test
    void bores_and_drills_are_those_of_the_fit() {
        Brief brief = Trials.plainBores().brief();
        Finish finish = new Finish(
                DrillRack.of(DrillSeries.METRIC),
                nm(brief.fit().skim()),
                nm(brief.fit().shrinkage()));
        FinishedHole hole = FinishedHole.bore(
                "escape", nm(brief.arbors().escape().diameter()), nm(brief.fit().clearance()), finish);
        // 3 mm rod, 0.1 mm clearance: the 3.1 mm drill; 0.15 mm skim and 0.1 mm shrinkage: drawn 3.05 mm.
        assertThat(hole.drill().label()).isEqualTo("3.1 mm");
        assertThat(HtmlTest.text(Trials.plainFiles().text("builders-sheet.html")))
                .contains("3.00 mm plain bores " + f("%.2f mm ", hole.drawn() / 1e6) + "3.1 mm")
                .contains("Arbor 4, escape: bore tight");
    }

    private static long nm(Quantity length) {
        return Nanometres.exact(length.exact());
    }

    @Test
    void a_fault_weighs_what_the_walk_weighs_with_it() {
        // Q at the low end of its band, all else in the middle.
        BandPoint point = new BandPoint(0.5, 0.5, 0.5, 1);
        double least = new WeightWalk(Trials.rater().movement(point))
                .weigh(Trials.eightDays().rating().train())
                .leastWeight();
        assertThat(least).isGreaterThan(Trials.eightDays().rating().weight().leastWeight());
        assertThat(HtmlTest.text(Trials.files().text("builders-sheet.html")))
                .contains("with the crutch off " + f(least < 10 ? "%.3f kg" : "%.2f kg", least));
    }

    /** A doubled arbor, put together from a brief whose bearings are twice as bad rather than by doubling. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void a_bad_bearing_weighs_what_one_from_a_worse_brief_weighs(int arbor) {
        LoadedClock clock = Trials.rater().loaded(Trials.eightDays().rating().train());
        TrainRater worse = new TrainRater(Trials.draggingBearings());
        LoadedArbor running = clock.running().arbors().get(arbor);
        LoadedArbor starting = clock.starting().arbors().get(arbor);
        Brief.ArborBuild build = worse.build(running.role());
        double least = clock.withArbor(
                        arbor,
                        running.withFriction(worse.friction(build, running.role(), Criterion.RUNNING)),
                        starting.withFriction(worse.friction(build, running.role(), Criterion.BINDING)))
                .leastWeight();
        double seconds = Trials.answers().freeSpins().get(arbor).seconds();
        assertThat(PAGES.get(0)).contains(f("instead of %.1f s", seconds) + f(" %.3f kg runs", least));
    }

    @Test
    void centres_that_are_off_are_weighed_either_way() {
        // Tooth thickness of a pair of module 1 is thinned by 0.15 mm together; 0.2 mm nearer take 2 · 0.2 mm · tan 20
        // degrees = 0.146 mm and more at the wider angle of shifted teeth, so that nothing is left.
        assertThat(PAGES.get(2))
                .contains("Arbors 3 and 4, 0.2 mm too close not 34.00 mm between their middles; the teeth jam or bottom"
                        + " no weight stops")
                .containsPattern("Arbors 3 and 4, 0.2 mm too far apart not 34.00 mm between their middles; the mesh"
                        + " rattles 7\\.[7-9]\\d\\d kg runs");
    }

    @Test
    void least_weights_of_other_builds_are_called_predictions() {
        assertThat(PAGES)
                .allSatisfy(page ->
                        assertThat(page).contains("Fewer or more bearings").contains("Least weights are predictions"));
    }

    @Test
    void the_cautions_come_first() throws IOException {
        String text = Pages.text(Trials.files().bytes("builders-sheet-a4.pdf"));
        assertThat(text.indexOf("A hanging weight can fall")).isBetween(0, text.indexOf("The design"));
        assertThat(text).contains("local building code").contains("licensed professional");
    }

    /** The third arbor of the trial clock on a rod that stands still, a bearing of 3 × 6 × 2.5 mm in its wheel, which faces the dial. */
    @Test
    void bearings_on_a_rod_that_stands_still_are_told_with_their_seats() {
        ObjectNode tree = BriefWriter.tree(Trials.eightDays().brief());
        ((ObjectNode) tree.at("/arbors/intermediate")).put("kind", "fixed").put("bearings", "front");
        ((ObjectNode) tree.at("/arbors/intermediate"))
                .putObject("bearing")
                .put("outer", "6 mm")
                .put("width", "2.5 mm");
        Brief brief = BriefReader.read(tree).fold(read -> read, problems -> {
            throw new AssertionError(problems);
        });
        Handover handover = new Handover(
                brief,
                new TrainRater(brief).rate(Trials.eightDays().rating().train()),
                Trials.eightDays().layout(),
                "0.0.0-trial");
        String page = Trials.files(handover).text("builders-sheet.html");
        assertThat(page).contains("bearing in the hub's front, on a fixed rod");
        assertThat(page).contains("Arbor 3, bearing of 3 mm × 6 mm × 2.5 mm: in what turns on the rod, seat drawn ");
        assertThat(Trials.files().text("builders-sheet.html")).doesNotContain("in what turns on the rod");
    }
}
