// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.choice;

import drumfall.solver.teeth.contact.ContactBand;
import drumfall.solver.teeth.contact.PathCache;
import drumfall.solver.teeth.contact.Sampling;
import drumfall.solver.teeth.form.InvolutePair;
import drumfall.solver.teeth.form.MeshPair;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Chooses the teeth of a mesh for the torque at its worst phase.
 *
 * <p>Choices once made are kept, keyed by what was asked. Safe for several threads.
 */
public final class FormChooser {
    private final InvoluteFreedom involute;
    private final CycloidalFreedom cycloidal;
    private final LanternFreedom lantern;
    private final PathCache cache;
    private final Map<Question, Optional<ChosenMesh>> known = new ConcurrentHashMap<>();

    /**
     * A chooser for what the brief leaves free.
     *
     * @param involute what may be chosen of involutes
     * @param cycloidal what may be chosen of cycloidal teeth
     * @param lantern what may be chosen of lantern pinions
     * @param cache where paths of contact are kept
     */
    public FormChooser(InvoluteFreedom involute, CycloidalFreedom cycloidal, LanternFreedom lantern, PathCache cache) {
        this.involute = involute;
        this.cycloidal = cycloidal;
        this.lantern = lantern;
        this.cache = cache;
    }

    /**
     * A chooser with everything free.
     *
     * @param cache where paths of contact are kept
     */
    public static FormChooser free(PathCache cache) {
        return new FormChooser(InvoluteFreedom.FREE, CycloidalFreedom.FREE, LanternFreedom.FREE, cache);
    }

    /**
     * The best pair of one family; empty if none meets the need.
     *
     * @param need what is asked of the mesh
     * @param family the family
     */
    public Optional<ChosenMesh> choose(MeshNeed need, ToothFamily family) {
        return known.computeIfAbsent(new Question(need, family), q -> chooseAnew(need, family));
    }

    /**
     * The best pair of several families, best first; families that cannot meet the need are left out.
     *
     * @param need what is asked of the mesh
     * @param families the families to try
     */
    public List<ChosenMesh> ranked(MeshNeed need, Set<ToothFamily> families) {
        return families.stream()
                .map(family -> choose(need, family))
                .flatMap(Optional::stream)
                .sorted(Comparator.comparingDouble(ChosenMesh::worstTorque).reversed())
                .toList();
    }

    private Optional<ChosenMesh> chooseAnew(MeshNeed need, ToothFamily family) {
        return pair(need, family)
                .map(p -> new ChosenMesh(
                        family, p, ContactBand.of(p, need.errors(), need.friction(), Sampling.SWIFT, cache)));
    }

    /**
     * The gears alone of the best pair of one family, without their contact over the band; not kept.
     *
     * @param need what is asked of the mesh
     * @param family the family
     */
    public Optional<MeshPair> pair(MeshNeed need, ToothFamily family) {
        return switch (family) {
            case INVOLUTE -> new InvoluteChooser(need, involute).choose().map(InvolutePair::mesh);
            case CYCLOIDAL -> new CycloidalChooser(need, cycloidal).choose();
            case LANTERN -> new LanternChooser(need, lantern).choose();
        };
    }

    private record Question(MeshNeed need, ToothFamily family) {}
}
