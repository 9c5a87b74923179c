// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

/** The escapements a maker may name, and whether the work of their beat can be balanced here. */
public enum EscapementKind {
    /** The deadbeat: the wheel stands still while the pendulum swings on. */
    DEADBEAT(true),
    /** The recoil anchor: the wheel is driven back while the pendulum swings on. */
    RECOIL_ANCHOR(false);

    private final boolean modelled;

    EscapementKind(boolean modelled) {
        this.modelled = modelled;
    }

    /** Whether its beat can be balanced. */
    public boolean modelled() {
        return modelled;
    }

    /**
     * Refuses a kind that is not modelled, by name.
     *
     * @throws IllegalArgumentException if it is not modelled
     */
    public void requireModelled() {
        if (!modelled) {
            throw new IllegalArgumentException(
                    "The escapement (%s) must be a deadbeat: how much of the recoil comes back depends on the drawn curve of the pallets, for which there is no published balance. Maybe draw deadbeat pallets."
                            .formatted(name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ')));
        }
    }
}
