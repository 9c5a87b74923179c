// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Handover;
import drumfall.plugin.api.trial.TrialFolder;
import drumfall.plugin.api.trial.TrialHandover;
import drumfall.plugin.sheet.draw.Drawing;
import drumfall.plugin.sheet.draw.PlacedDrawings;
import drumfall.solver.fitting.FittedArbor;
import drumfall.solver.kit.HoleRow;
import drumfall.solver.kit.Kit;
import drumfall.solver.layout.Layout;
import drumfall.solver.making.BeforePlate;
import drumfall.solver.rating.TrainRater;
import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the sheet says of a train whose arbors have places. */
class PlacedSheetTest {
    private static final Handover HANDOVER = TrialHandover.eightDays();
    private static final Layout LAYOUT = HANDOVER.layout().orElseThrow();
    private static final Kit KIT = Kit.of(new TrainRater(HANDOVER.brief()), HANDOVER.rating(), HANDOVER.layout());
    private static String html;
    private static String pdf;

    @BeforeAll
    static void export() throws IOException {
        TrialFolder folder = new TrialFolder();
        new SheetExporter().export(HANDOVER, folder, new ExportProgress() {
            @Override
            public void at(double share, String doing) {}

            @Override
            public boolean cancelled() {
                return false;
            }
        });
        html = HtmlTest.text(folder.text("builders-sheet.html"));
        pdf = Pages.text(folder.bytes("builders-sheet-a4.pdf"));
    }

    @Test
    void every_hole_stands_in_its_plates_table() {
        for (HoleRow row : KIT.holes()) {
            String place = row.name() + " " + mm(row.fromDial()) + " " + mm(row.aboveDial()) + " " + mm(row.fromLeft())
                    + " " + mm(row.fromBottom()) + " " + row.drill();
            assertThat(html).contains(place);
            assertThat(pdf).contains(place);
        }
    }

    // The plates, spacers and end shakes of the kit, not those reckoned without places.
    @Test
    void spacers_and_end_shakes_are_the_kits() {
        for (FittedArbor arbor : KIT.fitted().orElseThrow().arbors()) {
            arbor.standing().ifPresent(standing -> {
                assertThat(html)
                        .contains("Spacers: " + spacer(standing.backSpacer()) + " behind, "
                                + spacer(standing.frontSpacer()) + " before.");
                assertThat(html)
                        .contains(mm(standing.backSpacer() + standing.frontSpacer()) + " "
                                + mm(standing.shake().least()) + " to "
                                + mm(standing.shake().most()));
            });
        }
        assertThat(html)
                .contains("The plates stand " + mm(KIT.fitted().orElseThrow().depth()) + " apart.");
    }

    @Test
    void what_stands_nearest_to_the_back_plate_goes_in_first() {
        List<FittedArbor> order = KIT.fitted().orElseThrow().arbors().stream()
                .filter(arbor -> arbor.standing().isPresent())
                .sorted(Comparator.comparingLong(
                        arbor -> arbor.standing().orElseThrow().backSpacer()))
                .toList();
        int before = -1;
        for (FittedArbor arbor : order) {
            String name = "A" + arbor.name().substring(1);
            int at = html.indexOf(name + ", ", html.indexOf("Order of assembly"));
            int alone = html.indexOf(name + ": set", html.indexOf("Order of assembly"));
            int step = Math.max(at, alone);
            assertThat(step).as(name).isGreaterThan(before);
            before = step;
        }
    }

    @Test
    void the_elevation_is_drawn_to_scale_and_numbered_from_the_drum() {
        Drawing elevation = PlacedDrawings.elevation(LAYOUT);
        Drawing section = PlacedDrawings.section(
                LAYOUT, KIT.parts(), KIT.fitted().orElseThrow().depth());

        assertThat(elevation.labels()).hasSize(LAYOUT.places().size());
        assertThat(elevation.labels().get(0).text()).isEqualTo("1");
        assertThat(elevation.labels().get(0).y() - elevation.labels().get(1).y())
                .isCloseTo(1e-6 * (LAYOUT.place(0).y() - LAYOUT.place(1).y()), within(1e-9));
        // The frame and four millimetres all round.
        assertThat(elevation.box().width())
                .isCloseTo(1e-6 * LAYOUT.need().envelope().width() + 8, within(1e-9));
        assertThat(section.box().top() - section.box().bottom())
                .isGreaterThan(1e-6 * LAYOUT.planes().depth());
    }

    @Test
    void the_room_before_the_front_plate_and_the_dials_are_the_kits() {
        BeforePlate stack = KIT.beforePlate().orElseThrow();
        BeforePlate.DialRoom dial = stack.dial().orElseThrow();
        String said =
                "What stands before the front plate takes " + mm(1e9 * stack.room()) + ". A dial has its place between"
                        + " hour wheel and hour hand, from " + mm(1e9 * dial.from()) + " to " + mm(1e9 * dial.to());

        assertThat(html).contains(said);
        assertThat(pdf).contains(said);
    }

    // The order is the kit's: nearest to the plate first.
    @Test
    void motion_work_square_and_hands_go_on_in_the_order_in_which_they_stand() {
        String order = html.substring(html.indexOf("Order of assembly"));
        int before = order.indexOf("On the front plate, each so far from its front face");
        assertThat(before).isPositive();
        for (BeforePlate.Level level : KIT.beforePlate().orElseThrow().levels()) {
            int at = order.indexOf(level.part().replace('-', ' ') + " at " + mm(1e9 * level.from()), before);
            assertThat(at).as(level.part()).isGreaterThanOrEqualTo(before);
            before = at;
        }
        assertThat(order.indexOf("Put in the pallets")).isGreaterThan(before);
        assertThat(order).contains("Press each bearing into its seat");
    }

    // The centre arbor is the second; the hands' levels are above the front plate, as far before it as the kit has
    // them.
    @Test
    void the_section_shows_the_hands_where_they_stand() {
        Drawing section = PlacedDrawings.section(
                LAYOUT, KIT.parts(), KIT.fitted().orElseThrow().depth());
        double face =
                1e-6 * (LAYOUT.planes().innerDepth() + LAYOUT.need().envelope().plateThickness());
        BeforePlate stack = KIT.beforePlate().orElseThrow();
        for (BeforePlate.Level level : stack.levels()) {
            if (!level.part().endsWith("hand")) {
                continue;
            }
            assertThat(section.strokes())
                    .anyMatch(stroke -> Math.abs(stroke.points().get(0).y() - face - 1e3 * level.from()) < 1e-6);
        }
        assertThat(section.box().top()).isGreaterThan(face + 1e3 * stack.room());
    }

    private static String spacer(long height) {
        return height == 0 ? "none" : mm(height);
    }

    private static String mm(long nanometres) {
        return mm((double) nanometres);
    }

    private static String mm(double nanometres) {
        return String.format(Locale.ROOT, "%.2f mm", nanometres / 1e6);
    }
}
