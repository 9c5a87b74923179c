// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.books;

/** Where power goes. */
public enum Place {
    /** The pulley at the weight. */
    PULLEY(true),
    /** The supports of one arbor. */
    BORES(true),
    /** Motion work and hands. */
    HANDS(true),
    /** One mesh. */
    MESH(true),
    /** Free turn of the escape wheel from pallet to pallet. */
    DROP(false),
    /** Friction of the impulse faces. */
    IMPULSE(true),
    /** Bringing the escape wheel to speed. */
    INERTIA(false),
    /** Friction of the locking faces. */
    LOCKING(true),
    /** Pallet arbor and crutch. */
    PALLET_ARBOR(true),
    /** The pendulum's own losses. */
    PENDULUM(false);

    private final boolean friction;

    Place(boolean friction) {
        this.friction = friction;
    }

    /** Whether parts rub there, rather than swing, strike or fall. */
    public boolean friction() {
        return friction;
    }
}
