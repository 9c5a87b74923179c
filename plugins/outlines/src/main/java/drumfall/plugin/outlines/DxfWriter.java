// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.solver.teeth.outline.OutlineSegment;
import drumfall.solver.teeth.outline.Point;
import java.nio.charset.StandardCharsets;

/**
 * Writes a drawing as ASCII DXF of release 12 (header version AC1009): pairs of lines, group code and value.
 *
 * <p>Release 12 knows no unit; one drawing unit is a millimetre, as the comment at the head says.
 */
final class DxfWriter implements Shape.Pen<RuntimeException> {
    private static final String VERSION = "AC1009";
    private static final String SOLID = "CONTINUOUS";
    private static final String CHAIN_DOTTED = "CHAINDOTTED";

    private final StringBuilder lines = new StringBuilder();

    private DxfWriter() {}

    static byte[] bytes(Drawing drawing) {
        DxfWriter writer = new DxfWriter();
        writer.file(drawing);
        return writer.lines.toString().getBytes(StandardCharsets.US_ASCII);
    }

    private void file(Drawing drawing) {
        pair(999, ascii(drawing.title()) + ", unit millimetre");
        header(drawing);
        tables();
        section("ENTITIES");
        drawing.shapes().forEach(shape -> shape.draw(this));
        pair(0, "ENDSEC");
        pair(0, "EOF");
    }

    /** Release 12 is written in plain ASCII; the signs between meshes are not. */
    private static String ascii(String text) {
        return text.replace("·", "-").replaceAll("[^ -~]", "?");
    }

    private void header(Drawing drawing) {
        section("HEADER");
        pair(9, "$ACADVER");
        pair(1, VERSION);
        pair(9, "$EXTMIN");
        point(10, new Point(drawing.left(), drawing.bottom()));
        pair(9, "$EXTMAX");
        point(10, new Point(drawing.right(), drawing.top()));
        pair(0, "ENDSEC");
    }

    private void tables() {
        section("TABLES");
        lineTypes();
        pair(0, "TABLE");
        pair(2, "LAYER");
        pair(70, Integer.toString(Layer.values().length));
        for (Layer layer : Layer.values()) {
            layer(layer);
        }
        pair(0, "ENDTAB");
        pair(0, "ENDSEC");
    }

    private void lineTypes() {
        pair(0, "TABLE");
        pair(2, "LTYPE");
        pair(70, "2");
        lineType(SOLID, "Solid line");
        lineType(CHAIN_DOTTED, "Long-dashed dotted line", 4, -1, 0.5, -1);
        pair(0, "ENDTAB");
    }

    private void lineType(String name, String description, double... strokes) {
        double length = 0;
        for (double stroke : strokes) {
            length += Math.abs(stroke);
        }
        pair(0, "LTYPE");
        pair(2, name);
        pair(70, "0");
        pair(3, description);
        pair(72, "65");
        pair(73, Integer.toString(strokes.length));
        pair(40, Numbers.text(length));
        for (double stroke : strokes) {
            pair(49, Numbers.text(stroke));
        }
    }

    private void layer(Layer layer) {
        pair(0, "LAYER");
        pair(2, layer.name());
        pair(70, "0");
        pair(62, Integer.toString(layer.colour()));
        pair(6, layer.chainDotted() ? CHAIN_DOTTED : SOLID);
    }

    @Override
    public void outline(Shape.Outline outline) {
        entity("POLYLINE", outline.layer());
        pair(66, "1");
        point(10, new Point(0, 0));
        pair(70, "1");
        for (OutlineSegment segment : outline.ring().segments()) {
            entity("VERTEX", outline.layer());
            point(10, outline.place(segment.start()));
            if (segment.bulge() != 0) {
                pair(42, Numbers.bulge(segment.bulge()));
            }
        }
        entity("SEQEND", outline.layer());
    }

    @Override
    public void circle(Shape.Circle circle) {
        entity("CIRCLE", circle.layer());
        point(10, circle.centre());
        pair(40, Numbers.text(circle.radius()));
    }

    @Override
    public void line(Shape.Line line) {
        entity("LINE", line.layer());
        point(10, line.from());
        point(11, line.to());
    }

    private void section(String name) {
        pair(0, "SECTION");
        pair(2, name);
    }

    private void entity(String type, Layer layer) {
        pair(0, type);
        pair(8, layer.name());
    }

    private void point(int code, Point point) {
        pair(code, Numbers.text(point.x()));
        pair(code + 10, Numbers.text(point.y()));
        pair(code + 20, "0");
    }

    private void pair(int code, String value) {
        lines.append(" ".repeat(code < 10 ? 2 : code < 100 ? 1 : 0))
                .append(code)
                .append("\r\n")
                .append(value)
                .append("\r\n");
    }
}
