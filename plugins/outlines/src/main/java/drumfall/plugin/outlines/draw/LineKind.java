// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines.draw;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/**
 * Kinds of lines, numbered and divided as ISO 128-2:2020 does (<i>Basic conventions for lines</i>, tables 1 and 3): long
 * dash 24, dash 12, gap 3 and dot half a line width; the share of each from memory.
 */
public enum LineKind {
    /** Visible edges: 01.2, continuous wide line. */
    WIDE("CONTINUOUS", "Continuous line", Width.WIDE),
    /** Dimensions, tip circles: 01.1, continuous narrow line. */
    NARROW("CONTINUOUS", "Continuous line", Width.NARROW),
    /** Hidden edges, ways of moving parts: 02.1, dashed narrow line. */
    DASHED("DASHED", "Dashed line", Width.NARROW),
    /** Pitch circles and centre lines: 04.1, long-dashed dotted narrow line. */
    CHAIN("CHAINDOTTED", "Long-dashed dotted line", Width.NARROW);

    private final String type;
    private final String words;
    private final double width;

    LineKind(String type, String words, double width) {
        this.type = type;
        this.words = words;
        this.width = width;
    }

    /** Widths of the line group 0.35, mm: narrow lines are half as wide. */
    private static final class Width {
        private static final double WIDE = 0.35;
        private static final double NARROW = 0.18;
    }

    /** Name of the line type in a DXF file; one for both widths. */
    String type() {
        return type;
    }

    /** The line in words. */
    String words() {
        return words;
    }

    /** Width of the line, mm. */
    double width() {
        return width;
    }

    /** Strokes and, negative, gaps of one period, mm; none for a continuous line. */
    List<Double> pattern() {
        DoubleStream shares = switch (this) {
            case WIDE, NARROW -> DoubleStream.empty();
            case DASHED -> DoubleStream.of(12, -3);
            case CHAIN -> DoubleStream.of(24, -3, 0.5, -3);
        };
        return shares.map(share -> share * width).boxed().toList();
    }

    /** Strokes and gaps as SVG lists them; empty for a continuous line. */
    String dashes() {
        return pattern().stream().map(stroke -> Numbers.text(Math.abs(stroke))).collect(Collectors.joining(" "));
    }
}
