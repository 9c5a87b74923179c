// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth;

import drumfall.solver.train.ToothModule;
import java.util.Optional;

/** The teeth of every mesh: what the train arithmetic, the parts and the power walk need to know of them. */
public interface MeshLoss {
    /** What this is, in a few words, shown beside every figure that rests on it. */
    String label();

    /**
     * The teeth of a mesh, the wheel driving.
     *
     * @param toothCount teeth of the wheel
     * @param leafCount leaves of the pinion
     * @param module the module
     * @return empty if no pair of this form can be printed and runs at the module
     */
    Optional<MeshTeeth> teeth(int toothCount, int leafCount, ToothModule module);

    /**
     * The teeth that a pair of counts has as soon as its module is large enough.
     *
     * @param toothCount teeth of the wheel
     * @param leafCount leaves of the pinion
     * @return empty if no pair of this form runs with these counts however large it is
     */
    Optional<MeshTeeth> atAnyModule(int toothCount, int leafCount);
}
