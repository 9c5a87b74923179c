// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * Binary STL: 80 bytes of header, the number of facets, for each facet normal, three corners and two spare bytes, all
 * little-endian (3D Systems, <i>StereoLithography Interface Specification</i>, 1989, from memory).
 */
final class StlWriter {
    private static final int HEADER = 80;
    private static final int COUNT = 4;
    private static final int FACET = 50;

    private StlWriter() {}

    /**
     * Writes a mesh.
     *
     * @param name the part's name; the header must not begin with "solid", which announces text
     * @param mesh the mesh
     * @param out not closed here
     */
    static void write(String name, Mesh mesh, OutputStream out) throws IOException {
        out.write(bytes(name, mesh));
    }

    /** The bytes of a file. */
    static byte[] bytes(String name, Mesh mesh) {
        ByteBuffer buffer = ByteBuffer.allocate(HEADER + COUNT + FACET * mesh.triangleCount());
        buffer.order(ByteOrder.LITTLE_ENDIAN);
        byte[] title = ("Part " + name + ", mm").getBytes(StandardCharsets.US_ASCII);
        buffer.put(title, 0, Math.min(title.length, HEADER));
        buffer.position(HEADER);
        buffer.putInt(mesh.triangleCount());
        for (int i = 0; i < mesh.triangleCount(); i++) {
            putFacet(mesh, i, buffer);
        }
        return buffer.array();
    }

    private static void putFacet(Mesh mesh, int triangle, ByteBuffer buffer) {
        double[] normal = normal(mesh, triangle);
        for (double part : normal) {
            buffer.putFloat((float) part);
        }
        for (int corner = 0; corner < 3; corner++) {
            for (int axis = 0; axis < 3; axis++) {
                buffer.putFloat(mesh.coordinate(triangle, corner, axis));
            }
        }
        buffer.putShort((short) 0);
    }

    private static double[] normal(Mesh mesh, int triangle) {
        double[] u = side(mesh, triangle, 1);
        double[] v = side(mesh, triangle, 2);
        double x = u[1] * v[2] - u[2] * v[1];
        double y = u[2] * v[0] - u[0] * v[2];
        double z = u[0] * v[1] - u[1] * v[0];
        double length = Math.sqrt(x * x + y * y + z * z);
        return new double[] {x / length, y / length, z / length};
    }

    private static double[] side(Mesh mesh, int triangle, int corner) {
        double[] side = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            side[axis] = (double) mesh.coordinate(triangle, corner, axis) - mesh.coordinate(triangle, 0, axis);
        }
        return side;
    }
}
