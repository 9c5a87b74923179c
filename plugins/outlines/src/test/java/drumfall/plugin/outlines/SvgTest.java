// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.plugin.api.Handover;
import drumfall.plugin.api.SettingValues;
import drumfall.plugin.api.trial.TrialFolder;
import drumfall.plugin.outlines.draw.Drawing;
import drumfall.solver.making.MovementPart;
import drumfall.solver.teeth.outline.Point;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reads the drawings of parts back and measures them; pitch diameters m z by ISO 54. */
class SvgTest {
    private static SvgFile svg(String name) {
        return SvgFile.of(Exports.FILES, name + ".svg");
    }

    private static List<MovementPart> parts() {
        return MovementDrawings.of(Exports.PLACED).parts();
    }

    @Test
    void every_printed_part_has_both_files() {
        assertThat(parts()).hasSizeGreaterThan(30);
        for (MovementPart part : parts()) {
            assertThat(Exports.FILES.names()).contains(part.name() + ".svg", part.name() + ".dxf");
        }
    }

    /** The bores are the brief's rods: 4 mm through bearings, 3 mm held, 2 mm and 1.5 mm drilled to turn on fixed rods. */
    @ParameterizedTest
    @CsvSource({
        "arbor-1-wheel, wheel, 85, 127.5",
        "arbor-2-wheel-and-pinion, wheel, 83, 83",
        "arbor-2-wheel-and-pinion, pinion, 10, 15",
        "arbor-3-wheel-and-pinion, wheel, 66, 66",
        "arbor-3-wheel-and-pinion, pinion, 12, 12",
        "arbor-5-escape-wheel-and-pinion, pinion, 12, 12"
    })
    void a_section_has_its_teeth_around_the_pitch_circle_in_millimetres(
            String name, String layer, int teeth, double pitch) {
        List<Point> outline = svg(name).outlines(layer).get(0);
        assertThat(OutlineMeasure.teeth(outline)).isEqualTo(teeth);
        assertThat(svg(name).circles("pitch"))
                .extracting(circle -> 2 * circle.radius())
                .contains(pitch);
        assertThat(outline.stream().mapToDouble(OutlineMeasure::radius).max().orElseThrow())
                .isGreaterThan(pitch / 2);
        assertThat(outline.stream().mapToDouble(OutlineMeasure::radius).min().orElseThrow())
                .isLessThan(pitch / 2);
        assertThat(OutlineMeasure.crossesItself(outline)).isFalse();
        assertThat(OutlineMeasure.area(outline)).as("anticlockwise").isPositive();
    }

    /** What is drawn is what is printed: area times height, layer by layer, is the solid's volume, integrated over arcs. */
    @ParameterizedTest
    @CsvSource({"arbor-2-wheel-and-pinion, wheel, pinion", "arbor-5-escape-wheel-and-pinion, escape-wheel, pinion"})
    void sections_and_bore_enclose_the_volume_of_the_printed_part(String name, String lower, String upper) {
        MovementPart part = parts().stream()
                .filter(any -> any.name().equals(name))
                .findFirst()
                .orElseThrow();
        double radius = svg(name).circles("bore").get(0).radius();
        double lowerHeight = part.solid().slabs().get(0).height();
        double upperHeight = part.solid().slabs().get(1).height();
        double volume = lowerHeight * svg(name).area(lower)
                + upperHeight * svg(name).area(upper)
                - (lowerHeight + upperHeight) * Math.PI * radius * radius;
        // Arcs are cut into chords when they are read back, which takes off less than one part in ten thousand.
        assertThat(volume)
                .isCloseTo(part.solid().volume(), within(1e-4 * part.solid().volume()));
    }

    @Test
    void a_wheel_with_its_pinion_is_drawn_with_arms_and_one_bore() {
        SvgFile svg = svg("arbor-2-wheel-and-pinion");
        assertThat(svg.outlines("wheel"))
                .as("rim, and windows between four arms")
                .hasSize(5);
        assertThat(svg.outlines("pinion")).hasSize(1);
        assertThat(svg.circles("bore")).hasSize(1);
        assertThat(svg.texts("notes"))
                .containsExactly(
                        "arbor-2-wheel-and-pinion, 1 off, PLA",
                        "WHEEL: 0 to 5 mm, 83 teeth, module 1 mm",
                        "PINION: 5 to 16.4 mm, 10 leaves, module 1.5 mm");
    }

    @Test
    void what_runs_through_all_sections_is_drawn_once() {
        SvgFile plate = svg("back-plate-1-of-2");
        assertThat(plate.outlines("through")).as("the edge").hasSize(1);
        // Of the holes only those of bearings and pillars change with the height: their seats.
        assertThat(plate.layers()).contains("section-1", "section-2", "section-3");
        assertThat(plate.outlines("section-1")).isEmpty();
    }

    @Test
    void a_layer_follows_the_line_that_its_kind_asks_for() {
        SvgFile svg = svg("arbor-1-wheel");
        // 24 d, 3 d, 0.5 d, 3 d for a narrow line of 0.18 mm (ISO 128-2, from memory).
        assertThat(svg.layer("pitch").getAttribute("stroke-dasharray")).isEqualTo("4.32 0.54 0.09 0.54");
        assertThat(svg.layer("wheel").hasAttribute("stroke-dasharray")).isFalse();
    }

    @Test
    void one_user_unit_is_one_millimetre() {
        SvgFile svg = svg("arbor-1-wheel");
        String[] box = svg.root().getAttribute("viewBox").split(" ", -1);
        assertThat(svg.root().getAttribute("width")).isEqualTo(box[2] + "mm");
        assertThat(svg.root().getAttribute("height")).isEqualTo(box[3] + "mm");
        double widest = svg.outlines("wheel").get(0).stream()
                .mapToDouble(Point::x)
                .max()
                .orElseThrow();
        assertThat(Double.parseDouble(box[0]) + Double.parseDouble(box[2]))
                .as("the right edge, rounded to a tenth of a micrometre")
                .isCloseTo(widest + Drawing.MARGIN, within(2e-4));
    }

    @Test
    void without_places_there_is_no_elevation_and_the_read_me_says_so() {
        Handover unplaced = Handover.unplaced(Exports.PLACED.brief(), Exports.PLACED.rating(), "0.0.0-trial");
        TrialFolder files = Exports.files(unplaced);
        assertThat(files.names())
                .contains("arbor-1-wheel.svg")
                .noneMatch(name -> name.startsWith("elevation") || name.contains("plate"));
        assertThat(files.text("read-me.txt")).contains("The arbors have no places, so there is no elevation");
        assertThat(Exports.FILES.text("read-me.txt")).doesNotContain("no places");
    }

    @Test
    void nothing_depends_on_the_locale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TrialFolder again = Exports.files(Exports.PLACED);
            assertThat(again.names()).isEqualTo(Exports.FILES.names());
            again.names().forEach(name -> assertThat(again.bytes(name)).isEqualTo(Exports.FILES.bytes(name)));
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest
    @CsvSource({"svg, dxf", "dxf, svg"})
    void only_the_kind_of_drawing_that_is_asked_for_is_written(String asked, String left) {
        SettingValues settings = SettingValues.USUAL.with(OutlinesExporter.FILES, asked);
        TrialFolder files = Exports.files(Exports.PLACED.with(settings));
        assertThat(files.names())
                .containsExactlyElementsOf(Exports.FILES.names().stream()
                        .filter(name -> !name.endsWith("." + left))
                        .toList());
        assertThat(files.bytes("elevation." + asked)).isEqualTo(Exports.FILES.bytes("elevation." + asked));
    }
}
