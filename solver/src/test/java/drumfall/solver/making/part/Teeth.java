// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import drumfall.solver.teeth.form.BasicRack;
import drumfall.solver.teeth.form.InvolutePair;
import drumfall.solver.train.ToothModule;

/** Standard teeth to make parts of. */
final class Teeth {
    private Teeth() {}

    /** Teeth of module 1 after ISO 53 type A, thinned by 0.1 mm. */
    static GearCut cut(int toothCount, int leafCount, boolean wheel) {
        InvolutePair pair = InvolutePair.of(BasicRack.ISO_53_A, toothCount, leafCount, 0, 0);
        return new GearCut(wheel ? pair.driver() : pair.follower(), ToothModule.ofMillimetres("1"), 1e-4);
    }
}
