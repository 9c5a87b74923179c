// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.plugin.api.trial.TrialFolder;
import drumfall.solver.teeth.outline.Point;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * An SVG file read back with y upwards.
 *
 * @param root its root element
 */
record SvgFile(Element root) {
    private static final String NAMESPACE = "http://www.w3.org/2000/svg";

    static SvgFile of(TrialFolder folder, String name) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            return new SvgFile(factory.newDocumentBuilder()
                    .parse(new ByteArrayInputStream(folder.bytes(name)))
                    .getDocumentElement());
        } catch (ParserConfigurationException | SAXException | IOException broken) {
            throw new AssertionError(name, broken);
        }
    }

    List<String> layers() {
        return elements(root, "g").stream()
                .map(group -> group.getAttribute("id"))
                .toList();
    }

    Element layer(String id) {
        return elements(root, "g").stream()
                .filter(group -> group.getAttribute("id").equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no layer " + id + " among " + layers()));
    }

    private static List<Element> elements(Element from, String name) {
        NodeList found = from.getElementsByTagNameNS(NAMESPACE, name);
        return IntStream.range(0, found.getLength())
                .mapToObj(i -> (Element) found.item(i))
                .toList();
    }

    /**
     * A circle.
     *
     * @param centre its centre
     * @param radius mm
     */
    record Circle(Point centre, double radius) {}

    List<Circle> circles(String layer) {
        return elements(layer(layer), "circle").stream()
                .map(circle -> new Circle(new Point(number(circle, "cx"), -number(circle, "cy")), number(circle, "r")))
                .toList();
    }

    List<String> texts(String layer) {
        return elements(layer(layer), "text").stream()
                .map(Element::getTextContent)
                .toList();
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /** The outlines of a layer: corners and, of every arc, points between, worked out from its radius and sense alone. */
    List<List<Point>> outlines(String layer) {
        return elements(layer(layer), "path").stream().map(SvgFile::points).toList();
    }

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

    /** Area of a layer's outlines, those run clockwise taken out; its circles are left out. */
    double area(String layer) {
        return outlines(layer).stream().mapToDouble(OutlineMeasure::area).sum();
    }
}
