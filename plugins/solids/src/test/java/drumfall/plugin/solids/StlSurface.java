// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A surface read back from the bytes of a binary STL file, knowing nothing of how it was made. */
final class StlSurface {
    private final Map<Corner, Integer> numbers = new HashMap<>();
    private final List<Corner> corners = new ArrayList<>();
    private final List<int[]> facets = new ArrayList<>();
    private double worstNormal;

    private record Corner(float x, float y, float z) {}

    private record Edge(int from, int to) {
        Edge reversed() {
            return new Edge(to, from);
        }
    }

    static StlSurface read(byte[] bytes) {
        StlSurface surface = new StlSurface();
        ByteBuffer buffer = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
        buffer.position(80);
        int count = buffer.getInt();
        for (int i = 0; i < count; i++) {
            double[] normal = {buffer.getFloat(), buffer.getFloat(), buffer.getFloat()};
            int[] facet = new int[3];
            for (int c = 0; c < 3; c++) {
                facet[c] = surface.number(new Corner(buffer.getFloat(), buffer.getFloat(), buffer.getFloat()));
            }
            surface.facets.add(facet);
            surface.compare(normal, facet);
            buffer.getShort();
        }
        if (buffer.hasRemaining()) {
            throw new IllegalArgumentException("The file must end after its last facet.");
        }
        return surface;
    }

    private int number(Corner corner) {
        return numbers.computeIfAbsent(corner, unseen -> {
            corners.add(corner);
            return corners.size() - 1;
        });
    }

    /** The right-hand rule: corners anticlockwise seen against the normal. */
    private void compare(double[] normal, int[] facet) {
        double[] cross = cross(facet);
        double length = Math.sqrt(cross[0] * cross[0] + cross[1] * cross[1] + cross[2] * cross[2]);
        for (int axis = 0; axis < 3; axis++) {
            double off = Math.abs(cross[axis] / length - normal[axis]);
            worstNormal = length > 0 ? Math.max(worstNormal, off) : Double.NaN;
        }
    }

    private double[] cross(int[] facet) {
        Corner a = corners.get(facet[0]);
        Corner b = corners.get(facet[1]);
        Corner c = corners.get(facet[2]);
        double ux = (double) b.x - a.x;
        double uy = (double) b.y - a.y;
        double uz = (double) b.z - a.z;
        double vx = (double) c.x - a.x;
        double vy = (double) c.y - a.y;
        double vz = (double) c.z - a.z;
        return new double[] {uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx};
    }

    double worstNormal() {
        return worstNormal;
    }

    int facetCount() {
        return facets.size();
    }

    private List<Edge> edges() {
        List<Edge> edges = new ArrayList<>();
        for (int[] facet : facets) {
            for (int i = 0; i < 3; i++) {
                edges.add(new Edge(facet[i], facet[(i + 1) % 3]));
            }
        }
        return edges;
    }

    /** Whether every directed edge is there once and its reverse once. */
    boolean closed() {
        List<Edge> all = edges();
        Set<Edge> once = new HashSet<>(all);
        return once.size() == all.size() && once.stream().allMatch(edge -> once.contains(edge.reversed()));
    }

    /** Whether the facets about every corner form one fan. */
    boolean singleFans() {
        Map<Integer, Map<Integer, Integer>> next = new HashMap<>();
        for (int[] facet : facets) {
            for (int i = 0; i < 3; i++) {
                next.computeIfAbsent(facet[i], unseen -> new HashMap<>()).put(facet[(i + 1) % 3], facet[(i + 2) % 3]);
            }
        }
        return next.values().stream().allMatch(StlSurface::oneCycle);
    }

    private static boolean oneCycle(Map<Integer, Integer> link) {
        int start = link.keySet().iterator().next();
        int at = start;
        int steps = 0;
        do {
            at = link.get(at);
            steps++;
        } while (at != start && steps <= link.size());
        return steps == link.size();
    }

    /** Corners less edges plus facets. */
    int euler() {
        return corners.size() - edges().size() / 2 + facets.size();
    }

    /** Volume by the divergence theorem, cubic mm; positive if normals point outwards. */
    double volume() {
        double six = 0;
        for (int[] facet : facets) {
            double[] cross = cross(facet);
            Corner a = corners.get(facet[0]);
            six += a.x * cross[0] + a.y * cross[1] + a.z * cross[2];
        }
        return six / 6;
    }

    float lowest() {
        return corners.stream().map(Corner::z).min(Float::compare).orElseThrow();
    }

    float highest() {
        return corners.stream().map(Corner::z).max(Float::compare).orElseThrow();
    }
}
