// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.train.Train;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/** What the maker points at and which mesh is looked into, kept by name so that it survives a change of train. */
final class Attention {
    private final Consumer<Aspect> tell;
    private Highlight highlight = Highlight.NONE;
    private Optional<Train> train = Optional.empty();
    private MeshPlace mesh = new MeshPlace(MeshPlace.Side.BELOW, 1);

    Attention(Consumer<Aspect> tell) {
        this.tell = tell;
    }

    /** The highlight on a train; a mesh it does not have gives way to its first one. */
    Highlight on(Optional<Train> chosen) {
        return highlight.withMesh(chosen.map(this::meshOf));
    }

    private int meshOf(Train chosen) {
        return Math.max(0, places(chosen).indexOf(mesh));
    }

    static List<MeshPlace> places(Train train) {
        return IntStream.range(0, train.meshes().size())
                .mapToObj(index -> MeshPlace.of(index, train.meshesAbove()))
                .toList();
    }

    Optional<Train> train() {
        return train;
    }

    void pointAt(Optional<Train> other) {
        if (!other.equals(train)) {
            train = other;
            tell.accept(Aspect.HIGHLIGHT);
        }
    }

    void pointAt(Highlight next) {
        if (!next.equals(highlight)) {
            highlight = next;
            tell.accept(Aspect.HIGHLIGHT);
        }
    }

    void lookInto(MeshPlace place) {
        if (!place.equals(mesh)) {
            mesh = place;
            tell.accept(Aspect.HIGHLIGHT);
        }
    }
}
