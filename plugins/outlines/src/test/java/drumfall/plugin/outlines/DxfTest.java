// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.plugin.api.trial.TrialFolder;
import drumfall.solver.teeth.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Structure of a release 12 file: pairs of group code and value, sections, entities (Autodesk, <i>DXF Reference</i>). */
class DxfTest {
    private static final TrialFolder FOLDER = Exports.FILES;

    /** One group: code and value. */
    private record Group(int code, String value) {}

    /** One of each kind of sheet; the checker's test reads them all. */
    static Stream<String> files() {
        return Stream.of("arbor-2-wheel-and-pinion.dxf", "pallets.dxf", "front-plate-holes.dxf", "elevation.dxf");
    }

    private static List<Group> groups(String name) {
        List<String> lines = FOLDER.text(name).lines().toList();
        assertThat(lines.size() % 2).isZero();
        List<Group> groups = new ArrayList<>();
        for (int i = 0; i < lines.size(); i += 2) {
            groups.add(new Group(Integer.parseInt(lines.get(i).strip()), lines.get(i + 1)));
        }
        return groups;
    }

    @ParameterizedTest
    @MethodSource("files")
    void a_file_states_its_release_nests_its_sections_and_ends(String name) {
        List<Group> groups = groups(name);
        assertThat(groups).containsSubsequence(new Group(9, "$ACADVER"), new Group(1, "AC1009"));
        assertThat(groups.stream()
                        .filter(group -> group.code() == 0 && group.value().matches("SECTION|ENDSEC|EOF")))
                .extracting(Group::value)
                .containsExactly("SECTION", "ENDSEC", "SECTION", "ENDSEC", "SECTION", "ENDSEC", "EOF");
        assertThat(groups.get(groups.size() - 1)).isEqualTo(new Group(0, "EOF"));
        assertThat(FOLDER.text(name)).matches("[ -~\r\n]*");
    }

    @ParameterizedTest
    @MethodSource("files")
    void every_layer_used_is_in_the_table_and_every_polyline_is_closed_and_ended(String name) {
        List<Group> groups = groups(name);
        List<String> declared = new ArrayList<>();
        for (int i = 1; i < groups.size(); i++) {
            if (groups.get(i - 1).equals(new Group(0, "LAYER")) && groups.get(i).code() == 2) {
                declared.add(groups.get(i).value());
            }
        }
        assertThat(groups.stream().filter(group -> group.code() == 8).map(Group::value))
                .isNotEmpty()
                .allSatisfy(layer -> assertThat(declared).contains(layer));
        long polylines =
                groups.stream().filter(new Group(0, "POLYLINE")::equals).count();
        assertThat(groups.stream().filter(new Group(0, "SEQEND")::equals).count())
                .isEqualTo(polylines);
        assertThat(groups.stream().filter(new Group(66, "1")::equals).count()).isEqualTo(polylines);
    }

    private static List<List<Point>> polylines(List<Group> groups, String layer) {
        List<List<Point>> outlines = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            if (groups.get(i).equals(new Group(0, "POLYLINE"))
                    && groups.get(i + 1).value().equals(layer)) {
                int end = i;
                while (!groups.get(end).equals(new Group(0, "SEQEND"))) {
                    end++;
                }
                outlines.add(vertices(groups.subList(i, end)));
            }
        }
        return outlines;
    }

    /** Corners and, of every bulge (the tangent of a quarter of the arc's turn), many points between. */
    private static List<Point> vertices(List<Group> groups) {
        List<Point> corners = new ArrayList<>();
        List<Double> bulges = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            if (groups.get(i).equals(new Group(0, "VERTEX"))) {
                corners.add(new Point(
                        Double.parseDouble(groups.get(i + 2).value()),
                        Double.parseDouble(groups.get(i + 3).value())));
                boolean bulged = i + 5 < groups.size() && groups.get(i + 5).code() == 42;
                bulges.add(bulged ? Double.parseDouble(groups.get(i + 5).value()) : 0);
            }
        }
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Point from = corners.get(i);
            Point to = corners.get((i + 1) % corners.size());
            double bulge = bulges.get(i);
            points.add(from);
            if (bulge != 0) {
                double radius = from.distance(to) * (1 + bulge * bulge) / (4 * Math.abs(bulge));
                points.addAll(OutlineMeasure.arc(from, to, radius, Math.abs(bulge) > 1, bulge > 0));
            }
        }
        return points;
    }

    /** Both files of a part hold the same outlines: areas agree, however much rounded corners of tiny arcs may wander. */
    @ParameterizedTest
    @CsvSource({"arbor-1-wheel, WHEEL", "arbor-2-wheel-and-pinion, PINION", "pallets, SECTION-1"})
    void both_files_hold_the_same_outline(String name, String layer) {
        double svg = SvgFile.of(FOLDER, name + ".svg").area(layer.toLowerCase(Locale.ROOT));
        double dxf = polylines(groups(name + ".dxf"), layer).stream()
                .mapToDouble(OutlineMeasure::area)
                .sum();
        assertThat(dxf).isCloseTo(svg, within(svg * 1e-5));
    }

    /** The sign of a diameter and a cross have names of their own in release 12, other signs none. */
    @Test
    void words_are_written_in_plain_ascii() {
        assertThat(FOLDER.text("front-plate-holes.dxf")).contains("seat %%c");
        assertThat(FOLDER.text("elevation.dxf")).contains("85/10 m1.5 | 83/12 m1 - 66/12 m1");
    }
}
