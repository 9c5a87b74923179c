// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.BobShell;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Ratchet;
import drumfall.solver.parts.BobSize;
import drumfall.solver.parts.RatchetSize;

/** Sizes of parts that a brief may give and that are made in a customary size if it does not. */
public final class BriefParts {
    private BriefParts() {}

    /**
     * The ratchet and its click.
     *
     * @param brief the brief
     */
    public static RatchetSize ratchet(Brief brief) {
        return brief.drum().ratchet().map(BriefParts::size).orElse(RatchetSize.CUSTOMARY);
    }

    private static RatchetSize size(Ratchet ratchet) {
        return new RatchetSize(
                ratchet.teeth(), ratchet.toothDepth().si(), ratchet.thickness().si(), RatchetSize.CUSTOMARY.pin());
    }

    /**
     * The bob's shell.
     *
     * @param brief the brief
     */
    public static BobSize bob(Brief brief) {
        return brief.pendulum().bob().map(BriefParts::size).orElse(BobSize.CUSTOMARY);
    }

    private static BobSize size(BobShell shell) {
        return new BobSize(shell.diameter().si(), shell.thickness().si());
    }
}
