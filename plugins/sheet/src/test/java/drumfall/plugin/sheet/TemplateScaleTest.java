// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.plugin.sheet.draw.Drawing;
import drumfall.plugin.sheet.draw.Stroke;
import drumfall.plugin.sheet.pdf.Paper;
import drumfall.plugin.sheet.pdf.TemplatePages;
import drumfall.solver.making.solid.Box;
import drumfall.solver.teeth.outline.Point;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Templates are at their true size: read back from the operators of each page, 72 points to an inch of 25.4 mm. */
class TemplateScaleTest {
    private static final double POINTS = 72 / 25.4;

    /** A printer lays no line finer than 0.01 points. */
    private static final double HAIR = 0.01;

    private record Line(double x1, double y1, double x2, double y2) {
        boolean level() {
            return y1 == y2;
        }

        double length() {
            return Math.hypot(x2 - x1, y2 - y1);
        }
    }

    private static List<Line> lines(PDPage page) throws IOException {
        List<Line> lines = new ArrayList<>();
        List<Double> numbers = new ArrayList<>();
        double x = 0;
        double y = 0;
        for (Object token : new PDFStreamParser(page).parse()) {
            if (token instanceof COSNumber number) {
                numbers.add((double) number.floatValue());
            } else if (token instanceof Operator operator) {
                if (operator.getName().equals("l")) {
                    lines.add(new Line(x, y, numbers.get(0), numbers.get(1)));
                }
                if (operator.getName().equals("l") || operator.getName().equals("m")) {
                    x = numbers.get(0);
                    y = numbers.get(1);
                }
                numbers.clear();
            }
        }
        return lines;
    }

    @ParameterizedTest
    @ValueSource(strings = {"templates-a4.pdf", "templates-letter.pdf"})
    void every_page_has_a_line_of_100_mm(String name) throws IOException {
        try (PDDocument document = Loader.loadPDF(Trials.files().bytes(name))) {
            assertThat(document.getNumberOfPages()).isGreaterThan(4);
            for (PDPage page : document.getPages()) {
                // 100 mm are 283.46 points. Matched and not asserted, since each of thousands of misses would make an
                // error.
                assertThat(lines(page)).anyMatch(line -> line.level() && Math.abs(line.length() - 283.4646) <= HAIR);
            }
        }
    }

    @Test
    void a_square_over_several_sheets_keeps_its_size_and_every_part_of_it_is_in_some_window() throws IOException {
        double size = 400;
        Drawing square = new Drawing(
                "square",
                new Box(0, 0, size, size),
                List.of(new Stroke(
                        List.of(new Point(0, 0), new Point(size, 0), new Point(size, size), new Point(0, size)))));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        TemplatePages.write("Square", "0", List.of(square), Paper.A4, out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            // Windows of 182 by 243 mm with 10 mm overlap: three columns, two rows.
            assertThat(document.getNumberOfPages()).isEqualTo(6);
            for (PDPage page : document.getPages()) {
                assertThat(lines(page))
                        .anySatisfy(line -> assertThat(line.length()).isCloseTo(size * POINTS, within(HAIR)));
            }
            List<Line> first = lines(document.getPage(0));
            List<Line> second = lines(document.getPage(1));
            double shift = leftmost(first) - leftmost(second);
            assertThat(shift).as("neighbours lie 172 mm apart").isCloseTo(172 * POINTS, within(HAIR));
        }
    }

    private static double leftmost(List<Line> lines) {
        return lines.stream()
                .filter(line -> line.length() > 1000)
                .mapToDouble(Line::x1)
                .min()
                .orElseThrow();
    }

    @Test
    void the_great_wheel_is_drawn_to_its_true_diameter() throws IOException {
        double wide = drumfall.plugin.sheet.draw.PartList.of(Trials.eightDays()).stream()
                .filter(part -> part.name().equals("arbor-1-wheel"))
                .mapToDouble(part -> part.solid().box().width())
                .findFirst()
                .orElseThrow();
        // 96 teeth of module 1.5: 144 mm across the pitch circle, and two addenda of about a module.
        assertThat(wide).isBetween(144.0, 150.0);
        try (PDDocument document = Loader.loadPDF(Trials.files().bytes("templates-a4.pdf"))) {
            assertThat(document.getPages())
                    .anySatisfy(page -> assertThat(width(lines(page)))
                            // Chords cut a true arc short by at most 0.015 mm on either side.
                            .isCloseTo(wide * POINTS, within(0.03 * POINTS + HAIR)));
        }
    }

    /** Width of everything above the foot of the page. */
    private static double width(List<Line> lines) {
        List<Line> above =
                lines.stream().filter(line -> line.y1() > 30 * POINTS).toList();
        double left = above.stream()
                .mapToDouble(line -> Math.min(line.x1(), line.x2()))
                .min()
                .orElse(0);
        double right = above.stream()
                .mapToDouble(line -> Math.max(line.x1(), line.x2()))
                .max()
                .orElse(0);
        return right - left;
    }
}
