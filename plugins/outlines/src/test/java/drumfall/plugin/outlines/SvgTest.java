// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.plugin.api.trial.TrialFolder;
import drumfall.solver.teeth.outline.Point;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** Reads the SVG files back and measures them; pitch diameters m z by ISO 54. */
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

    /** Corners and, of every arc, many points between, worked out from its radius and sense alone. */
    private static List<Point> points(Element path) {
        String data = path.getAttribute("d");
        assertThat(data).startsWith("M").endsWith(" Z");
        List<Point> points = new ArrayList<>();
        Point at = null;
        for (String step : data.substring(0, data.length() - 2).split(" (?=[LA])", -1)) {
            String[] words = step.substring(1).split("[ ,]", -1);
            int last = words.length;
            Point to = new Point(Double.parseDouble(words[last - 2]), -Double.parseDouble(words[last - 1]));
            if (step.startsWith("A")) {
                points.addAll(OutlineMeasure.arc(
                        at, to, Double.parseDouble(words[0]), words[3].equals("1"), words[4].equals("0")));
            }
            points.add(to);
            at = to;
        }
        return points;
    }

    static List<Point> outline(String name) {
        return points(all(svg(name), "path", "outline").get(0));
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
        "arbor-1-wheel, 96, 144, 6",
        "arbor-2-pinion, 8, 12, 4",
        "arbor-2-wheel, 64, 64, 4",
        "arbor-3-pinion, 8, 8, 3",
        "arbor-3-wheel, 60, 60, 3",
        "arbor-4-pinion, 8, 8, 3"
    })
    void a_part_has_its_teeth_and_its_diameters_in_millimetres(String name, int teeth, double pitch, double bore) {
        Element svg = svg(name + ".svg");
        List<Point> outline = points(all(svg, "path", "outline").get(0));
        assertThat(OutlineMeasure.teeth(outline)).isEqualTo(teeth);
        assertThat(diameter(svg, "pitch")).isEqualTo(pitch);
        assertThat(diameter(svg, "bore")).isEqualTo(bore);
        assertThat(outline.stream().mapToDouble(OutlineMeasure::radius).max().orElseThrow())
                .as("the tip circle, rounded to a tenth of a micrometre in x and y")
                .isCloseTo(diameter(svg, "tip") / 2, within(2e-4));
        assertThat(outline.stream().mapToDouble(OutlineMeasure::radius).min().orElseThrow())
                .isCloseTo(diameter(svg, "root") / 2, within(2e-4));
        assertThat(OutlineMeasure.crossesItself(outline)).isFalse();
        assertThat(OutlineMeasure.area(outline)).as("anticlockwise").isPositive();
    }

    private static double diameter(Element svg, String layer) {
        return 2 * Double.parseDouble(all(svg, "circle", layer).get(0).getAttribute("r"));
    }

    @ParameterizedTest
    @CsvSource({"arbor-1-wheel", "arbor-2-pinion"})
    void one_user_unit_is_one_millimetre(String name) {
        Element svg = svg(name + ".svg");
        String size = svg.getAttribute("width").replace("mm", "");
        assertThat(Double.parseDouble(size)).isCloseTo(diameter(svg, "tip") + 2 * Drawing.MARGIN, within(1e-4));
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

    /** A tooth of the wheel stands in a gap of its pinion, thinned, so that the outlines keep clear of each other. */
    @Test
    void in_the_overview_wheel_and_pinion_do_not_cut_each_other() {
        List<Element> paths = all(svg("overview.svg"), "path", "outline");
        for (int mesh = 0; mesh < 3; mesh++) {
            List<Point> wheel = points(paths.get(2 * mesh));
            List<Point> pinion = points(paths.get(2 * mesh + 1));
            assertThat(OutlineMeasure.cross(wheel, pinion)).isFalse();
            assertThat(wheel.stream().mapToDouble(Point::x).max().orElseThrow())
                    .as("the tip reaches between the leaves")
                    .isGreaterThan(pinion.stream().mapToDouble(Point::x).min().orElseThrow());
        }
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
