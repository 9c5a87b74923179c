// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.teeth.contact.MeshContact;
import drumfall.solver.train.Mesh;
import java.util.Optional;

/** What there is to see of the mesh looked into. */
public sealed interface MeshState {
    /** The traced mesh, if there is one. */
    default Optional<Traced> traced() {
        return Optional.empty();
    }

    /** Whether the dials may be moved. */
    default boolean settable() {
        return traced().isPresent();
    }

    /** What is the matter and what to do next; empty if all is well. */
    Optional<String> sentence();

    /** No train is chosen. */
    record NoTrain() implements MeshState {
        @Override
        public Optional<String> sentence() {
            return Optional.of(Texts.of("mesh.notrain") + " " + Texts.of("mesh.notrain.next"));
        }
    }

    /**
     * Being traced for the first time.
     *
     * @param mesh the mesh
     */
    record Tracing(Mesh mesh) implements MeshState {
        @Override
        public Optional<String> sentence() {
            return Optional.of(Texts.of("mesh.tracing", mesh.counts()));
        }
    }

    /**
     * No teeth print and run at the module, or they cannot be drawn at this setting.
     *
     * @param mesh the mesh
     * @param words what is the matter and what to do next
     * @param settable whether another setting of the dials may help
     */
    record Nothing(Mesh mesh, String words, boolean settable) implements MeshState {
        @Override
        public Optional<String> sentence() {
            return Optional.of(words);
        }
    }

    /**
     * Traced.
     *
     * @param mesh the traced mesh
     * @param phases its phases at the friction set
     * @param trouble what jams and by how much, or that it binds, if so
     */
    record Traced(TracedMesh mesh, MeshPhases phases, Optional<String> trouble) implements MeshState {
        @Override
        public Optional<Traced> traced() {
            return Optional.of(this);
        }

        @Override
        public Optional<String> sentence() {
            return trouble;
        }

        /** What passes at the friction set. */
        public MeshContact contact() {
            return phases.mesh();
        }
    }
}
