// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.contact;

import drumfall.solver.teeth.form.MeshPair;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Paths of contact already traced, keyed by the gears at module 1, their conditions and the sampling.
 *
 * <p>Module and friction are no part of the key: the one scales out, the other comes after. Safe for several threads;
 * two may trace the same path at once, and one result is kept. The least recently asked path makes room.
 */
public final class PathCache {
    private final int capacity;
    private final Map<Key, ContactPath> paths = new LinkedHashMap<>(16, 0.75f, true);

    /**
     * An empty cache.
     *
     * @param capacity most paths kept, at least 1
     * @throws IllegalArgumentException if the capacity is below 1
     */
    public PathCache(int capacity) {
        if (capacity < 1) {
            throw new IllegalArgumentException(
                    "The capacity (" + capacity + ") of a path cache must be at least 1. Maybe take 512.");
        }
        this.capacity = capacity;
    }

    /**
     * The path of contact, traced if it is not yet known.
     *
     * @param pair the gears, the first driving
     * @param conditions how the mesh departs from its drawing
     * @param sampling how finely to look
     */
    public ContactPath path(MeshPair pair, MeshConditions conditions, Sampling sampling) {
        Key key = new Key(pair, conditions, sampling);
        synchronized (paths) {
            ContactPath known = paths.get(key);
            if (known != null) {
                return known;
            }
        }
        return keep(key, MeshTracer.trace(pair, conditions, sampling));
    }

    /** The number of paths kept. */
    public int size() {
        synchronized (paths) {
            return paths.size();
        }
    }

    private ContactPath keep(Key key, ContactPath path) {
        synchronized (paths) {
            ContactPath earlier = paths.putIfAbsent(key, path);
            if (paths.size() > capacity) {
                paths.remove(paths.keySet().iterator().next());
            }
            return earlier == null ? path : earlier;
        }
    }

    private record Key(MeshPair pair, MeshConditions conditions, Sampling sampling) {}
}
