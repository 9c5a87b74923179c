// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.layout.size.Face;
import drumfall.solver.making.solid.Slab;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;

/** No two printed parts, as they stand in the clock, take the same room; sections are cut by JTS. */
class PartsApartTest {
    private static final List<PlacedMakes> MAKES = PlacedMakes.all().toList();

    /** Rings become polygons; what two of them share of a common circle is less, mm². */
    private static final double ROUND = 0.02;

    static List<PlacedMakes> makes() {
        return MAKES;
    }

    /** A slab as it stands, mm; what turns with the hands takes all that it sweeps over. */
    private record Piece(MovementPart part, int stance, double from, double to, Geometry section) {
        boolean meets(Piece other, double play) {
            return Math.min(to, other.to) - Math.max(from, other.from) > play
                    && section.getEnvelopeInternal().intersects(other.section.getEnvelopeInternal())
                    && section.intersection(other.section).getArea() > ROUND;
        }

        @Override
        public String toString() {
            return "%s from %.2f to %.2f mm".formatted(part.name(), from, to);
        }
    }

    private static List<Piece> pieces(PlacedMakes made) {
        List<Piece> pieces = new ArrayList<>();
        for (MovementPart part : made.parts()) {
            List<Mount.Stance> stances = part.mount().stances();
            for (int i = 0; i < stances.size(); i++) {
                Mount.Stance stance = stances.get(i);
                boolean front = part.mount().up() == Face.FRONT;
                double bed = 1e3 * stance.bed();
                for (Slab slab : part.solid().slabs()) {
                    Geometry section = AffineTransformation.scaleInstance(front ? 1 : -1, 1)
                            .transform(Planes.of(slab.region()));
                    Geometry taken = part.name().endsWith("hand") ? swept(section) : section;
                    pieces.add(new Piece(
                            part,
                            i,
                            front ? bed + slab.from() : bed - slab.to(),
                            front ? bed + slab.to() : bed - slab.from(),
                            AffineTransformation.translationInstance(1e3 * stance.x(), 1e3 * stance.y())
                                    .transform(taken)));
                }
            }
        }
        return pieces;
    }

    /** All that a section sweeps over as it turns about its axis. */
    private static Geometry swept(Geometry section) {
        double furthest = 0;
        double nearest = Double.POSITIVE_INFINITY;
        for (Coordinate corner : section.getCoordinates()) {
            furthest = Math.max(furthest, Math.hypot(corner.x, corner.y));
            nearest = Math.min(nearest, Math.hypot(corner.x, corner.y));
        }
        Geometry axis = new GeometryFactory().createPoint(new Coordinate(0, 0));
        return axis.buffer(furthest, 64).difference(axis.buffer(nearest, 64));
    }

    /** Teeth of a mesh, and pallets on their wheel, pass each other as they turn; that is held elsewhere. */
    private static boolean workTogether(MovementPart one, MovementPart other) {
        return toothed(one) && toothed(other);
    }

    private static boolean toothed(MovementPart part) {
        return !part.teeth().isEmpty() || part.name().equals("pallets");
    }

    // Heights are whole layers, and a spacer or pinion may be off by half of one: parts that touch may share that.
    @ParameterizedTest
    @MethodSource("makes")
    void no_two_parts_take_the_same_room(PlacedMakes made) {
        double play = 1e-6;
        List<Piece> pieces = pieces(made);
        List<String> meeting = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            for (int j = i + 1; j < pieces.size(); j++) {
                Piece one = pieces.get(i);
                Piece other = pieces.get(j);
                boolean same = one.part().equals(other.part()) && one.stance() == other.stance();
                if (!same && !workTogether(one.part(), other.part()) && one.meets(other, play)) {
                    meeting.add(one + " / " + other);
                }
            }
        }
        assertThat(pieces).hasSizeGreaterThan(40);
        assertThat(meeting).isEmpty();
    }
}
