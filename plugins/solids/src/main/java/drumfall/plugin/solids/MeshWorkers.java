// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import drumfall.solver.making.MovementPart;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Meshes of several parts at once, on all processors; each part's mesh is the same whoever makes it. */
final class MeshWorkers implements AutoCloseable {
    private final ExecutorService workers;
    private final List<Future<Mesh>> meshes;

    /** Begins with the first part. */
    MeshWorkers(List<MovementPart> parts, SolidOptions options) {
        this.workers = Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors(), task -> {
            Thread worker = new Thread(task, "mesh");
            worker.setDaemon(true);
            return worker;
        });
        this.meshes = parts.stream()
                .map(part -> workers.submit(() -> Mesh.of(part.solid(), options)))
                .toList();
    }

    /**
     * The mesh of a part, as soon as there is one.
     *
     * @throws IllegalArgumentException if the part has none
     * @throws IOException if the thread that waits is interrupted
     */
    Mesh mesh(int part) throws IOException {
        try {
            return meshes.get(part).get();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("Stopped before all parts had a mesh.");
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof RuntimeException refused) {
                throw refused;
            }
            throw new IllegalStateException(failed.getCause());
        }
    }

    /** Leaves out what nobody waits for any more. */
    @Override
    public void close() {
        workers.shutdownNow();
    }
}
