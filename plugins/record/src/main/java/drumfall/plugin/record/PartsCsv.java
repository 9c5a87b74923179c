// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.record;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The parts list as comma-separated values (RFC 4180). */
final class PartsCsv {
    private static final List<String> HEADER = List.of(
            "part",
            "count",
            "arbor",
            "teeth",
            "module_mm",
            "pitch_diameter_mm",
            "tip_diameter_mm",
            "bore_mm",
            "width_mm",
            "mass_g");

    private PartsCsv() {}

    static void write(List<Part> parts, OutputStream out) throws IOException {
        String lines = Stream.concat(Stream.of(HEADER), parts.stream().map(PartsCsv::cells))
                .map(PartsCsv::line)
                .collect(Collectors.joining());
        out.write(lines.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> cells(Part part) {
        return List.of(
                part.name(),
                Integer.toString(part.count()),
                Integer.toString(part.arbor()),
                part.teeth().isPresent() ? Integer.toString(part.teeth().getAsInt()) : "",
                part.module().map(BigDecimal::toPlainString).orElse(""),
                part.pitchDiameter().map(BigDecimal::toPlainString).orElse(""),
                part.tipDiameter().toPlainString(),
                part.bore().toPlainString(),
                part.width().toPlainString(),
                part.mass().toPlainString());
    }

    private static String line(List<String> cells) {
        return cells.stream().map(PartsCsv::quoted).collect(Collectors.joining(",")) + "\r\n";
    }

    /** Quotes a cell that holds a comma, a quote or a line break, doubling its quotes. */
    static String quoted(String cell) {
        return cell.matches("(?s).*[\",\r\n].*") ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
    }
}
