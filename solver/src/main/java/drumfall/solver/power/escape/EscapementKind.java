// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

import drumfall.solver.sheet.Withheld;

/** The escapements a maker may name, and whether the work of their beat can be balanced here. */
public enum EscapementKind {
    /** The deadbeat: tangential pallets; the wheel stands still while the pendulum swings on. */
    DEADBEAT,

    /** The recoil anchor: the wheel is driven back while the pendulum swings on. */
    @Withheld(
            rule =
                    "a recoil anchor is not modelled: how much of its recoil comes back depends on the drawn curve of its"
                            + " pallets, for which there is no published balance",
            remedy = "write \"deadbeat\"")
    RECOIL_ANCHOR;

    /** Whether its beat can be balanced. */
    public boolean modelled() {
        return Withheld.Mark.of(this).isEmpty();
    }
}
