// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.plugin.api.trial.TrialFolder;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** Reads the SVG files back and measures them; sizes by ISO 53 and ISO 54, tip diameter m (z + 2). */
class SvgTest {
    private static final TrialFolder FOLDER = Exports.eightDays();

    static Element svg(String name) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            return factory.newDocumentBuilder()
                    .parse(new ByteArrayInputStream(FOLDER.bytes(name)))
                    .getDocumentElement();
        } catch (ParserConfigurationException | SAXException | IOException broken) {
            throw new AssertionError(name, broken);
        }
    }

    private static List<Element> all(Element svg, String element, String layer) {
        NodeList found = svg.getElementsByTagNameNS("http://www.w3.org/2000/svg", element);
        return IntStream.range(0, found.getLength())
                .mapToObj(i -> (Element) found.item(i))
                .filter(each -> each.getAttribute("class").equals(layer))
                .toList();
    }

    private static List<Point> points(Element path) {
        String data = path.getAttribute("d");
        assertThat(data).startsWith("M").endsWith(" Z");
        return Stream.of(data.substring(1, data.length() - 2).split(" L"))
                .map(text -> text.split(","))
                .map(pair -> new Point(Double.parseDouble(pair[0]), -Double.parseDouble(pair[1])))
                .toList();
    }

    @Test
    void there_is_a_pair_of_files_for_every_wheel_and_pinion_and_the_overview() {
        assertThat(FOLDER.names())
                .containsExactly(
                        "arbor-1-wheel.dxf", "arbor-1-wheel.svg",
                        "arbor-2-pinion.dxf", "arbor-2-pinion.svg",
                        "arbor-2-wheel.dxf", "arbor-2-wheel.svg",
                        "arbor-3-pinion.dxf", "arbor-3-pinion.svg",
                        "arbor-3-wheel.dxf", "arbor-3-wheel.svg",
                        "arbor-4-pinion.dxf", "arbor-4-pinion.svg",
                        "overview.dxf", "overview.svg");
    }

    @ParameterizedTest
    @CsvSource({
        "arbor-1-wheel, 96, 144, 147, 6",
        "arbor-2-pinion, 8, 12, 15, 4",
        "arbor-2-wheel, 64, 64, 66, 4",
        "arbor-3-pinion, 8, 8, 10, 3",
        "arbor-3-wheel, 60, 60, 62, 3",
        "arbor-4-pinion, 8, 8, 10, 3"
    })
    void a_part_has_its_teeth_and_its_diameters_in_millimetres(
            String name, int teeth, double pitch, double tip, double bore) {
        Element svg = svg(name + ".svg");
        List<Point> outline = points(all(svg, "path", "outline").get(0));
        assertThat(OutlineMeasure.teeth(outline)).isEqualTo(teeth);
        assertThat(diameter(svg, "pitch")).isEqualTo(pitch);
        assertThat(diameter(svg, "tip")).isEqualTo(tip);
        assertThat(diameter(svg, "bore")).isEqualTo(bore);
        assertThat(outline.stream().mapToDouble(OutlineMeasure::radius).max().orElseThrow())
                .as("rounded to a tenth of a micrometre in x and y")
                .isCloseTo(tip / 2, within(1e-4));
        assertThat(outline.stream().mapToDouble(OutlineMeasure::radius).min().orElseThrow())
                .isCloseTo(diameter(svg, "root") / 2, within(1e-4));
    }

    private static double diameter(Element svg, String layer) {
        return 2 * Double.parseDouble(all(svg, "circle", layer).get(0).getAttribute("r"));
    }

    @ParameterizedTest
    @CsvSource({"arbor-1-wheel, 151", "arbor-2-pinion, 19"})
    void one_user_unit_is_one_millimetre(String name, String size) {
        Element svg = svg(name + ".svg");
        assertThat(svg.getAttribute("width")).isEqualTo(size + "mm");
        assertThat(svg.getAttribute("height")).isEqualTo(size + "mm");
        assertThat(svg.getAttribute("viewBox")).endsWith(" " + size + " " + size);
    }

    @Test
    void pitch_circles_are_chain_dotted_and_outlines_are_not() {
        Element svg = svg("arbor-1-wheel.svg");
        assertThat(all(svg, "circle", "pitch").get(0).hasAttribute("stroke-dasharray"))
                .isTrue();
        assertThat(all(svg, "path", "outline").get(0).hasAttribute("stroke-dasharray"))
                .isFalse();
    }

    /** Centre distances m (z + p) / 2: 78, 36 and 34 mm. */
    @Test
    void the_overview_puts_the_arbors_at_their_centre_distances_and_the_pitch_circles_touch() {
        List<Element> lines = all(svg("overview.svg"), "line", "pitch");
        assertThat(lines.stream()
                        .map(line -> Double.parseDouble(line.getAttribute("x2"))
                                - Double.parseDouble(line.getAttribute("x1"))))
                .containsExactly(78.0, 36.0, 34.0);
    }

    /** A tooth of the wheel stands in a gap of its pinion, so the outlines keep clear of each other on the line of centres. */
    @Test
    void in_the_overview_wheel_and_pinion_do_not_cut_each_other_on_the_line_of_centres() {
        List<Element> paths = all(svg("overview.svg"), "path", "outline");
        double wheelReach =
                points(paths.get(0)).stream().mapToDouble(Point::x).max().orElseThrow();
        double pinionRoot = points(paths.get(1)).stream()
                .filter(point -> Math.abs(point.y()) < 0.3)
                .mapToDouble(Point::x)
                .min()
                .orElseThrow();
        assertThat(wheelReach).as("the tip circle, within the chord error").isCloseTo(73.5, within(Gear.CHORD_ERROR));
        assertThat(pinionRoot - wheelReach)
                .as("the bottom clearance of a quarter module")
                .isCloseTo(0.375, within(0.02));
    }

    @Test
    void nothing_depends_on_the_locale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TrialFolder again = Exports.eightDays();
            assertThat(again.names()).isEqualTo(FOLDER.names());
            again.names().forEach(name -> assertThat(again.bytes(name)).isEqualTo(FOLDER.bytes(name)));
        } finally {
            Locale.setDefault(before);
        }
    }
}
