// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines.draw;

import drumfall.solver.making.solid.Box;
import drumfall.solver.teeth.outline.OutlineSegment;
import drumfall.solver.teeth.outline.Point;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;

/**
 * Writes a drawing as ASCII DXF of release 12 (header version AC1009): pairs of lines, group code and value.
 *
 * <p>Release 12 knows no unit; one drawing unit is a millimetre, as the comment at the head says.
 */
public final class DxfWriter implements Shape.Pen<RuntimeException> {
    private static final String VERSION = "AC1009";
    private static final String LETTERING = "STANDARD";

    private final StringBuilder lines = new StringBuilder();

    private DxfWriter() {}

    /** The whole file. */
    public static byte[] bytes(Drawing drawing) {
        DxfWriter writer = new DxfWriter();
        writer.file(drawing);
        return writer.lines.toString().getBytes(StandardCharsets.US_ASCII);
    }

    private void file(Drawing drawing) {
        pair(999, ascii(drawing.title()) + ", unit millimetre");
        header(drawing);
        tables(drawing.layers().keySet());
        section("ENTITIES");
        drawing.shapes().forEach(shape -> shape.draw(this));
        pair(0, "ENDSEC");
        pair(0, "EOF");
    }

    /** Release 12 is written in plain ASCII: signs of the trade have names there, all others become question marks. */
    private static String ascii(String text) {
        return text.replace("%", "%%%")
                .replace("Ø", "%%c")
                .replace("·", "-")
                .replace("×", "x")
                .replaceAll("[^ -~]", "?");
    }

    private void header(Drawing drawing) {
        section("HEADER");
        pair(9, "$ACADVER");
        pair(1, VERSION);
        pair(9, "$EXTMIN");
        Box box = drawing.box();
        point(10, new Point(box.left(), box.bottom()));
        pair(9, "$EXTMAX");
        point(10, new Point(box.right(), box.top()));
        pair(0, "ENDSEC");
    }

    private void tables(Collection<Layer> layers) {
        section("TABLES");
        lineTypes(layers);
        table("LAYER", layers.size());
        layers.forEach(this::layer);
        pair(0, "ENDTAB");
        table("STYLE", 1);
        lettering();
        pair(0, "ENDTAB");
        pair(0, "ENDSEC");
    }

    private void table(String name, int entries) {
        pair(0, "TABLE");
        pair(2, name);
        pair(70, Integer.toString(entries));
    }

    private void lineTypes(Collection<Layer> layers) {
        Map<LineKind, String> kinds = new EnumMap<>(LineKind.class);
        kinds.put(LineKind.WIDE, LineKind.WIDE.type());
        layers.stream()
                .map(Layer::line)
                .filter(kind -> !kinds.containsValue(kind.type()))
                .forEach(kind -> kinds.put(kind, kind.type()));
        table("LTYPE", kinds.size());
        kinds.keySet().forEach(this::lineType);
        pair(0, "ENDTAB");
    }

    private void lineType(LineKind kind) {
        pair(0, "LTYPE");
        pair(2, kind.type());
        pair(70, "0");
        pair(3, kind.words());
        pair(72, "65");
        pair(73, Integer.toString(kind.pattern().size()));
        pair(40, Numbers.text(kind.pattern().stream().mapToDouble(Math::abs).sum()));
        kind.pattern().forEach(stroke -> pair(49, Numbers.text(stroke)));
    }

    private void layer(Layer layer) {
        pair(0, "LAYER");
        pair(2, layer.name());
        pair(70, "0");
        pair(62, Integer.toString(layer.colour()));
        pair(6, layer.line().type());
    }

    /** The lettering that every program has: height and width as each text says. */
    private void lettering() {
        pair(0, "STYLE");
        pair(2, LETTERING);
        pair(70, "0");
        pair(40, "0");
        pair(41, "1");
        pair(50, "0");
        pair(71, "0");
        pair(42, "2.5");
        pair(3, "txt");
        pair(4, "");
    }

    @Override
    public void outline(Shape.Outline outline) {
        entity("POLYLINE", outline.layer());
        pair(66, "1");
        point(10, new Point(0, 0));
        pair(70, "1");
        for (OutlineSegment segment : outline.ring().segments()) {
            entity("VERTEX", outline.layer());
            point(10, segment.start());
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

    @Override
    public void text(Shape.Text text) {
        entity("TEXT", text.layer());
        point(10, text.at());
        pair(40, Numbers.text(text.height()));
        pair(1, ascii(text.words()));
        pair(50, text.upright() ? "90" : "0");
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
