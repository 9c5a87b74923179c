// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.making.solid.Region;
import drumfall.solver.making.solid.Slab;
import drumfall.solver.making.solid.Solid;
import drumfall.solver.teeth.outline.Outline;
import drumfall.solver.teeth.outline.Point;
import drumfall.solver.teeth.outline.Ring;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Regions as polygons of an independent library, and whether solids print without support. */
public final class Planes {
    /** Polygons follow arcs this closely, mm. */
    public static final double CHORD_ERROR = 0.002;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Planes() {}

    /** A region's polygons. */
    public static Geometry of(Region region) {
        return FACTORY.createMultiPolygon(
                region.outlines().stream().map(Planes::of).toArray(Polygon[]::new));
    }

    private static Polygon of(Outline outline) {
        return FACTORY.createPolygon(
                ring(outline.outer()),
                outline.holes().stream().map(Planes::ring).toArray(LinearRing[]::new));
    }

    private static LinearRing ring(Ring ring) {
        List<Coordinate> corners = new ArrayList<>();
        for (Point point : ring.polygon(CHORD_ERROR)) {
            corners.add(new Coordinate(point.x(), point.y()));
        }
        corners.add(corners.get(0));
        return FACTORY.createLinearRing(corners.toArray(Coordinate[]::new));
    }

    /**
     * Square mm of a solid that a printer would have to lay in the air.
     *
     * @param solid the solid
     * @param reach how far a layer may reach out over the one below it, mm
     */
    public static double overhang(Solid solid, double reach) {
        double area = 0;
        Geometry below = null;
        for (Slab slab : solid.slabs()) {
            Geometry here = of(slab.region());
            area += below == null ? 0 : here.difference(below.buffer(reach)).getArea();
            below = here;
        }
        return area;
    }
}
