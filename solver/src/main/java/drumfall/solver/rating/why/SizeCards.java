// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.brief.Brief;
import drumfall.solver.layout.Disc;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.MovementSize;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.size.Nanometres;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;

/** Cards of the room that the movement takes where its arbors stand. */
final class SizeCards {
    private static final String OF_THIS_LAYOUT =
            "smallest upright box around tip circles, drum, line, pallets and motion work of this layout;"
                    + " our own derivation, and not the least that any layout would take";

    private final CardShelf shelf;
    private final Brief brief;
    private final Layout layout;
    private final MovementSize size;

    SizeCards(CardShelf shelf, Brief brief, Layout layout) {
        this.shelf = shelf;
        this.brief = brief;
        this.layout = layout;
        this.size = layout.size();
    }

    void make() {
        Card left = edge("left", "x_l", -1, Place::x, size.parts().left());
        Card right = edge("right", "x_r", 1, Place::x, size.parts().right());
        Card bottom = edge("bottom", "y_b", -1, Place::y, size.parts().bottom());
        Card top = edge("top", "y_t", 1, Place::y, size.parts().top());
        Card width = across("movement-width", "B", size.width(), right, left, OF_THIS_LAYOUT);
        Card height = across("movement-height", "H", size.height(), top, bottom, OF_THIS_LAYOUT);
        depth();
        plate(width, height);
    }

    private Card across(String name, String symbol, long value, Card far, Card near, String source) {
        String formula = "%s = %s − %s".formatted(symbol, far.symbol(), near.symbol());
        return shelf.figure(name, symbol, metres(value), "m", formula, in -> in[0] - in[1], source, far, near);
    }

    /** A part whose axis is somewhere and which reaches so far from it. */
    private record Reach(Part part, Place axis, long radius) {}

    /** The edge that the part which reaches furthest to a side has there. */
    private Card edge(String side, String symbol, int sign, ToLongFunction<Place> way, long value) {
        boolean across = side.equals("left") || side.equals("right");
        Reach furthest = Stream.concat(discs(), across ? falls() : Stream.empty())
                .max(Comparator.comparingLong(reach -> sign * way.applyAsLong(reach.axis()) + reach.radius()))
                .orElseThrow();
        String where = words(furthest.part()) + ", as this layout has it";
        String axis = symbol.substring(0, 1);
        return shelf.figure(
                "%s-edge".formatted(side),
                symbol,
                metres(value),
                "m",
                "%s = %s %s r".formatted(symbol, axis, sign < 0 ? "−" : "+"),
                in -> in[0] + sign * in[1],
                "what reaches furthest to that side of the dial centre",
                shelf.given(
                        "axis-at-the-%s".formatted(side),
                        axis,
                        metres(way.applyAsLong(furthest.axis())),
                        "m",
                        "axis of the " + where),
                shelf.given(
                        "reach-at-the-%s".formatted(side),
                        "r",
                        metres(furthest.radius()),
                        "m",
                        "radius of the " + where));
    }

    private Stream<Reach> discs() {
        return layout.discs().stream().map((Disc disc) -> new Reach(disc.part(), disc.place(), disc.radius()));
    }

    private Stream<Reach> falls() {
        long half = (layout.need().line().diameter() + 1) / 2;
        return layout.falls().stream()
                .map(fall -> new Reach(
                        new Part(PartKind.LINE, 0),
                        new Place(fall, layout.place(0).y()),
                        half));
    }

    private static String words(Part part) {
        return "%s of arbor %d".formatted(part.kind(), part.number() + 1);
    }

    private void depth() {
        long plate = layout.need().envelope().plateThickness();
        long inner = layout.planes().innerDepth();
        shelf.figure(
                "movement-depth",
                "T",
                metres(size.depth()),
                "m",
                "T = d + 2 e + d_m",
                in -> in[0] + 2 * in[1] + in[2],
                "planes, gaps and end shake between the plates, both plates, and what stands before them;"
                        + " our own derivation",
                shelf.given("plates-apart", "d", metres(inner), "m", "planes of this layout"),
                shelf.brief("e", "/frame/plate", brief.frame().plate()),
                shelf.given(
                        "motion-depth",
                        "d_m",
                        metres(size.depth() - inner - 2 * plate),
                        "m",
                        "planes of the motion work in this layout; none without it"));
    }

    /** Pillars may stand further out than any part; without them the plate is as large as the parts need. */
    private void plate(Card width, Card height) {
        List<Place> pillars = layout.pillarPlaces();
        Card across = width;
        Card up = height;
        if (!pillars.isEmpty()) {
            across = pillared(
                    "plate-width",
                    "B_p",
                    "x",
                    width,
                    pillars.get(0).x(),
                    pillars.get(3).x(),
                    size.plate().width());
            up = pillared(
                    "plate-height",
                    "H_p",
                    "y",
                    height,
                    pillars.get(0).y(),
                    pillars.get(3).y(),
                    size.plate().height());
        }
        shelf.figure(
                "plate-area",
                "A",
                size.plateArea(),
                "m2",
                "A = %s %s".formatted(across.symbol(), up.symbol()),
                in -> in[0] * in[1],
                "smallest upright plate that covers the parts and the pillars of this layout; our own derivation",
                across,
                up);
    }

    private Card pillared(String name, String symbol, String axis, Card parts, long near, long far, long value) {
        Card farEdge = parts.inputs().get(0);
        Card nearEdge = parts.inputs().get(1);
        return shelf.figure(
                name,
                symbol,
                metres(value),
                "m",
                "%s = max(%s, %s_2 + r_s) − min(%s, %s_1 − r_s)"
                        .formatted(symbol, farEdge.symbol(), axis, nearEdge.symbol(), axis),
                in -> Math.max(in[0], in[2] + in[4]) - Math.min(in[1], in[3] - in[4]),
                "parts or pillars, whichever stands further out",
                farEdge,
                nearEdge,
                shelf.given("pillar-%s-far".formatted(axis), axis + "_2", metres(far), "m", "pillars of this layout"),
                shelf.given("pillar-%s-near".formatted(axis), axis + "_1", metres(near), "m", "pillars of this layout"),
                shelf.given(
                        "pillar-radius",
                        "r_s",
                        metres(layout.need().envelope().pillars().orElseThrow().radius()),
                        "m",
                        "half of /frame/pillars/diameter"));
    }

    private static double metres(long nanometres) {
        return Nanometres.toMetres(nanometres);
    }
}
